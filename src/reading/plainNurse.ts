/** A nurse's text as her words are read in it: plain, in English, without marks and courtesies. */
import { clean } from './clean.ts';
import { lexicons } from './lexicon.ts';

/** The words of the text, one space between them. */
export function plainNurse(text: string): string {
  return clean(text, lexicons.en.grammar.marks)
    .replace(/[.,!]/g, ' ')
    .replace(/\b(?:please|pls|thanks|thank you)\b/g, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();
}
