/** Hears which of the family's children a text names. A name is matched as it is written; `nickname.ts` knows the one question at which it need not be. */

import type { QuestionKey, Told } from '#machines/facts.ts';
import { clean } from './clean.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import type { Said } from './said.ts';

export interface Named {
  /** By their places in the family's list. */
  readonly children: readonly number[];
  /** The name takes back another one: "no it's Leo", "not Wren". */
  readonly corrects: boolean;
  /** The text without what only takes back a name, so that its "no" answers nothing. */
  readonly rest: string;
}

const patterns = onceEach(({ children: words }) => ({
  none: new RegExp(words.none),
  several: new RegExp(words.several),
}));

/** The plain text says that it is none of them. */
export function saysNone(plain: string, words: Lexicon): boolean {
  return patterns(words).none.test(plain);
}

/**
 * Those named, and whether the text speaks of more than one tube-fed child: "both my twins", "my daughter's tube, not my son's".
 * Who names one child of the family says which it is.
 */
export function childrenTold({ children }: Named, { plain, words }: Pick<Said, 'plain' | 'words'>): Told {
  return {
    ...(children.length > 0 && { children }),
    ...(children.length !== 1 && patterns(words).several.test(plain) && { severalChildren: true as const }),
  };
}

/** The children named in a cleaned text; at a question that a bare name answers, "no, Leo" corrects too. */
export function namedIn(
  text: string,
  names: readonly string[],
  bareNameAnswers: boolean,
  { children: words }: Lexicon,
): Named {
  const forms = names.map((name) => formOf(name, names));
  const any = forms.filter((form) => form !== '').join('|');
  if (any === '') return { children: [], corrects: false, rest: text };
  const name = `(?<![\\p{L}\\p{N}])(?:${any})(?:s|es)?(?![\\p{L}\\p{N}])`;
  const denied = new RegExp(`(?:${words.not}) ${name}`, 'gu');
  const itIs = bareNameAnswers ? `(?:${words.itIs} )?` : `${words.itIs} `;
  const instead = new RegExp(`(?:(?:${words.no})[,.!]? +)?(?:${words.takeBack}[,.!]? +)*${itIs}${name}`, 'gu');
  const takesBack = new RegExp(`^(?:(?:${words.no})|(?:${words.takeBack}))`, 'u');
  // "Leo or Wren, I am not with them": nobody knows which.
  if (new RegExp(`${name},? (?:${words.or}) (?:${words.itIs} )?${name}`, 'u').test(text))
    return { children: [], corrects: false, rest: text };
  const kept = text.replace(denied, ' ');
  const affirmed = kept.replace(relativeOf(name, words), ' ').replace(commonly(name, words), ' ');
  const corrections = [...affirmed.matchAll(instead)].filter(([said]) => takesBack.test(said));
  const corrects = kept !== text || corrections.length > 0;
  const named = (said: string) => forms.flatMap((form, place) => (isNamed(said, form) ? [place] : []));
  // "For Leo. Wren is asleep": whoever is well is not the one, where another is named.
  const unwell = named(affirmed.replace(new RegExp(`${name} (?:${words.well})(?![\\p{L}])`, 'gu'), ' '));
  const children = unwell.length > 0 ? unwell : named(affirmed);
  const rest = corrects ? corrections.reduce((kept, [said]) => kept.replace(said, ' '), affirmed) : text;
  return { children, corrects, rest: corrects ? trimmed(rest) : text };
}

/** "This is for his brother", "not Luca", "Luca is the big brother": the only child on file is not the one this is about. */
export function notOnFileTold(raw: string, { open, words }: Said): Told {
  const { onlyChild, children = [], asking } = open;
  if (children.length > 0 || onlyChild === undefined || onlyChild === null) return {};
  const written = (text: string) => clean(text, words.grammar.marks);
  return saysNotOnFile(written(raw), written(onlyChild), asking, words) ? { notOnFile: true } : {};
}

function saysNotOnFile(text: string, onlyChild: string, asking: QuestionKey | null, words: Lexicon): boolean {
  const { not, relative, another, wrongChild, itIsOther } = words.children;
  if (another.test(text) || (asking === 'confirm' && wrongChild.test(text))) return true;
  const form = formOf(onlyChild, [onlyChild]);
  // "No, it's Samuel who lost it": a name that is no word of the language.
  const other = text.match(itIsOther)?.[1];
  if (other !== undefined && !words.language.ownWords.has(other) && !isNamed(other, form)) return true;
  if (form === '') return false;
  const name = `(?<![\\p{L}\\p{N}])(?:${form})(?:s|es)?(?![\\p{L}\\p{N}])`;
  const denied = new RegExp(`(?:${not}) ${name}|${name}(?: ${words.children.isThe})? (?:${relative.after})`, 'gu');
  const rest = text.replace(denied, ' ');
  return rest !== text && !isNamed(rest, form);
}

/** "Leo's sister", "the cousin of Wren": another child; one who says so of himself is only the caller. */
function relativeOf(name: string, { relative, caller }: Lexicon['children']): RegExp {
  const before = `(?<!(?:${caller}) )(?:${relative.before}) ${name}`;
  return new RegExp(`\\b${before}|(?<!(?:${caller}) )${name} (?:${relative.after})`, 'gu');
}

/** "No luz", "in May": a name that is a word of every day as well, said as that. */
function commonly(name: string, { common }: Lexicon['children']): RegExp {
  return new RegExp(`\\b(?:${common})(?<=${name})`, 'gu');
}

function isNamed(text: string, form: string): boolean {
  return form !== '' && new RegExp(`(?<![\\p{L}\\p{N}])(?:${form})(?:s|es)?(?![\\p{L}\\p{N}])`, 'u').test(text);
}

/** A name in full, or its first word where no other child has that. */
function formOf(name: string, names: readonly string[]): string {
  const [first = ''] = name.split(' ');
  const shared = names.filter((other) => other.split(' ')[0] === first).length > 1;
  return [...new Set(shared ? [name] : [name, first])]
    .filter((form) => form !== '')
    .map(pattern)
    .join('|');
}

/** A hyphen, a dot or a blank in a name may be written as any of them. */
function pattern(name: string): string {
  return name.replace(/[^\p{L}\p{N}]/gu, '.');
}

function trimmed(text: string): string {
  return text
    .replace(/ {2,}/g, ' ')
    .replace(/^[ ,.!;]+|[ ,;]+$/g, '')
    .trim();
}
