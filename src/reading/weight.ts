/** Reads a child's weight: with a unit as exact kilograms, without one as a bare number, or the unit alone. */
import type { Answers, WeightTold } from '#machines/facts.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import type { Found, Said } from './said.ts';
import { afterCorrection, yesNo } from './yesNo.ts';

type Words = Lexicon['weight'];

/** The international avoirdupois pound, exact by definition (NIST SP 811, appendix B). */
export const kgPerPound = 0.45359237;
/** The band border of the insertion length, the same in kilograms and, for a bare number, in pounds. */
const borderKg = 3;
/** What a child fed by tube at home can weigh; from memory, wide on purpose. */
const possibleKg = { least: 0.5, most: 200 };

/** "8 kg = 17.6 lb" is one weight said twice; the first of the forms counts. */
const sameShare = 0.02;

/** A number right after another ("one two three kilos") belongs to it, and is no weight of its own. */
const n = '(?<!\\d ?|\\d\\.)((?:(?<![a-z\\d] ?)-)?\\d+(?:\\.\\d+)?)';
interface Form {
  readonly pattern: RegExp;
  readonly toKg: (first: number, second: number) => number;
}

const patterns = onceEach(({ weight: words, grammar }) => {
  const form = (pattern: string, toKg: Form['toKg']): Form => ({ pattern: new RegExp(pattern, 'g'), toKg });
  const otherUnit = [words.pound, words.kilogram, ...Object.values(grammar.timeUnits)].join('|');
  const notMore = `(?![\\d./:]| ?(?:${otherUnit}))`;
  return {
    forms: [
      form(
        `${n} ?(?:${words.kilogram}),? ?(?:${words.and} )?(\\d{3}(?:\\b|(?= ?(?:${words.gram})))|\\d{1,2}(?= ?(?:${words.gram})))`,
        (kg, g) => kg + g / 1000,
      ),
      form(`${n} ?(?:${words.kilogram})`, (kg) => kg),
      form(
        `${n} ?(?:${words.stone})(?:,? ?(?:${words.and} )?${n} ?(?:${words.pound})?\\b)?`,
        (st, lb) => (st * 14 + lb) * kgPerPound,
      ),
      form(
        `${n} ?(?:${words.pound})[,.]? ?(?:${words.and} )?${n} ?(?:${words.ounce})?${notMore}`,
        (lb, oz) => (lb + oz / 16) * kgPerPound,
      ),
      form(`${n} ?(?:${words.pound})`, (lb) => lb * kgPerPound),
      // Fewer ounces are more likely a bottle.
      form(`(?<!\\d |\\d\\.)\\b((?:[4-9]\\d|1\\d\\d)(?:\\.\\d+)?) ?(?:${words.ounce})`, (oz) => (oz / 16) * kgPerPound),
      form(`(?<!\\d |\\d\\.)\\b(\\d{3,6}(?:\\.\\d+)?) ?(?:${words.gram})(?![ -]?(?:tube|j))`, (g) => g / 1000),
    ],
    withUnit: new RegExp(`\\d ?(?:${words.kilogram}|${words.pound}|${words.gram})(?![ -]?(?:tube|j))`),
    sharedUnit: new RegExp(`${n}(?= ?(?:${words.joined}) ?\\d+(?:\\.\\d+)? ?(${words.pound}|${words.kilogram}))`, 'g'),
  };
});

/** "7 or 8 kg" becomes "7 kg or 8 kg". */
function withOwnUnits(text: string, words: Lexicon): string {
  return text.replace(patterns(words).sharedUnit, '$1 $2');
}

/** Every mass in the text in kilograms; a weight at birth, lost or gained is none. */
function massesIn(text: string, words: Lexicon): number[] {
  let rest = withOwnUnits(text.replace(words.weight.otherMass, ' '), words);
  const masses: number[] = [];
  for (const { pattern, toKg } of patterns(words).forms) {
    rest = rest.replace(pattern, (...match) => {
      masses.push(toKg(Number(match[1]), Number(match[2] ?? 0) || 0));
      return ' | ';
    });
  }
  return masses;
}

/** Several weights count as one only inside one band, then the lower. */
function settle(masses: readonly number[], borders: readonly number[]): number | 'two-answers' {
  const lower = Math.min(...masses);
  const higher = Math.max(...masses);
  const crosses = borders.some((border) => lower <= border && higher >= border && lower !== higher);
  return crosses ? 'two-answers' : lower;
}

function massOf(masses: readonly number[]): Found<WeightTold> {
  const [first = 0] = masses;
  if (
    masses.every((mass) => Math.abs(mass / first - 1) < sameShare) &&
    first >= possibleKg.least &&
    first <= possibleKg.most
  )
    return { value: { kg: first } };
  const kg = settle(masses, [borderKg]);
  if (kg === 'two-answers') return { unclear: kg };
  const close = Math.max(...masses) / Math.min(...masses) < 1.6;
  if (!close) return { unclear: 'two-answers' };
  if (kg < possibleKg.least || Math.max(...masses) > possibleKg.most) return { unclear: 'impossible' };
  return { value: { kg } };
}

function bareNumber(text: string, words: Words): Found<WeightTold> {
  const rest = words.otherNumbers.reduce((kept, pattern) => kept.replace(pattern, ' '), text);
  const numbers = [...rest.matchAll(/-?\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits));
  if (numbers.length === 0) return null;
  if (numbers.length > 2) return { unclear: 'two-answers' };
  const bare = settle(numbers, [borderKg, borderKg / kgPerPound]);
  if (bare === 'two-answers') return { unclear: bare };
  if (bare < possibleKg.least || Math.max(...numbers) > possibleKg.most / kgPerPound) return { unclear: 'impossible' };
  return { value: { bare } };
}

function unitAlone(text: string, words: Words): Found<WeightTold> {
  const kg = words.kilogramAlone.test(text);
  const lb = words.poundAlone.test(text);
  if (kg && lb) return { unclear: 'two-answers' };
  return kg || lb ? { value: { unit: kg ? 'kg' : 'lb' } } : null;
}

function plainWeight(text: string, wantsUnit: boolean, lexicon: Lexicon): Found<WeightTold> {
  const words = lexicon.weight;
  const masses = massesIn(text, lexicon);
  if (masses.length > 0) return massOf(masses);
  const unit = wantsUnit ? unitAlone(text, words) : null;
  if (unit && 'value' in unit && words.unsure.test(text)) return { value: 'unknown' };
  if (unit) return unit;
  const bare = bareNumber(text.replace(words.otherMass, ' '), words);
  // "7 8 kg": its unit belongs to a number that could not be read.
  if (bare && 'value' in bare && patterns(lexicon).withUnit.test(text.replace(words.otherMass, ' ')))
    return { unclear: 'two-answers' };
  if (bare) return bare;
  return words.unknown.test(text) ? { value: 'unknown' } : null;
}

/** The answer to a number that the line repeated in doubt: a yes to it, else whatever weight is told. */
export function weight(said: Said): Found<Answers['weight']> {
  const found = weightSaid(said);
  if (found !== null || said.open.clarifying !== 'doubt') return found;
  const answer = yesNo(said);
  if (answer === null || 'unclear' in answer) return answer;
  return answer.value === 'yes' ? { value: 'as-told' } : { unclear: 'no-number' };
}

/** The answer to "what does your child weigh?" or "kg or lb?". */
function weightSaid(said: Said): Found<WeightTold> {
  const { plain, words } = said;
  const wantsUnit = said.open.clarifying === 'unit';
  const corrected = afterCorrection(plain, words);
  const found = (corrected && plainWeight(corrected.after, wantsUnit, words)) ?? plainWeight(plain, wantsUnit, words);
  return found && 'value' in found && boundHides(plain, found.value, words.weight) ? { unclear: 'unsure' } : found;
}

/** "Almost 7 kg" may be this much less. */
const nearlyShare = 0.7;

/** Whether a bound ("under 7 pounds", "over 2 kg") leaves open on which side of the band's border the weight is. */
function boundHides(text: string, told: WeightTold, words: Words): boolean {
  if (told === 'unknown' || 'unit' in told) return false;
  const least = 'kg' in told ? told.kg : told.bare * kgPerPound;
  if (words.atMost.test(text)) return true;
  if (words.nearly.test(text)) return least * nearlyShare <= borderKg;
  return words.atLeast.test(text) && least < borderKg;
}

/** A weight told beside something else: only with a unit, or a number after "weighs". */
export function weightTold({ plain, words }: Said): WeightTold | null {
  const corrected = afterCorrection(plain, words);
  const after = corrected ? massesIn(corrected.after, words) : [];
  const masses = after.length > 0 ? after : massesIn(plain, words);
  const found = masses.length > 0 ? massOf(masses) : null;
  if (found) return 'value' in found ? found.value : null;
  const weighs = plain.replace(words.weight.otherMass, ' ').match(words.weight.weighs);
  return weighs ? { bare: Number(weighs[1]) } : null;
}
