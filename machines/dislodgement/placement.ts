/** Placement: is the tube in the stomach? One way to confirm it, whichever tube it is, and one way to secure it. */
import { and, not } from 'xstate';
import type { YesNo } from '../facts.ts';
import { tubeIn } from './context.ts';
import { holderReason, type ReadingVerdict } from './gates.ts';
import { kit } from './kit.ts';
import { question, tell } from './question.ts';
import { goIn, hold, settle } from './rest.ts';

const readingIs = (verdict: ReadingVerdict) => ({ type: 'readingIs' as const, params: { verdict } });
const tubeIs = (tube: 'own' | 'temporary') => ({ type: 'tubeIs' as const, params: { tube } });

const tubeStopped = (by: 'tube-problem' | 'unread') => ({ type: 'tubeStopped' as const, params: { by } });
const stripsAre = (strips: YesNo | null) => ({ type: 'stripsAre' as const, params: { strips } });

const contents = question(
  'contents',
  {
    type: 'tell',
    params: ({ context }) => ({
      key: 'askContents',
      params: {
        attempt: tubeIn(context).contentsTried + 1,
        newStrip: tubeIn(context).recheck === 'due',
      },
    }),
  },
  { busy: true },
);

const secured = question(
  'secured',
  {
    type: 'tell',
    params: ({ context }) => ({
      key: 'secureSteps',
      params: {
        flushMl: context.protocol.clinical.flushMl,
        balloonMostMl: context.protocol.clinical.balloonMostMl,
        tube: tubeIn(context).tube,
      },
    }),
  },
  { busy: true },
);

const securedAgain = question(
  'secured',
  {
    type: 'tell',
    params: ({ context }) => ({
      key: 'secureAgain',
      params: { balloonMostMl: context.protocol.clinical.balloonMostMl },
    }),
  },
  { busy: true },
);

/** What has to be found out next about the tube that is in; top row first. */
const which = kit.createStateConfig({
  always: [
    { guard: and(['howUnclear', tubeIs('own')]), target: '#dislodgement.ownTube.how' },
    { guard: 'howUnclear', target: '#dislodgement.temporaryTube.how' },
    { guard: 'warning', ...goIn('warning') },
    // A tube that only holds the stoma open goes in; when it came out is for the desk.
    { guard: and([not('mayBeUsed'), 'cameOutUnasked']), target: '#dislodgement.deciding.cameOut' },
    {
      guard: not('mayBeUsed'),
      target: '#dislodgement.close',
      actions: {
        type: 'settle',
        params: ({ context, event }) => ({ to: 'go-in', reason: holderReason(context, event) }),
      },
    },
    // Something was wrong with it: a person decides.
    { guard: tubeStopped('tube-problem'), ...hold('tube-problem') },
    { guard: and([tubeIs('own'), 'ownTubeUnasked']), target: '#dislodgement.ownTube.have' },
    // The child first, then the reading.
    { guard: and(['afterInUnasked', 'recheckDue']), target: '#dislodgement.recheck.afterIn' },
    { guard: 'afterInUnasked', target: 'afterIn' },
    { guard: 'cameOutUnasked', target: '#dislodgement.deciding.cameOut' },
    { guard: tubeStopped('unread'), ...hold('unread') },
    { guard: stripsAre(null), target: 'strips' },
    { guard: stripsAre('no'), ...hold('no-strips') },
    { guard: and(['contentsMissing', 'contentsTriesUsed']), ...hold('no-contents') },
    { guard: 'contentsMissing', target: 'contents' },
    { guard: readingIs('none'), target: 'ph' },
    { guard: readingIs('ask-feed'), target: 'fedLately' },
    { guard: readingIs('ask-looks'), target: 'looks' },
    // High: once more in an hour, unless something cannot wait so long.
    { guard: and([readingIs('recheck'), 'cannotWait']), ...goIn('cannot-wait') },
    { guard: 'recheckWaits', target: '#dislodgement.recheck.waiting' },
    {
      guard: readingIs('recheck'),
      target: '#dislodgement.recheck.waiting',
      actions: 'startRecheck',
    },
    {
      guard: and([readingIs('second-high'), 'clinicOpen']),
      ...hold('second-high', true),
    },
    { guard: readingIs('second-high'), ...goIn('second-high') },
    // Passed: hard insertions wait for the nurse, the others are secured.
    { guard: 'hardUncleared', ...hold('hard') },
    { guard: and([not('secured'), 'notSecuredTwice']), ...hold('not-secured') },
    { guard: and([not('secured'), 'notSecuredOnce']), target: 'securedAgain' },
    // A reading that passed only because of a feed is for the nurse to know before the first feed.
    {
      guard: and([not('secured'), readingIs('passed-after-feed')]),
      target: 'secured',
      actions: { type: 'pageOnce', params: { reason: 'after-feed-reading' } },
    },
    { guard: not('secured'), target: 'secured' },
    { guard: tubeIs('own'), ...settle({ to: 'own-tube' }) },
    settle({ to: 'use' }),
  ],
});

export const placement = kit.createStateConfig({
  initial: 'which',
  states: {
    which,
    afterIn: question('after-in', tell('askAfterIn')),
    strips: question('strips', tell('askStrips')),
    contents,
    ph: question('ph', tell('askPh'), { busy: true }),
    fedLately: question('fed-lately', tell('askFedLately')),
    looks: question('looks', tell('askLooks')),
    secured,
    securedAgain,
  },
});
