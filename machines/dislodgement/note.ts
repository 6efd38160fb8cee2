/** Taking an answer into the facts: what each question's answer changes, and nothing else. */
import type { TextEvent } from '../events.ts';
import { type InsertedAnswer, type OwnTubeAnswer, type QuestionKey, questionKeys, type WeightTold } from '../facts.ts';
import { phVerdict } from '../rules/phVerdict.ts';
import { saysSameNumber, settleWeight, weightBand } from '../rules/weight.ts';
import { type Context, type Facts, justPlaced, nothingToClarify, type Placed, tubeIn } from './context.ts';
import { weightInDoubt } from './gates.ts';
import { noneOfThem } from './whichChild.ts';

export type AnswerEvent = Extract<TextEvent, { type: `answer.${string}` }>;

/** Values that are no answer after all: a weight no child has, a pH no strip shows, "it is in" to "how did it go in?", half of what was asked. */
export function isNoAnswer(context: Context, event: AnswerEvent): boolean {
  if (event.type === 'answer.weight') return isNoWeight(context, event);
  if (event.type === 'answer.ph') return phVerdict(event.value, context.protocol.clinical) === 'no-reading';
  // A part named first is asked about once with all of them; named again, the answer is still open.
  if (event.value === 'part') return tubeIn(context).securedTried > 0;
  return event.value === 'in' && context.placed !== null;
}

/** A yes counts only for a number that was repeated. */
function isNoWeight(context: Context, { value, at }: Extract<AnswerEvent, { type: 'answer.weight' }>): boolean {
  if (value === 'as-told') return !weightInDoubt(context, { at });
  return 'implausible' in settleWeight(value, context.facts.bareWeight);
}

/** The context after the answer; `told` facts of the same text come after it, see `told.ts`. */
export function noteAnswer(context: Context, event: AnswerEvent): Context {
  return { ...changed(context, event), unclear: null, answered: answeredBy(event) };
}

/** What a text answers beside the signs it tells; they are graded as the case stands after it. */
export function noteBeside(context: Context, event: Extract<TextEvent, { type: 'signs' }>): Context {
  if (event.answer === undefined) return context;
  const answer: AnswerEvent = { ...event.answer, at: event.at, clinicOpen: event.clinicOpen };
  return isNoAnswer(context, answer) ? context : noteAnswer(context, answer);
}

function answeredBy({ type }: AnswerEvent): QuestionKey | null {
  return questionKeys.find((key) => type === `answer.${key}`) ?? null;
}

function changed(context: Context, event: AnswerEvent): Context {
  switch (event.type) {
    case 'answer.unwell':
      return { ...context, unwell: 'well', ...nothingToClarify };
    case 'answer.who':
      return { ...context, sameChild: event.value === 'none' ? 'none' : 'maybe' };
    case 'answer.which-child':
      return noneOfThem(context);
    case 'answer.confirm':
      return noteConfirm(context, event.value);
    case 'answer.tube-kind':
      return withFacts(context, { tubeKind: event.value, halfOutOf: null });
    case 'answer.first-placed':
      return withFacts(context, { firstPlaced: event.value });
    case 'answer.own-tube':
      return noteOwnTube(context, event.value);
    case 'answer.own-tube-in':
      return noteInserted(context, 'own', event);
    case 'answer.tube-in':
      return noteInserted(context, 'temporary', event);
    case 'answer.kit':
      return withFacts(context, { kit: event.value });
    case 'answer.weight':
      return noteWeightAnswer(context, event);
    case 'answer.came-out':
      return noteCameOut(context, event.value);
    case 'answer.after-in':
      return event.value === 'yes' ? { ...context, warning: true } : withPlaced(context, { afterIn: 'well' });
    case 'answer.strips':
      return withFacts(context, { strips: event.value });
    case 'answer.contents':
      return event.value === 'yes'
        ? withPlaced(context, { contents: true })
        : withPlaced(context, { contentsTried: tubeIn(context).contentsTried + 1 });
    case 'answer.ph':
      return withPlaced(context, { reading: event.value, fedLately: null, looks: null, cleared: false });
    case 'answer.fed-lately':
      return withPlaced(context, { fedLately: event.value });
    case 'answer.looks':
      return withPlaced(context, { looks: event.value });
    case 'answer.secured':
      return event.value === 'yes'
        ? withPlaced(context, { secured: true })
        : withPlaced(context, { securedTried: tubeIn(context).securedTried + 1 });
    case 'answer.first-feed':
    case 'answer.next-day':
    case 'answer.arrived':
    case 'answer.clinic':
      return context; // aftercare's questions
  }
}

/** A "no" to the file forgets what the file held: kind, first placement and weight are asked afresh. */
function noteConfirm(context: Context, value: 'yes' | 'no'): Context {
  const settled: Context = { ...context, file: 'settled' };
  if (value === 'yes') return settled;
  return withFacts(settled, { tubeKind: null, firstPlaced: null, weight: null, bareWeight: null });
}

/** What must not be missed, told by the caregiver: a nurse is called about it. */
export function noteCannotWait(context: Context, cannotWait: string): Context {
  return withFacts({ ...context, cannotWaitTold: true }, { cannotWait: both(context.facts.cannotWait, cannotWait) });
}

/** What was named before stays first: a later text may only speak of it. */
function both(known: string | null, told: string): string {
  if (known === null || told.includes(known)) return told;
  return known.includes(told) ? known : `${known}; ${told}`;
}

/** What the own tube turned out to be; one that is in and not known to be whole only holds the stoma open. */
export function noteOwnTube(context: Context, ownTube: OwnTubeAnswer): Context {
  const next = withFacts(context, { ownTube });
  const told = ownTube === 'long-inside' ? noteLongInside(next) : next;
  return told.placed?.tube === 'own' && ownTube !== 'yes' ? withPlaced(told, { holderOnly: true }) : told;
}

/** A tube with a long inside part was a GJ all along, unless what is known asks for more care: J, half out, or a nose tube. */
function noteLongInside(context: Context): Context {
  const { tubeKind } = context.facts;
  if (tubeKind !== null && tubeKind !== 'g' && tubeKind !== 'unknown') return context;
  return withFacts({ ...context, preface: [...context.preface, { key: 'longInside' }] }, { tubeKind: 'gj' });
}

function noteInserted(
  context: Context,
  tube: 'own' | 'temporary',
  { value, at }: { readonly value: InsertedAnswer; readonly at: number },
): Context {
  if (value === 'no') return noteFailedTry(context, tube);
  const told = value === 'in' ? null : value;
  // What was held as hard stays hard: only a nurse clears it.
  const how = context.placed?.heldHard ? 'hard' : told;
  if (context.placed !== null) return withPlaced(context, { how });
  return {
    ...context,
    ownTried: context.ownTried || tube === 'own',
    placed: justPlaced({
      tube,
      how,
      atMs: at,
      holderOnly: tube === 'own' && context.facts.ownTube === 'burst',
      lengthBand: tube === 'own' ? null : weightBand(context.facts.weight),
    }),
  };
}

/** A try that did not get a tube in. */
export function noteFailedTry(context: Context, tube: 'own' | 'temporary'): Context {
  return {
    ...context,
    placed: null,
    failedTries: context.failedTries + 1,
    ownTried: context.ownTried || tube === 'own',
    stepsSent: null,
  };
}

/** The number that was in doubt, told again, is believed; with its unit now, where it had none. */
function noteWeightAnswer(context: Context, event: Extract<AnswerEvent, { type: 'answer.weight' }>): Context {
  const { value } = event;
  if (value === 'as-told') return withFacts(context, { weightToldAgain: true });
  const told = noteWeight(context, value);
  if (!weightInDoubt(context, event) || !saysSameNumber(context.facts.weight, value)) return told;
  const exact = value !== 'unknown' && 'kg' in value;
  return withFacts(exact ? told : context, { weightToldAgain: true });
}

/** Settles a weight, keeps a bare number that still needs its unit, and drops a value no child has. */
export function noteWeight(context: Context, told: WeightTold): Context {
  const result = settleWeight(told, context.facts.bareWeight);
  const weightToldAgain = context.facts.weightToldAgain && saysSameNumber(context.facts.weight, told);
  if ('settled' in result) return withFacts(context, { weight: result.settled, bareWeight: null, weightToldAgain });
  if ('askUnit' in result) return withFacts(context, { weight: null, bareWeight: result.askUnit, weightToldAgain });
  return context;
}

/** The first "unknown" asks when it was last seen in; the second is final and counts as too long. */
function noteCameOut(context: Context, value: number | 'unknown'): Context {
  if (value === 'unknown' && !context.askedLastSeen) return { ...context, askedLastSeen: true };
  return withFacts(context, { cameOutAtMs: value });
}

export function withFacts(context: Context, facts: Partial<Facts>): Context {
  return { ...context, facts: { ...context.facts, ...facts } };
}

/** Changes what is known of the tube that is in. */
export function withPlaced(context: Context, placed: Partial<Placed>): Context {
  return { ...context, placed: { ...tubeIn(context), ...placed } };
}
