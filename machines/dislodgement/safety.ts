/** Safety: the first answer with its danger signs, the one clarifying question, and the emergency. */
import { and } from 'xstate';
import type { Card } from '../says.ts';
import { inside } from './gates.ts';
import { kit } from './kit.ts';
import { type Asks, answered, question, silence, tell, toldNothing, unread } from './question.ts';

const plainYes = {
  guard: 'saysYes' as const,
  target: '#dislodgement.safety.emergency',
  actions: ['noteTold' as const, 'noteDanger' as const],
};

/** Where there is a hole to cover, nothing is in it. */
const tubeInside: ReadonlySet<Card['inside']> = new Set(['own', 'temporary', 'half-out', 'in-place']);

/** The danger signs; a plain yes is a danger. */
function dangerSigns(entry: Asks) {
  const asked = question('unwell', entry);
  return kit.createStateConfig({
    ...asked,
    exit: 'openingSaid',
    on: { ...asked.on, 'answer.unwell': [plainYes, ...answered('unwell')] },
  });
}

const warningAfterAll = {
  target: '#dislodgement.deciding',
  actions: [
    'noteTold' as const,
    'noteWarning' as const,
    { type: 'preface' as const, params: { key: 'feverOrWarning' as const } },
    'pageIfWanted' as const,
  ],
};
const [unreadOnce, unreadTwice] = unread('unwell');
/** A fever nobody is sure of is no emergency in a child who is past the age for it; a nurse is told. */
const feverLeftOpen = {
  guard: 'feverIsNoDanger' as const,
  target: '#dislodgement.deciding',
  actions: [
    'denySign' as const,
    'noteTold' as const,
    'pageIfWanted' as const,
    { type: 'page' as const, params: { reason: 'unread' as const } },
    { type: 'preface' as const, params: { key: 'goesToNurse' as const } },
  ],
};

/** A sign said in a small or doubtful way: yes, or a child who feels hot once more, makes it the danger or the warning it would be. */
const clarify = kit.createStateConfig({
  meta: { asking: 'unwell', clarifying: 'sign' },
  entry: {
    type: 'tell',
    params: ({ context }) => ({
      key: 'clarifySign',
      params: { sign: context.clarify ?? 'pain', tubeIn: context.placed !== null },
    }),
  },
  on: {
    'answer.unwell': [
      { guard: and(['saysYes', 'clarifiesWarning']), ...warningAfterAll },
      plainYes,
      // "No" to one doubtful sign does not answer the whole list.
      { target: '#dislodgement.deciding', actions: ['denySign', 'noteTold', 'pageIfWanted'] },
    ],
    signs: [
      { guard: and(['feverSaidAgain', 'clarifiesWarning']), ...warningAfterAll },
      { ...plainYes, guard: 'feverSaidAgain' },
    ],
    unclear: [unreadOnce, feverLeftOpen, unreadTwice],
    smallTalk: [unreadOnce, feverLeftOpen, unreadTwice],
    told: toldNothing('unwell'),
  },
  initial: 'open',
  states: silence('unwell', 'quiet'),
});

const unreadInUse = { type: 'pageOnce' as const, params: { reason: 'unread-in-use' as const } };
const goesToNurse = { type: 'preface' as const, params: { key: 'goesToNurse' as const } };

/**
 * A tube in use and a text that nobody could read: whether something is wrong. What is allowed stands meanwhile; a yes takes it
 * back until the danger signs are answered, and silence takes back nothing.
 */
const trouble = kit.createStateConfig({
  meta: { asking: 'unwell', clarifying: 'trouble' },
  entry: tell('askTrouble'),
  on: {
    'answer.unwell': [
      {
        guard: 'saysYes',
        target: '#dislodgement.deciding',
        actions: [
          'noteTold',
          'pageIfWanted',
          'doubtWell',
          { type: 'pageOnce', params: { reason: 'unread' } },
          { type: 'preface', params: { key: 'nurseCalled' } },
        ],
      },
      { target: '#dislodgement.deciding', actions: ['noteTold', 'pageIfWanted'] },
    ],
    unclear: {
      target: '#dislodgement.deciding',
      actions: ['noteTold', 'pageIfWanted', unreadInUse, goesToNurse],
    },
  },
  after: { quiet: { target: '#dislodgement.deciding', actions: [unreadInUse, goesToNurse] } },
});

/** The emergency number now, nothing by tube or mouth. Only a plain yes, with no sign named, can be taken back. */
const emergency = kit.createStateConfig({
  initial: 'told',
  on: {
    correct: [
      {
        guard: 'takesBackYes',
        target: '#dislodgement.deciding',
        actions: ['noteTold', 'takeBackUnwell', 'pageIfWanted'],
      },
      { target: '.still', actions: ['noteTold', 'pageIfWanted'] },
    ],
    outAgain: [
      {
        guard: 'tubeIn',
        target: '.still',
        actions: [
          'noteOutAgain',
          'noteTold',
          { type: 'noteDisposition', params: { to: 'emergency' } },
          { type: 'page', params: { reason: 'came-out-again' } },
          'pageIfWanted',
        ],
      },
      { target: '.still', actions: ['noteTold', 'pageIfWanted'] },
    ],
    // "Reply OK once you have called."
    smallTalk: { target: '.called', actions: ['noteTold', 'pageIfWanted'] },
    cannotWait: {
      target: '.still',
      actions: ['noteTold', 'noteCannotWait', { type: 'pageOnce', params: { reason: 'cannot-wait' } }],
    },
  },
  states: {
    told: {
      entry: [
        { type: 'page', params: { reason: 'danger-sign' } },
        {
          type: 'tell',
          params: ({ context }) => ({ key: 'emergency', params: { signs: context.danger?.named ?? [] } }),
        },
        { type: 'noteDisposition', params: { to: 'emergency' } },
        { type: 'beginAftercare', params: ({ event }) => ({ after: 'go-in', sinceMs: event.at }) },
        'beganAftercare',
      ],
    },
    still: { entry: tell('emergencyStill') },
    called: { entry: tell('emergencyCalled') },
  },
});

export const safety = kit.createStateConfig({
  initial: 'opening',
  states: {
    opening: dangerSigns({
      type: 'tell',
      params: ({ context }) => ({ key: tubeInside.has(inside(context)) ? 'openingTubeIn' : 'opening', params: {} }),
    }),
    unwell: dangerSigns(tell('askUnwell')),
    clarify,
    trouble,
    emergency,
  },
});
