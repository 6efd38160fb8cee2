/** The pause: people stop the line's advice, and let it go on. It stands in the database, so every process obeys at once. */
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { audit } from './audit.ts';

export interface Pause {
  /** Epoch ms. */
  readonly atMs: number;
  readonly by: string;
  readonly why: string | null;
}

/** Whether the line is paused, as a column of a query that is made anyway: knowing it costs a turn no round trip. */
export const pausedColumn = 'EXISTS (SELECT FROM pause WHERE resumed_ms IS NULL) AS paused';

const read = statement('pause.read', 'SELECT at_ms, by, why FROM pause WHERE resumed_ms IS NULL');
const begin = statement(
  'pause.begin',
  'INSERT INTO pause (at_ms, by, why) VALUES ($1, $2, $3) ON CONFLICT DO NOTHING RETURNING id',
);
const end = statement(
  'pause.end',
  'UPDATE pause SET resumed_ms = $1, resumed_by = $2 WHERE resumed_ms IS NULL RETURNING id',
);

interface Row {
  readonly at_ms: number;
  readonly by: Buffer;
  readonly why: Buffer | null;
}

/** The pause that holds now, or null. */
export async function pauseNow(client: Queryable, seal: Seal): Promise<Pause | null> {
  const [row] = await client.query<Row>(read);
  if (row === undefined) return null;
  return { atMs: row.at_ms, by: seal.open(row.by), why: row.why === null ? null : seal.open(row.why) };
}

export async function isPaused(client: Queryable): Promise<boolean> {
  return (await client.query(read)).length > 0;
}

/** Stops the advice; false where it was stopped already. `phoneId` is the phone it was asked from, null for a command. */
export async function pauseLine(
  client: Queryable,
  seal: Seal,
  { atMs, by, why }: Pause,
  phoneId: number | null,
): Promise<boolean> {
  const begun = await client.query(begin, [atMs, seal.seal(by), why === null ? null : seal.seal(why)]);
  if (begun.length > 0) await audit(client, atMs, 'paused', phoneId, seal.seal(by));
  return begun.length > 0;
}

/** Lets the line advise again; false where it was not paused. Cases that went to a person meanwhile stay with her. */
export async function resumeLine(
  client: Queryable,
  seal: Seal,
  atMs: number,
  by: string,
  phoneId: number | null,
): Promise<boolean> {
  const ended = await client.query(end, [atMs, seal.seal(by)]);
  if (ended.length > 0) await audit(client, atMs, 'resumed', phoneId, seal.seal(by));
  return ended.length > 0;
}
