/**
 * Rehearsals begin and end here: a case of a family played for practice. Nobody joins it, nobody is called for it, and it is over
 * after some minutes of silence. Once it is closed, whatever the family texts is real.
 */
import { rehearsalQuietMs } from '#machines/rehearsal.ts';
import type { RehearsalEnd } from '#machines/says.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { type CaseRow, caseColumns, caseOf, insertNewCase, type LockedCase } from './cases.ts';
import { toListeners } from './joined.ts';
import type { Family } from './line.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import { chain, digest, type Link } from './record.ts';
import { tellResult } from './rehearsalResult.ts';
import type { Turn } from './turn.ts';
import { writeMessages } from './write.ts';

/** The timer of its silence; each text of the family starts it again. */
export const rehearsalTimer = { machine: 'conversation', id: 'rehearsal', event: 'rehearsal' } as const;

const startTimer = statement(
  'rehearsal.timer',
  `INSERT INTO timer (case_id, machine, id, started_by, what, event, started_ms, due_ms, cause)
   SELECT id, $2, $3, last_number, 'silence', $4, $5, $6, $7 FROM "case" WHERE id = $1
   ON CONFLICT (case_id, machine, id) DO UPDATE SET started_by = excluded.started_by, started_ms = excluded.started_ms,
     due_ms = excluded.due_ms, cause = excluded.cause`,
);
const addEvent = statement(
  'rehearsal.event',
  `WITH happened AS (INSERT INTO event (case_id, number, at_ms, type, body, hash) VALUES ($1, $2, $3, $4, $5, $6))
   UPDATE "case" SET last_number = $2, last_hash = $6 WHERE id = $1`,
);
const close = statement(
  'rehearsal.close',
  'WITH stopped AS (DELETE FROM timer WHERE case_id = $1) UPDATE "case" SET closed_ms = $2 WHERE id = $1',
);
const lockOfFamily = statement(
  'rehearsal.family',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.closed_ms IS NULL AND c.rehearsal AND c.phone_id <> $1 AND c.phone_id IN (
     SELECT f.id FROM (SELECT COALESCE((SELECT family_id FROM family_phone WHERE phone_id = $1), $1::bigint) AS id) f
     UNION ALL SELECT phone_id FROM family_phone
       WHERE family_id = COALESCE((SELECT family_id FROM family_phone WHERE phone_id = $1), $1::bigint))
   ORDER BY c.id FOR UPDATE OF c`,
);

/** Who asks a family to practise: her phone, and her first name for the family. */
export interface AskedBy {
  readonly phoneId: number;
  readonly name: string;
}

/** Opens one for a locked phone without a case; `by` null where the family asked. Its next text is the first one played. */
export async function beginRehearsal(
  parts: Parts,
  turn: Turn,
  phone: Pick<Phone, 'id' | 'number' | 'optedOut' | 'language'>,
  file: Family | null,
  by: AskedBy | null,
): Promise<void> {
  const snapshots = parts.machines.openCase(parts.protocol, file, turn.nowMs);
  const theCase = await insertNewCase(parts, turn, phone, { file, snapshots, rehearsal: { by: by?.phoneId ?? null } });
  const saying = { key: 'rehearsalBegan', params: { nurse: by?.name ?? null }, preface: [] } as const;
  const messages = familyMessages(parts, turn, theCase, saying);
  await writeEvent(parts, turn, theCase, 'rehearsal.began', {
    event: { type: 'rehearsal.began', at: turn.nowMs, ...(by !== null && { nurse: by.name }) },
    ...(turn.heard !== undefined && by === null && { heard: digest(turn.heard) }),
    said: messages.map(({ body }) => digest(body)),
    snapshots: digest(JSON.stringify(snapshots)),
  });
  await writeMessages(parts.seal, turn, theCase.id, messages);
  await restartSilence(turn, theCase);
}

/** Counts the silence from now on. */
export async function restartSilence(turn: Turn, { id }: LockedCase): Promise<void> {
  const dueMs = turn.nowMs + rehearsalQuietMs;
  const { machine, id: name, event } = rehearsalTimer;
  await turn.client.query(startTimer, [id, machine, name, event, turn.nowMs, dueMs, turn.cause]);
  turn.dueMs.push(dueMs);
}

/**
 * Ends a locked rehearsal as it stands. The family hears so, but for a STOP and a text that may be real; its result goes to a nurse,
 * after a text that may be real only once that is answered.
 */
export async function endRehearsal(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  how: RehearsalEnd | 'stopped' | 'real',
): Promise<void> {
  const tells = how !== 'stopped' && how !== 'real' && !theCase.optedOut;
  const messages = tells
    ? familyMessages(parts, turn, theCase, { key: 'rehearsalOver', params: { how }, preface: [] })
    : [];
  await writeEvent(parts, turn, theCase, 'rehearsal.ended', {
    event: { type: 'rehearsal.ended', at: turn.nowMs, outcome: how },
    effects: [{ type: 'closeCase' }],
    said: messages.map(({ body }) => digest(body)),
  });
  await writeMessages(parts.seal, turn, theCase.id, messages);
  await turn.client.query(close, [theCase.id, turn.nowMs]);
  if (how !== 'real') await tellResult(parts, turn, theCase, how);
}

/** Ends a locked rehearsal of a family that rings, as what it then wants is real; paused, as any text then does. */
export async function leaveRehearsal(parts: Parts, turn: Turn, theCase: LockedCase): Promise<void> {
  await endRehearsal(parts, turn, theCase, turn.paused ? 'paused' : 'real');
  if (!turn.paused) await tellResult(parts, turn, theCase, 'real');
}

/** A family with a real case practises no more, on whichever of its phones it did. */
export async function endFamilyRehearsals(parts: Parts, turn: Turn, phone: Pick<Phone, 'id'>): Promise<void> {
  for (const theCase of await lockFamilyRehearsals(turn.client, parts, phone.id))
    await endRehearsal(parts, turn, theCase, 'elsewhere');
}

async function lockFamilyRehearsals(client: Queryable, { seal }: Parts, phoneId: number): Promise<LockedCase[]> {
  return (await client.query<CaseRow>(lockOfFamily, [phoneId])).map((row) => caseOf(seal, row));
}

function familyMessages(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  say: Parameters<Parts['word']>[0],
): ReturnType<typeof toListeners> {
  return toListeners(parts, turn, parts.protocol.site, theCase, [theCase], { say, kind: 'text', urgent: false });
}

async function writeEvent(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  type: string,
  happened: object,
): Promise<void> {
  const link: Link = chain(theCase, { at: turn.nowMs, ...happened });
  const body = parts.seal.seal(link.body);
  await turn.client.query(addEvent, [theCase.id, link.number, turn.nowMs, type, body, link.hash]);
}
