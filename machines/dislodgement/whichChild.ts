/**
 * Which child of a family it is: before that is known no file counts; named anew with words of correction, everything that hung
 * on the file is decided again.
 */
import type { Told, Weight, WeightTold } from '../facts.ts';
import { type Context, type Facts, type Filed, noFacts } from './context.ts';

/** The file of one of the family's children; a number that no child has is an impossible state. */
function fileOf(files: readonly Filed[], is: number): Filed {
  const file = files[is];
  if (file === undefined) throw new Error(`a family has no child ${is}`);
  return file;
}

/** This child's file, still to be confirmed, in the place of what was known: all is decided anew, but what the silence of every nurse decided. */
export function withChild(context: Context, is: number): Context {
  if (context.children === null) throw new Error('there is only one child');
  const { file, facts } = fileOf(context.children.files, is);
  const stands = context.outcome?.to === 'go-in' && context.outcome.reason === 'nobody-answered';
  return {
    ...context,
    ...(stands ? {} : { outcome: null, disposition: null }),
    facts: { ...context.facts, ...facts },
    children: { ...context.children, is },
    file,
  };
}

/** What was told of the child before it was known which one it is: heard again after its file. */
export function toldBefore({ tubeKind, firstPlaced, weight, born, latexAllergy, cannotWait }: Facts): Told {
  return {
    ...(tubeKind !== null && { tubeKind }),
    ...(firstPlaced !== null && { firstPlaced }),
    ...weightTold(weight),
    ...(born !== null && { born }),
    ...(latexAllergy && { latexAllergy }),
    ...(cannotWait !== null && { cannotWait }),
  };
}

function weightTold(weight: Weight | null): { readonly weight?: WeightTold } {
  if (weight === null) return {};
  if (weight === 'unknown' || 'kg' in weight) return { weight };
  return weight.bare === undefined ? {} : { weight: { bare: weight.bare } };
}

/**
 * Another child after all: nothing that was decided for the first stands, but danger and warning do, and so does a nurse's word.
 * A tube that is in stays in, to be secured and cleared anew.
 */
export function otherChildAfterAll(context: Context, is: number): Context {
  const { kit, cannotWait } = context.facts;
  const next = withChild({ ...context, unclear: null, stepsSent: null, unrepeated: {}, childCorrected: true }, is);
  const { latexAllergy } = next.facts;
  const placed = next.placed && {
    ...next.placed,
    cleared: false,
    secured: false,
    maybeLatex: next.placed.maybeLatex || (latexAllergy && next.placed.tube === 'temporary'),
  };
  const facts = {
    bareWeight: null,
    weightToldAgain: false,
    kit: latexAllergy && kit === 'yes' ? null : kit,
    ...(context.cannotWaitTold && { cannotWait }),
  };
  return { ...next, said: null, placed, facts: { ...next.facts, ...facts } };
}

/** None of them, or nobody can tell: as for a phone without a file; one allergy in the family counts for every child. */
export function noneOfThem(context: Context): Context {
  if (context.children === null) return context;
  const latexAllergy = context.facts.latexAllergy || context.children.files.some(({ facts }) => facts.latexAllergy);
  return {
    ...context,
    children: { ...context.children, is: 'none' },
    file: 'none',
    facts: { ...context.facts, latexAllergy },
  };
}

/** The name was wrong and no other was said: asked again, and what the wrong file held is forgotten; an allergy never is. */
export function noChildYet(context: Context, open: Context): Context {
  if (context.children === null) return context;
  const { latexAllergy } = context.facts;
  const { inPlace, cameOutAtMs, ownTube, kit, strips } = open.facts;
  const cannotWait = context.cannotWaitTold ? context.facts.cannotWait : null;
  return {
    ...open,
    children: { ...context.children, is: null },
    file: 'none',
    stepsSent: null,
    facts: { ...noFacts, inPlace, cameOutAtMs, ownTube, kit, strips, latexAllergy, cannotWait },
  };
}

/**
 * Another child than the only one on file: nothing of the file counts, and no name is said. An allergy is never forgotten, and a
 * tube that was put in by the wrong file is for a nurse.
 */
export function notOnFile(context: Context): Context {
  if (context.children !== null || context.file === 'none') return context;
  const { cameOutAtMs, ownTube, kit, strips, latexAllergy } = context.facts;
  const cannotWait = context.cannotWaitTold ? context.facts.cannotWait : null;
  const stands = context.outcome?.to === 'go-in' && context.outcome.reason === 'nobody-answered';
  return {
    ...context,
    ...(stands ? {} : { outcome: null, disposition: null }),
    children: { files: [], is: 'none' },
    file: 'none',
    unclear: null,
    stepsSent: null,
    said: null,
    placed: context.placed && { ...context.placed, cleared: false, secured: false, stopped: 'tube-problem' },
    facts: { ...noFacts, cameOutAtMs, ownTube, kit, strips, latexAllergy, cannotWait },
  };
}
