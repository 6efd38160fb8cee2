/** A tube in use: how the first feed went, how the child is later, whether the clinic knows, and the stay limit. */
import { and } from 'xstate';
import { type AftercareContext, type AftercareEvent, kit, type Question } from './kit.ts';
import { askAgain, giveUpInUse, say, takesBack, tubeInUse, waiting } from './question.ts';
import { daysLeft } from './stayLimit.ts';

/** A child who is not well ends everything that was to follow: the conversation takes over. */
const notWell = {
  guard: 'saysNo' as const,
  target: '#aftercare.ended',
  actions: { type: 'notWell' as const, params: {} },
};

const asks = (key: Question) => ({
  guard: { type: 'nextAsks' as const, params: { key } },
  actions: 'askNext' as const,
});

/** On to the next question when it comes, whether or not the open one was answered; after the last one nothing is left. */
const onward = {
  untilNextQuestion: [
    { ...asks('first-feed'), target: '#aftercare.inUse.questions.firstFeed' },
    { ...asks('next-day'), target: '#aftercare.inUse.questions.nextDay', reenter: true },
    { ...asks('clinic'), target: '#aftercare.inUse.questions.clinic', reenter: true },
    { guard: 'isOwn' as const, target: '#aftercare.closed' },
    { target: '#aftercare.inUse.questions.done' },
  ],
};

const pageForSilence = { type: 'page' as const, params: { reason: 'aftercare-silence' as const } };
const pageForClinic = { type: 'page' as const, params: { reason: 'clinic-not-called' as const } };

const firstFeed = kit.createStateConfig({
  meta: { asking: 'first-feed' },
  entry: ['resetUnclear', say('askFirstFeed')],
  initial: 'asked',
  states: { ...waiting('first-feed'), silent: { entry: pageForSilence } },
  after: onward,
  on: {
    'answer.first-feed': [
      notWell,
      // Fed in the morning: the next question comes then, and nobody is called at night.
      { guard: 'saysLater', target: 'between', actions: ['settle', say('firstFeedLater')] },
      { target: 'between', actions: ['settle', say('firstFeedWell')] },
    ],
    unclear: [
      { guard: 'isUnclearAgain', target: 'between', actions: ['settle', ...giveUpInUse] },
      askAgain('askFirstFeed'),
    ],
  },
});

const nextDay = kit.createStateConfig({
  meta: { asking: 'next-day' },
  entry: ['resetUnclear', say('askNextDay')],
  initial: 'asked',
  states: { ...waiting('next-day'), silent: { entry: pageForSilence } },
  after: onward,
  on: {
    'answer.next-day': [notWell, { target: 'between', actions: ['settle', say('nextDayWell')] }],
    unclear: [
      { guard: 'isUnclearAgain', target: 'between', actions: ['settle', ...giveUpInUse] },
      askAgain('askNextDay'),
    ],
  },
});

/** Asked by the next working day and on day 3; a clinic that does not know then is the nurse's business. */
const clinic = kit.createStateConfig({
  meta: { asking: 'clinic' },
  entry: ['resetUnclear', say('askClinic')],
  initial: 'asked',
  states: {
    ...waiting('clinic'),
    silent: { always: { guard: 'isLastClinic', target: 'nobodyKnows' } },
    nobodyKnows: { entry: pageForClinic },
  },
  after: onward,
  on: {
    'answer.clinic': [
      {
        guard: and(['saysNo', 'isLastClinic']),
        target: 'between',
        actions: ['settle', say('clinicStillNot'), pageForClinic],
      },
      {
        guard: 'saysNo',
        target: 'between',
        actions: [
          'settle',
          {
            type: 'say',
            params: ({ context }) => ({ key: 'clinicNotYet', params: { tube: tubeInUse(context) }, preface: [] }),
          },
        ],
      },
      { target: 'between', actions: ['settleClinic', say('clinicDone')] },
    ],
    unclear: [
      { guard: 'isUnclearAgain', target: 'between', actions: ['settle', ...giveUpInUse] },
      askAgain('askClinic'),
    ],
  },
});

const sayDaysLeft = {
  type: 'say' as const,
  params: ({ context, event }: { readonly context: AftercareContext; readonly event: AftercareEvent }) => ({
    key: 'stayWarning' as const,
    params: { daysLeft: daysLeft(context.beganAtMs, context.clinical, event.at) },
    preface: [],
  }),
};

const stay = kit.createStateConfig({
  initial: 'counted',
  states: {
    /** The child's own tube has no limit. */
    unlimited: {},
    counted: {
      after: {
        untilStayMark: [
          { guard: 'isBeforeLimit', target: 'counted', reenter: true, actions: sayDaysLeft },
          { target: 'over', actions: { type: 'page', params: { reason: 'stay-limit' } } },
        ],
      },
    },
    /** The clinic is paged on the limit; the family hears of it once it is awake. */
    over: { after: { untilQuietHoursEnd: { target: 'told', actions: say('stayOver') } } },
    told: { after: { untilClosing: '#aftercare.closed' } },
  },
});

const askedBefore = (key: Question, target: string) => ({
  guard: and([takesBack(key), { type: 'wasAsked' as const, params: { key } }]),
  target,
  actions: 'askTakenBack' as const,
});

export const inUse = kit.createStateConfig({
  type: 'parallel',
  states: {
    questions: {
      initial: 'between',
      states: {
        /** Nothing is asked. */
        between: { after: onward },
        firstFeed,
        nextDay,
        clinic,
        done: {},
      },
      on: {
        correct: [
          askedBefore('first-feed', '.firstFeed'),
          askedBefore('next-day', '.nextDay'),
          askedBefore('clinic', '.clinic'),
        ],
      },
    },
    stay,
  },
});
