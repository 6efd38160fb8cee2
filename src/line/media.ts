/**
 * Pictures and voice notes: noted with the text they came with, fetched after its turn is over, kept sealed, shown to the nurse who
 * has the case. Never a reading.
 */
import { type Queryable, statement } from '#src/store/database.ts';
import { audit } from './audit.ts';
import { type LockedCase, lockCase } from './cases.ts';
import type { HeardText } from './line.ts';
import { mediaLink, mediaOf } from './mediaLink.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import type { Phone } from './phones.ts';
import { caseName } from './plan.ts';
import { lastTaker } from './reach.ts';
import { inTransaction, type Turn } from './turn.ts';
import { writeMessages } from './write.ts';

/** A picture sent before the case was opened by the same phone belongs to it. */
const adoptMs = 60 * 60_000;
/** How long a process has a picture in hand before another one fetches it; longer than fetching may take. */
const inHandMs = 60_000;
const laterMs = 10_000;
const triesMost = 8;
const shownMost = 3;

const note = statement(
  'media.note',
  `INSERT INTO media (message_id, place, phone_id, case_id, at_ms, state, source)
   SELECT $1, m.place, $2, (SELECT c.id FROM "case" c WHERE c.closed_ms IS NULL AND (c.phone_id = $2 OR $2 = ANY (c.joined_ids))
     ORDER BY c.phone_id = $2 DESC, c.id DESC LIMIT 1), $3, 'waiting', m.source
   FROM unnest($4::bytea[]) WITH ORDINALITY AS m (source, place)`,
);
const adopt = statement(
  'media.adopt',
  'UPDATE media SET case_id = $1 WHERE phone_id = $2 AND case_id IS NULL AND at_ms >= $3',
);
const claim = statement(
  'media.claim',
  `UPDATE media SET tries = tries + 1, hold_until_ms = $2 WHERE id IN (
     SELECT id FROM media WHERE state = 'waiting' AND hold_until_ms <= $1 ORDER BY id LIMIT 4 FOR UPDATE SKIP LOCKED)
   RETURNING id, source, tries`,
);
const putOff = statement('media.putOff', "UPDATE media SET hold_until_ms = $2 WHERE id = $1 AND state = 'waiting'");
const settle = statement(
  'media.settle',
  `UPDATE media SET state = $2, type = $3, body = $4, source = NULL WHERE id = $1 AND state = 'waiting' RETURNING case_id`,
);
const ofCase = statement(
  'media.ofCase',
  `SELECT id, type, state FROM media WHERE case_id = $1 AND state = 'kept' ORDER BY id DESC LIMIT ${shownMost}`,
);
const find = statement('media.find', "SELECT type, body, case_id FROM media WHERE id = $1 AND state = 'kept'");

interface Shown {
  readonly id: number;
  readonly type: string | null;
}

/** Notes what came with a text, at the end of its turn: where it is, in which case. */
export async function noteMedia(parts: Parts, turn: Turn, phone: Phone, { media = [] }: HeardText): Promise<void> {
  if (media.length === 0) return;
  const sources = media.map((address) => parts.seal.seal(address));
  await turn.client.query(note, [phone.heardId, phone.id, turn.nowMs, sources]);
}

/** What the phone sent just before belongs to the case it has opened. */
export async function adoptMedia(turn: Turn, theCase: LockedCase): Promise<void> {
  await turn.client.query(adopt, [theCase.id, theCase.phoneId, turn.nowMs - adoptMs]);
}

/** Fetches all that waits. A process that dies on the way leaves it waiting; it is then fetched again and kept once. */
export async function fetchMedia(parts: Parts, cause: string): Promise<void> {
  for (;;) {
    const nowMs = parts.wallMs();
    const rows = await parts.database.query<{ id: number; source: Buffer; tries: number }>(claim, [
      nowMs,
      nowMs + inHandMs,
    ]);
    if (rows.length === 0) return;
    parts.checkpoint('media claimed');
    await Promise.all(rows.map((row) => fetchOne(parts, row, cause)));
  }
}

async function fetchOne(
  parts: Parts,
  { id, source, tries }: { readonly id: number; readonly source: Buffer; readonly tries: number },
  cause: string,
): Promise<void> {
  const fetched = await parts.carrier
    .fetchMedia(parts.seal.open(source))
    .catch((): { readonly fate: 'later' } => ({ fate: 'later' }));
  parts.checkpoint('media fetched');
  if (fetched.fate === 'later' && tries < triesMost) {
    await parts.database.query(putOff, [id, parts.wallMs() + laterMs * 2 ** (tries - 1)]);
    return;
  }
  if (fetched.fate !== 'fetched')
    parts.log.warn(
      { mediaId: id, why: fetched.fate === 'refused' ? fetched.why : 'never came' },
      'a picture or voice note is not kept',
    );
  const body = fetched.fate === 'fetched' ? parts.seal.sealBytes(fetched.bytes) : null;
  const type = fetched.fate === 'fetched' ? fetched.type : null;
  await inTransaction(parts, cause, async (client, begin) => {
    const [row] = await client.query<{ case_id: number | null }>(settle, [
      id,
      body === null ? 'refused' : 'kept',
      type,
      body,
    ]);
    if (row === undefined || row.case_id === null) return;
    const theCase = await lockCase(client, parts.seal, row.case_id);
    const taker = await lastTaker(client, parts.seal, row.case_id);
    if (theCase === null || taker === null) return;
    await tellOf(parts, await begin(await isPaused(client)), theCase, taker.phoneId, [{ id, type }]);
  });
  parts.checkpoint('media settled');
}

/** What is kept of a case, as links to whoever has it now. */
export async function showMedia(parts: Parts, turn: Turn, theCase: LockedCase, nursePhoneId: number): Promise<void> {
  const rows = await turn.client.query<{ id: number; type: string }>(ofCase, [theCase.id]);
  await tellOf(parts, turn, theCase, nursePhoneId, rows.reverse());
}

async function tellOf(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  phoneId: number,
  shown: readonly Shown[],
): Promise<void> {
  if (shown.length === 0) return;
  const scene = { site: parts.protocol.site, nowMs: turn.nowMs };
  const messages = shown.map(({ id, type }) => {
    const link = type === null ? null : mediaLink(parts.seal, parts.publicUrl, id, turn.nowMs);
    const params = { ...caseName(theCase), sound: type?.startsWith('audio/') === true, link };
    const body = parts.wordForNurse({ key: 'mediaCame', params }, scene);
    return { phoneId, kind: 'text' as const, body, urgent: false };
  });
  await writeMessages(parts.seal, turn, null, messages);
}

export interface OpenedMedia {
  readonly type: string;
  readonly bytes: Buffer;
}

/** The picture a link opens, or null. That it was opened is written down. */
export async function openMedia(parts: Parts, client: Queryable, token: string): Promise<OpenedMedia | null> {
  const nowMs = await parts.clock.now(client);
  const id = mediaOf(parts.seal, token, nowMs);
  if (id === null) return null;
  const [row] = await client.query<{ type: string; body: Buffer; case_id: number | null }>(find, [id]);
  if (row === undefined) return null;
  await audit(client, nowMs, `a picture or voice note of case ${row.case_id} opened`, null);
  return { type: row.type, bytes: parts.seal.openBytes(row.body) };
}
