/** A text as the readers see it, and what a reader can find in it. */
import type { Clarifying } from '#machines/case.ts';
import type { Unclear } from '#machines/events.ts';
import type { LanguageCode, QuestionKey } from '#machines/facts.ts';
import type { SiteWords } from '#machines/protocol/siteWords.ts';
import { clean } from './clean.ts';
import { type Lexicon, lexicons } from './lexicon.ts';
import { rewritten, withDigits } from './numbers.ts';
import { withSiteWords } from './siteWords.ts';
import { spell } from './spell.ts';

/** What is known while reading. */
export interface Open {
  readonly asking: QuestionKey | null;
  readonly clarifying: Clarifying;
  readonly bareWeight: number | null;
  /** The question answered last: what "sorry, I meant" corrects. */
  readonly answered: QuestionKey | null;
  readonly caseOpen: boolean;
  readonly tubeIn: boolean;
  /** The tube is taken to be half out. */
  readonly halfOut?: boolean;
  /** The recheck waits: a reading sent now is early. */
  readonly rechecking?: boolean;
  /** The tube may be used. */
  readonly inUse?: boolean;
  /** The family is on its way to the hospital and was not asked whether it is there. */
  readonly onTheWay?: boolean;
  /** A reading was taken: a number may correct it. */
  readonly readingKnown?: boolean;
  /** The names of the family's children, where it has several. */
  readonly children?: readonly string[];
  /** The name of the only child on file. */
  readonly onlyChild?: string | null;
  readonly nowMs: number;
  readonly timeZone: string;
  readonly language: LanguageCode;
  /** The site's own words for devices and places. */
  readonly siteWords?: SiteWords | undefined;
  /** The languages switched on; all where it is not said. Signs and wishes for a person are heard in each. */
  readonly languages?: readonly LanguageCode[];
}

export interface Said {
  /** The plain text, spelling mended, numbers in digits. */
  readonly plain: string;
  /** The plain text cut where one statement ends; the order is kept. */
  readonly clauses: readonly string[];
  readonly open: Open;
  /** The words of the language it is read in. */
  readonly words: Lexicon;
}

/** A value, a reason why there is none, or null where the text says nothing of it. */
export type Found<T> = { readonly value: T } | { readonly unclear: Unclear } | null;

/** Plain text cut where one statement ends. */
export function clausesOf(plain: string, words: Lexicon): string[] {
  return plain
    .split(words.grammar.clauseEnd)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '');
}

/** Sentences with their marks, so that a question mark keeps to its own; a comma does not end one. */
export function sentencesOf(plain: string): string[] {
  return plain.match(/(?:[^.!?;]|\.(?=\d))+[.!?;]*/g) ?? [];
}

/** Prepares a text for every reader, in the language of the conversation or another. */
export function hear(raw: string, open: Open, language = open.language): Said {
  const words = lexicons[language];
  const written = withSiteWords(clean(raw, words.grammar.marks), words, open.siteWords);
  const joined = rewritten(written, words.grammar.contractions);
  const plain = withDigits(spell(joined, words), words);
  return { plain, clauses: clausesOf(plain, words), open, words };
}

/** The same conversation with other words, for a reader that looks at a part of a text. */
export function part(said: Said, plain: string): Said {
  if (plain === said.plain) return said;
  return { ...said, plain, clauses: clausesOf(plain, said.words) };
}
