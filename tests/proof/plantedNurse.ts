/** Wrong machines in which a nurse's word does what it must not, or is not heard; each by one small edit. */
import { assign } from 'xstate';
import type { Context, Outcome, Placed } from '#machines/dislodgement/context.ts';
import { noteTold } from '#machines/dislodgement/told.ts';
import { type Fault, provided } from './faults.ts';

const passing = { contents: true, reading: { low: 4, high: 4 }, recheck: 'none', stopped: null } as const;

/** A clearance heard where `when` says so, which believes the rest. */
function clears(name: string, when: (outcome: Outcome) => boolean, believed: (context: Context) => Partial<Context>) {
  return provided(name, {
    guards: { clearable: ({ context: { outcome, placed } }) => placed !== null && outcome !== null && when(outcome) },
    actions: {
      clear: assign(({ context }) => ({
        ...tubeCleared(context, {}),
        ...believed(context),
        outcome: null,
      })),
    },
  });
}

function tubeCleared({ placed }: Context, more: Partial<Placed>): Pick<Context, 'placed'> {
  return { placed: placed === null ? null : { ...placed, cleared: true, ...more } };
}

const heldFor = (reason: string) => (outcome: Outcome) => outcome.to === 'hold' && outcome.reason === reason;
const anywhere = () => true;

export const nurseFaults: readonly Fault[] = [
  clears('a nurse can clear a combination tube', anywhere, ({ facts }) => ({ facts: { ...facts, tubeKind: 'g' } })),
  clears('a nurse can clear a young tract', anywhere, ({ facts }) => ({
    facts: { ...facts, firstPlaced: { earliest: null, latest: '2020-01-01' } },
  })),
  clears('a nurse can clear without strips', heldFor('no-strips'), (context) => ({
    ...tubeCleared(context, passing),
    facts: { ...context.facts, strips: 'yes' },
  })),
  clears('a nurse can clear without contents', heldFor('no-contents'), (context) => tubeCleared(context, passing)),
  clears('a nurse can clear a reading nobody could read', heldFor('unread'), (context) =>
    tubeCleared(context, passing),
  ),
  clears('a nurse can clear a second high reading', heldFor('second-high'), (context) => tubeCleared(context, passing)),
  provided('a nurse who sends a child in is not heard', { actions: { sendIn: () => {} } }),
  provided('who is sent in may be used after all', {
    actions: { sendIn: assign({ sentIn: 'no', outcome: { to: 'go-in', reason: 'nurse' } }) },
  }),
  provided('a fact a nurse corrects is believed on any side', {
    actions: {
      noteTold: assign(({ context, event }) => {
        if (!('told' in event)) return context;
        const noted = noteTold(context, event);
        if (event.type !== 'nurse.corrects') return noted;
        return {
          ...noted,
          facts: { ...noted.facts, tubeKind: event.told.tubeKind ?? noted.facts.tubeKind },
          outcome: null,
        };
      }),
    },
  }),
];
