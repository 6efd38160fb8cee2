/** Which child is meant by one strange word, at the question which child it is: "tiago" or "thiagito" for Thiago, "valen" for Valentina. */
import { type Lexicon, onceEach } from './lexicon.ts';
import { edits, wordsOf } from './spell.ts';

/** Sounds that people write in more than one way; accents are gone already. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/ph/g, 'f'],
  [/h/g, ''],
  [/ll|[yj]/g, 'i'],
  [/z|c(?=[ei])/g, 's'],
  [/qu?|[ck]/g, 'k'],
  [/[vw]/g, 'b'],
  [/(.)\1+/g, '$1'],
];

function asItSounds(name: string): string {
  return spellings.reduce((sound, [written, heard]) => sound.replace(written, heard), name);
}

/** More words say more than a name. */
const mostWords = 4;
/** Fewer letters could be the beginning of much else. */
const leastLetters = 3;
/** In a shorter name one slip makes another name of it. */
const leastSlipLetters = 5;
/** Spanish pet forms take the last vowel's place: "Almita", "Niquito". */
const petEnding = /(?:s?it|il|ik)[oa]$/;
/** What a pet form leaves of a name. */
const leastStemLetters = 4;
const leastPetLetters = 3;

function isMeant(said: string, name: string): boolean {
  const [sound, full] = [asItSounds(said), asItSounds(name)];
  const stem = full.slice(0, Math.max(leastStemLetters, full.length - 1));
  const isSlip = name.length >= leastSlipLetters && edits(said, name, 1) === 1;
  const pet = sound.replace(petEnding, '');
  const isPet = pet !== sound && pet.length >= leastPetLetters && pet === full.replace(/[aeiou]$/, '');
  return (
    isPet ||
    sound === full ||
    full.startsWith(sound) ||
    isSlip ||
    (stem.length >= leastStemLetters && sound.startsWith(stem))
  );
}

/** A denied name, and a relative, is another child's. */
const isAnother = onceEach(
  ({ children: { not, relative } }) => new RegExp(`^(?:${not}) |\\b(?:${relative.after})`, 'u'),
);

/** The place of the one child it fits, in cleaned words, or in those before the first mark; null where that is not plain. */
export function childMeant(text: string, names: readonly string[], lexicon: Lexicon): number | null {
  const [opening = ''] = text.split(/[,.;:!?]/, 1);
  if (isAnother(lexicon).test(text)) return null;
  return childIn(text, names, lexicon) ?? childIn(opening, names, lexicon);
}

function childIn(text: string, names: readonly string[], lexicon: Lexicon): number | null {
  const words = wordsOf(text);
  const strange = words.filter((word) => word.length >= leastLetters && !lexicon.language.ownWords.has(word));
  const [said, ...others] = strange;
  if (said === undefined || others.length > 0 || words.length > mostWords) return null;
  const fits = names.map((name) => isMeant(said, name.split(' ')[0] ?? ''));
  return fits.filter((fit) => fit).length === 1 ? fits.indexOf(true) : null;
}
