/** Reads a latex allergy, and a tube that may hold latex. */
import type { Said } from './said.ts';

/** Whether the text tells that the child is allergic. */
export function toldLatexAllergy({ plain, words: { told } }: Said): boolean {
  return told.latexAllergy.test(plain) && !told.noLatexAllergy.test(plain);
}

/** "It doesn't say latex-free": what the insertion steps tell to stop at. */
export function mayHoldLatex({ plain, open, words: { told } }: Said): boolean {
  return open.asking === 'tube-in' && told.notLatexFree.test(plain);
}
