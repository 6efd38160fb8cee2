/** Temporary tube: the kit, the weight, the length, and putting it in; it holds the stoma open. */
import { not } from 'xstate';
import type { Weight } from '../facts.ts';
import { lastTry, length, tract } from './gates.ts';
import type { Now } from './guards.ts';
import { kit } from './kit.ts';
import type { Line } from './outcomes.ts';
import { type Asks, question, tell } from './question.ts';

const haveKit = question('kit', {
  type: 'tell',
  params: ({ context }) => ({
    key: 'askKit',
    params: { stranger: context.file === 'none', latexAllergy: context.facts.latexAllergy },
  }),
});

const unit = question(
  'weight',
  {
    type: 'tell',
    params: ({ context }) => ({ key: 'askWeightUnit', params: { bare: context.facts.bareWeight ?? 0 } }),
  },
  { clarifying: 'unit' },
);

/** A weight that hardly fits the child's age is repeated; a yes or the same number again is believed, another one takes its place. */
const doubt = question(
  'weight',
  {
    type: 'tell',
    params: ({ context }) => ({ key: 'askWeightAgain', params: { told: asTold(context.facts.weight) } }),
  },
  { clarifying: 'doubt' },
);

/** The number to repeat; nothing else was ever in doubt. */
function asTold(weight: Weight | null): { kg: number } | { bare: number } {
  if (weight !== null && weight !== 'unknown') {
    if ('kg' in weight) return { kg: weight.kg };
    if (weight.bare !== undefined) return { bare: weight.bare };
  }
  throw new Error('a weight without a number is asked about again');
}

const measure = {
  type: 'tell' as const,
  params: ({ context }: Now): Line => ({ key: 'insertMeasure', params: length(context) }),
};
const putIn = {
  type: 'tell' as const,
  params: ({ context, event }: Now): Line => ({
    key: 'insertPutIn',
    params: {
      oneTry: lastTry(context, event),
      stopAtAnyResistance: tract(context, event) === 'nearly-too-young',
    },
  }),
};
const stepsSent = { type: 'stepsSent', params: { steps: 'temporary' } } as const;

/** How it went in; a step is heard again by its number, without one the last. */
function inserting(entry: Asks) {
  const asked = question('tube-in', entry, { busy: true });
  return kit.createStateConfig({
    ...asked,
    on: {
      ...asked.on,
      repeat: [
        // A fact told beside it may mean other steps, or none.
        { guard: not('tellsNothing'), target: '#dislodgement.deciding', actions: ['noteTold', 'pageIfWanted'] },
        { guard: { type: 'stepIs', params: { step: 1 } }, actions: ['pageIfWanted', tell('insertLayOut')] },
        { guard: { type: 'stepIs', params: { step: 2 } }, actions: ['pageIfWanted', measure] },
        { actions: ['pageIfWanted', putIn] },
      ],
    },
  });
}

export const temporaryTube = kit.createStateConfig({
  initial: 'haveKit',
  states: {
    haveKit,
    weight: question('weight', tell('askWeight')),
    unit,
    doubt,
    /** Three texts, to be read before washing hands; only the third asks. */
    steps: inserting([tell('insertLayOut'), measure, putIn, stepsSent]),
    secondTry: inserting([
      { type: 'tell', params: ({ context }) => ({ key: 'secondTry', params: length(context) }) },
      stepsSent,
    ]),
    /** The steps were sent: only the question is asked again. */
    in: inserting(tell('askTubeIn')),
    how: question('tube-in', tell('askHowIn'), { busy: true, clarifying: 'how' }),
  },
});
