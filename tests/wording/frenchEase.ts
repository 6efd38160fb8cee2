/** How easy a French text reads, by Kandel and Moles 1958, with a count of French syllables. */
import { sentences, words } from './grade.ts';

/** Counted aloud; the rules below say otherwise. */
const pinned: Readonly<Record<string, number>> = {
  chantent: 1,
  suffisent: 2,
  peuvent: 1,
};

const vowels = 'aeiouyàâäéèêëîïôöùûü';

/** Letters that sound no vowel of their own: the u of qu and gu, an h, the e that ends a word. */
function sounded(part: string): string {
  return part
    .toLowerCase()
    .replaceAll('œ', 'e')
    .replace(/qu|gu(?=[eéèêi])|h/g, (letters) => (letters === 'h' ? '' : 'k'))
    .replace(/es?$/, '');
}

/** A y between vowels opens a syllable; é and the diaereses stand apart from a vowel beside them, as do u and a. */
function nuclei(part: string): number {
  const apart = part
    .replace(new RegExp(`([${vowels}])y(?=[${vowels}])`, 'g'), '$1-y')
    .replace(new RegExp(`é(?=[${vowels}])`, 'g'), 'é-')
    .replace(/([aeou])(?=[ïëüéè])/g, '$1-')
    .replace(/(?<!o)u(?=[ao])/g, 'u-');
  return apart.match(new RegExp(`[${vowels}]+`, 'g'))?.length ?? 0;
}

/** Syllables as they are spoken, the mute e at the end of a word left out; a number counts one a digit. */
export function frenchSyllables(word: string): number {
  const known = pinned[word.toLowerCase()];
  if (known !== undefined) return known;
  if (/\d/.test(word)) return word.replaceAll(/\D/g, '').length;
  const parts = word.split(/['-]/).filter((part) => part.length > 1 || /^[aày]$/i.test(part));
  return Math.max(
    1,
    parts.reduce((sum, part) => sum + Math.max(1, nuclei(sounded(part))), 0),
  );
}

/**
 * Kandel and Moles 1958, "Application de l'indice de Flesch à la langue française": 207 - 1.015 words a sentence - 73.6
 * syllables a word; the coefficients as four open-source text libraries give them for French. The higher, the easier.
 */
export function kandelMoles(wordCount: number, sentenceCount: number, syllableCount: number): number {
  return 207 - 1.015 * (wordCount / sentenceCount) - 73.6 * (syllableCount / wordCount);
}

/** Flesch's scale, which the adaptation keeps: from 80 easy (sixth grade), from 70 fairly easy (seventh). */
export const easyFrom = 80;

/** The ease of a whole text. */
export function frenchEase(text: string): number {
  const all = words(text);
  const syllables = all.reduce((sum, token) => sum + frenchSyllables(token), 0);
  return kandelMoles(all.length, sentences(text).length, syllables);
}
