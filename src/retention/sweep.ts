/** Erases what belongs to no case any more: texts, handover sheets and the numbers of phones nothing else is known of. */
import { randomBytes } from 'node:crypto';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';

/** A text is kept a little before the event it brought about, and may be about a case a little after it closed. */
const marginMs = 86_400_000;

/** A case whose words are kept, that the text may belong to. */
const stillNeeded = `EXISTS (
  SELECT FROM "case" c WHERE c.erased_ms IS NULL AND c.opened_ms - ${marginMs} <= m.at_ms
    AND COALESCE(c.closed_ms, m.at_ms) + ${marginMs} >= m.at_ms
    AND (c.phone_id = m.phone_id OR EXISTS (SELECT FROM page g WHERE g.case_id = c.id AND g.phone_id = m.phone_id)))`;

const dropSaid = statement(
  'sweep.said',
  `DELETE FROM message m WHERE m.direction = 'out' AND m.case_id IS NULL AND m.at_ms < $1 AND m.phone_id = ANY ($2)
     AND NOT ${stillNeeded}`,
);
/** The row stays without its words: a webhook of the carrier that comes again, years later, is still known. */
const emptyHeard = statement(
  'sweep.heard',
  `UPDATE message m SET body = $3, cause = 'erased' WHERE m.direction = 'in' AND m.cause <> 'erased' AND m.at_ms < $1
     AND m.phone_id = ANY ($2) AND NOT ${stillNeeded}`,
);
/** One with a case goes with it. */
const dropCalls = statement(
  'sweep.calls',
  'DELETE FROM incoming_call WHERE case_id IS NULL AND at_ms < $1 AND phone_id = ANY ($2)',
);
const dropNumberless = statement(
  'sweep.numberless',
  'DELETE FROM incoming_call WHERE case_id IS NULL AND at_ms < $1 AND phone_id IS NULL',
);
const dropMedia = statement(
  'sweep.media',
  'DELETE FROM media WHERE case_id IS NULL AND at_ms < $1 AND phone_id = ANY ($2)',
);
/** A sheet names a child as long as a temporary tube may stay after its case: a month, and some more. */
const sheetMs = 45 * 86_400_000;
const caseOfSheet = `c.opened_ms <= h.at_ms AND COALESCE(c.closed_ms, h.at_ms) + ${sheetMs} >= h.at_ms`;
const dropOldSheets = statement(
  'sweep.oldSheets',
  `DELETE FROM handover h WHERE h.at_ms < $1 AND NOT EXISTS (
     SELECT FROM "case" c WHERE c.erased_ms IS NULL AND ${caseOfSheet})`,
);
const dropSheetsOf = statement(
  'sweep.sheetsOf',
  `DELETE FROM handover h WHERE EXISTS (SELECT FROM "case" c WHERE c.phone_id = ANY ($1) AND ${caseOfSheet})`,
);
const ofCases = `c.id = ANY ($1) AND m.at_ms >= c.opened_ms`;
/** No record holds what the line told a nurse or the day team outside a case: it goes though it may be another case's of the same days. */
const dropTold = statement(
  'sweep.told',
  `DELETE FROM message m USING "case" c WHERE ${ofCases} AND m.at_ms <= c.closed_ms + ${sheetMs}
     AND m.direction = 'out' AND m.case_id IS NULL AND m.state NOT IN ('waiting', 'carrying')
     AND (EXISTS (SELECT FROM page g WHERE g.phone_id = m.phone_id) OR NOT (
       EXISTS (SELECT FROM family f WHERE f.phone_id = m.phone_id)
       OR EXISTS (SELECT FROM family_phone o WHERE o.phone_id = m.phone_id)
       OR EXISTS (SELECT FROM "case" d WHERE d.phone_id = m.phone_id)))`,
);
const emptyNurses = statement(
  'sweep.nurses',
  `UPDATE message m SET body = $2, cause = 'erased' FROM "case" c
   WHERE ${ofCases} AND m.at_ms <= c.closed_ms + ${marginMs} AND m.direction = 'in' AND m.cause <> 'erased'
     AND EXISTS (SELECT FROM page g WHERE g.case_id = c.id AND g.phone_id = m.phone_id) AND NOT ${stillNeeded}`,
);
/** Every turn touches the phones before it writes: whoever has this meets none half way, with a phone's row it is about to write to. */
const lockOut = 'LOCK TABLE phone IN ACCESS EXCLUSIVE MODE';
/** Of those that ever wrote; an opt-out is remembered by its number. */
const unknownPhones = statement(
  'sweep.phones',
  `SELECT p.id, p.number FROM phone p WHERE p.id = ANY ($1) AND NOT p.opted_out
     AND EXISTS (SELECT FROM message m WHERE m.phone_id = p.id AND m.direction = 'in')
     AND NOT EXISTS (SELECT FROM family f WHERE f.phone_id = p.id)
     AND NOT EXISTS (SELECT FROM family_phone o WHERE o.phone_id = p.id)
     AND NOT EXISTS (SELECT FROM "case" c WHERE c.phone_id = p.id AND c.erased_ms IS NULL)
     AND NOT EXISTS (SELECT FROM page g WHERE g.phone_id = p.id)
     AND NOT EXISTS (SELECT FROM rota_swap s WHERE p.id IN (s.asker_id, s.other_id))
     AND NOT EXISTS (SELECT FROM handover h WHERE h.acknowledged_by = p.id)
     AND NOT EXISTS (SELECT FROM message m WHERE m.phone_id = p.id AND m.cause <> 'erased')
   ORDER BY p.id`,
);
const forget = statement(
  'sweep.forget',
  `UPDATE phone SET finder = u.finder, number = u.number, pending = NULL, language = NULL
   FROM unnest($1::bigint[], $2::bytea[], $3::bytea[]) AS u (id, finder, number) WHERE phone.id = u.id`,
);
const allPhones = statement('sweep.all', 'SELECT id FROM phone ORDER BY id');

export async function everyPhone(client: Queryable): Promise<readonly number[]> {
  return (await client.query<{ id: number }>(allPhones)).map(({ id }) => id);
}

/** What these phones wrote and were told before that time (epoch ms), as far as no case needs it. */
export async function sweepTexts(
  client: Queryable,
  seal: Seal,
  phones: readonly number[],
  beforeMs: number,
): Promise<void> {
  await client.query(dropCalls, [beforeMs, phones]);
  await client.query(dropMedia, [beforeMs, phones]);
  await client.query(dropSaid, [beforeMs, phones]);
  await client.query(emptyHeard, [beforeMs, phones, seal.seal('')]);
}

/** What the people called for these erased cases were told of them and wrote about them, beside the records of other cases. */
export async function sweepNurses(client: Queryable, seal: Seal, cases: readonly number[]): Promise<void> {
  await client.query(dropTold, [cases]);
  await client.query(emptyNurses, [cases, seal.seal('')]);
}

/** Calls of before that time whose number was withheld. */
export async function sweepNumberless(client: Queryable, beforeMs: number): Promise<void> {
  await client.query(dropNumberless, [beforeMs]);
}

/** Handover sheets of before that time, as far as no case needs them. */
export async function sweepSheets(client: Queryable, beforeMs: number): Promise<void> {
  await client.query(dropOldSheets, [beforeMs]);
}

/** Every sheet that may name a child of these phones. */
export async function dropSheets(client: Queryable, phones: readonly number[]): Promise<void> {
  await client.query(dropSheetsOf, [phones]);
}

/** The phones nothing else is known of, that still have their number. */
export async function unknownOf(client: Queryable, seal: Seal, phones: readonly number[]): Promise<readonly number[]> {
  const rows = await client.query<{ id: number; number: Buffer }>(unknownPhones, [phones]);
  return rows.filter((row) => seal.open(row.number) !== '').map(({ id }) => id);
}

/** Keeps the line waiting until the end of the transaction: a moment, and for few phones at once. */
export async function keepLineOut(client: Queryable): Promise<void> {
  await client.query(lockOut);
}

/** Takes the number from those of these phones that nothing else is known of. Keep the line out first. */
export async function forgetPhones(client: Queryable, seal: Seal, phones: readonly number[]): Promise<void> {
  const ids = await unknownOf(client, seal, phones);
  await client.query(forget, [ids, ids.map(() => randomBytes(32)), ids.map(() => seal.seal(''))]);
}
