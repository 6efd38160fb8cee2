/** Close: where the case rests, each outcome said once in full. */
import { kit } from './kit.ts';
import { reviewed } from './question.ts';

const rest = kit.createStateConfig({ entry: 'tellOutcome' });

/** A held case that nobody closed comes back to the nurse. */
const held = kit.createStateConfig({ ...rest, ...reviewed });

export const close = kit.createStateConfig({
  initial: 'which',
  states: {
    which: {
      always: [
        { guard: { type: 'atRest', params: { to: 'go-in' } }, target: 'goIn' },
        { guard: { type: 'atRest', params: { to: 'hold' } }, target: 'hold' },
        { guard: { type: 'atRest', params: { to: 'nurse' } }, target: 'nurse' },
        { guard: { type: 'atRest', params: { to: 'use' } }, target: 'use' },
        { guard: { type: 'atRest', params: { to: 'own-tube' } }, target: 'ownTube' },
      ],
    },
    goIn: rest,
    hold: held,
    nurse: held,
    use: rest,
    ownTube: rest,
    reviewed,
  },
});
