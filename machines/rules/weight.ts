/** The child's weight: told in kilograms, in pounds, or as a bare number, settled as far as the insertion length needs it. */

import type { Weight, WeightBand, WeightTold } from '#machines/facts.ts';

/** International yard and pound agreement of 1959; NIST SP 811, appendix B. Exact. */
export const kgPerLb = 0.45359237;

/** Outside these it is a slip of the thumb or another unit; from memory: lighter than any child sent home, heavier than any child. */
const leastKg = 0.3;
const mostKg = 200;

/** Where the insertion length changes; common practice, no source. */
const borderKg = 3;

/**
 * Settles what was told, `bare` being the number still waiting for its unit. A bare number that means the same band in
 * kilograms and in pounds settles the band; between, the unit must be asked. A unit with no number waiting, and a number that is
 * no child's weight, are implausible: ask again.
 */
export function settleWeight(
  told: WeightTold,
  bare: number | null,
): { settled: Weight } | { askUnit: number } | { implausible: true } {
  if (told === 'unknown') return { settled: 'unknown' };
  if ('kg' in told) return settleKg(told.kg);
  if ('bare' in told) return settleBare(told.bare);
  const waiting = bare ?? Number.NaN;
  return settleKg(told.unit === 'kg' ? waiting : waiting * kgPerLb);
}

function settleKg(kg: number): { settled: Weight } | { implausible: true } {
  return plausible(kg) ? { settled: { kg } } : { implausible: true };
}

function settleBare(number: number): { settled: Weight } | { askUnit: number } | { implausible: true } {
  if (!plausible(number) && !plausible(number * kgPerLb)) return { implausible: true };
  if (number < borderKg) return { settled: { band: 'under-3', bare: number } };
  if (number > borderKg / kgPerLb) return { settled: { band: 'over-3', bare: number } };
  return { askUnit: number };
}

function plausible(kg: number): boolean {
  return kg >= leastKg && kg <= mostKg;
}

/** The band the insertion length hangs on: under, exactly, or over 3 kg; unknown while nothing was told. Exact, nothing is rounded. */
export function weightBand(weight: Weight | null): WeightBand | 'unknown' {
  if (weight === null || weight === 'unknown') return 'unknown';
  if ('band' in weight) return weight.band;
  if (weight.kg < borderKg) return 'under-3';
  return weight.kg > borderKg ? 'over-3' : '3';
}

/** Every weight in kilograms that may have been meant; none where only the band is known, or nothing. */
export function meantKg(weight: Weight | null): readonly number[] {
  if (weight === null || weight === 'unknown') return [];
  if ('kg' in weight) return [weight.kg];
  return weight.bare === undefined ? [] : [weight.bare, weight.bare * kgPerLb];
}

/** Whether a weight told again is the same number, with its unit or without. */
export function saysSameNumber(weight: Weight | null, told: WeightTold): boolean {
  const [known] = meantKg(weight);
  if (known === undefined || told === 'unknown' || 'unit' in told) return false;
  return !(Math.abs(known - ('kg' in told ? told.kg : told.bare)) >= 0.005);
}

/** Whether the child certainly weighs more than `kg`; a band, an unknown weight and one not told yet never prove it. */
export function surelyOverKg(weight: Weight | null, kg: number): boolean {
  return weight !== null && weight !== 'unknown' && 'kg' in weight && weight.kg > kg;
}
