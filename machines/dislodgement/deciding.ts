/**
 * Deciding: after every text the case is decided anew from its facts, top row first. Read it aloud: danger, what still
 * stands, the danger signs, which tube and which tract, then the tube that is in, or putting one in.
 */
import { and, not } from 'xstate';
import type { KitAnswer, TubeKind } from '../facts.ts';
import { inPlace } from './gates.ts';
import { kit } from './kit.ts';
import { goIn, settle } from './rest.ts';

const kindIs = (kind: TubeKind | null) => ({ type: 'kindIs' as const, params: { kind } });
const stepsSent = (steps: 'own' | 'own-holder' | 'temporary') => ({ type: 'stepsSent' as const, params: { steps } });
const kitIs = (answer: KitAnswer | null) => ({ type: 'kitIs' as const, params: { kit: answer } });

/** What comes next. */
const which = kit.createStateConfig({
  always: [
    { guard: 'danger', target: '#dislodgement.safety.emergency.still' },
    // Are there danger signs? A doubtful one is cleared up wherever the case rests.
    { guard: not('openingSaid'), target: '#dislodgement.safety.opening' },
    { guard: 'signUnclear', target: '#dislodgement.safety.clarify' },
    { guard: and(['restsOnNurse', 'cannotWait']), ...goIn('cannot-wait') },
    { guard: and(['restsOnNurse', 'unanswered']), ...goIn('nobody-answered') },
    { guard: 'decided', target: '#dislodgement.close' },
    { guard: 'sentIn', ...goIn('nurse') },
    { guard: 'unwellUnasked', target: '#dislodgement.safety.unwell' },
    // Which tube, and how old is the tract?
    { guard: kindIs('nose'), ...settle({ to: 'nurse' }) },
    { guard: kindIs('half-out'), ...goIn('half-out') },
    // It never came out: nothing is put in. A nurse decides, unless the child is not well.
    { guard: and(['inPlace', 'warning']), ...goIn('warning') },
    { guard: and(['inPlace', 'unwellUnread']), ...goIn('unwell-unread') },
    {
      guard: 'inPlace',
      target: '#dislodgement.deciding',
      actions: {
        type: 'settle',
        params: ({ context }) => ({ to: 'hold', reason: inPlace(context) ?? 'in-place', clinicArranges: false }),
      },
    },
    { guard: kindIs('j'), ...goIn('kind') },
    { guard: and(['mayJoin', not('warning')]), target: '#dislodgement.aboutTube.who' },
    { guard: 'childUnknown', target: '#dislodgement.aboutTube.whichChild' },
    { guard: 'fileUnconfirmed', target: '#dislodgement.aboutTube.confirm' },
    { guard: kindIs(null), target: '#dislodgement.aboutTube.tubeKind' },
    { guard: 'firstPlacedUnasked', target: '#dislodgement.aboutTube.firstPlaced' },
    { guard: 'tractTooYoung', ...goIn('tract-too-young') },
    // A tube is in.
    { guard: 'tubeIn', target: '#dislodgement.placement' },
    // Nothing is in.
    { guard: and(['tryFailed', 'cameOutUnasked', not('warning')]), target: 'cameOut' },
    { guard: 'noTriesLeft', ...goIn('will-not-go-in') },
    { guard: 'ownTubeWorthAsking', target: '#dislodgement.ownTube.have' },
    { guard: 'ownTubeUnderWay', target: '#dislodgement.ownTube.in' },
    { guard: 'ownTubeGoesBack', target: '#dislodgement.ownTube.steps' },
    { guard: kitIs(null), target: '#dislodgement.temporaryTube.haveKit' },
    { guard: kitIs('not-shown'), ...goIn('not-shown') },
    { guard: and(['burstTubeHolds', stepsSent('own-holder')]), target: '#dislodgement.ownTube.in' },
    { guard: 'burstTubeHolds', target: '#dislodgement.ownTube.holderSteps' },
    { guard: and([kitIs('no'), 'latexAllergy']), ...goIn('latex') },
    { guard: kitIs('no'), ...goIn('no-kit') },
    { guard: 'unitUnclear', target: '#dislodgement.temporaryTube.unit' },
    { guard: 'weightUnasked', target: '#dislodgement.temporaryTube.weight' },
    { guard: 'weightInDoubt', target: '#dislodgement.temporaryTube.doubt' },
    { guard: stepsSent('temporary'), target: '#dislodgement.temporaryTube.in' },
    { guard: 'triedTemporary', target: '#dislodgement.temporaryTube.secondTry' },
    { target: '#dislodgement.temporaryTube.steps' },
  ],
});

export const deciding = kit.createStateConfig({
  entry: ['endVoidAftercare', 'pageForFacts'],
  initial: 'which',
  states: {
    which,
    /** When it came out, or, where nobody saw it, when it was last seen in. */
    cameOut: {
      always: [
        { guard: 'lastSeenAsked', target: '#dislodgement.aboutTube.lastSeen' },
        { target: '#dislodgement.aboutTube.cameOut' },
      ],
    },
  },
});
