/** A set of words, written in a lexicon as one line. */
export function wordSet(words: string): ReadonlySet<string> {
  return new Set(words.split(' '));
}
