/** How easily a Spanish text is read: the perspicuity of Szigriszt-Pazos, on the INFLESZ scale. */
import { sentences, words } from './grade.ts';

export interface Counts {
  readonly syllables: number;
  readonly words: number;
  readonly sentences: number;
}

/** Szigriszt-Pazos 1993: 206.835 - 62.3 syllables a word - words a sentence. The higher, the easier. */
export function perspicuity(counts: Counts): number {
  return 206.835 - 62.3 * (counts.syllables / counts.words) - counts.words / counts.sentences;
}

/** INFLESZ (Barrio-Cantalejo and others 2008, for texts to patients): from 65 "quite easy", from 80 "very easy". */
export const quiteEasyFrom = 65;

/** The texts leave without these accents, and with them goes the sign that two vowels are two syllables. */
const pinned: Readonly<Record<string, number>> = {
  dia: 2,
  dias: 2,
  aun: 2,
  vacio: 3,
  vacielo: 4,
};

/** By the spelling: a, e, o and an accented i or u are a syllable each; i and u join a vowel beside them. */
export function syllablesOfSpanish(token: string): number {
  const word = token.toLowerCase();
  const known = pinned[word];
  if (known !== undefined) return known;
  if (/^[\d.,:+/-]+$/.test(word)) return Math.max(1, word.replaceAll(/\D/g, '').length);
  const vowels = word.match(/[aeiouáéíóúüèùìòà]+y?(?![aeiouáéíóú])|[aeiouáéíóúüèùìòà]+|^y$/g) ?? [];
  const nuclei = vowels.map((group) => Math.max(1, group.match(/[aeoáéíóúèòà]/g)?.length ?? 0));
  return Math.max(
    1,
    nuclei.reduce((sum, count) => sum + count, 0),
  );
}

/** The perspicuity of a whole text. */
export function perspicuityOf(text: string): number {
  const all = words(text);
  const syllables = all.reduce((sum, token) => sum + syllablesOfSpanish(token), 0);
  return perspicuity({ syllables, words: all.length, sentences: sentences(text).length });
}
