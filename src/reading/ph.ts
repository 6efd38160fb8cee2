/** Reads the number off a pH strip. A range keeps both ends; whatever could be two readings is no reading. */
import type { PhReading } from '#machines/facts.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import type { Found, Said } from './said.ts';
import { isSlip, wordsOf } from './spell.ts';
import { afterCorrection } from './yesNo.ts';

/** The pH scale. */
const scale = { least: 0, most: 14 };
/** A minus counts only where it does not join: "5-6" is a range, "ph-5" is five. */
const number = '((?:(?<![a-z\\d] ?)-)?\\d+(?:\\.\\d+)?)';
const patterns = onceEach(({ ph: words }) => ({
  range: new RegExp(`${number} ?${words.beforeJoin}(?:${words.join}) ?${words.afterJoin}(?=\\d)${number}`, 'g'),
  more: new RegExp(`(?:${words.above}) ?${number}|${number} ?(?:${words.orAbove})`, 'g'),
  less: new RegExp(`(?:${words.below}) ?${number}|${number} ?(?:${words.orBelow})`, 'g'),
  slightlyMore: new RegExp(`(?:${words.slightlyAbove}) ?${number}`, 'g'),
}));
const single = new RegExp(number, 'g');

function take(
  text: string,
  pattern: RegExp,
  toReading: (numbers: number[]) => PhReading,
): { rest: string; readings: PhReading[] } {
  const readings: PhReading[] = [];
  const rest = text.replace(pattern, (...match) => {
    const numbers = match.slice(1, -2).filter((group): group is string => typeof group === 'string');
    readings.push(toReading(numbers.map(Number)));
    return ' | ';
  });
  return { rest, readings };
}

const span = (numbers: number[]) => ({ low: Math.min(...numbers), high: Math.max(...numbers) });

/** Every reading in the text, open-ended and ranges first, so that no number is read twice. */
export function readingsIn(text: string, words: Lexicon): PhReading[] {
  const { range, slightlyMore, more, less } = patterns(words);
  const kinds: readonly (readonly [RegExp, (numbers: number[]) => PhReading])[] = [
    [range, span],
    [slightlyMore, ([n = 0]) => ({ low: n, high: n + 1 })],
    [more, ([n = 0]) => ({ low: n, high: scale.most })],
    [less, ([n = 0]) => ({ low: Math.min(n, scale.least), high: n })],
    [single, span],
  ];
  const all: PhReading[] = [];
  let rest = text;
  for (const [pattern, toReading] of kinds) {
    const taken = take(rest, pattern, toReading);
    all.push(...taken.readings);
    rest = taken.rest;
  }
  return all;
}

/** "More than 5 but below 6": what one leaves open the other ends. */
function overlap(one: PhReading, other: PhReading): PhReading | null {
  const [above, below] = one.high === scale.most ? [one, other] : [other, one];
  const isOpen = above.high === scale.most && above.low < above.high && below.low === scale.least;
  return isOpen && above.low < below.high ? { low: above.low, high: below.high } : null;
}

/** The text without the numbers that belong to something else. */
function counted(text: string, { ph: { otherNumbers } }: Lexicon): string {
  return otherNumbers.reduce((rest, pattern) => rest.replace(pattern, ' | '), text);
}

function plainReading(text: string, lexicon: Lexicon): Found<PhReading> {
  const words = lexicon.ph;
  const readings = readingsIn(counted(text, lexicon), lexicon);
  const [reading, ...others] = readings;
  if (!reading) return /\d/.test(text) || text.search(words.unreadable) !== -1 ? { unclear: 'unreadable' } : null;
  if (others.length > 0) {
    const both = others.length === 1 && others[0] ? overlap(reading, others[0]) : null;
    if (both) return { value: both };
    // "Between 5 and 5.5, closer to 5.5" is one reading.
    const same = others.every(({ low, high }) => low >= reading.low && high <= reading.high);
    if (!same || /^\d+ \d+$/.test(text)) return { unclear: 'two-answers' };
  }
  if (reading.low < scale.least || reading.high > scale.most) return { unclear: 'impossible' };
  const single = reading.low === reading.high;
  if (words.doubtful.test(text)) return { unclear: 'unsure' };
  const slip = wordsOf(text).some((word) => isSlip(word, words.openWords, words.openLookalikes));
  if (single && (slip || words.unsure.test(text) || words.comparing.test(text))) return { unclear: 'unsure' };
  return { value: reading };
}

/** The reading of a text that answers "what does the strip say?"; null where no number and no word of it is there. */
export function ph({ plain, words }: Said): Found<PhReading> {
  // Read off a strip made for a pool, it is no reading of this.
  if (words.told.otherStrips.test(plain)) return null;
  const corrected = afterCorrection(plain, words);
  const found =
    (corrected && plainReading(corrected.after, words)) ??
    plainReading(corrected?.soft ? corrected.before : plain, words);
  if (found) return found;
  return plain.search(words.ph.colours) !== -1 ? { unclear: 'no-number' } : null;
}

/** A longer text may name a number for much else. */
const mostCorrectionLength = 80;

/** Once a reading is known, a short text with a number and nothing it could be but a reading corrects it. */
function correctsKnown({ plain, open, words: { ph: words } }: Said): boolean {
  if (open.readingKnown !== true || plain.length > mostCorrectionLength || words.otherNumber.test(plain)) return false;
  return words.misread.test(plain) || words.namesPh.test(plain) || words.readAgain.test(plain);
}

/** A reading told beside something else, only with words of correction and of the strip. */
export function phCorrected(said: Said): PhReading | null {
  const { plain, words } = said;
  const says = words.ph.misread.test(plain) && words.ph.aboutStrip.test(plain);
  if (!says && !correctsKnown(said)) return null;
  const kept = plain.replace(words.ph.notThat, ' ');
  const corrected = afterCorrection(kept, words);
  const found = (corrected && plainReading(corrected.after, words)) ?? plainReading(kept, words);
  if (found && 'value' in found) return found.value;
  // A doubtful correction counts at its highest: it can only void what was read before.
  const high = Math.max(...readingsIn(counted(kept, words), words).map((reading) => reading.high));
  return Number.isFinite(high) && high <= scale.most ? { low: high, high } : null;
}
