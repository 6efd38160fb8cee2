/** Which of a family's children a bystander takes it to be about, and what of the files counts then. */
import type { Told } from '#machines/facts.ts';
import type { Bystander } from './bystander.ts';

/** How a bystander takes what was told before it was known which child it is, once its file is in hand. */
type HearsTold = (b: Bystander, heard: { readonly told: Told; readonly corrects: boolean }) => Bystander;

/** The first name chooses; another one with words of correction takes its place; without them it is another child's. */
export function hearsChildren(b: Bystander, named: Told['children'], corrects: boolean, again: HearsTold): Bystander {
  const others = (named ?? []).filter((child) => child !== b.which);
  const [only] = others;
  if (b.children.length === 0 || only === undefined || others.length > 1) return b;
  if (typeof b.which !== 'number') return again(withFile(b, only), { told: toldSoFar(b), corrects: false });
  return corrects ? instead(b, only) : b;
}

function withFile(b: Bystander, which: number): Bystander {
  return { ...b, ...b.children[which], which };
}

function instead(b: Bystander, which: number): Bystander {
  const next = withFile({ ...b, bareWeight: null, weightToldAgain: false }, which);
  const kit = next.latex && b.kit === 'yes' ? null : b.kit;
  const maybeLatex = next.latex && b.tube?.which === 'temporary';
  const tube = b.tube && { ...b.tube, cleared: false, secured: false, maybeLatex: b.tube.maybeLatex || maybeLatex };
  return { ...next, kit, tube, cannotWait: b.cannotWait || next.cannotWait };
}

function toldSoFar({ kind, tract, weight, born, latex }: Bystander): Told {
  const bare = weight !== null && weight !== 'unknown' && 'band' in weight ? weight.bare : undefined;
  return {
    ...(kind !== null && { tubeKind: kind }),
    ...(tract !== null && { firstPlaced: tract }),
    ...(bare !== undefined && { weight: { bare } }),
    ...(weight !== null && (weight === 'unknown' || 'kg' in weight) && { weight }),
    ...(born !== null && { born }),
    ...(latex && { latexAllergy: true as const }),
  };
}

/** None of them, or nobody can tell: one allergy in the family counts for all. */
export function noneOfThem(b: Bystander): Bystander {
  return { ...b, which: 'none', fileOpen: false, latex: b.latex || b.children.some(({ latex }) => latex) };
}

/** The name was wrong: what its file held is forgotten. */
export function notThatChild(b: Bystander): Bystander {
  if (b.children.length === 0) return b;
  const facts = { kind: null, tract: null, weight: null, bareWeight: null, weightToldAgain: false, born: null };
  return { ...b, ...facts, which: null, fileOpen: false };
}
