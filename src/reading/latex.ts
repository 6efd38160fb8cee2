/** Reads a latex allergy, and a tube that may hold latex. */
import type { QuestionKey } from '#machines/facts.ts';
import type { Said } from './said.ts';

/** Whether the text tells that the child is allergic. */
export function toldLatexAllergy(said: Said): boolean {
  const { plain, words } = said;
  return (words.told.latexAllergy.test(plain) && !words.told.noLatexAllergy.test(plain)) || allergicToTube(said);
}

/** Questions about a tube that may hold latex. */
const ofLatex: ReadonlySet<QuestionKey | null> = new Set<QuestionKey | null>(['kit', 'tube-in']);

/** "Yes, but she is allergic": beside a tube that may hold latex, an allergy without its matter is one to latex. */
function allergicToTube({ plain, open, words: { told } }: Said): boolean {
  return ofLatex.has(open.asking) && told.bareAllergy.test(plain) && !told.noAllergy.test(plain);
}

/** "It doesn't say latex-free": what the insertion steps tell to stop at. */
export function mayHoldLatex({ plain, open, words: { told } }: Said): boolean {
  return open.asking === 'tube-in' && told.notLatexFree.test(plain);
}
