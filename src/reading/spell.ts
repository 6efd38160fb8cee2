/** Mends small typing slips in words that matter for safety: a bounded edit distance against a short list of words. */
import { type Lexicon, onceEach } from './lexicon.ts';

/** Edits by Damerau-Levenshtein (neighbours swapped count one), given up as soon as they pass `most`. */
export function edits(one: string, other: string, most: number): number {
  if (Math.abs(one.length - other.length) > most) return most + 1;
  // What both begin and end with needs no edit.
  let start = 0;
  while (start < one.length && one[start] === other[start]) start++;
  let end = 0;
  while (end < Math.min(one.length, other.length) - start && one.at(-1 - end) === other.at(-1 - end)) end++;
  const a = one.slice(start, one.length - end);
  const b = other.slice(start, other.length - end);
  if (a === '' || b === '') return a.length + b.length;
  let twoBack: number[] = [];
  let back = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const line = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      const swap = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      line[column] = Math.min(
        (back[column] ?? 0) + 1,
        (line[column - 1] ?? 0) + 1,
        (back[column - 1] ?? 0) + (same ? 0 : 1),
        swap ? (twoBack[column - 2] ?? 0) + 1 : most + 1,
      );
    }
    if (Math.min(...line) > most) return most + 1;
    twoBack = back;
    back = line;
  }
  return back[b.length] ?? most + 1;
}

const byFirstLetter = onceEach(({ spelling }) => Map.groupBy(spelling.mendable, (word) => word[0] ?? ''));

function mend(word: string, words: Lexicon): string {
  if (word.length < 5 || words.spelling.realWords.has(word)) return word;
  const most = word.length >= 9 ? 2 : 1;
  for (const known of byFirstLetter(words).get(word[0] ?? '') ?? []) {
    if (edits(word, known, most) <= most) return known;
  }
  return word;
}

/** What words were mended to, a language each: texts use the same ones again and again. */
const mended = onceEach(() => new Map<string, string>());
/** Past this many it begins anew. */
const mostKept = 5000;

/** The text with near misses of known words mended. A word must keep its first letter: "never" is not "fever". */
export function spell(text: string, words: Lexicon): string {
  const known = mended(words);
  return text.replace(/[a-z]{5,}/g, (word) => {
    const as = known.get(word) ?? mend(word, words);
    if (known.size >= mostKept) known.clear();
    known.set(word, as);
    return as;
  });
}

/** The words of a plain text. */
export function wordsOf(plain: string): string[] {
  return plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
}

/** Whether a text is one of these words with its letters in disorder, doubled or left out once: "doen", "dnoe", "finshed". */
export function isScrambled(plain: string, of: readonly string[]): boolean {
  const letters = (word: string) => [...new Set(word)].sort().join('');
  const [word = '', ...more] = wordsOf(plain);
  const isLike = (known: string) =>
    word[0] === known[0] && letters(word) === letters(known) && Math.abs(word.length - known.length) <= 1;
  return more.length === 0 && of.some(isLike);
}

/** Whether a word is one slip away from one of these words, and neither one of them nor a real word of its own. */
export function isSlip(word: string, of: readonly string[], real: ReadonlySet<string>): boolean {
  if (word.length < 3 || real.has(word) || of.includes(word)) return false;
  return of.some((known) => edits(word, known, 1) === 1);
}
