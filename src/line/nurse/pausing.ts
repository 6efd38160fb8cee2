/** A lead stops the line's advice by text, and lets it go on; each is asked back once. */
import { statement } from '#src/store/database.ts';
import type { NurseSay, PauseShown } from '#src/wording/nurseSays.ts';
import { pauseLine, pauseNow, resumeLine } from '../pause.ts';
import type { Pending } from '../phones.ts';
import { remember } from './confirmed.ts';
import type { Desk } from './desk.ts';

const openCases = statement(
  'pause.openCases',
  'SELECT count(*) AS open FROM "case" WHERE closed_ms IS NULL AND NOT rehearsal',
);

export async function askToPause(desk: Desk, why: string): Promise<NurseSay> {
  if (!isLead(desk)) return leadsOnly(desk);
  const now = await shownNow(desk);
  if (now !== null) return { key: 'pausedAlready', params: now };
  await remember(desk, 'pause', null, why);
  const [row] = await desk.turn.client.query<{ open: number }>(openCases);
  return { key: 'pauseConfirm', params: { open: row?.open ?? 0 } };
}

export async function askToResume(desk: Desk): Promise<NurseSay> {
  if (!isLead(desk)) return leadsOnly(desk);
  const now = await shownNow(desk);
  if (now === null) return { key: 'notPaused', params: {} };
  await remember(desk, 'resume', null);
  return { key: 'resumeConfirm', params: now };
}

/** Her answer to either; a no, a late yes or a lead no longer changes nothing. */
export async function settlePausing(desk: Desk, pending: Pending, word: 'yes' | 'no'): Promise<NurseSay> {
  const { parts, turn, phone, name } = desk;
  if (word === 'no' || pending.untilMs < turn.nowMs || !isLead(desk)) return { key: 'nothingPending', params: {} };
  if (pending.word === 'resume') {
    const ended = await resumeLine(turn.client, parts.seal, turn.nowMs, name, phone.id);
    if (ended) parts.log.error({}, 'a lead has resumed the line by text');
    return ended ? { key: 'resumedNow', params: {} } : { key: 'notPaused', params: {} };
  }
  const why = pending.detail === '' ? null : parts.seal.open(Buffer.from(pending.detail, 'base64'));
  const begun = await pauseLine(turn.client, parts.seal, { atMs: turn.nowMs, by: name, why }, phone.id);
  if (begun) parts.log.error({}, 'a lead has paused the line by text: no family gets advice');
  return begun ? { key: 'pausedNow', params: { by: name, atMs: turn.nowMs } } : noAdvice(desk);
}

/** What a word that would advise a family is answered with while the line is paused. */
export async function noAdvice(desk: Desk): Promise<NurseSay> {
  const now = await shownNow(desk);
  return now === null ? { key: 'notPaused', params: {} } : { key: 'pausedNoAdvice', params: now };
}

async function shownNow({ parts, turn }: Desk): Promise<PauseShown | null> {
  const now = await pauseNow(turn.client, parts.seal);
  return now === null ? null : { by: now.by, atMs: now.atMs };
}

function isLead({ parts, phone }: Desk): boolean {
  return parts.nurseOf(phone.number)?.lead === true;
}

function leadsOnly({ parts }: Desk): NurseSay {
  const leads = parts.nurses.filter(({ lead }) => lead === true).map(({ name }) => name);
  return { key: 'pauseLeads', params: { leads } };
}
