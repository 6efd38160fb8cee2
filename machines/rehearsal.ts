/**
 * Rehearsal: a case played for practice by the same machines. Nobody is called and nothing follows it; what may be real ends it.
 * Its paging and its aftercare never begin.
 */
import type { CaseSnapshots, CaseStep } from './case.ts';
import type { Effect } from './effects.ts';
import type { TextEvent, Unstamped } from './events.ts';
import type { Disposition, PageReason } from './facts.ts';
import type { Preface } from './says.ts';

/** After so long without a text of the family it is over. */
export const rehearsalQuietMs = 20 * 60_000;

/** A step of a rehearsal as it is carried out: what it raised is only noted. `before` is how the case stood. */
export function rehearsed(before: CaseSnapshots, step: CaseStep): CaseStep {
  const snapshots = { ...step.snapshots, paging: before.paging, aftercare: before.aftercare };
  return { ...step, snapshots, effects: step.effects.flatMap(practised) };
}

/** Reasons that a danger, a warning or the wish for a person stands behind: nobody plays them. */
const realReasons: ReadonlySet<PageReason> = new Set([
  'danger-sign',
  'warning-sign',
  'unwell-unread',
  'not-well-after',
  'came-out-again',
  'person-wanted',
]);

/** What a step came to: what it raised, and where the case stands after it. */
export interface CameTo {
  readonly raised: readonly PageReason[];
  readonly disposition: Disposition | null;
}

/** Whether what the family texted in a rehearsal may be real: in doubt it is. `step` is what the case would make of it. */
export function mayBeReal(event: Unstamped<TextEvent>, { raised, disposition }: CameTo): boolean {
  if (event.type === 'signs' || event.type === 'outAgain' || event.person) return true;
  return disposition === 'emergency' || raised.some((reason) => realReasons.has(reason));
}

/**
 * The same text as it opens the real case. A yes to a question about signs is a danger, whatever it was given to; a sign stays the
 * sign it was heard as where it was asked; anything else is heard `afresh`, as a first text.
 */
export function asReal(
  event: Unstamped<TextEvent>,
  { raised }: Pick<CameTo, 'raised'>,
  afresh: Unstamped<TextEvent>,
): Unstamped<TextEvent> {
  const { told, person, corrects } = afresh;
  if (event.type === 'signs')
    return { type: 'signs', sure: event.sure, near: event.near, told, person: event.person, corrects: event.corrects };
  const saidYes = 'value' in event && raised.some((reason) => signReasons.has(reason));
  if (saidYes) return { type: 'answer.unwell', value: 'yes', told, person, corrects };
  return afresh.type === 'signs' || afresh.type === 'person' ? afresh : { type: 'told', told, person, corrects };
}

const signReasons: ReadonlySet<PageReason> = new Set(['danger-sign', 'warning-sign', 'not-well-after']);

function practised(effect: Effect): Effect[] {
  switch (effect.type) {
    case 'say':
      return [{ ...effect, say: practisedSay(effect.say) }];
    case 'startTimer':
    case 'cancelTimer':
      return effect.machine === 'conversation' ? [effect] : [];
    case 'callNurse':
    case 'tellNurse':
    case 'tellStands':
    case 'closeCase':
      return [];
  }
}

/** Nobody is called, so no text says that somebody is. */
function practisedSay(say: Extract<Effect, { type: 'say' }>['say']) {
  const preface = say.preface.filter((one) => !callsNurse.has(one.key));
  return say.key === 'pageBegan' ? ({ key: 'rehearsalPage', params: {}, preface } as const) : { ...say, preface };
}

const callsNurse: ReadonlySet<Preface['key']> = new Set(['goesToNurse', 'nurseCalled']);
