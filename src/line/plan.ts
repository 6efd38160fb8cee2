/** A step's effects as rows to write: messages in words, pages, timers. Decides nothing; touches no database. */
import type { CaseStep, CaseView } from '#machines/case.ts';
import type { Effect, MachineName } from '#machines/effects.ts';
import type { PageLevel } from '#machines/facts.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { today, tractVerdict } from '#machines/rules/tractAge.ts';
import type { SayKey } from '#machines/says.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import { MissingRow } from '#src/errors.ts';
import { childName } from '#src/families/children.ts';
import type { NursePage, NurseSay } from '#src/wording/nurseSays.ts';
import { caseCode, type LockedCase } from './cases.ts';
import { type Listener, toListeners } from './joined.ts';
import { languageOf } from './language.ts';
import type { Parts } from './parts.ts';
import type { Place, Reach } from './reach.ts';
import type { StepOptions, TimerName, Turn } from './turn.ts';

export interface PlannedMessage {
  readonly phoneId: number;
  readonly kind: MessageKind;
  readonly body: string;
  readonly urgent: boolean;
  /** A call that puts whoever answers it through to this number, E.164. */
  readonly bridgeTo?: string;
}

export interface PlannedPage {
  readonly phoneId: number;
  readonly level: PageLevel;
}

type Start = Extract<Effect, { type: 'startTimer' }>;
/** The last word on one timer of the case: running, or gone. */
export type PlannedTimer = Start | { readonly type: 'cancelTimer'; readonly machine: MachineName; readonly id: string };

export interface Plan {
  readonly messages: readonly PlannedMessage[];
  readonly pages: readonly PlannedPage[];
  readonly timers: readonly PlannedTimer[];
  readonly closes: boolean;
}

export interface PlanScene extends StepOptions {
  /** Whose text it is opts out with it: nothing but that is said to it, and it is said to nobody else. */
  readonly leaves: boolean;
  readonly parts: Parts;
  readonly turn: Turn;
  readonly theCase: LockedCase;
  readonly protocol: Protocol;
  readonly reached: Reach;
  /** The family's last words, where a nurse is told of the case. */
  readonly words: string | null;
  /** Every phone of the case. */
  readonly listeners: readonly Listener[];
}

/** What is no advice of the line's, or sends in: all that a paused line still says by itself. */
const saidWhilePaused: ReadonlySet<SayKey> = new Set([
  'emergency',
  'emergencyStill',
  'goIn',
  'goInCard',
  'goInStill',
  'closedByNurse',
]);

/** Says that must not wait behind a message whose fate is unknown. */
const urgentSays: ReadonlySet<SayKey> = new Set(['emergency', 'emergencyStill']);

export function planStep(scene: PlanScene, step: CaseStep): Plan {
  const said = scene.turn.paused ? withoutAdvice(step.effects) : step.effects;
  return {
    messages: said.flatMap((effect) => messagesOf(scene, step.view, effect)),
    pages: step.effects.flatMap((effect) =>
      effect.type === 'callNurse' ? [{ phoneId: at(scene.reached, effect.place).phoneId, level: effect.level }] : [],
    ),
    timers: lastWord(step.effects, scene.fired),
    closes: step.effects.some((effect) => effect.type === 'closeCase'),
  };
}

/** Paused, one text stands for all advice of a step. */
function withoutAdvice(effects: readonly Effect[]): readonly Effect[] {
  const isAdvice = (effect: Effect) => effect.type === 'say' && !saidWhilePaused.has(effect.say.key);
  const first = effects.find(isAdvice);
  return effects.flatMap((effect): Effect[] => {
    if (!isAdvice(effect)) return [effect];
    return effect === first ? [{ type: 'say', say: { key: 'paused', params: {}, preface: [] }, by: 'text' }] : [];
  });
}

function messagesOf(scene: PlanScene, view: CaseView, effect: Effect): PlannedMessage[] {
  switch (effect.type) {
    case 'say':
      return sayMessage(scene, effect);
    case 'callNurse':
      return pageMessages(scene, view, effect);
    case 'tellNurse':
      return takerMessage(scene, newsOf(scene, view, effect), effect.level === 'emergency');
    case 'tellStands':
      return takerMessage(scene, standsOf(scene, view, effect), effect.disposition === 'emergency');
    case 'startTimer':
    case 'cancelTimer':
    case 'closeCase':
      return [];
  }
}

function sayMessage(scene: PlanScene, effect: Extract<Effect, { type: 'say' }>): PlannedMessage[] {
  const { parts, turn, theCase, protocol, listeners, onlyTo, answering, leaves, speakerId = theCase.phoneId } = scene;
  const toSpeaker = !leaves || effect.say.key === 'stopped';
  const hear = listeners.filter(
    ({ phoneId, optedOut }) =>
      (onlyTo === undefined || phoneId === onlyTo) &&
      (phoneId === speakerId ? toSpeaker && (!optedOut || answering) : !optedOut && effect.say.key !== 'stopped'),
  );
  const saying = { say: effect.say, kind: effect.by, urgent: urgentSays.has(effect.say.key) };
  return toListeners(parts, turn, protocol.site, theCase, hear, saying);
}

function pageMessages(
  scene: PlanScene,
  view: CaseView,
  effect: Extract<Effect, { type: 'callNurse' }>,
): PlannedMessage[] {
  const reached = at(scene.reached, effect.place);
  const params = nursePage(scene, view, effect, reached);
  const urgent = effect.level === 'emergency';
  return effect.by.map((kind) => ({
    phoneId: reached.phoneId,
    kind,
    body: nurseWords(scene, kind === 'text' ? { key: 'page', params } : { key: 'pageCall', params }),
    urgent,
  }));
}

function newsOf(
  { theCase, words }: PlanScene,
  { facts, disposition }: CaseView,
  { level, reason }: Extract<Effect, { type: 'tellNurse' }>,
): NurseSay {
  return { key: 'news', params: { ...caseName(theCase), level, reason, ph: facts.ph ?? null, disposition, words } };
}

function standsOf(
  { theCase }: PlanScene,
  { tubeIn }: CaseView,
  { disposition }: Extract<Effect, { type: 'tellStands' }>,
): NurseSay {
  return { key: 'stands', params: { ...caseName(theCase), disposition, tubeIn } };
}

/** To whoever has the case. */
function takerMessage(scene: PlanScene, say: NurseSay, urgent: boolean): PlannedMessage[] {
  const { taker } = scene.reached;
  if (taker === null) throw new MissingRow('taker');
  return [{ phoneId: taker.phoneId, kind: 'text', body: nurseWords(scene, say), urgent }];
}

function nursePage(
  scene: PlanScene,
  view: CaseView,
  effect: Extract<Effect, { type: 'callNurse' }>,
  reached: Place,
): NursePage {
  const { tubeKind, halfOutOf, firstPlaced, ph, cameOutAt, insertedHow } = view.facts;
  const { site, clinical } = scene.protocol;
  const { nowMs } = scene.turn;
  // A tube that is in ends the time without one.
  const outMs = cameOutAt === undefined ? null : (view.placedAtMs ?? nowMs) - Date.parse(cameOutAt);
  return {
    ...caseName(scene.theCase),
    level: effect.level,
    reasons: effect.reasons,
    dangerSigns: view.dangerSigns,
    caregiver: scene.theCase.number,
    language: languageOf(scene.protocol.site, scene.theCase.language, scene.theCase.file),
    // Where it is now is said by what is inside.
    tubeKind: (tubeKind === 'half-out' ? halfOutOf : tubeKind) ?? null,
    tract: firstPlaced === undefined ? null : tractVerdict(firstPlaced, today(nowMs, site.timeZone), clinical),
    firstPlaced: firstPlaced ?? null,
    inside: view.inside,
    ph: ph ?? null,
    minutesOut: outMs === null ? null : Math.max(0, Math.floor(outMs / 60_000)),
    disposition: view.disposition,
    cannotWait: view.cannotWait,
    warningSigns: view.warningSigns,
    words: scene.words,
    hard: insertedHow === 'hard',
    cleared: view.cleared,
    optedOut: scene.leaves || hearsNothing(scene.listeners),
    again: reached.called,
    gap: reached.gap,
    clearable: view.clearable,
  };
}

/** Whether every phone of the case has opted out. */
export function hearsNothing(listeners: readonly Pick<Listener, 'optedOut'>[]): boolean {
  return listeners.every(({ optedOut }) => optedOut);
}

/** How a text to a nurse names a case. */
export function caseName(theCase: LockedCase): { readonly child: string | null; readonly code: string } {
  return { child: childName(theCase.file), code: caseCode(theCase.id) };
}

function nurseWords(scene: PlanScene, say: NurseSay): string {
  return scene.parts.wordForNurse(say, { site: scene.protocol.site, nowMs: scene.turn.nowMs });
}

/** Effects are applied in order, so of several on one timer the last one stands; the one that fired is gone unless started again. */
function lastWord(effects: readonly Effect[], fired: TimerName | undefined): readonly PlannedTimer[] {
  const timers = new Map<string, PlannedTimer>();
  const note = (timer: PlannedTimer) => timers.set(`${timer.machine} ${timer.id}`, timer);
  if (fired !== undefined) note({ type: 'cancelTimer', ...fired });
  for (const effect of effects) if (effect.type === 'startTimer' || effect.type === 'cancelTimer') note(effect);
  return [...timers.values()];
}

function at(reached: Reach, place: number): Place {
  const person = reached.places.get(place);
  if (person === undefined) throw new MissingRow('phone on call');
  return person;
}
