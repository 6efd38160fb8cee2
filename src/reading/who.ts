/**
 * Who is writing: a text that says so, the answer to whether somebody else texts about the child already, and whether the name and
 * digits in it fit a child and a phone. It reads digits; whose they are it cannot know.
 */
import { languageCodes } from '#machines/facts.ts';
import { namedIn } from './children.ts';
import { plainOf } from './language.ts';
import { lexicons } from './lexicon.ts';
import type { Found, Said } from './said.ts';
import { yesNo } from './yesNo.ts';

/** Whether a text says what its writer is to the child, in any language. */
export function saysWho(raw: string): boolean {
  const plain = plainOf(raw);
  return languageCodes.some((code) => lexicons[code].who.saysWho.test(plain));
}

/** The digits of a telephone number, four at least, however they are set apart; of several the last. */
const digitsSaid = /\d(?:[ ().+-]{0,2}\d){3,14}/g;

/** Nobody else, not known, or a name and digits, which the line has still to match. */
export function who(said: Said): Found<'none' | 'unknown'> {
  const { plain, words } = said;
  if (plain.search(digitsSaid) !== -1) return { unclear: 'no-match' };
  const found = words.who.onlyMe.test(plain) ? ({ value: 'no' } as const) : yesNo(said, { yes: words.who.wrote });
  if (found !== null && 'value' in found && found.value === 'yes') return { unclear: 'no-number' };
  // Without its digits, the number is what is missing.
  const lacks = words.who.number.test(plain) && (found !== null || words.who.lost.test(plain));
  if (lacks) return { value: 'unknown' };
  if (found === null) return null;
  if ('unclear' in found) return found.unclear === 'unsure' ? { value: 'unknown' } : found;
  return { value: 'none' };
}

/** What a text names of a family: which of these children, and whether its digits end one of these numbers, E.164. */
export function fits(raw: string, children: readonly string[], numbers: readonly string[]): readonly number[] {
  const digits = plainOf(raw).match(digitsSaid)?.at(-1)?.replace(/\D/g, '');
  // A whole number may be written as at home, with a nought in front.
  const ending = digits === undefined || digits.length === 4 ? digits : digits.replace(/^0+/, '');
  if (ending === undefined || ending.length < 4 || !numbers.some((number) => number.endsWith(ending))) return [];
  return namedIn(plainOf(raw), children.map(plainOf), false, lexicons.en).children;
}
