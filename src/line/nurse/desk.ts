/** A nurse's desk for one text: her open cases, how a case is named, looked at, stepped and answered. */
import type { CaseStep, CaseView } from '#machines/case.ts';
import type { NurseEvent, Unstamped } from '#machines/events.ts';
import type { Place } from '#machines/paging/kit.ts';
import type { NurseSay } from '#src/wording/nurseSays.ts';
import { caseCode, type LockedCase, lockPagedCases, rememberRelay } from '../cases.ts';
import type { Parts } from '../parts.ts';
import type { Phone } from '../phones.ts';
import { caseName, type PlannedMessage } from '../plan.ts';
import { protocolOf } from '../protocols.ts';
import { lastTaker, onCallNow } from '../reach.ts';
import { type Turn, takeStep } from '../turn.ts';
import { writeMessages } from '../write.ts';

export interface Desk {
  readonly parts: Parts;
  readonly turn: Turn;
  readonly phone: Phone;
  /** First name, for the caregiver. */
  readonly name: string;
  /** The open cases she was called for, locked. */
  readonly cases: readonly LockedCase[];
}

/** A case and what its machines know. */
export interface Looked {
  readonly theCase: LockedCase;
  readonly view: CaseView;
}

/** The one case she means: the one she named, or her only one; else what to answer. */
export function meant(desk: Desk, named: LockedCase | null, word: string): LockedCase | NurseSay {
  const [only] = desk.cases;
  if (named !== null) return named;
  if (only === undefined) return { key: 'noCase', params: {} };
  return desk.cases.length === 1 ? only : { key: 'which', params: { word, cases: desk.cases.map(caseName) } };
}

export function isSay(value: LockedCase | NurseSay): value is NurseSay {
  return 'key' in value;
}

/** The cases the machines run; a parked one has no view. */
export async function look(desk: Desk, cases: readonly LockedCase[]): Promise<readonly Looked[]> {
  const looked: Looked[] = [];
  for (const theCase of cases) {
    if (theCase.snapshots === null || theCase.parked) continue;
    const protocol = await protocolOf(desk.turn.client, theCase.protocolId);
    looked.push({ theCase, view: desk.parts.machines.viewCase(protocol, theCase.snapshots) });
  }
  return looked;
}

/** Gives a nurse's event to the conversation of a case. */
export async function nurseStep(desk: Desk, theCase: LockedCase, event: Unstamped<NurseEvent>): Promise<CaseStep> {
  return takeStep(
    desk.parts,
    desk.turn,
    theCase,
    (stamp) => ({ machine: 'conversation', event: { ...event, ...stamp } }),
    { answering: false },
  );
}

/** Her place on call now; null where the rota has none for her. */
export async function placeOf({ parts, turn, phone }: Desk): Promise<Place | null> {
  const people = await onCallNow(parts, turn.client, turn.nowMs);
  const place = people.findIndex((nurse) => nurse?.number === phone.number);
  return place === 0 || place === 1 || place === 2 ? place : null;
}

/** What she does with the family beside the machines: until she lets the case lie again, nobody reminds her of it. */
export async function touch({ parts, turn }: Desk, theCase: LockedCase): Promise<void> {
  if (theCase.parked || theCase.snapshots === null) return;
  await takeStep(parts, turn, theCase, (stamp) => ({ machine: 'paging', event: { type: 'touch', ...stamp } }), {
    answering: false,
  });
}

/** `over`: from whoever has it. Whoever had it last hears who has it now, and the family's words no longer go there. */
export async function takeOne(desk: Desk, theCase: LockedCase, over = false): Promise<void> {
  const { parts, turn, phone, name } = desk;
  const place = await placeOf(desk);
  const before = await lastTaker(turn.client, parts.seal, theCase.id);
  const event = { type: 'take', nurse: name, ...(place !== null && { from: place }), ...(over && { over }) } as const;
  await takeStep(parts, turn, theCase, (stamp) => ({ machine: 'paging', event: { ...event, ...stamp } }), {
    answering: false,
    takerPhoneId: phone.id,
  });
  if (before === null || before.phoneId === phone.id) return;
  await rememberRelay(turn.client, theCase.id, null);
  await tellPhone(desk, before.phoneId, { key: 'takenOn', params: { ...caseName(theCase), nurse: name } });
}

/** Whoever acts on a case that nobody has, has answered its page: nobody else is called, and the family hears who has it. */
export async function takenByHer(desk: Desk, { theCase, view }: Looked): Promise<LockedCase> {
  if (view.takenBy !== null) return theCase;
  await takeOne(desk, theCase);
  return again(desk, theCase);
}

/** A page that goes to others by now, taken by one who was called for it before: it counts as a page to her. */
export async function takeFromClimb(desk: Desk, theCase: LockedCase, place: Place): Promise<void> {
  const { parts, turn } = desk;
  await takeStep(parts, turn, theCase, (stamp) => ({ machine: 'paging', event: { type: 'rung', place, ...stamp } }), {
    answering: false,
  });
  await takeOne(desk, await again(desk, theCase));
}

/** What decides about the family's steps: she has the case from then on, unless another nurse has it. */
export async function actOn(desk: Desk, found: Looked, event: Unstamped<NurseEvent>): Promise<CaseStep> {
  const hers = (await otherTaker(desk, found)) === null;
  return nurseStep(desk, await takenByHer(desk, found), { ...event, ...(hers && { byTaker: true }) });
}

/** What she has now, and what of it she could clear: taking it changes nothing of that. */
export async function hasNow(desk: Desk, cases: readonly LockedCase[]): Promise<NurseSay> {
  const looked = desk.turn.paused ? [] : await look(desk, cases);
  const clear = looked.filter(({ view }) => view.clearable).map(({ theCase }) => caseName(theCase));
  const optedOut = cases.filter((theCase) => theCase.optedOut && theCase.joinedIds.length === 0).map(caseName);
  return { key: 'taken', params: { cases: cases.map(caseName), clear, optedOut } };
}

/** The case as the last step left it. */
export async function again({ turn, parts, phone }: Desk, theCase: LockedCase): Promise<LockedCase> {
  const cases = await lockPagedCases(turn.client, parts.seal, phone.id);
  return cases.find(({ id }) => id === theCase.id) ?? theCase;
}

/** Who has the case, where somebody else than she does. */
export async function otherTaker(
  { parts, turn, phone }: Desk,
  { theCase, view }: Looked,
): Promise<{ readonly phoneId: number; readonly nurse: string; readonly sinceMs: number } | null> {
  if (view.takenBy === null) return null;
  const taker = await lastTaker(turn.client, parts.seal, theCase.id);
  if (taker === null || taker.phoneId === phone.id) return null;
  const nurse = parts.nurseOf(taker.number)?.name ?? view.takenBy;
  return { phoneId: taker.phoneId, nurse, sinceMs: taker.takenMs };
}

/** Answers her with one text. */
export async function tell(desk: Desk, say: NurseSay): Promise<true> {
  await tellPhone(desk, desk.phone.id, say);
  return true;
}

/** A text about one case is kept with it, and so is the text of hers that it answers. */
export async function tellPhone(
  { parts, turn, cases }: Pick<Desk, 'parts' | 'turn' | 'cases'>,
  phoneId: number,
  say: NurseSay,
  more: Partial<PlannedMessage> = {},
): Promise<void> {
  const body = parts.wordForNurse(say, { site: parts.protocol.site, nowMs: turn.nowMs });
  const named = codesIn(say);
  const [about, other] = cases.filter(({ id }) => named.includes(caseCode(id)));
  const caseId = other === undefined ? (about?.id ?? null) : null;
  await writeMessages(parts.seal, turn, caseId, [{ phoneId, kind: 'text', body, urgent: false, ...more }]);
}

/** The codes of the cases a text names. */
function codesIn({ params }: NurseSay): readonly string[] {
  if ('code' in params) return [params.code];
  // `callWords` and the handover only count theirs.
  return 'cases' in params && typeof params.cases !== 'number' ? params.cases.map(({ code }) => code) : [];
}
