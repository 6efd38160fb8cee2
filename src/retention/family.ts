/** All that is kept of one family: copied out for them, or erased at their wish. */
import { NoSuchFamily } from '#src/families/errors.ts';
import { audit } from '#src/line/audit.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { eraseCase } from './eraseCase.ts';
import type { Hand } from './purge.ts';
import { dropSheets, forgetPhones, keepLineOut, sweepNurses, sweepTexts } from './sweep.ts';

/** All phones of the family that has this one; of a stranger the phone alone. */
const findPhones = statement(
  'retention.phones',
  `WITH mine AS (SELECT id FROM phone WHERE finder = ANY ($1)),
     theirs AS (SELECT id FROM mine WHERE id IN (SELECT phone_id FROM family)
       UNION SELECT family_id FROM family_phone WHERE phone_id IN (SELECT id FROM mine))
   SELECT id, number FROM phone WHERE id IN (SELECT id FROM mine UNION SELECT id FROM theirs
     UNION SELECT phone_id FROM family_phone WHERE family_id IN (SELECT id FROM theirs)) ORDER BY id`,
);
/** Theirs, and those of phones that went on in theirs: they ended with who it was. */
const selectCases = statement(
  'retention.cases',
  `SELECT c.id, c.opened_ms, c.closed_ms, c.file FROM "case" c WHERE c.phone_id = ANY ($1)
     OR c.phone_id IN (SELECT unnest(t.joined_ids) FROM "case" t WHERE t.phone_id = ANY ($1) AND c.closed_ms >= t.opened_ms)
       AND EXISTS (SELECT FROM event e WHERE e.case_id = c.id AND e.number = c.last_number AND e.type = 'answer.who')
   ORDER BY c.id`,
);
/** Phones that went on in their cases, and are nobody's on file. */
const selectJoined = statement(
  'retention.joined',
  `SELECT DISTINCT j.id FROM "case" c CROSS JOIN unnest(c.joined_ids) AS j (id) WHERE c.phone_id = ANY ($1)
     AND NOT EXISTS (SELECT FROM family WHERE phone_id = j.id) AND NOT EXISTS (SELECT FROM family_phone WHERE phone_id = j.id)`,
);
const selectEvents = statement('retention.events', 'SELECT body FROM event WHERE case_id = $1 ORDER BY number');
const selectTexts = statement(
  'retention.texts',
  `SELECT at_ms, direction, kind, body, state FROM message WHERE phone_id = ANY ($1) ORDER BY id`,
);
const selectMedia = statement(
  'retention.media',
  `SELECT at_ms, type, body FROM media WHERE phone_id = ANY ($1) AND state = 'kept' ORDER BY id`,
);
const selectFile = statement('retention.file', 'SELECT file, enrolled_ms FROM family WHERE phone_id = ANY ($1)');
const selectAudit = statement(
  'retention.audit',
  'SELECT at_ms, what, by_whom FROM audit WHERE phone_id = ANY ($1) ORDER BY id',
);
const takeOff = statement(
  'retention.takeOff',
  `WITH phones AS (DELETE FROM family_phone WHERE family_id = ANY ($1) OR phone_id = ANY ($1))
   DELETE FROM family WHERE phone_id = ANY ($1)`,
);

interface CaseRow {
  readonly id: number;
  readonly opened_ms: number;
  readonly closed_ms: number | null;
  readonly file: Buffer | null;
}
interface TextRow {
  readonly at_ms: number;
  readonly direction: string;
  readonly kind: string;
  readonly body: Buffer;
  readonly state: string;
}

/** Everything kept under the family's phones, to be written as JSON. Throws `NoSuchFamily` where the line never saw the number. */
export async function exportFamily(client: Queryable, seal: Seal, number: string): Promise<object> {
  const { ids, numbers } = await phonesOf(client, seal, number);
  const files = await client.query<{ file: Buffer; enrolled_ms: number }>(selectFile, [ids]);
  const texts = await client.query<TextRow>(selectTexts, [ids]);
  const media = await client.query<{ at_ms: number; type: string; body: Buffer }>(selectMedia, [ids]);
  const changes = await client.query<{ at_ms: number; what: string; by_whom: Buffer | null }>(selectAudit, [ids]);
  const opened = (sealed: Buffer): unknown => JSON.parse(seal.open(sealed));
  const cases = [];
  for (const row of await client.query<CaseRow>(selectCases, [ids])) {
    const events = await client.query<{ body: Buffer }>(selectEvents, [row.id]);
    cases.push({
      id: row.id,
      opened: iso(row.opened_ms),
      closed: row.closed_ms === null ? null : iso(row.closed_ms),
      file: row.file === null ? null : opened(row.file),
      events: events.map(({ body }) => opened(body)),
    });
  }
  return {
    phones: numbers,
    files: files.map(({ file, enrolled_ms }) => ({ enrolled: iso(enrolled_ms), file: opened(file) })),
    cases,
    texts: texts.map(({ at_ms, body, ...text }) => ({ at: iso(at_ms), ...text, body: seal.open(body) })),
    media: media.map(({ at_ms, type, body }) => ({
      at: iso(at_ms),
      type,
      base64: seal.openBytes(body).toString('base64'),
    })),
    changes: changes.map(({ at_ms, what, by_whom }) => ({
      at: iso(at_ms),
      what,
      by: by_whom === null ? null : seal.open(by_whom),
    })),
  };
}

/**
 * Erases all of it, and what phones that went on in their cases told of them, in the caller's transaction and says how many cases that were. Throws `NoSuchFamily`, and `NotErasable` while a
 * case of theirs is open or on hold.
 */
export async function eraseFamily(client: Queryable, seal: Seal, number: string, hand: Hand): Promise<number> {
  await keepLineOut(client);
  const { ids } = await phonesOf(client, seal, number);
  const cases = await client.query<CaseRow>(selectCases, [ids]);
  const joined = await client.query<{ id: number }>(selectJoined, [ids]);
  const all = [...ids, ...joined.map(({ id }) => id)];
  for (const { id } of cases) await eraseCase(client, seal, id, hand.nowMs);
  await client.query(takeOff, [ids]);
  await dropSheets(client, ids);
  await sweepTexts(client, seal, all, hand.nowMs + 1);
  await sweepNurses(
    client,
    seal,
    cases.map(({ id }) => id),
  );
  await forgetPhones(client, seal, all);
  await audit(client, hand.nowMs, 'a family erased', null, seal.seal(hand.by));
  return cases.length;
}

async function phonesOf(client: Queryable, seal: Seal, number: string) {
  const rows = await client.query<{ id: number; number: Buffer }>(findPhones, [seal.finders(number)]);
  if (rows.length === 0) throw new NoSuchFamily('family');
  return { ids: rows.map(({ id }) => id), numbers: rows.map((row) => seal.open(row.number)) };
}

function iso(atMs: number): string {
  return new Date(atMs).toISOString();
}
