/** A question asked later: one nudge after an hour, an unreadable answer asked once more, then a nurse. */
import { assertEvent } from 'xstate';
import type { QuestionKey } from '#machines/facts.ts';
import type { Preface, Say } from '#machines/says.ts';
import { type AftercareContext, type AftercareEvent, kit } from './kit.ts';

type Asks = 'askFirstFeed' | 'askNextDay' | 'askClinic' | 'askArrived' | 'askOutcome';
type Answers =
  | 'firstFeedWell'
  | 'firstFeedLater'
  | 'nextDayWell'
  | 'clinicDone'
  | 'clinicStillNot'
  | 'stayOver'
  | 'arrivedYes'
  | 'arrivedNo'
  | 'outcomeWell'
  | 'outcomeNotWell';

interface Step {
  readonly context: AftercareContext;
  readonly event: AftercareEvent;
}

/** Says something that has no parameters. */
export function say(key: Asks | Answers) {
  return { type: 'say' as const, params: { key, params: {}, preface: [] } satisfies Say };
}

/** The states of an open question. Whoever is silent after the nudge can still answer until the next step. */
export function waiting(asking: QuestionKey) {
  return {
    asked: kit.createStateConfig({ after: { silence: 'nudged' } }),
    nudged: kit.createStateConfig({
      entry: { type: 'say', params: { key: 'nudge', params: { asking }, preface: [] } },
      after: { silence: 'silent' },
    }),
  };
}

/** The same question once more, saying that the answer was not understood. */
export function askAgain(key: Asks) {
  const params = ({ event }: Step): Say => {
    assertEvent(event, 'unclear');
    return { key, params: {}, preface: [{ key: 'notUnderstood', why: event.why }] };
  };
  return { target: '.asked', actions: ['countUnclear' as const, { type: 'say' as const, params }] };
}

/** The answer to this question is taken back without a new one. */
export const takesBack = (key: QuestionKey) => ({ type: 'takesBack' as const, params: { key } });

const goesToNurse: readonly Preface[] = [{ key: 'goesToNurse' }];

export function tubeInUse({ tube }: AftercareContext): 'own' | 'temporary' {
  if (tube === null) throw new Error('a tube in use is the own or the temporary one');
  return tube;
}

/** Gives up on an answer while the tube is in use: a nurse is called, and the family told so. */
export const giveUpInUse = [
  { type: 'page' as const, params: { reason: 'unread-in-use' as const } },
  {
    type: 'say' as const,
    params: ({ context }: Step): Say => ({
      key: 'useStill',
      params: { tube: tubeInUse(context) },
      preface: goesToNurse,
    }),
  },
];

/** The same on the way in. */
export const giveUpOnTheWay = [
  { type: 'page' as const, params: { reason: 'unread' as const } },
  { type: 'say' as const, params: { key: 'goInStill', params: { told: null }, preface: goesToNurse } satisfies Say },
];
