/** Own tube: whole, it goes back where it may be used; burst, it may hold the stoma open for want of anything better. */
import { lastTry } from './gates.ts';
import { kit } from './kit.ts';
import { question, tell } from './question.ts';

const steps = question(
  'own-tube-in',
  [
    {
      type: 'tell',
      params: ({ context, event }) => ({ key: 'ownTubeSteps', params: { oneTry: lastTry(context, event) } }),
    },
    { type: 'stepsSent', params: { steps: 'own' } },
  ],
  { busy: true },
);

const holderSteps = question(
  'own-tube-in',
  [tell('ownTubeAsHolderSteps'), { type: 'stepsSent', params: { steps: 'own-holder' } }],
  { busy: true },
);

export const ownTube = kit.createStateConfig({
  initial: 'have',
  states: {
    have: question('own-tube', {
      type: 'tell',
      params: ({ context }) => ({ key: context.placed === null ? 'askOwnTube' : 'askOwnTubeIn', params: {} }),
    }),
    steps,
    holderSteps,
    /** The steps were sent: only the question is asked again. */
    in: question('own-tube-in', tell('askHowIn'), { busy: true }),
    how: question('own-tube-in', tell('askHowIn'), { busy: true, clarifying: 'how' }),
  },
});
