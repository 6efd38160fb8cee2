/**
 * The safe message: what the line does when a turn has failed twice. A second, smaller transaction keeps the text, sends
 * one fixed message, calls everybody on call and parks the case for a person. It uses no machine, reading or catalogue.
 */
import type { Site } from '#machines/protocol/settings.ts';
import { statement } from '#src/store/database.ts';
import { type CaseRow, caseColumns, caseOf, familyOf, insertNewCase, type LockedCase } from './cases.ts';
import { hearOnPhone } from './heard.ts';
import { listenersOf, toListeners } from './joined.ts';
import type { HeardText } from './line.ts';
import { noteMedia } from './media.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import type { Phone } from './phones.ts';
import type { PlannedMessage } from './plan.ts';
import { isNursesNumber, onCallNow, phonesOf } from './reach.ts';
import { chain } from './record.ts';
import { inTransaction, type Turn } from './turn.ts';
import { writeMessages } from './write.ts';

/** How often a parked case calls everybody again until one of them takes it; common practice, no source. */
export const parkedRepeatMs = 5 * 60_000;
export const parkedTimer = { machine: 'paging', id: 'parked', event: 'parked' } as const;

const park = statement(
  'safe.park',
  `WITH stopped AS (DELETE FROM timer WHERE case_id = $1)
   UPDATE "case" SET parked_ms = $2, last_number = $3, last_hash = $4, rehearsal = false WHERE id = $1`,
);
const addEvent = statement(
  'safe.event',
  'INSERT INTO event (case_id, number, at_ms, type, body, hash) VALUES ($1, $2, $3, $4, $5, $6)',
);
const addPages = statement(
  'safe.pages',
  `INSERT INTO page (case_id, phone_id, level, at_ms) SELECT $1, phone_id, 'emergency', $2 FROM unnest($3::bigint[]) AS phone_id`,
);
const addTimer = statement(
  'safe.timer',
  `INSERT INTO timer (case_id, machine, id, started_by, what, event, started_ms, due_ms, cause)
   VALUES ($1, $2, $3, $4, 'page', $5, $6, $7, $8)
   ON CONFLICT (case_id, machine, id) DO UPDATE SET started_ms = excluded.started_ms, due_ms = excluded.due_ms, cause = excluded.cause`,
);
const dropTimer = statement('safe.dropTimer', 'DELETE FROM timer WHERE case_id = $1 AND machine = $2 AND id = $3');
const takers = statement(
  'safe.takers',
  'SELECT phone_id FROM page WHERE case_id = $1 AND taken_ms IS NOT NULL ORDER BY id',
);
const markTaken = statement(
  'safe.take',
  'UPDATE page SET open = false, taken_ms = CASE WHEN phone_id = $2 THEN $3 ELSE taken_ms END WHERE case_id = $1 AND open',
);
const closeCase = statement(
  'safe.close',
  `WITH stopped AS (DELETE FROM timer WHERE case_id = $1), settled AS (UPDATE page SET open = false WHERE case_id = $1)
   UPDATE "case" SET closed_ms = $2 WHERE id = $1`,
);
const lockById = statement(
  'safe.lock',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.id = $1 AND c.closed_ms IS NULL AND c.parked_ms IS NULL FOR UPDATE OF c`,
);

/** What the caregiver reads: at most two segments of plain characters. */
export function safeWords(site: Site): string {
  return (
    `Call ${site.emergencyNumber} now if your child is in danger. This line cannot guide you now. ` +
    'Put nothing through the tube and give nothing by mouth. Cover the hole with a clean cloth. ' +
    'A nurse is being called to ring you. If nobody rings in 10 minutes, go to the emergency department.'
  );
}

/** Answers a text whose turn failed twice. Rejects if it cannot be kept: the carrier then uses its fallback. */
export async function answerSafely(parts: Parts, text: HeardText): Promise<void> {
  parts.checkpoint('safe message begun');
  await inTransaction(parts, text.cause, async (client, begin) => {
    const heard = await hearOnPhone(parts, client, text);
    if (heard === null) return;
    const { phone, openCase } = heard;
    const turn = await begin(phone.paused);
    if (isNursesNumber(parts, text.from)) return tellNurseOfFault(parts, turn, phone);
    const open = await openCase();
    if (open?.parked) return answerParked(parts, turn, open, text);
    const theCase = open ?? (await insertNewCase(parts, turn, phone, { file: null, snapshots: null }));
    await parkCase(parts, turn, theCase, text, true);
    await noteMedia(parts, turn, phone, text);
  });
}

/** A timer of this case failed twice: nobody has texted, but a person must look. */
export async function parkAfterTimer(parts: Parts, caseId: number, cause: string): Promise<void> {
  await inTransaction(parts, cause, async (client, begin) => {
    const [row] = await client.query<CaseRow>(lockById, [caseId]);
    if (row === undefined) return;
    const theCase = caseOf(parts.seal, row);
    await parkCase(parts, await begin(await isPaused(client)), theCase, null, !theCase.optedOut);
  });
}

/** A text to a case a person already has: it is answered by the same words and passed on to her, or to everybody on call. */
export async function answerParked(parts: Parts, turn: Turn, theCase: LockedCase, text: HeardText): Promise<void> {
  const rows = await turn.client.query<{ phone_id: number }>(takers, [theCase.id]);
  const people =
    rows.length > 0 ? [...new Set(rows.map((row) => row.phone_id))] : await everybody(parts, turn, theCase.id);
  const news = faultWords(turn, theCase.number, text);
  await writeMessages(parts.seal, turn, theCase.id, [
    ...(await familyMessages(parts, turn, theCase)),
    ...people.map((phoneId) => ({ phoneId, kind: 'text' as const, body: news, urgent: true })),
  ]);
}

/** A caregiver's text while the line is paused: no advice, the emergency number, and everybody on call. */
export async function answerPaused(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  open: LockedCase | null,
  text: HeardText,
): Promise<void> {
  parts.log.warn({ phoneId: phone.id }, 'the line is paused: a text got no advice, and everybody on call is paged');
  if (open?.parked) return answerParked(parts, turn, open, text);
  const file = await familyOf(turn.client, parts.seal, phone.id);
  const theCase = open ?? (await insertNewCase(parts, turn, phone, { file, snapshots: null }));
  await parkCase(parts, turn, theCase, text, true);
}

/** A case that waited for the conversation's next word while the line is paused. */
export async function parkPaused(parts: Parts, turn: Turn, theCase: LockedCase): Promise<void> {
  await parkCase(parts, turn, theCase, null, !theCase.optedOut);
}

/** The parked case's timer: calls everybody again until one of them has taken it. */
export async function callAgain(parts: Parts, turn: Turn, theCase: LockedCase): Promise<void> {
  const taken = await turn.client.query(takers, [theCase.id]);
  if (taken.length > 0) {
    await turn.client.query(dropTimer, [theCase.id, parkedTimer.machine, parkedTimer.id]);
    return;
  }
  await callEverybody(parts, turn, theCase, null);
}

export async function takeParked(turn: Turn, caseId: number, nursePhoneId: number): Promise<void> {
  await turn.client.query(markTaken, [caseId, nursePhoneId, turn.nowMs]);
  await turn.client.query(dropTimer, [caseId, parkedTimer.machine, parkedTimer.id]);
}

export async function closeParked(turn: Turn, caseId: number): Promise<void> {
  await turn.client.query(closeCase, [caseId, turn.nowMs]);
}

/** Whatever it was, a case that a person has is real, a rehearsal too: in doubt it may have been. */
async function parkCase(
  parts: Parts,
  turn: Turn,
  found: LockedCase,
  text: HeardText | null,
  tellCaregiver: boolean,
): Promise<void> {
  const theCase: LockedCase = { ...found, rehearsal: null };
  const link = chain(theCase, { at: turn.nowMs, type: 'parked' });
  await turn.client.query(park, [theCase.id, turn.nowMs, link.number, link.hash]);
  const event = [theCase.id, link.number, turn.nowMs, 'parked', parts.seal.seal(link.body), link.hash];
  await turn.client.query(addEvent, event);
  if (tellCaregiver) await writeMessages(parts.seal, turn, theCase.id, await familyMessages(parts, turn, theCase));
  await callEverybody(parts, turn, { ...theCase, lastNumber: link.number }, text);
  parts.checkpoint('safe message saved');
}

async function callEverybody(parts: Parts, turn: Turn, theCase: LockedCase, text: HeardText | null): Promise<void> {
  const people = await everybody(parts, turn, theCase.id);
  const words = faultWords(turn, theCase.number, text);
  const messages = people.flatMap((phoneId): PlannedMessage[] => [
    { phoneId, kind: 'text', body: words, urgent: true },
    { phoneId, kind: 'call', body: words, urgent: true },
  ]);
  await writeMessages(parts.seal, turn, theCase.id, messages);
  await turn.client.query(addPages, [theCase.id, turn.nowMs, people]);
  const dueMs = turn.nowMs + parkedRepeatMs;
  const { machine, id, event } = parkedTimer;
  await turn.client.query(addTimer, [
    theCase.id,
    machine,
    id,
    theCase.lastNumber,
    event,
    turn.nowMs,
    dueMs,
    turn.cause,
  ]);
}

/** Everybody on call, or the fallback number where the rota is empty or broken. */
async function everybody(parts: Parts, turn: Turn, caseId: number): Promise<number[]> {
  const phones = await phonesOf(turn.client, parts.seal, await numbersOnCall(parts, turn), caseId);
  return [...phones.values()].map((reached) => reached.phoneId);
}

/** Everybody on call as it stands now; never nobody. */
export async function numbersOnCall(parts: Parts, turn: Turn): Promise<readonly string[]> {
  const fallback = parts.protocol.site.fallbackNumber;
  try {
    const people = await onCallNow(parts, turn.client, turn.nowMs);
    return people.length > 0 ? people.map((nurse) => nurse?.number ?? fallback) : [fallback];
  } catch (error) {
    parts.log.error({ error }, 'the rota failed; the fallback number is called');
    return [fallback];
  }
}

async function tellNurseOfFault(parts: Parts, turn: Turn, phone: Phone): Promise<void> {
  const body =
    'This line has a fault and did not act on your text. Send it once more. If that fails too, ring the family.';
  await writeMessages(parts.seal, turn, null, [{ phoneId: phone.id, kind: 'text', body, urgent: true }]);
}

/** A pause is meant, so it is told in each phone's language; after a fault nothing but the fixed words is trusted. */
async function familyMessages(parts: Parts, turn: Turn, theCase: LockedCase): Promise<PlannedMessage[]> {
  const { site } = parts.protocol;
  if (turn.paused) {
    const saying = { say: { key: 'paused', params: {}, preface: [] }, kind: 'text', urgent: true } as const;
    return toListeners(parts, turn, site, theCase, await listenersOf(turn.client, theCase), saying);
  }
  const body = safeWords(site);
  return [theCase.phoneId, ...theCase.joinedIds].map((phoneId) => ({ phoneId, kind: 'text', body, urgent: true }));
}

/** What the people on call read: whom to ring, and the beginning of what was written. */
function faultWords({ paused }: Turn, number: string, text: HeardText | null): string {
  const did =
    text?.kind === 'call' ? ' They rang.' : ` They wrote: "${[...(text?.body ?? '')].slice(0, 80).join('')}".`;
  const wrote = text === null ? '' : did;
  return `EMERGENCY. The line ${paused ? 'is paused' : 'has a fault'} and a family gets no guidance from it. Ring ${number} now.${wrote} Reply TAKE.`;
}
