/** Sent to the emergency department: did they arrive, and the next day, what came of it? */
import { kit } from './kit.ts';
import { askAgain, giveUpOnTheWay, say, takesBack, waiting } from './question.ts';

const notArrived = { type: 'page' as const, params: { reason: 'not-arrived' as const } };

/** Who is there says so when asked, or before. */
const arrival = [
  { guard: 'saysNo', target: 'beforeOutcome', actions: [say('arrivedNo'), notArrived] },
  { target: 'beforeOutcome', actions: say('arrivedYes') },
] as const;

/** Said once more, or late: answered, and what is still to come goes on. */
const arrivalAgain = [
  { guard: 'saysNo', actions: [say('arrivedNo'), notArrived] },
  { actions: say('arrivedYes') },
] as const;

const arrived = kit.createStateConfig({
  meta: { asking: 'arrived' },
  entry: ['resetUnclear', say('askArrived')],
  initial: 'asked',
  states: { ...waiting('arrived'), silent: { entry: notArrived } },
  after: { untilOutcome: 'outcome' },
  on: {
    'answer.arrived': arrival,
    unclear: [{ guard: 'isUnclearAgain', target: 'beforeOutcome', actions: giveUpOnTheWay }, askAgain('askArrived')],
  },
});

const outcome = kit.createStateConfig({
  meta: { asking: 'next-day' },
  entry: ['resetUnclear', say('askOutcome')],
  initial: 'asked',
  states: {
    ...waiting('next-day'),
    silent: {
      entry: { type: 'page', params: { reason: 'aftercare-silence' } },
      after: { untilClosing: '#aftercare.closed' },
    },
  },
  on: {
    'answer.next-day': [
      {
        guard: 'saysNo',
        target: 'over',
        actions: [say('outcomeNotWell'), { type: 'page', params: { reason: 'not-well-after' } }],
      },
      { target: 'over', actions: say('outcomeWell') },
    ],
    unclear: [{ guard: 'isUnclearAgain', target: 'over', actions: giveUpOnTheWay }, askAgain('askOutcome')],
  },
});

export const onTheWay = kit.createStateConfig({
  initial: 'beforeArrival',
  on: { 'answer.arrived': arrivalAgain },
  states: {
    beforeArrival: { after: { untilArrived: 'arrived' }, on: { 'answer.arrived': arrival } },
    arrived,
    beforeOutcome: {
      after: { untilOutcome: 'outcome' },
      on: { correct: { guard: takesBack('arrived'), target: 'arrived' } },
    },
    outcome,
    /** Nothing more is asked. */
    over: {
      after: { untilClosing: '#aftercare.closed' },
      on: { correct: { guard: takesBack('next-day'), target: 'outcome' } },
    },
  },
});
