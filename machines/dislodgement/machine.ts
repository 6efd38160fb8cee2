/** The conversation: what a caregiver whose child's tube came out is asked and told, from the first text to the close. */
import { not } from 'xstate';
import { aboutTube } from './aboutTube.ts';
import { close } from './close.ts';
import { deciding } from './deciding.ts';
import { context, kit } from './kit.ts';
import { leftAs } from './outcomes.ts';
import { ownTube } from './ownTube.ts';
import { placement } from './placement.ts';
import { tell } from './question.ts';
import { recheck } from './recheck.ts';
import { safety } from './safety.ts';
import { temporaryTube } from './temporaryTube.ts';

const decide = '.deciding';

export const dislodgement = kit.createMachine({
  id: 'dislodgement',
  context,
  initial: 'firstText',
  on: {
    // What may be heard at any time; the question that was open is asked again by deciding anew.
    signs: [
      {
        guard: { type: 'gravestIs', params: { grade: 'danger' } },
        target: '.safety.emergency',
        actions: ['noteBeside', 'noteTold', 'noteDanger'],
      },
      {
        guard: { type: 'gravestIs', params: { grade: 'warning' } },
        target: decide,
        actions: [
          'noteBeside',
          'noteTold',
          'noteWarning',
          'noteNearDanger',
          { type: 'pageOnce', params: { reason: 'warning-sign' } },
          { type: 'preface', params: { key: 'feverOrWarning' } },
          'pageIfWanted',
        ],
      },
      { guard: 'somethingToClarify', target: decide, actions: ['noteBeside', 'noteTold', 'noteNear', 'pageIfWanted'] },
      { target: decide, actions: ['noteBeside', 'noteTold', 'pageIfWanted'] },
    ],
    outAgain: [
      {
        guard: 'tubeIn',
        target: decide,
        actions: [{ type: 'page', params: { reason: 'came-out-again' } }, 'noteOutAgain', 'noteTold', 'pageIfWanted'],
      },
      {
        guard: 'mayComeOut',
        target: decide,
        actions: [{ type: 'page', params: { reason: 'came-out-again' } }, 'noteFullyOut', 'noteTold', 'pageIfWanted'],
      },
      { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    ],
    tubeProblem: [
      {
        // It never softens going in, nor an emergency; it is held when that is over.
        guard: 'tubeIn',
        target: decide,
        actions: ['noteTold', 'noteProblem', { type: 'pageOnce', params: { reason: 'tube-problem' } }, 'pageIfWanted'],
      },
      { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    ],
    cannotWait: {
      target: decide,
      actions: ['noteTold', 'noteCannotWait', { type: 'preface', params: { key: 'nurseCalled' } }],
    },
    person: {
      target: decide,
      actions: [
        'noteTold',
        { type: 'page', params: ({ event }) => ({ reason: event.rang ? 'rang' : 'person-wanted' }) },
        { type: 'preface', params: { key: 'nurseCalled' } },
      ],
    },
    correct: [
      { guard: 'namesAnswer', target: decide, actions: ['noteTold', 'takeBack', 'pageIfWanted'] },
      { guard: not('tellsNothing'), target: decide, actions: ['noteTold', 'pageIfWanted'] },
      { actions: ['pageIfWanted', tell('askCorrection')] },
    ],
    media: { target: decide, actions: ['noteTold', 'pageIfWanted', { type: 'preface', params: { key: 'mediaKept' } }] },
    relayed: {
      target: decide,
      actions: [
        'noteTold',
        'pageIfWanted',
        { type: 'preface', params: ({ event }) => ({ key: 'passedOn', nurse: event.nurse }) },
      ],
    },
    repeat: { target: decide, actions: ['noteTold', 'sayAfresh', 'pageIfWanted'] },
    help: {
      target: decide,
      actions: ['noteTold', 'pageIfWanted', tell('help')],
    },
    told: { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    unclear: [
      {
        guard: 'inUse',
        target: '.safety.trouble',
        actions: ['noteTold', 'pageIfWanted'],
      },
      {
        guard: 'atRestOrWaiting',
        target: decide,
        actions: [
          'noteTold',
          'pageIfWanted',
          { type: 'page', params: { reason: 'unread' } },
          { type: 'preface', params: { key: 'goesToNurse' } },
        ],
      },
      { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    ],
    unknownDevice: { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    smallTalk: { target: decide, actions: ['noteTold', 'pageIfWanted'] },
    stop: {
      actions: [{ type: 'page', params: { reason: 'stopped' } }, tell('stopped')],
    },
    // From the nurses and what follows.
    'nurse.clear': {
      guard: 'clearable',
      target: decide,
      actions: ['clear', { type: 'preface', params: { key: 'cleared' } }],
    },
    'nurse.goIn': [
      { guard: 'danger', actions: 'sendIn' },
      { target: decide, actions: 'sendIn' },
    ],
    'nurse.corrects': [
      { guard: 'danger', actions: 'noteTold' },
      { target: decide, actions: 'noteTold' },
    ],
    // Kept in the record; nothing of it moves the conversation.
    'nurse.reports': {},
    'nurse.close': { target: '.closed' },
    notWell: {
      target: decide,
      actions: [
        'noteWarning',
        { type: 'page', params: { reason: 'not-well-after' } },
        { type: 'preface', params: { key: 'feverOrWarning' } },
      ],
    },
    'phone.joined': {
      actions: {
        type: 'tell',
        params: ({ event }) => ({ key: 'phoneJoined', params: { lastFour: event.lastFour } }),
      },
    },
    'page.began': {
      actions: {
        type: 'tell',
        params: ({ event }) => ({ key: 'pageBegan', params: { mostMinutes: event.mostMinutes } }),
      },
    },
    'page.passed': {
      actions: { type: 'tell', params: ({ event }) => ({ key: 'pagePassed', params: { nurse: event.nurse } }) },
    },
    'page.taken': {
      actions: [
        'noteTaken',
        { type: 'tell', params: ({ event }) => ({ key: 'pageTaken', params: { nurse: event.nurse } }) },
      ],
    },
    'page.unanswered': [
      { guard: 'restsOnNurse', target: decide, actions: 'noteUnanswered' },
      {
        guard: 'stays',
        actions: ['noteUnanswered', { type: 'tell', params: { key: 'pageUnanswered', params: { advice: 'stay' } } }],
      },
      {
        actions: [
          'noteUnanswered',
          { type: 'tell', params: { key: 'pageUnanswered', params: { advice: 'carry-on' } } },
        ],
      },
    ],
  },
  states: {
    /** Nothing was heard yet; any first text about a tube leads to the first answer. */
    firstText: {
      on: {
        correct: { target: '#dislodgement.deciding', actions: ['noteTold', 'pageIfWanted'] },
        // A rehearsal asked for danger signs, and its yes may be real: it opens the real case.
        'answer.unwell': {
          guard: 'saysYes',
          target: '#dislodgement.safety.emergency',
          actions: ['noteTold', 'noteDanger'],
        },
      },
    },
    deciding,
    safety,
    aboutTube,
    ownTube,
    temporaryTube,
    placement,
    recheck,
    close,
    /** It was another open case's child, and goes on there. */
    joined: { entry: 'closeCase', type: 'final' },
    closed: {
      entry: [
        {
          type: 'tell',
          params: ({ context }) => ({ key: 'closedByNurse', params: { left: leftAs(context), asks: false } }),
        },
        'endAftercare',
        'closeCase',
      ],
      type: 'final',
    },
  },
});
