/** A new key: seals everything anew with it, in small batches, while the line runs on both keys. */
import { type Database, type Queryable, statement } from './database.ts';
import { phonesLock } from './knownFinder.ts';
import type { Seal } from './seal.ts';

/** Every sealed column but those that are found by the key too, `phone` and `rota_calendar`. */
export const sealedColumns = [
  ['family', 'file'],
  ['"case"', 'file'],
  ['"case"', 'snapshots'],
  ['event', 'body'],
  ['message', 'body'],
  ['message', 'bridge_to'],
  ['incoming_call', 'plan'],
  ['media', 'source'],
  ['media', 'body'],
  ['handover', 'sheet'],
  ['audit', 'by_whom'],
  ['pause', 'by'],
  ['pause', 'why'],
  ['pause', 'resumed_by'],
] as const;

const batch = 200;
/** Pictures are large. */
const mediaBatch = 4;

/** Events are only ever added; their bodies are rewritten by who says so. */
const rewrites = "SET LOCAL nightjar.rewrites_bodies = 'on'";
const alone = statement('rotate.alone', 'SELECT pg_advisory_xact_lock($1)');
const oldPhones = statement(
  'rotate.phones',
  `SELECT id, number FROM phone WHERE substring(number FROM 1 FOR 4) <> $1 ORDER BY id LIMIT ${batch} FOR UPDATE`,
);
const renewPhones = statement(
  'rotate.renewPhones',
  `UPDATE phone SET finder = u.finder, number = u.number
   FROM unnest($1::bigint[], $2::bytea[], $3::bytea[]) AS u (id, finder, number) WHERE phone.id = u.id`,
);
/** What a calendar is found by cannot be made anew from the row; a line that runs has kept it again under the new key. */
const dropCalendars = statement(
  'rotate.calendars',
  'DELETE FROM rota_calendar WHERE substring(text FROM 1 FOR 4) <> $1',
);

/** Seals all of it anew and returns how many values that were. May be stopped and begun again at any time. */
export async function rotateKey(database: Database, seal: Seal): Promise<number> {
  let renewed = await untilNone(() => database.transaction((client) => renewSomePhones(client, seal)));
  for (const [table, column] of sealedColumns) renewed += await renewColumn(database, seal, table, column);
  await database.query(dropCalendars, [seal.keyId]);
  return renewed;
}

async function renewSomePhones(client: Queryable, seal: Seal): Promise<number> {
  await client.query(alone, [phonesLock]);
  const rows = await client.query<{ id: number; number: Buffer }>(oldPhones, [seal.keyId]);
  const numbers = rows.map((row) => seal.open(row.number));
  await client.query(renewPhones, [
    rows.map((row) => row.id),
    numbers.map((number) => seal.finder(number)),
    numbers.map((number) => seal.seal(number)),
  ]);
  return rows.length;
}

/** Passes over the table until one finds nothing: a row that the line moved meanwhile is met by the next. */
async function renewColumn(database: Database, seal: Seal, table: string, column: string): Promise<number> {
  return untilNone(async () => {
    let renewed = 0;
    let after: string | null = '(0,0)';
    while (after !== null) {
      const from: string = after;
      const rows = await database.transaction((client) => renewSome(client, seal, table, column, from));
      renewed += rows.length;
      after = rows.at(-1) ?? null;
    }
    return renewed;
  });
}

/** The rows sealed anew, by their place in the table. */
async function renewSome(
  client: Queryable,
  seal: Seal,
  table: string,
  column: string,
  after: string,
): Promise<readonly string[]> {
  const rows = await client.query<{ place: string; value: Buffer }>(
    `SELECT ctid::text AS place, ${column} AS value FROM ${table}
     WHERE ctid > $2::tid AND substring(${column} FROM 1 FOR 4) <> $1 LIMIT ${table === 'media' ? mediaBatch : batch} FOR UPDATE`,
    [seal.keyId, after],
  );
  if (rows.length === 0) return [];
  await client.query(rewrites);
  await client.query(
    `UPDATE ${table} t SET ${column} = u.value FROM unnest($1::tid[], $2::bytea[]) AS u (place, value) WHERE t.ctid = u.place`,
    [rows.map((row) => row.place), rows.map((row) => seal.sealBytes(seal.openBytes(row.value)))],
  );
  return rows.map((row) => row.place);
}

async function untilNone(work: () => Promise<number>): Promise<number> {
  let all = 0;
  for (let some = await work(); some > 0; some = await work()) all += some;
  return all;
}
