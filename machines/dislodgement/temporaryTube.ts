/** Temporary tube: the kit, the weight, the length, and putting it in; it holds the stoma open. */
import { not } from 'xstate';
import type { Weight } from '../facts.ts';
import { length } from './gates.ts';
import { kit } from './kit.ts';
import { question } from './question.ts';

const haveKit = kit.createStateConfig({
  ...question('kit', { lines: [] }),
  entry: {
    type: 'tell',
    params: ({ context }) => ({
      key: 'askKit',
      params: { stranger: context.file === 'none', latexAllergy: context.facts.latexAllergy },
    }),
  },
});

const unit = kit.createStateConfig({
  ...question('weight', { lines: [], clarifying: 'unit' }),
  entry: {
    type: 'tell',
    params: ({ context }) => ({ key: 'askWeightUnit', params: { bare: context.facts.bareWeight ?? 0 } }),
  },
});

/** A weight that hardly fits the child's age is repeated; a yes or the same number again is believed, another one takes its place. */
const doubt = kit.createStateConfig({
  ...question('weight', { lines: [], clarifying: 'doubt' }),
  entry: {
    type: 'tell',
    params: ({ context }) => ({ key: 'askWeightAgain', params: { told: asTold(context.facts.weight) } }),
  },
});

/** The number to repeat; nothing else was ever in doubt. */
function asTold(weight: Weight | null): { kg: number } | { bare: number } {
  if (weight !== null && weight !== 'unknown') {
    if ('kg' in weight) return { kg: weight.kg };
    if (weight.bare !== undefined) return { bare: weight.bare };
  }
  throw new Error('a weight without a number is asked about again');
}

const layOut = { type: 'tell', params: { key: 'insertLayOut', params: {} } } as const;
const stepsSent = { type: 'stepsSent', params: { steps: 'temporary' } } as const;

const inserting = question('tube-in', { lines: [], busy: true });

/** A step heard again, by its number; without one, the last. */
const repeatable = kit.createStateConfig({
  on: {
    ...inserting.on,
    repeat: [
      // A fact told beside it may mean other steps, or none.
      { guard: not('tellsNothing'), target: '#dislodgement.deciding', actions: ['noteTold', 'pageIfWanted'] },
      { guard: { type: 'stepIs', params: { step: 1 } }, actions: ['pageIfWanted', layOut] },
      { guard: { type: 'stepIs', params: { step: 2 } }, actions: ['pageIfWanted', 'tellMeasure'] },
      { actions: ['pageIfWanted', 'tellPutIn'] },
    ],
  },
});

export const temporaryTube = kit.createStateConfig({
  initial: 'haveKit',
  states: {
    haveKit,
    weight: question('weight', { lines: [{ key: 'askWeight', params: {} }] }),
    unit,
    doubt,
    /** Three texts, to be read before washing hands; only the third asks. */
    steps: { ...inserting, ...repeatable, entry: [layOut, 'tellMeasure', 'tellPutIn', stepsSent] },
    secondTry: {
      ...inserting,
      ...repeatable,
      entry: [{ type: 'tell', params: ({ context }) => ({ key: 'secondTry', params: length(context) }) }, stepsSent],
    },
    /** The steps were sent: only the question is asked again. */
    in: { ...inserting, ...repeatable, entry: { type: 'tell', params: { key: 'askTubeIn', params: {} } } },
    how: question('tube-in', { lines: [{ key: 'askHowIn', params: {} }], busy: true, clarifying: 'how' }),
  },
});
