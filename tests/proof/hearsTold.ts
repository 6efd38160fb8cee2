/** Facts told unasked, as a bystander takes them: always to the careful side, to the other only where nothing was known. */
import type { Heard } from '#machines/events.ts';
import { inPlaceTroubles, type Told, type TubeKind } from '#machines/facts.ts';
import { type Bystander, justIn, type TubeSeen } from './bystander.ts';
import { hearsChildren } from './hearsChildren.ts';
import { hearsWeight } from './hearsWeight.ts';

const about = (b: Bystander, tube: Partial<TubeSeen>): Bystander =>
  b.tube === null ? b : { ...b, tube: { ...b.tube, ...tube } };

/** The bystander after everything a text told beside its answer. */
export function hearsTold(b: Bystander, { told, corrects }: Pick<Heard, 'told' | 'corrects'>): Bystander {
  if (Object.keys(told).length === 0) return b;
  let next = hearsChildren(b, told.children, corrects, hearsTold);
  next = hearsKind(next, told.tubeKind, corrects);
  next = hearsInPlace(next, told.inPlace);
  next = hearsTract(next, told.firstPlaced, corrects);
  next = hearsToldWeight(next, told.weight);
  next = hearsCameOut(next, told.cameOutAtMs, corrects);
  next = hearsOwnTube(next, told.ownTube, corrects);
  next = hearsKitAndStrips(next, told);
  next = hearsHow(next, told.insertedHow, corrects);
  next = hearsBackIn(next, told.backIn);
  return hearsReading(next, told.ph);
}

const care: readonly TubeKind[] = ['unknown', 'gj', 'j', 'half-out'];

/** People call any tube a G tube: a kind that is known gives way only to one that asks for more care. */
function hearsKind(b: Bystander, kind: Told['tubeKind'], corrects: boolean): Bystander {
  if (kind === undefined || kind === b.kind) return b;
  const more = b.kind !== null && b.kind !== 'nose' && care.indexOf(kind) > care.indexOf(b.kind);
  if (b.kind === null || more || (b.fileOpen && kind === 'nose'))
    return { ...b, kind, halfOutOf: kind === 'half-out' ? b.kind : null };
  // A nose tube that turns out another tube is asked about.
  return corrects || b.kind === 'nose' ? { ...b, kind: null } : b;
}

/** With nothing put in, a tube that never came out is what is in; the graver trouble counts. Who was sent in goes in. */
function hearsInPlace(b: Bystander, told: Told['inPlace']): Bystander {
  if (told === undefined || b.tube !== null || b.standing === 'go-in') return b;
  const graver = b.inPlace === null || inPlaceTroubles.indexOf(told) > inPlaceTroubles.indexOf(b.inPlace);
  return graver ? { ...b, inPlace: told } : b;
}

function hearsTract(b: Bystander, told: Told['firstPlaced'], corrects: boolean): Bystander {
  if (told === undefined) return b;
  if (b.tract === null || b.tract === 'unknown') return { ...b, tract: told };
  if (told !== 'unknown' && told.latest > b.tract.latest) return { ...b, tract: told };
  return corrects && (told === 'unknown' || told.latest < b.tract.latest) ? { ...b, tract: null } : b;
}

function hearsToldWeight(b: Bystander, told: Told['weight']): Bystander {
  if (told === undefined || (told === 'unknown' && b.weight !== null)) return b;
  return hearsWeight(b, told);
}

/** The earlier of two times counts, unless the text corrects. */
function hearsCameOut(b: Bystander, told: number | undefined, corrects: boolean): Bystander {
  if (told === undefined) return b;
  const known = b.cameOutAtMs;
  return typeof known === 'number' && known <= told && !corrects ? b : { ...b, cameOutAtMs: told };
}

function hearsOwnTube(b: Bystander, told: Told['ownTube'], corrects: boolean): Bystander {
  if (told === undefined || told === b.ownTube) return b;
  // A long inside part was a GJ all along, or worse.
  if (told === 'long-inside')
    return b.kind === 'nose' ? { ...b, ownTube: told } : hearsKind({ ...b, ownTube: told }, 'gj', false);
  if (b.ownTube !== null && told !== 'burst' && told !== 'no' && !corrects) return b;
  const burst = told === 'burst' && b.tube?.which === 'own';
  return about({ ...b, ownTube: told }, burst ? { holderOnly: true, whole: false } : {});
}

/** A kit told of before the allergy was not asked about as latex-free; the allergy told again doubts that it is. */
function hearsKitAndStrips(b: Bystander, told: Told): Bystander {
  const latex = told.latexAllergy === true && !b.latex;
  const before = told.latexAllergy === true && b.tube === null && b.kit === 'yes' ? null : b.kit;
  const next: Bystander = {
    ...b,
    latex: b.latex || latex,
    kit: told.kit === undefined || b.tube !== null ? before : hearsKit(before, told.kit, b.latex || latex),
    strips: told.strips ?? b.strips,
    born: told.born !== undefined && (b.born === null || told.born.latest > b.born.latest) ? told.born : b.born,
  };
  return latex && b.tube?.which === 'temporary' ? about(next, { maybeLatex: true }) : next;
}

/** "We have it" answers a question not asked yet; with an allergy only the question that says latex-free counts. */
function hearsKit(known: Bystander['kit'], told: NonNullable<Told['kit']>, latex: boolean): Bystander['kit'] {
  if (told !== 'yes' || known === told) return told;
  return known === null && !latex ? told : null;
}

/** Hard stays hard once the line has held for it. */
function hearsHow(b: Bystander, how: Told['insertedHow'], corrects: boolean): Bystander {
  if (how === undefined || b.tube === null) return b;
  if (how === 'hard') return about(b, b.tube.how === 'hard' ? {} : { how, cleared: false });
  return b.tube.how === null || (corrects && (b.standing === null || b.standing === 'recheck') && !b.tube.heldHard)
    ? about(b, { how })
    : b;
}

/** An own tube put back unasked is in, to be asked about; after a try, or sent in, it only holds the stoma open. */
function hearsBackIn(b: Bystander, backIn: Told['backIn']): Bystander {
  if (backIn === undefined || b.tube !== null || b.kind === 'half-out' || b.kind === 'nose' || b.inPlace !== null)
    return b;
  const whole = b.ownTube === 'yes';
  const holderOnly = (b.ownTube !== null && !whole) || b.triesFailed > 0 || b.standing === 'go-in';
  const tube = justIn('own', backIn === 'in' ? null : backIn, b.ownTube);
  return { ...b, tube: { ...tube, holderOnly } };
}

/** A corrected reading counts at once if it is higher; a lower one needs new contents. */
function hearsReading(b: Bystander, ph: Told['ph']): Bystander {
  const { tube } = b;
  if (ph === undefined || tube === null || tube.reading === null || tube.recheck === 'waiting') return b;
  if (ph.high <= tube.reading.high) return b;
  return about(b, { reading: ph, fed: null, looks: null, secured: false, cleared: false });
}
