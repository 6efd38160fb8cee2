/** The gates: what the facts known so far allow. Each is decided anew from the facts, so a correction re-opens it. */
import type { Stamp } from '../events.ts';
import type { InPlace, Sign } from '../facts.ts';
import { insertionLength } from '../rules/insertionLength.ts';
import { outTooLong } from '../rules/outTooLong.ts';
import { phVerdict } from '../rules/phVerdict.ts';
import { gradeSign, type SignGrade } from '../rules/signs.ts';
import { type TractVerdict, today, tractVerdict } from '../rules/tractAge.ts';
import { meantKg, weightBand } from '../rules/weight.ts';
import { weightFitsAge } from '../rules/weightForAge.ts';
import type { Card, GoInReason } from '../says.ts';
import type { Context } from './context.ts';

/** The time a gate is asked at; a tract grows older while the night goes on. */
export type At = Pick<Stamp, 'at'>;

/** From the verdict that allows least; whatever is none of them is usable. */
const strictness: readonly TractVerdict[] = ['too-young', 'nearly-too-young', 'young', 'unknown'];

export function tract(context: Context, { at }: At): TractVerdict {
  const { site, clinical } = context.protocol;
  const { firstPlaced, born } = context.facts;
  const day = today(at, site.timeZone);
  const told = tractVerdict(firstPlaced, day, clinical);
  if (firstPlaced === null || born === null || born.earliest === null) return told;
  // No tract is older than its child, whatever was told or filed; an unknown one is no younger for it.
  const atMost = tractVerdict({ earliest: null, latest: born.earliest }, day, clinical);
  return strictness.find((verdict) => verdict === told || verdict === atMost) ?? 'usable';
}

/** Nothing may be put in: the tract is too young, or of unknown age in a child who may be a newborn by weight. */
export function tractTooYoung(context: Context, at: At): boolean {
  const verdict = tract(context, at);
  if (verdict !== 'unknown') return verdict === 'too-young';
  const { firstPlaced, weight } = context.facts;
  return firstPlaced === 'unknown' && weightBand(weight) === 'under-3';
}

/**
 * Whether a tube in this tract may ever be used, whatever its placement shows: a G tube in a tract known to be old enough,
 * no warning sign, not sent in by a nurse, and the danger signs answered. Everything else only holds the stoma open.
 */
export function mayBeUsed(context: Context, at: At): boolean {
  return (
    context.facts.tubeKind === 'g' &&
    tract(context, at) === 'usable' &&
    !context.warning &&
    !sentIn(context) &&
    context.unwell === 'well' &&
    context.danger === null &&
    context.placed?.holderOnly !== true &&
    context.placed?.maybeLatex !== true
  );
}

/** A nurse's word to go in stands whatever else comes to be known. */
function sentIn(context: Context): boolean {
  return context.sentIn === 'now' || context.sentIn === 'held-open';
}

/** Why a tube that only holds the stoma open has to be seen in the emergency department. */
export function holderReason(context: Context, at: At): GoInReason {
  if (context.warning) return 'warning';
  if (sentIn(context)) return 'nurse';
  if (context.placed?.maybeLatex) return 'latex';
  if (context.facts.tubeKind !== 'g') return 'kind';
  if (tract(context, at) !== 'usable') return 'tract';
  if (context.unwell !== 'well') return 'unwell-unread';
  return 'burst-own';
}

/** One try where the tract is nearly too young, the tube was out too long or came out again; else the site's number. */
export function triesAllowed(context: Context, at: At): number {
  return oneTryOnly(context, at) ? 1 : context.protocol.clinical.insertionTries;
}

function oneTryOnly(context: Context, at: At): boolean {
  return context.cameOutAgain || tract(context, at) === 'nearly-too-young' || tooLong(context, at);
}

export function lastTry(context: Context, at: At): boolean {
  return triesAllowed(context, at) - context.failedTries <= 1;
}

export function triesLeft(context: Context, at: At): boolean {
  return context.failedTries < triesAllowed(context, at);
}

export function tooLong(context: Context, { at }: At): boolean {
  return outTooLong(context.facts.cameOutAtMs, context.placed?.atMs ?? at, context.protocol.clinical);
}

/** The own tube goes back only where it may be used, and only once. */
export function ownTubeWorthAsking(context: Context, at: At): boolean {
  return mayBeUsed(context, at) && context.facts.ownTube === null;
}

/** The steps for it were sent and nobody said yet how it went: it may be in, also where it may no longer be used. */
export function ownTubeUnderWay(context: Context, at: At): boolean {
  const { tubeKind, ownTube } = context.facts;
  const fits = tubeKind === 'g' && tract(context, at) === 'usable' && ownTube === 'yes';
  return fits && context.stepsSent === 'own' && !context.ownTried;
}

export function ownTubeGoesBack(context: Context, at: At): boolean {
  return mayBeUsed(context, at) && context.facts.ownTube === 'yes' && !context.ownTried;
}

/** A burst but complete G tube can hold an old tract open where there is nothing better; a warning sign forbids only its use. */
export function burstTubeHolds(context: Context, at: At): boolean {
  const { tubeKind, ownTube, kit } = context.facts;
  const fits = tubeKind === 'g' && tract(context, at) === 'usable';
  return fits && ownTube === 'burst' && kit === 'no' && !context.ownTried;
}

/** Whether no weight that may have been meant fits the child's age, as far as both are known. */
export function weightHardlyFits({ facts, protocol }: Context, { at }: At): boolean {
  const { born, weight } = facts;
  const meant = meantKg(weight);
  if (born === null || meant.length === 0) return false;
  const day = today(at, protocol.site.timeZone);
  return meant.every((kg) => !weightFitsAge(kg, born, day));
}

/** No length is told for it before it was told again. */
export function weightInDoubt(context: Context, at: At): boolean {
  return !context.facts.weightToldAgain && weightHardlyFits(context, at);
}

export function length(context: Context): { lowCm: number; highCm: number } {
  return insertionLength(weightBand(context.facts.weight));
}

export type ReadingVerdict =
  | 'none'
  | 'passed'
  | 'passed-after-feed'
  | 'ask-feed'
  | 'ask-looks'
  | 'recheck'
  | 'second-high';

/** What the reading means now: the fenced after-feed exception exists only for a first reading after an easy insertion. */
export function readingVerdict({ placed, protocol }: Context): ReadingVerdict {
  if (placed?.reading == null) return 'none';
  const verdict = phVerdict(placed.reading, protocol.clinical);
  if (verdict === 'passes') return 'passed';
  if (placed.recheck === 'due') return 'second-high';
  if (placed.recheck === 'waiting') return 'recheck';
  if (verdict !== 'after-feed-only' || placed.how !== 'easy' || placed.retested) return 'recheck';
  if (placed.fedLately === null) return 'ask-feed';
  if (placed.fedLately !== 'yes') return 'recheck';
  if (placed.looks === null) return 'ask-looks';
  return placed.looks === 'yes' ? 'passed-after-feed' : 'recheck';
}

export function readingPassed(context: Context): boolean {
  const verdict = readingVerdict(context);
  return verdict === 'passed' || verdict === 'passed-after-feed';
}

/** The one thing a nurse can clear: a hard insertion whose reading passed. */
export function clearable(context: Context, at: At): boolean {
  return (
    context.outcome?.to === 'hold' &&
    context.outcome.reason === 'hard' &&
    context.placed?.how === 'hard' &&
    readingPassed(context) &&
    mayBeUsed(context, at)
  );
}

/** The grade of the gravest of these signs, as the case stands. */
export function gravest(context: Context, heard: readonly Sign[], { at }: At): SignGrade {
  const order: readonly SignGrade[] = ['danger', 'warning', 'clarify'];
  const stage = {
    tubeIn: context.placed !== null,
    born: context.facts.born,
    weight: context.facts.weight,
    today: today(at, context.protocol.site.timeZone),
  };
  const grades = new Set(heard.map((sign) => gradeSign(sign, stage)));
  return order.find((grade) => grades.has(grade)) ?? 'ignore';
}

/** What is told of a tube that never came out; null where it did. A case that began before this was kept knows of none. */
export function inPlace({ facts }: Context): InPlace | null {
  return facts.inPlace ?? null;
}

/** What is in the stoma, for the nurse and the desk. */
export function inside(context: Context): Card['inside'] {
  const { placed, facts } = context;
  if (placed !== null) return placed.tube;
  if (facts.tubeKind === 'half-out' || facts.tubeKind === 'nose') return facts.tubeKind;
  return inPlace(context) === null ? 'nothing' : 'in-place';
}
