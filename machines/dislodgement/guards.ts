/** The guards of the conversation: each asks the gates one question, under the name the legs read it by. */

import { assertEvent } from 'xstate';
import type { TextEvent } from '../events.ts';
import type { QuestionKey, Sign } from '../facts.ts';
import { type Context, type Outcome, restsOn, tubeIn } from './context.ts';
import type { ConversationEvent } from './conversationEvent.ts';
import * as gates from './gates.ts';
import { isNoAnswer, noteBeside } from './note.ts';
import { tellsNothing } from './told.ts';

export interface Now {
  readonly context: Context;
  readonly event: ConversationEvent;
}

const asksLater: ReadonlySet<QuestionKey> = new Set(['first-feed', 'next-day', 'arrived', 'clinic']);

export const guards = {
  danger: ({ context }: Now) => context.danger !== null,
  atRest: ({ context }: Now, params: { to: Outcome['to'] }) => restsOn(context).to === params.to,
  unwellUnasked: ({ context }: Now) => context.unwell === 'unasked',
  openingSaid: ({ context }: Now) => context.openingSaid,
  signUnclear: ({ context }: Now) => context.clarify !== null,
  kindIs: ({ context }: Now, params: { kind: Context['facts']['tubeKind'] }) => context.facts.tubeKind === params.kind,
  /** Half out, or in its place: it may yet come all the way out. */
  mayComeOut: ({ context }: Now) => context.facts.tubeKind === 'half-out' || gates.inPlace(context) !== null,
  inPlace: ({ context }: Now) => gates.inPlace(context) !== null,
  /** The danger signs asked for could not be read. */
  unwellUnread: ({ context }: Now) => context.unwell === 'unread',
  mayJoin: ({ context }: Now) => context.sameChild === 'ask',
  childUnknown: ({ context }: Now) => context.children !== null && context.children.is === null,
  fileUnconfirmed: ({ context }: Now) => context.file === 'unconfirmed',
  firstPlacedUnasked: ({ context }: Now) => context.facts.firstPlaced === null,
  tractTooYoung: ({ context, event }: Now) => gates.tractTooYoung(context, event),
  mayBeUsed: ({ context, event }: Now) => gates.mayBeUsed(context, event),
  warning: ({ context }: Now) => context.warning,
  sentIn: ({ context }: Now) => context.sentIn === 'now',
  cannotWait: ({ context }: Now) => context.facts.cannotWait !== null,
  tubeIn: ({ context }: Now) => context.placed !== null,
  tubeStopped: ({ context }: Now, params: { by: 'tube-problem' | 'unread' }) => tubeIn(context).stopped === params.by,
  tubeIs: ({ context }: Now, params: { tube: 'own' | 'temporary' }) => tubeIn(context).tube === params.tube,
  howUnclear: ({ context }: Now) => tubeIn(context).how === null,
  cameOutUnasked: ({ context }: Now) => context.facts.cameOutAtMs === null,
  lastSeenAsked: ({ context }: Now) => context.askedLastSeen,
  noTriesLeft: ({ context, event }: Now) => !gates.triesLeft(context, event),
  tryFailed: ({ context }: Now) => context.failedTries > 0,
  ownTubeWorthAsking: ({ context, event }: Now) => gates.ownTubeWorthAsking(context, event),
  ownTubeUnderWay: ({ context, event }: Now) => gates.ownTubeUnderWay(context, event),
  ownTubeUnasked: ({ context }: Now) => context.facts.ownTube === null,
  ownTubeGoesBack: ({ context, event }: Now) => gates.ownTubeGoesBack(context, event),
  burstTubeHolds: ({ context, event }: Now) => gates.burstTubeHolds(context, event),
  stepsSent: ({ context }: Now, params: { steps: Context['stepsSent'] }) => context.stepsSent === params.steps,
  kitIs: ({ context }: Now, params: { kit: Context['facts']['kit'] }) => context.facts.kit === params.kit,
  latexAllergy: ({ context }: Now) => context.facts.latexAllergy,
  weightUnasked: ({ context }: Now) => context.facts.weight === null,
  weightInDoubt: ({ context, event }: Now) => gates.weightInDoubt(context, event),
  unitUnclear: ({ context }: Now) => context.facts.bareWeight !== null,
  afterInUnasked: ({ context }: Now) => tubeIn(context).afterIn === 'unasked',
  stripsAre: ({ context }: Now, params: { strips: Context['facts']['strips'] }) =>
    context.facts.strips === params.strips,
  contentsMissing: ({ context }: Now) => !tubeIn(context).contents,
  contentsTriesUsed: ({ context }: Now) => tubeIn(context).contentsTried >= context.protocol.clinical.contentsTries,
  readingIs: ({ context }: Now, params: { verdict: ReturnType<typeof gates.readingVerdict> }) =>
    gates.readingVerdict(context) === params.verdict,
  hardUncleared: ({ context }: Now) => tubeIn(context).how === 'hard' && !tubeIn(context).cleared,
  clearable: ({ context, event }: Now) => gates.clearable(context, event),
  recheckWaits: ({ context }: Now) => tubeIn(context).recheck === 'waiting',
  recheckDue: ({ context }: Now) => tubeIn(context).recheck === 'due',
  secured: ({ context }: Now) => tubeIn(context).secured,
  notSecuredTwice: ({ context }: Now) => tubeIn(context).securedTried >= 2,
  notSecuredOnce: ({ context }: Now) => tubeIn(context).securedTried === 1,
  clinicOpen: ({ event }: Now) => event.clinicOpen,
  /** A text at rest or in the wait may say that something is wrong, so one that cannot be read goes to a nurse. */
  atRestOrWaiting: ({ context }: Now) => context.outcome !== null || context.placed?.recheck === 'waiting',
  inUse: ({ context }: Now) => context.outcome?.to === 'use' || context.outcome?.to === 'own-tube',
  unanswered: ({ context }: Now) => context.unanswered,
  /** A danger told by a plain yes, and the text takes back that answer. */
  takesBackYes: ({ context, event }: Now) => {
    assertEvent(event, 'correct');
    return context.danger?.named.length === 0 && (event.key === null || event.key === 'unwell');
  },
  firstUnclear: ({ context }: Now, params: { key: QuestionKey }) => context.unclear?.key !== params.key,
  noAnswer: ({ context, event }: Now) => {
    assertEvent(event, 'answer.*');
    return isNoAnswer(context, event);
  },
  tellsNothing: ({ context, event }: Now) => {
    assertEvent(event, ['told', 'repeat', 'correct']);
    return tellsNothing(context, event);
  },
  gravestIs: ({ context, event }: Now, params: { grade: 'danger' | 'warning' }) => {
    assertEvent(event, 'signs');
    return gates.gravest(noteBeside(context, event), event.sure, event) === params.grade;
  },
  somethingToClarify: ({ context, event }: Now) => {
    assertEvent(event, 'signs');
    return signsToClarify(noteBeside(context, event), event).length > 0;
  },
  /** Asked whether there is a fever, the text says once more that the child feels hot, and no other sign surely. */
  feverSaidAgain: ({ context, event }: Now) => {
    assertEvent(event, 'signs');
    return context.clarify === 'fever' && event.sure.length === 0 && event.near.includes('fever');
  },
  feverIsNoDanger: ({ context, event }: Now) =>
    context.clarify === 'fever' && gates.gravest(context, ['fever'], event) !== 'danger',
  clarifiesWarning: ({ context, event }: Now) =>
    context.clarify !== null && gates.gravest(context, [context.clarify], event) === 'warning',
  stepIs: ({ event }: Now, params: { step: 1 | 2 | 3 }) => {
    assertEvent(event, 'repeat');
    return event.step === params.step;
  },
  /** A temporary tube was tried before; a failed own tube leaves the temporary one its full lesson. */
  triedTemporary: ({ context }: Now) => context.failedTries > (context.ownTried ? 1 : 0),
  /** The child is on the way, watched, or has a tube that may be used. */
  stays: ({ context }: Now) =>
    context.danger !== null || context.outcome !== null || context.placed?.recheck === 'waiting',
  /** An answer of its own; what follows has questions that are not the conversation's to ask again. */
  namesAnswer: ({ event }: Now) => {
    assertEvent(event, 'correct');
    return event.key !== null && !asksLater.has(event.key);
  },
  decided: ({ context }: Now) => context.outcome !== null,
  restsOnNurse: ({ context }: Now) => context.outcome?.to === 'hold' || context.outcome?.to === 'nurse',
  joins: ({ event }: Now) => {
    assertEvent(event, 'answer.who');
    return event.value === 'joins';
  },
  saysYes: ({ event }: Now) => {
    assertEvent(event, 'answer.unwell');
    return event.value === 'yes';
  },
};

/** The signs that deserve a clarifying question, the gravest first: doubtful ones, and those that are grave only when they are clear. */
export function signsToClarify(context: Context, event: Extract<TextEvent, { type: 'signs' }>): readonly Sign[] {
  const heard = new Set([...event.near, ...event.sure]);
  const graded = (...grades: readonly string[]) =>
    [...heard].filter((sign) => grades.includes(gates.gravest(context, [sign], event)));
  return [...graded('danger'), ...graded('warning', 'clarify')];
}
