/** Keeps every text inside the GSM 7-bit alphabet, so that one odd character never doubles the number of segments. */

/** 3GPP TS 23.038, default alphabet and its extension table (which costs two places a character). */
const gsmAlphabet = new Set(
  '@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !"#¤%&\'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿' +
    'abcdefghijklmnopqrstuvwxyzäöñüà^{}\\[~]|€',
);

const lookAlikes: Readonly<Record<string, string>> = {
  '\u2018': "'",
  '\u2019': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u00d0': 'D',
  '\u00f0': 'd',
  '\u00fe': 'th',
  '\u0110': 'D',
  '\u0111': 'd',
  '\u0131': 'i',
  '\u0141': 'L',
  '\u0142': 'l',
  '\u0153': 'oe',
  '\t': ' ',
};

/** One character as the alphabet can write it: itself, its look-alike, its letter without the accent, or nothing. */
function plainCharacter(character: string): string {
  if (gsmAlphabet.has(character)) return character;
  const alike = lookAlikes[character];
  if (alike !== undefined) return alike;
  const letters = [...character.normalize('NFKD')].filter((letter) => gsmAlphabet.has(letter));
  return letters.join('');
}

/** The text with every character brought into the GSM 7-bit alphabet; what has no equal there is left out. */
export function plainText(text: string): string {
  return text.normalize('NFC').replace(/[^\n\r -_a-~]/gu, plainCharacter);
}

/** A name short enough for a text, or null where the alphabet cannot write all of it. */
export function plainName(name: string | null): string | null {
  if (name === null) return null;
  const characters = [...name.normalize('NFC').trim()].map(plainCharacter);
  if (characters.length === 0 || characters.includes('')) return null;
  return clip(characters.join(''), 20);
}

/** The text cut to `most` characters, the cut shown by three dots. */
export function clip(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most - 3).trimEnd()}...`;
}

/** A number as a voice reads it out, digit by digit. */
export function spoken(number: string): string {
  return [...number].join(' ');
}
