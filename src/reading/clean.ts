/** Makes a raw text plain: lower case, no accents, quotes, emoji or odd characters, so that every reader sees the same. */

/** A carrier hands over at most this many characters; nothing after them is read. */
const mostCharacters = 1600;

/** What a language puts in the place of signs that have a meaning. */
export interface Marks {
  readonly yes: string;
  readonly no: string;
  readonly unsure: string;
  readonly and: string;
  readonly apostrophe: string;
}

const meaning: readonly (readonly [RegExp, keyof Marks])[] = [
  [/\u{1F44D}|\u2705|\u2714|\u2611|\u{1F197}/gu, 'yes'],
  [/\u{1F44E}|\u274C|\u274E|\u{1F6AB}/gu, 'no'],
  [/\u{1F937}/gu, 'unsure'],
  [/['\u2018\u2019\u02BC`\u00B4]/g, 'apostrophe'],
  [/&/g, 'and'],
];

const plainSigns: readonly (readonly [RegExp, string])[] = [
  // Danger is heard in English whatever the language.
  [/\u{1F92E}/gu, ' vomited '],
  [/\u{1FA78}/gu, ' blood '],
  [/\u0153/gi, 'oe'],
  [/\u00BD/g, ' 1/2'],
  [/\u00BC/g, ' 1/4'],
  [/\u00BE/g, ' 3/4'],
  [/[\u2010-\u2015\u2212]/g, '-'],
  [/[\u200B-\u200F\u2060\uFEFF\u00AD]|\uFE0F/g, ''],
  [/\u2265/g, '>='],
  [/\u2264/g, '<='],
];

/** Most texts have nothing of it, and are spared what only it needs. */
const beyondAscii = /[^ -~\s]/;

function unaccented(text: string): string {
  const plain = plainSigns.reduce((rest, [from, to]) => rest.replace(from, to), text);
  return plain.normalize('NFKC').normalize('NFD').replace(/\p{M}/gu, '');
}

/** The last text of each language's marks: several readers look at the same. */
const last = new WeakMap<Marks, { readonly raw: string; readonly plain: string }>();

/** Plain text in lower-case letters, digits and the marks that carry meaning; at most 1,600 characters are read. */
export function clean(raw: string, marks: Marks): string {
  const before = last.get(marks);
  if (before?.raw === raw) return before.plain;
  const plain = cleaned(raw, marks);
  last.set(marks, { raw, plain });
  return plain;
}

function cleaned(raw: string, marks: Marks): string {
  // "Back in '23": before the apostrophe is gone.
  let text = raw.slice(0, mostCharacters).replace(/(?<=^|\s)['\u2019]([0-2]\d)\b/g, '20$1');
  for (const [from, mark] of meaning) text = text.replace(from, marks[mark]);
  if (beyondAscii.test(text)) text = unaccented(text);
  return (
    text
      .toLowerCase()
      .replace(/[^\p{L}\p{N} .,;:!?/+<>=%#~-]/gu, ' ')
      .replace(/(\p{L})\1{2,}/gu, '$1')
      .replace(/([.,;:!?/+<>=%#~-])\1{2,}/g, '$1$1')
      // Longer than any number that means something here.
      .replace(/(\d{12})\d+/g, '$1')
      .replace(/ {2,}/g, ' ')
      .trim()
  );
}
