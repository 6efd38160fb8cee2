/** Purging: cases closed longer than the site keeps them lose what they tell of a family; those on hold wait. */
import { audit } from '#src/line/audit.ts';
import { type Database, type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { eraseCase } from './eraseCase.ts';
import { NotErasable } from './errors.ts';
import { everyPhone, forgetPhones, keepLineOut, sweepNumberless, sweepSheets, sweepTexts, unknownOf } from './sweep.ts';

export interface Purged {
  readonly cases: number;
  readonly phones: number;
  /** Cases that should go and whose record does not hold. */
  readonly broken: readonly number[];
}

/** Who does it, for the audit. */
export interface Hand {
  readonly nowMs: number;
  readonly by: string;
}

const old = statement(
  'purge.old',
  'SELECT id FROM "case" WHERE closed_ms < $1 AND held_ms IS NULL AND erased_ms IS NULL ORDER BY id',
);
const setHold = statement(
  'purge.hold',
  'UPDATE "case" SET held_ms = $2 WHERE id = $1 AND erased_ms IS NULL RETURNING id',
);

/** The cases whose time is over (epoch ms). */
export async function overdueCases(client: Queryable, beforeMs: number): Promise<readonly number[]> {
  return (await client.query<{ id: number }>(old, [beforeMs])).map(({ id }) => id);
}

const phonesAtOnce = 100;

/** One transaction a case, so that it may be stopped at any time, and the line is kept waiting for none. */
export async function purge(database: Database, seal: Seal, beforeMs: number, { nowMs, by }: Hand): Promise<Purged> {
  const broken: number[] = [];
  const overdue = await overdueCases(database, beforeMs);
  for (const id of overdue) {
    try {
      await database.transaction((client) => eraseCase(client, seal, id, nowMs));
    } catch (error) {
      if (!(error instanceof NotErasable)) throw error;
      broken.push(id);
    }
  }
  const cases = overdue.length - broken.length;
  const unknown = await database.transaction(async (client) => {
    const phones = await everyPhone(client);
    await sweepTexts(client, seal, phones, beforeMs);
    await sweepNumberless(client, beforeMs);
    await sweepSheets(client, beforeMs);
    await audit(client, nowMs, `purged ${cases} cases`, null, seal.seal(by));
    return unknownOf(client, seal, phones);
  });
  for (let from = 0; from < unknown.length; from += phonesAtOnce) {
    await database.transaction(async (client) => {
      await keepLineOut(client);
      await forgetPhones(client, seal, unknown.slice(from, from + phonesAtOnce));
    });
  }
  return { cases, phones: unknown.length, broken };
}

/** A case on hold is never purged or erased. False where there is no such case, or it is erased. */
export async function hold(client: Queryable, seal: Seal, caseId: number, on: boolean, hand: Hand): Promise<boolean> {
  const rows = await client.query(setHold, [caseId, on ? hand.nowMs : null]);
  if (rows.length === 0) return false;
  await audit(client, hand.nowMs, `case ${caseId} ${on ? 'on hold' : 'off hold'}`, null, seal.seal(hand.by));
  return true;
}
