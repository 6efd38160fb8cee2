/** Whom a step's pages reach: the person at each place of the climb now, with her phone's row; a gap in the rota goes to the fallback, loudly. */
import type { Effect } from '#machines/effects.ts';
import { MissingRow } from '#src/errors.ts';
import type { Nurse } from '#src/rota/rota.ts';
import { withSwaps } from '#src/rota/swaps.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { Parts } from './parts.ts';
import type { Turn } from './turn.ts';

export interface Reached {
  readonly phoneId: number;
  /** She was called for this case before, and nobody has taken it since. */
  readonly called: boolean;
}

/** Who stands at a place of the climb. */
export interface Place extends Reached {
  /** The rota names nobody there, so it is the fallback number. */
  readonly gap: boolean;
}

export interface Reach {
  /** By place in the climb. */
  readonly places: ReadonlyMap<number, Place>;
  /** Who takes the page in this step, or took it last; else who is first on call. */
  readonly taker: Reached | null;
}

const nobody: Reach = { places: new Map(), taker: null };

const findPhones = statement(
  'reach.find',
  `SELECT p.id, p.finder, EXISTS (SELECT FROM page g WHERE g.case_id = $2 AND g.phone_id = p.id AND g.open) AS called
   FROM phone p WHERE p.finder = ANY ($1)`,
);
const makePhones = statement(
  'phone.make',
  'INSERT INTO phone (finder, number) SELECT * FROM unnest($1::bytea[], $2::bytea[]) ON CONFLICT (finder) DO NOTHING',
);
const findTaker = statement(
  'reach.taker',
  `SELECT p.id, p.number, g.taken_ms FROM page g JOIN phone p ON p.id = g.phone_id
   WHERE g.case_id = $1 AND g.taken_ms IS NOT NULL ORDER BY g.taken_ms DESC, g.id DESC LIMIT 1`,
);

/** Finds everybody the effects need; one look where there is a page, none where there is not. */
export async function reach(
  parts: Parts,
  turn: Turn,
  caseId: number,
  effects: readonly Effect[],
  takerPhoneId: number | undefined,
): Promise<Reach> {
  const tells = effects.some(({ type }) => type === 'tellNurse' || type === 'tellStands');
  const places = new Set(effects.flatMap((effect) => (effect.type === 'callNurse' ? [effect.place] : [])));
  if (places.size === 0 && !tells) return nobody;
  const people = await onCallNow(parts, turn.client, turn.nowMs);
  const { fallbackNumber } = parts.protocol.site;
  const numbers = new Map([...places, 0].map((place) => [place, people[place]?.number ?? fallbackNumber]));
  const phones = await phonesOf(turn.client, parts.seal, [...numbers.values()], caseId);
  const reached = new Map(
    [...numbers].map(([place, number]) => {
      const gap = !people[place];
      if (gap && places.has(place))
        parts.log.error({ caseId, place }, 'the rota names nobody: the page goes to the fallback number');
      return [place, { ...present(phones.get(number)), gap }];
    }),
  );
  if (takerPhoneId !== undefined) return { places: reached, taker: { phoneId: takerPhoneId, called: true } };
  return { places: reached, taker: tells ? await takerOf(parts, turn, caseId, reached) : null };
}

/** The people on call by place, each where a swap has put her; null where the rota names nobody. */
export function onCallNow(parts: Parts, client: Queryable, nowMs: number): Promise<readonly (Nurse | null)[]> {
  return withSwaps(client, parts.seal, parts.onCall(nowMs), parts.nurseOf, nowMs);
}

/** The numbers a page can reach: the rota's, and the one that is rung where the rota names nobody. */
export function isNursesNumber(parts: Parts, number: string): boolean {
  return parts.nurseOf(number) !== null || number === parts.protocol.site.fallbackNumber;
}

/** The rows of these numbers, in their order, made where they are seen for the first time. */
export async function phonesOf(
  client: Queryable,
  seal: Seal,
  numbers: readonly string[],
  caseId: number,
): Promise<ReadonlyMap<string, Reached>> {
  const wanted = [...new Set(numbers)];
  const found = await findAll(client, seal, wanted, caseId);
  const missing = wanted.filter((number) => !found.has(number));
  if (missing.length === 0) return found;
  await client.query(makePhones, [
    missing.map((number) => seal.finder(number)),
    missing.map((number) => seal.seal(number)),
  ]);
  return phonesOf(client, seal, wanted, caseId);
}

async function findAll(
  client: Queryable,
  seal: Seal,
  numbers: readonly string[],
  caseId: number,
): Promise<ReadonlyMap<string, Reached>> {
  const numberBy = new Map(
    numbers.flatMap((number) => seal.finders(number).map((one) => [one.toString('hex'), number])),
  );
  const finders = numbers.flatMap((number) => seal.finders(number));
  const rows = await client.query<{ id: number; finder: Buffer; called: boolean }>(findPhones, [finders, caseId]);
  const found = new Map(
    rows.map((row) => [present(numberBy.get(row.finder.toString('hex'))), { phoneId: row.id, called: row.called }]),
  );
  return new Map(
    numbers.flatMap((number) => {
      const reached = found.get(number);
      return reached === undefined ? [] : [[number, reached] as const];
    }),
  );
}

async function takerOf(
  { seal }: Parts,
  { client }: Turn,
  caseId: number,
  places: ReadonlyMap<number, Reached>,
): Promise<Reached> {
  const taker = await lastTaker(client, seal, caseId);
  return taker === null ? present(places.get(0)) : { phoneId: taker.phoneId, called: true };
}

/** Who took the case's page last, or null where nobody has. */
export async function lastTaker(
  client: Queryable,
  seal: Seal,
  caseId: number,
): Promise<{ readonly phoneId: number; readonly number: string; readonly takenMs: number } | null> {
  const [row] = await client.query<{ id: number; number: Buffer; taken_ms: number }>(findTaker, [caseId]);
  return row === undefined ? null : { phoneId: row.id, number: seal.open(row.number), takenMs: row.taken_ms };
}

function present<T>(reached: T | undefined): T {
  if (reached === undefined) throw new MissingRow('phone');
  return reached;
}
