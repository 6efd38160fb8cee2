/** Writes number words, fractions and decimals as digits: "seven and a half kilos" becomes "7.5 kilos". */
import type { Lexicon } from './lexicon.ts';

/** A pattern and what is put in its place. */
export type Rewrite = readonly [RegExp, string | ((...match: (string | undefined)[]) => string)];

/** The text with its patterns replaced, in their order. */
export function rewritten(text: string, rewrites: readonly Rewrite[]): string {
  return rewrites.reduce(
    (rest, [from, to]) => (typeof to === 'string' ? rest.replace(from, to) : rest.replace(from, to)),
    text,
  );
}

/** The same text with its numbers in digits and a point before decimals. */
export function withDigits(text: string, words: Lexicon): string {
  return rewritten(text, words.numbers.rewrites);
}
