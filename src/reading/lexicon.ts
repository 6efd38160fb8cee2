/** The lexicons: a folder a language, all of one shape. */
import type { LanguageCode } from '#machines/facts.ts';
import { english } from './en/english.ts';
import { spanish } from './es/spanish.ts';
import { french } from './fr/french.ts';
import { sieve } from './sieve/sieve.ts';

/** One file of words; a text in it may differ from the English one, its kind may not. */
type Words<T> = { readonly [K in keyof T]: T[K] extends string ? string : T[K] };

/** What a language must provide: everything that English does, a file a kind of answer. */
export type Lexicon = { readonly [K in keyof typeof english]: Words<(typeof english)[K]> };

/** English, Spanish and French; the latter two are drafts until a signer approves them. */
export const lexicons: Readonly<Record<LanguageCode, Lexicon>> = {
  en: english,
  es: spanish,
  fr: french,
};
for (const words of Object.values(lexicons)) sieve(words);

/** Builds something once a language, the first time it is asked for: patterns put together from its words. */
export function onceEach<T>(build: (words: Lexicon) => T): (words: Lexicon) => T {
  const built = new Map<Lexicon, T>();
  return (words) => {
    const known = built.get(words);
    if (known !== undefined) return known;
    const made = build(words);
    built.set(words, made);
    return made;
  };
}
