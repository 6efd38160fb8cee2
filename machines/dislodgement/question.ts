/** A question: asked, nudged once in silence, then handed to a nurse; an answer is noted and the case decides anew. */
import { and } from 'xstate';
import type { Clarifying } from '../case.ts';
import type { PageReason, QuestionKey } from '../facts.ts';
import type { SayKey, Says } from '../says.ts';
import { kit } from './kit.ts';

interface Asked {
  /** Hands are busy: the silence before the nudge is longer. */
  readonly busy?: boolean;
  readonly clarifying?: Exclude<Clarifying, null>;
}

/** What is said on entry, in order; the last one asks. */
export type Asks = NonNullable<Parameters<typeof kit.createStateConfig>[0]['entry']>;

const deciding = '#dislodgement.deciding';

type PlainKey = { [K in SayKey]: Record<never, never> extends Says[K] ? K : never }[SayKey];

/** Says a message that has no parameters. */
export function tell<K extends PlainKey>(key: K) {
  return { type: 'tell' as const, params: { key, params: {} } };
}

/** Why a nurse is called about an answer, where it is more than unreadable. */
const unreadReasons: Partial<Record<QuestionKey, PageReason>> = {
  unwell: 'unwell-unread',
  'which-child': 'which-child',
  who: 'same-child',
};

/** Unreadable once: said so and asked again. Twice: a nurse is called about it, and the line goes on. */
export function unread(key: QuestionKey) {
  const reason = unreadReasons[key] ?? 'unread';
  return [
    {
      guard: { type: 'firstUnclear' as const, params: { key } },
      target: deciding,
      actions: ['noteTold' as const, 'pageIfWanted' as const, { type: 'notUnderstood' as const, params: { key } }],
    },
    {
      target: deciding,
      actions: [
        'noteTold' as const,
        'pageIfWanted' as const,
        { type: 'page' as const, params: { reason } },
        { type: 'giveUp' as const, params: { key } },
      ],
    },
  ] as const;
}

/** An answer, unless its value is none after all. */
export function answered(key: QuestionKey) {
  const [once, twice] = unread(key);
  return [
    { ...once, guard: and(['noAnswer', once.guard]) },
    { ...twice, guard: 'noAnswer' as const },
    { target: deciding, actions: ['note' as const, 'pageIfWanted' as const] },
  ] as const;
}

/** Facts that were known already are no answer either. */
export function toldNothing(key: QuestionKey) {
  const [once, twice] = unread(key);
  return [
    { ...once, guard: and(['tellsNothing', once.guard]) },
    { ...twice, guard: 'tellsNothing' as const },
    { target: deciding, actions: ['noteTold' as const, 'pageIfWanted' as const] },
  ] as const;
}

/** Silence after the question: one nudge, then a nurse. Nobody to take that page means going in. */
export function silence(key: QuestionKey, quiet: 'quiet' | 'busyQuiet') {
  return {
    open: kit.createStateConfig({ after: { [quiet]: 'nudged' } }),
    nudged: kit.createStateConfig({
      entry: { type: 'tell', params: { key: 'nudge', params: { asking: key } } },
      after: { [quiet]: 'silent' },
    }),
    silent,
    reviewed,
  };
}

const nobodyAnswered = {
  target: '#dislodgement.close',
  actions: [
    'noteUnanswered' as const,
    { type: 'settle' as const, params: { to: 'go-in', reason: 'nobody-answered' } as const },
  ],
};

const pageForSilence = { type: 'page' as const, params: { reason: 'silence' as const } };

/** What a nurse took and nobody closed comes back to her, each time as long after. */
export const reviewed = kit.createStateConfig({
  tags: 'waitsForNurse',
  after: { holdReview: { actions: pageForSilence, target: 'reviewed', reenter: true } },
});

export const silent = kit.createStateConfig({
  ...reviewed,
  entry: pageForSilence,
  // Pages that nobody took before will hardly be taken now.
  always: { guard: 'unanswered', ...nobodyAnswered },
  on: { 'page.unanswered': nobodyAnswered },
});

/** A question of the conversation, as a state. */
export function question(key: QuestionKey, entry: Asks, { busy = false, clarifying }: Asked = {}) {
  return kit.createStateConfig({
    meta: { asking: key, ...(clarifying && { clarifying }) },
    entry,
    on: {
      [`answer.${key}`]: answered(key),
      unclear: unread(key),
      // Whoever has busy hands and says "ok" has read the steps: it is no answer, and no failed one.
      smallTalk: busy ? { target: deciding, actions: ['noteTold' as const, 'pageIfWanted' as const] } : unread(key),
      told: toldNothing(key),
    },
    initial: 'open',
    states: silence(key, busy ? 'busyQuiet' : 'quiet'),
  });
}
