/** Her words that wait for a yes: clear, send in, correct a fact, close. Each is asked back in one line before it counts. */
import { leftAs } from '#machines/dislodgement/outcomes.ts';
import type { NurseFacts } from '#machines/events.ts';
import type { NurseSay } from '#src/wording/nurseSays.ts';
import type { LockedCase } from '../cases.ts';
import { type Pending, rememberPending } from '../phones.ts';
import { caseName } from '../plan.ts';
import { closeParked } from '../safeMessage.ts';
import { actOn, again, type Desk, isSay, type Looked, look, meant, nurseStep, otherTaker, tellPhone } from './desk.ts';
import { factIn, factShape } from './fact.ts';
import { noAdvice, settlePausing } from './pausing.ts';
import { takeOver } from './takeOver.ts';
import { sendAnyway } from './talk.ts';

/** How long a word waits for its yes; common practice, no source. */
const pendingMs = 15 * 60_000;

/** `theCase` null: a word about the line itself. */
export async function remember(
  desk: Desk,
  word: Pending['word'],
  theCase: LockedCase | null,
  detail = '',
): Promise<void> {
  const { parts, turn, phone } = desk;
  const sealed = detail === '' ? '' : parts.seal.seal(detail).toString('base64');
  const untilMs = turn.nowMs + pendingMs;
  await rememberPending(turn.client, phone, { word, caseId: theCase?.id ?? null, untilMs, detail: sealed });
}

export async function askToClear(desk: Desk, named: LockedCase | null): Promise<NurseSay> {
  if (desk.turn.paused) return noAdvice(desk);
  const found = await look(desk, named === null ? desk.cases : [named]);
  const clearable = found.filter(({ view }) => view.clearable);
  const [only] = clearable;
  if (only === undefined) {
    const held = found
      .filter(({ theCase, view }) => theCase === named || view.disposition === 'hold')
      .map(({ theCase }) => caseName(theCase));
    return { key: 'clearNotNow', params: { why: held.length > 0 ? 'not-hard' : 'nothing-held', cases: held } };
  }
  if (clearable.length > 1) {
    return { key: 'clearNotNow', params: { why: 'several', cases: clearable.map(({ theCase }) => caseName(theCase)) } };
  }
  return askOnce(desk, only);
}

async function askOnce(desk: Desk, found: Looked): Promise<NurseSay> {
  await remember(desk, 'clear', found.theCase, shown(found));
  const { tubeKind, ph } = found.view.facts;
  return { key: 'clearConfirm', params: { ...caseName(found.theCase), tubeKind: tubeKind ?? null, ph: ph ?? null } };
}

/** What her yes is given to: another kind or reading since needs another yes. */
const shown = ({ view }: Looked) => JSON.stringify([view.facts.tubeKind, view.facts.ph]);

export async function askToSendIn(desk: Desk, named: LockedCase | null): Promise<NurseSay> {
  const theCase = meant(desk, named, 'GO IN');
  if (isSay(theCase)) return theCase;
  const [found] = await look(desk, [theCase]);
  // Nothing new for the family, and hers from now on: there is nothing to ask back.
  if (found !== undefined && isSentIn(found)) return sendIn(desk, theCase);
  await remember(desk, 'send-in', theCase);
  return { key: 'sendInConfirm', params: caseName(theCase) };
}

const isSentIn = ({ view: { disposition } }: Looked) => disposition === 'go-in' || disposition === 'emergency';

export async function askToCorrect(desk: Desk, named: LockedCase | null, words: string): Promise<NurseSay> {
  if (desk.turn.paused) return noAdvice(desk);
  const theCase = meant(desk, named, 'FACT');
  if (isSay(theCase)) return theCase;
  const fact = factIn(desk.parts, desk.turn, words);
  if (fact === null) return { key: 'factNot', params: {} };
  await remember(desk, 'fact', theCase, JSON.stringify(fact));
  return { key: 'factConfirm', params: { ...caseName(theCase), fact } };
}

export async function askToClose(desk: Desk, named: LockedCase | null, outcome: string): Promise<NurseSay> {
  const theCase = meant(desk, named, 'CLOSE');
  if (isSay(theCase)) return theCase.key === 'noCase' ? { key: 'nothingPending', params: {} } : theCase;
  await remember(desk, 'close', theCase, outcome);
  const [found] = await look(desk, [theCase]);
  const followUp =
    found?.view.states.aftercare.some((id) => id.startsWith('aftercare.') && id !== 'aftercare.idle') ?? false;
  const left = leftAs({ disposition: found?.view.disposition ?? null });
  return { key: 'closeConfirm', params: { ...caseName(theCase), followUp, left } };
}

export async function settlePending(desk: Desk, pending: Pending, word: 'yes' | 'no'): Promise<NurseSay> {
  const { turn, phone, parts } = desk;
  await rememberPending(turn.client, phone, null);
  if (pending.caseId === null) return settlePausing(desk, pending, word);
  const theCase = desk.cases.find(({ id }) => id === pending.caseId);
  if (theCase === undefined) return { key: 'nothingPending', params: {} };
  if (word === 'no' || pending.untilMs < turn.nowMs)
    return { key: 'dropped', params: { ...caseName(theCase), why: word === 'yes' ? 'late' : 'no' } };
  const detail = pending.detail === '' ? '' : parts.seal.open(Buffer.from(pending.detail, 'base64'));
  switch (pending.word) {
    case 'clear':
      return clear(desk, theCase, detail);
    case 'close':
      return close(desk, theCase, detail);
    case 'send-in':
      return sendIn(desk, theCase);
    case 'take-over':
      return takeOver(desk, theCase);
    case 'fact':
      return correct(desk, theCase, factShape.parse(JSON.parse(detail)));
    case 'tell':
      return sendAnyway(desk, theCase, detail);
    default:
      return { key: 'nothingPending', params: {} };
  }
}

async function clear(desk: Desk, theCase: LockedCase, seen: string): Promise<NurseSay> {
  if (desk.turn.paused) return noAdvice(desk);
  const [found] = await look(desk, [theCase]);
  if (!found?.view.clearable) return { key: 'clearNotNow', params: { why: 'not-hard', cases: [caseName(theCase)] } };
  if (shown(found) !== seen) return askOnce(desk, found);
  const other = await otherTaker(desk, found);
  await actOn(desk, found, { type: 'nurse.clear' });
  if (other !== null)
    await tellPhone(desk, other.phoneId, { key: 'clearedByOther', params: { ...caseName(theCase), nurse: desk.name } });
  return { key: 'cleared', params: caseName(theCase) };
}

async function sendIn(desk: Desk, theCase: LockedCase): Promise<NurseSay> {
  const [found] = await look(desk, [theCase]);
  if (found === undefined) return { key: 'noCase', params: {} };
  const { disposition } = found.view;
  await actOn(desk, found, { type: 'nurse.goIn' });
  if (disposition === 'emergency' || disposition === 'go-in')
    return { key: 'sentInAlready', params: { ...caseName(theCase), disposition } };
  return { key: 'sentIn', params: caseName(theCase) };
}

/** A fact that would allow more than was known is asked of the family; so it stands nowhere yet. */
async function correct(desk: Desk, theCase: LockedCase, fact: NurseFacts): Promise<NurseSay> {
  if (desk.turn.paused) return noAdvice(desk);
  const [found] = await look(desk, [theCase]);
  if (found === undefined) return { key: 'noCase', params: {} };
  const { raised, view } = await actOn(desk, found, { type: 'nurse.corrects', told: fact, corrects: true });
  const { facts, disposition, takenBy } = view;
  const asked =
    (fact.tubeKind !== undefined && facts.tubeKind !== fact.tubeKind) ||
    (fact.firstPlaced !== undefined && JSON.stringify(facts.firstPlaced) !== JSON.stringify(fact.firstPlaced));
  const told = disposition === found.view.disposition ? null : disposition;
  return { key: 'factTaken', params: { ...caseName(theCase), fact, asked, told, raised, paged: takenBy === null } };
}

async function close(desk: Desk, theCase: LockedCase, outcome: string): Promise<NurseSay> {
  if (theCase.parked) await closeParked(desk.turn, theCase.id);
  else await nurseStep(desk, theCase, { type: 'nurse.close', ...(outcome !== '' && { outcome }) });
  return { key: 'closed', params: caseName(theCase) };
}

/** The record and the case are kept for whoever reviews the line. */
export async function report(desk: Desk, named: LockedCase | null, what: string): Promise<NurseSay> {
  const theCase = meant(desk, named, 'WRONG');
  if (isSay(theCase)) return theCase;
  const fresh = await again(desk, theCase);
  if (!fresh.parked && fresh.snapshots !== null) await nurseStep(desk, fresh, { type: 'nurse.reports', what });
  await desk.turn.client.query('UPDATE "case" SET reported_ms = COALESCE(reported_ms, $2) WHERE id = $1', [
    theCase.id,
    desk.turn.nowMs,
  ]);
  return { key: 'reported', params: caseName(theCase) };
}
