/** Swaps: for a while two people stand in each other's place, once the other has agreed. Kept in the database, asked at page time. */
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { Nurse } from './rota.ts';
import type { SwapSpan } from './swapWords.ts';

/** A swap that waits for the other person's word. */
export interface AskedSwap extends SwapSpan {
  readonly id: number;
  readonly askerId: number;
  /** E.164, of who asked. */
  readonly askerNumber: string;
}

/** How long an answer is waited for; common practice, no source. */
export const answerMs = 12 * 3_600_000;

const ask = statement(
  'swap.ask',
  'INSERT INTO rota_swap (asker_id, other_id, from_ms, to_ms, asked_ms) VALUES ($1, $2, $3, $4, $5)',
);
const asked = statement(
  'swap.asked',
  `SELECT s.id, s.asker_id, s.from_ms, s.to_ms, p.number FROM rota_swap s JOIN phone p ON p.id = s.asker_id
   WHERE s.other_id = $1 AND s.agreed_ms IS NULL AND s.refused_ms IS NULL AND s.to_ms > $2 AND s.asked_ms > $3
   ORDER BY s.id DESC LIMIT 1 FOR UPDATE OF s`,
);
const agree = statement('swap.agree', 'UPDATE rota_swap SET agreed_ms = $2 WHERE id = $1');
const refuse = statement('swap.refuse', 'UPDATE rota_swap SET refused_ms = $2 WHERE id = $1');
const agreed = statement(
  'swap.agreed',
  `SELECT a.number AS asker, o.number AS other
   FROM rota_swap s JOIN phone a ON a.id = s.asker_id JOIN phone o ON o.id = s.other_id
   WHERE s.agreed_ms IS NOT NULL AND s.from_ms <= $1 AND s.to_ms > $1 ORDER BY s.agreed_ms, s.id`,
);

/** Remembers that one phone asks another to swap. */
export async function askSwap(
  client: Queryable,
  nowMs: number,
  askerId: number,
  otherId: number,
  { fromMs, toMs }: SwapSpan,
): Promise<void> {
  await client.query(ask, [askerId, otherId, fromMs, toMs, nowMs]);
}

/** The newest swap this phone was asked for and has not answered, locked, or null. */
export async function askedSwap(
  client: Queryable,
  seal: Seal,
  otherId: number,
  nowMs: number,
): Promise<AskedSwap | null> {
  const rows = await client.query<{ id: number; asker_id: number; from_ms: number; to_ms: number; number: Buffer }>(
    asked,
    [otherId, nowMs, nowMs - answerMs],
  );
  const [row] = rows;
  if (row === undefined) return null;
  const { id, asker_id: askerId, from_ms: fromMs, to_ms: toMs } = row;
  return { id, askerId, fromMs, toMs, askerNumber: seal.open(row.number) };
}

export async function settleSwap(client: Queryable, swap: AskedSwap, nowMs: number, word: 'yes' | 'no'): Promise<void> {
  await client.query(word === 'yes' ? agree : refuse, [swap.id, nowMs]);
}

/** The people on call (by place) with each other's places exchanged as they have agreed for this time (epoch ms). */
export async function withSwaps(
  client: Queryable,
  seal: Seal,
  people: readonly (Nurse | null)[],
  nurseOf: (number: string) => Nurse | null,
  atMs: number,
): Promise<readonly (Nurse | null)[]> {
  const rows = await client.query<{ asker: Buffer; other: Buffer }>(agreed, [atMs]);
  return rows.reduce<readonly (Nurse | null)[]>((before, row) => {
    const [asker, other] = [nurseOf(seal.open(row.asker)), nurseOf(seal.open(row.other))];
    return asker === null || other === null ? before : before.map((nurse) => exchanged(nurse, asker, other));
  }, people);
}

function exchanged(nurse: Nurse | null, one: Nurse, other: Nurse): Nurse | null {
  if (nurse?.number === one.number) return other;
  return nurse?.number === other.number ? one : nurse;
}
