/** Refuses a site's words that mean something to the line already. */
import { languageCodes, questionKeys } from '#machines/facts.ts';
import type { Refusal } from '#machines/protocol/errors.ts';
import type { SiteWords } from '#machines/protocol/siteWords.ts';
import { clean } from './clean.ts';
import { type Lexicon, lexicons } from './lexicon.ts';
import { type Reading, read } from './read.ts';
import { listed } from './siteWords.ts';
import { wordsOf } from './spell.ts';

const bounds = {
  known: 'a word that means nothing else to the line in any of its languages',
  twice: 'told once, for one meaning',
};

/** Any moment will do: a word alone that is a time is refused at every one. */
const anyMoment = {
  clarifying: null,
  bareWeight: null,
  answered: null,
  nowMs: Date.UTC(2027, 2, 6, 12),
  timeZone: 'utc',
} as const;

/** Whether a reading took anything from the word: an answer, a sign, a wish, a fact. */
function says({ event, about, wantsLanguage }: Reading): boolean {
  if (about === 'thanks' || wantsLanguage !== null || event.person || Object.keys(event.told).length > 0) return true;
  if (event.type === 'unknownDevice') return false;
  return event.type !== 'unclear' || event.why !== 'unreadable';
}

/** An everyday word of a language, or one the reader mends words to. */
function isEveryday(word: string, { language, wishes, spelling, tube }: Lexicon): boolean {
  const sets = [language.tellingWords, language.ownWords, language.polite, wishes.smallWords, spelling.realWords];
  return sets.some((set) => set.has(word)) || tube.noDevice.test(word);
}

/** Whether the word says anything to the line, at any question and in any language. */
function isKnown(word: string): boolean {
  return languageCodes.some((language) => {
    const words = lexicons[language];
    const plain = clean(word, words.grammar.marks);
    if (wordsOf(plain).every((part) => isEveryday(part, words)) || words.tube.eitherKind.test(plain)) return true;
    return [null, ...questionKeys].some((asking) =>
      says(read(word, { ...anyMoment, asking, language, caseOpen: true, tubeIn: true })),
    );
  });
}

/** Each word that may not stand, by its place in the file. */
export function siteWordRefusals(site: SiteWords): Refusal[] {
  const all = listed(site).map((one) => ({ ...one, plain: clean(one.word, lexicons.en.grammar.marks) }));
  return all.flatMap(({ field, word, plain }, place) => {
    if (all.slice(0, place).some((other) => other.plain === plain))
      return [{ field, value: word, bound: bounds.twice }];
    return isKnown(word) ? [{ field, value: word, bound: bounds.known }] : [];
  });
}
