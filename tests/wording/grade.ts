/** The Flesch-Kincaid grade of a text, with the syllables of words the counting library gets wrong pinned here. */
import { syllable } from 'syllable';

/** Counted aloud; the library says otherwise. */
const pinned: Readonly<Record<string, number>> = {
  australian: 3,
  reptilian: 3,
};

function syllablesOf(token: string): number {
  const known = pinned[token.toLowerCase()];
  if (known !== undefined) return known;
  if (/^[\d.,:+/-]+$/.test(token)) return Math.max(1, token.replaceAll(/\D/g, '').length);
  return Math.max(1, syllable(token));
}

export function words(text: string): readonly string[] {
  return text
    .split(/[\s()]+/)
    .map((token) => token.replace(/^[^\p{L}\p{N}+]+|[^\p{L}\p{N}]+$/gu, ''))
    .filter((token) => token !== '');
}

/** Sentences end at a full stop, a question mark or an exclamation mark before a space or the end. */
export function sentences(text: string): readonly string[] {
  return text.split(/(?<=[.?!])\s+/).filter((sentence) => sentence.trim() !== '');
}

/** Kincaid 1975: 0.39 words a sentence + 11.8 syllables a word - 15.59. */
export function grade(text: string): number {
  const all = words(text);
  const syllables = all.reduce((sum, token) => sum + syllablesOf(token), 0);
  return 0.39 * (all.length / sentences(text).length) + 11.8 * (syllables / all.length) - 15.59;
}
