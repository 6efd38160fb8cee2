/** About the tube: only the facts that the next step needs, from the file or asked. */
import { kit } from './kit.ts';
import { answered, question, tell, unread } from './question.ts';

const confirm = question('confirm', {
  type: 'tell',
  params: ({ context }) => ({
    key: 'confirmFile',
    params: {
      child: null, // the name is the shell's; it is never kept in a case
      tubeKind: context.facts.tubeKind,
      firstPlaced: context.facts.firstPlaced === 'unknown' ? null : context.facts.firstPlaced,
      weight: context.facts.weight,
    },
  }),
});

const tubeKindAsked = question('tube-kind', tell('askTubeKind'));

/** A device word the line does not know is asked about by looking; it is not an unreadable answer. */
const tubeKind = kit.createStateConfig({
  ...tubeKindAsked,
  on: {
    ...tubeKindAsked.on,
    unknownDevice: { target: '#dislodgement.aboutTube.byLook', actions: ['noteTold', 'pageIfWanted'] },
  },
});

const byLookAsked = question('tube-kind', tell('askTubeKindByLook'), { clarifying: 'look' });
const byLook = kit.createStateConfig({
  ...byLookAsked,
  on: { ...byLookAsked.on, unknownDevice: unread('tube-kind') },
});

const whoAsked = question('who', tell('askWho'));

/** Whether somebody texts about this child already. What fits another case ends this one: the phone goes on in that. */
const who = kit.createStateConfig({
  ...whoAsked,
  on: {
    ...whoAsked.on,
    'answer.who': [{ guard: 'joins', target: '#dislodgement.joined', actions: 'noteTold' }, ...answered('who')],
  },
});

export const aboutTube = kit.createStateConfig({
  initial: 'tubeKind',
  states: {
    who,
    /** Asked after the danger signs, in the place of the file: those are the same for every child, and never wait. */
    whichChild: question('which-child', tell('askWhichChild')),
    confirm,
    tubeKind,
    byLook,
    firstPlaced: question('first-placed', tell('askFirstPlaced')),
    cameOut: question('came-out', tell('askCameOut')),
    lastSeen: question('came-out', tell('askLastSeenIn'), { clarifying: 'last-seen' }),
  },
});
