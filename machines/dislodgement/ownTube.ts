/** Own tube: whole, it goes back where it may be used; burst, it may hold the stoma open for want of anything better. */
import { lastTry } from './gates.ts';
import { kit } from './kit.ts';
import { question } from './question.ts';

const steps = kit.createStateConfig({
  ...question('own-tube-in', { lines: [], busy: true }),
  entry: [
    {
      type: 'tell',
      params: ({ context, event }) => ({ key: 'ownTubeSteps', params: { oneTry: lastTry(context, event) } }),
    },
    { type: 'stepsSent', params: { steps: 'own' } },
  ],
});

const holderAsked = question('own-tube-in', { lines: [{ key: 'ownTubeAsHolderSteps', params: {} }], busy: true });
const holderSteps = kit.createStateConfig({
  ...holderAsked,
  entry: [...holderAsked.entry, { type: 'stepsSent', params: { steps: 'own-holder' } }],
});

export const ownTube = kit.createStateConfig({
  initial: 'have',
  states: {
    have: question('own-tube', { lines: [{ key: 'askOwnTube', params: {} }] }),
    steps,
    holderSteps,
    /** The steps were sent: only the question is asked again. */
    in: question('own-tube-in', { lines: [{ key: 'askHowIn', params: {} }], busy: true }),
    how: question('own-tube-in', { lines: [{ key: 'askHowIn', params: {} }], busy: true, clarifying: 'how' }),
  },
});
