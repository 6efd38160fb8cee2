/** Which language a text is written in, and which it asks for. */

import { type LanguageCode, languageCodes } from '#machines/facts.ts';
import { clean, type Marks } from './clean.ts';
import { lexicons } from './lexicon.ts';
import { wordsOf } from './spell.ts';

/** In so short a text one telling word is enough, in a longer one two, or three times as many as of another language. */
const shortText = 2;
const enoughWords = 2;
const clearTimes = 3;

/** A thumb is up in every language. */
const noMarks: Marks = { yes: ' ', no: ' ', unsure: ' ', and: ' ', apostrophe: '' };

/** A text as it is read in no language yet: no accents, apostrophes or odd characters. */
export function plainOf(text: string): string {
  return clean(text, noMarks);
}

/** The language a text is clearly written in, by its telling words; null where it could be another. */
export function detectLanguage(text: string): LanguageCode | null {
  const said = wordsOf(plainOf(text));
  const counts = languageCodes
    .map((code) => ({ code, count: said.filter((word) => tells(word, code)).length }))
    .sort((a, b) => b.count - a.count);
  const [best, next] = counts;
  if (best === undefined || next === undefined) return null;
  const enough = said.length <= shortText ? 1 : enoughWords;
  return best.count >= enough && best.count >= next.count * clearTimes && best.count > next.count ? best.code : null;
}

/** A word of two languages tells nothing. */
function tells(word: string, code: LanguageCode): boolean {
  return (
    lexicons[code].language.tellingWords.has(word) &&
    languageCodes.every((other) => other === code || !lexicons[other].language.tellingWords.has(word))
  );
}

/** The language a text asks for, and what else it says: '' where that is nothing. Null where it asks for none. */
export function languageWish(text: string): { readonly wanted: LanguageCode; readonly rest: string } | null {
  const plain = plainOf(text);
  const wanted = languageCodes.find((code) => lexicons[code].language.wish.test(plain));
  if (wanted === undefined) return null;
  const rest = plain.replace(lexicons[wanted].language.wish, ' ').replace(/ {2,}/g, ' ').trim();
  const says = wordsOf(rest).some((word) => languageCodes.every((code) => !lexicons[code].language.polite.has(word)));
  return { wanted, rest: says ? rest : '' };
}
