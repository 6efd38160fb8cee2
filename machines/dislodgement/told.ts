/**
 * Facts told unasked, and corrections. A fact may always move a gate to the careful side; to the other side only where
 * nothing was known, or with words of correction, and then the question itself is asked again.
 */
import type { Heard } from '../events.ts';
import {
  type DateRange,
  type InPlace,
  inPlaceTroubles,
  type KitAnswer,
  type OwnTubeAnswer,
  type PhReading,
  type Told,
  type TubeKind,
  type YesNo,
} from '../facts.ts';
import { insertionLength } from '../rules/insertionLength.ts';
import { weightBand } from '../rules/weight.ts';
import type { NotedFacts } from '../says.ts';
import { type Context, justPlaced } from './context.ts';
import { inPlace, inside } from './gates.ts';
import { noteCannotWait, noteOwnTube, noteWeight, withFacts, withPlaced } from './note.ts';
import { foldMayJoin } from './sameChild.ts';
import { notOnFile, otherChildAfterAll, toldBefore, withChild } from './whichChild.ts';

type Correcting = Pick<Heard, 'corrects' | 'at'>;
type Fold<T> = (context: Context, value: T, heard: Correcting) => Context;

/** The context with everything the text told beside its answer. */
export function noteTold(context: Context, heard: Pick<Heard, 'told' | 'corrects' | 'at'>): Context {
  const { told } = heard;
  let next = fold(context, told.notOnFile, heard, notOnFile);
  next = fold(next, told.children, heard, foldChildren);
  next = fold(next, told.severalChildren, heard, goesOnForOne);
  next = fold(next, told.mayJoin, heard, foldMayJoin);
  next = fold(next, told.tubeKind, heard, foldTubeKind);
  next = fold(next, told.halfOutOf, heard, foldHalfOutOf);
  next = fold(next, told.inPlace, heard, foldInPlace);
  next = fold(next, told.firstPlaced, heard, foldFirstPlaced);
  next = fold(next, told.weight, heard, foldWeight);
  next = fold(next, told.cameOutAtMs, heard, foldCameOut);
  next = fold(next, told.ownTube, heard, foldOwnTube);
  next = fold(next, told.kit, heard, foldKit);
  next = fold(next, told.strips, heard, foldStrips);
  next = fold(next, told.latexAllergy, heard, foldLatex);
  next = fold(next, told.born, heard, foldBorn);
  next = fold(next, told.insertedHow, heard, foldInsertedHow);
  next = fold(next, told.backIn, heard, foldBackIn);
  next = fold(next, told.ph, heard, foldPh);
  next = fold(next, told.cannotWait, heard, noteCannotWait);
  return { ...next, unrepeated: { ...next.unrepeated, ...toRepeat(context, next, told) } };
}

/** Whether the text told anything that was not known before. */
export function tellsNothing(context: Context, heard: Pick<Heard, 'told' | 'corrects' | 'at'>): boolean {
  return JSON.stringify(noteTold(context, heard)) === JSON.stringify(context);
}

/** The one child named is the one it is about; another named later is another child's tube, unless the text corrects. */
function foldChildren(context: Context, named: readonly number[], { corrects, at }: Correcting): Context {
  if (context.children === null) return context;
  const { is } = context.children;
  const others = named.filter((child) => child !== is);
  const [only, more] = others;
  if (only === undefined) return context;
  if (more === undefined && typeof is !== 'number') {
    const chosen = withChild(context, only);
    return {
      ...noteTold(chosen, { told: toldBefore(context.facts), corrects: false, at }),
      unrepeated: context.unrepeated,
    };
  }
  if (more === undefined && corrects) return stopIfTooFarIn(otherChildAfterAll(context, only));
  return goesOnForOne(context);
}

/** A case is about one child: the family is told so, and a nurse is called for the other. */
function goesOnForOne(context: Context): Context {
  return { ...context, otherChild: true, preface: [...context.preface, { key: 'oneChild' }] };
}

function fold<T>(context: Context, value: T | undefined, heard: Correcting, how: Fold<T>): Context {
  return value === undefined ? context : how(context, value, heard);
}

/** How careful the line has to be with a kind; a nose tube is no kind of this tube, so it is neither before nor after another. */
const care: Readonly<Record<TubeKind, number>> = { g: 0, unknown: 1, gj: 2, j: 3, 'half-out': 4, nose: Number.NaN };

/**
 * "Her G tube" is how people talk of any tube, so a kind that is known gives way only to one that asks for more care; with
 * words of correction it is asked again.
 */
function foldTubeKind(context: Context, tubeKind: TubeKind, { corrects }: Correcting): Context {
  const known = context.facts.tubeKind;
  if (known === tubeKind) return context;
  const beforeTheFile = context.file === 'unconfirmed' && tubeKind === 'nose';
  if (known === null || beforeTheFile || care[tubeKind] > care[known]) {
    const halfOutOf = tubeKind === 'half-out' && known !== 'half-out' && known !== 'nose' ? known : null;
    return withFacts({ ...context, stepsSent: null }, { tubeKind, halfOutOf });
  }
  // A nose tube that turns out another tube is asked about: nothing of it was asked before.
  return corrects || known === 'nose' ? withFacts(context, { tubeKind: null }) : context;
}

/** Told beside it which tube is half out; the kind that asks for more care counts. */
function foldHalfOutOf(context: Context, told: NonNullable<Told['halfOutOf']>): Context {
  const { tubeKind, halfOutOf } = context.facts;
  if (tubeKind !== 'half-out') return context;
  return halfOutOf === null || care[told] > care[halfOutOf] ? withFacts(context, { halfOutOf: told }) : context;
}

/**
 * What is wrong with a tube that never came out; the graver of two troubles counts. A tube put in tonight is another matter, and
 * who was sent in goes in: the words of a tired parent may mean either.
 */
function foldInPlace(context: Context, told: InPlace): Context {
  const known = inPlace(context);
  if (context.placed !== null || context.outcome?.to === 'go-in') return context;
  const graver = known === null || inPlaceTroubles.indexOf(told) > inPlaceTroubles.indexOf(known);
  return graver ? withFacts({ ...context, stepsSent: null }, { inPlace: told }) : context;
}

/** "We have the kit" answers a question that was not asked yet; against an earlier answer it asks again. */
function foldKit(context: Context, kit: KitAnswer, { corrects }: Correcting): Context {
  const known = context.facts.kit;
  if (known === kit || context.placed !== null) return context;
  if (kit !== 'yes') return withFacts(context, { kit });
  // With a latex allergy only the question that says "latex-free" counts.
  if (known === null) return context.facts.latexAllergy ? context : withFacts(context, { kit });
  return corrects || known === 'no' ? withFacts(context, { kit: null }) : context;
}

function foldStrips(context: Context, strips: YesNo): Context {
  const known = context.facts.strips;
  if (known === strips) return context;
  return withFacts(context, { strips: known === 'no' ? null : strips });
}

/** The younger of two ages counts: it is the one a fever is judged by. */
function foldBorn(context: Context, born: DateRange): Context {
  const known = context.facts.born;
  return known === null || born.latest > known.latest ? withFacts(context, { born }) : context;
}

function foldFirstPlaced(context: Context, told: DateRange | 'unknown', { corrects }: Correcting): Context {
  const known = context.facts.firstPlaced;
  if (known === null || known === 'unknown') return withFacts(context, { firstPlaced: told });
  if (told === 'unknown') return corrects ? withFacts(context, { firstPlaced: null }) : context;
  if (told.latest > known.latest) return withFacts(context, { firstPlaced: told });
  return corrects && told.latest < known.latest ? withFacts(context, { firstPlaced: null }) : context;
}

/** A weight told now is newer than any other. It means new steps, or, with a tube in to another length, a tube to stop at. */
function foldWeight(context: Context, told: NonNullable<Told['weight']>): Context {
  if (told === 'unknown' && context.facts.weight !== null) return context;
  const next = noteWeight(context, told);
  if (JSON.stringify(next.facts.weight) === JSON.stringify(context.facts.weight)) return next;
  if (next.placed === null) return { ...next, stepsSent: null };
  return stopIfTooFarIn(next);
}

function stopIfTooFarIn(context: Context): Context {
  return wrongLength(context) ? withPlaced(context, { stopped: 'tube-problem' }) : context;
}

function wrongLength({ placed, facts }: Context): boolean {
  if (placed === null || placed.lengthBand === null || facts.weight === null) return false;
  const told = insertionLength(placed.lengthBand);
  const right = insertionLength(weightBand(facts.weight));
  return told.highCm > right.highCm;
}

/** The earlier of two times counts, unless the text corrects. */
function foldCameOut(context: Context, told: number, { corrects }: Correcting): Context {
  const known = context.facts.cameOutAtMs;
  return withFacts(context, { cameOutAtMs: typeof known === 'number' && !corrects ? Math.min(known, told) : told });
}

function foldOwnTube(context: Context, ownTube: OwnTubeAnswer, { corrects }: Correcting): Context {
  const careful = ownTube === 'burst' || ownTube === 'no' || ownTube === 'long-inside';
  if (context.facts.ownTube !== null && !careful && !corrects) return context;
  return noteOwnTube(context, ownTube);
}

/**
 * A kit or a tube chosen before the allergy was known may hold latex: the kit is asked about again before it is used. Told once
 * more before a tube is in, as the steps say to where it is not marked latex-free, it is asked about once more.
 */
function foldLatex(context: Context, latexAllergy: true): Context {
  if (context.facts.latexAllergy && context.placed !== null) return context;
  const kit = context.facts.kit === 'yes' ? null : context.facts.kit;
  const next = withFacts(context, { latexAllergy, kit });
  return next.placed?.tube === 'temporary' ? withPlaced(next, { maybeLatex: true }) : next;
}

/** Hard stays hard once the line has held for it: from there only a nurse can clear it. */
function foldInsertedHow(context: Context, how: 'easy' | 'hard', { corrects }: Correcting): Context {
  if (context.placed === null || context.placed.how === how) return context;
  if (how === 'hard') return withPlaced(context, { how, cleared: false });
  const mayEase = context.placed.how === null || (corrects && context.outcome === null && !context.placed.heldHard);
  return mayEase ? withPlaced(context, { how }) : context;
}

/**
 * The own tube is back before the line asked for it: it is checked as one that went in by the steps. After a try that failed, an
 * order to go in, or a tube not known to be whole it only holds the stoma open.
 */
function foldBackIn(context: Context, backIn: NonNullable<Told['backIn']>, { at }: Correcting): Context {
  const { tubeKind, ownTube } = context.facts;
  if (inside(context) !== 'nothing' || tubeKind === 'nose') return context;
  const maybeWhole = ownTube === null || ownTube === 'yes';
  const holderOnly = !maybeWhole || context.failedTries > 0 || context.outcome?.to === 'go-in';
  const how = backIn === 'in' ? null : backIn;
  const placed = justPlaced({ tube: 'own', how, atMs: at, holderOnly, lengthBand: null });
  return { ...context, ownTried: true, stepsSent: null, placed };
}

/** A corrected reading counts at once if it is higher; a lower one needs new contents and a new strip. */
function foldPh(context: Context, ph: PhReading): Context {
  const { placed } = context;
  if (placed?.recheck === 'waiting') return { ...context, preface: [...context.preface, { key: 'earlyReading' }] };
  if (placed?.reading == null || ph.high <= placed.reading.high) return context;
  const readingCorrected = placed.readingCorrected || context.outcome?.to === 'hold';
  return withPlaced(context, {
    reading: ph,
    fedLately: null,
    looks: null,
    secured: false,
    cleared: false,
    readingCorrected,
  });
}

/** What to repeat back: the facts the text named that now stand as told. */
function toRepeat(before: Context, after: Context, told: Told): NotedFacts {
  const { tubeKind, firstPlaced, weight, cameOutAtMs } = after.facts;
  const old = before.facts;
  return {
    ...(told.tubeKind !== undefined && tubeKind !== null && tubeKind !== old.tubeKind && { tubeKind }),
    ...(told.firstPlaced !== undefined &&
      firstPlaced !== null &&
      firstPlaced !== 'unknown' &&
      firstPlaced !== old.firstPlaced && { firstPlaced }),
    ...(told.weight !== undefined && weight !== null && weight !== 'unknown' && weight !== old.weight && { weight }),
    ...(typeof cameOutAtMs === 'number' && cameOutAtMs !== old.cameOutAtMs && { cameOutAtMs }),
    ...(told.backIn !== undefined && before.placed === null && after.placed !== null && { backIn: true as const }),
    ...(told.latexAllergy && !old.latexAllergy && { latexAllergy: told.latexAllergy }),
    ...(told.ph !== undefined && after.placed?.reading === told.ph && { ph: told.ph }),
  };
}
