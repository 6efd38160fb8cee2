/** A weight as a bystander takes it, and whether it can be one at the child's age. */
import type { Answers, WeightTold } from '#machines/facts.ts';
import { whoWeights } from '#tests/rules/whoWeights.ts';
import { type Bystander, dayNumber, type Setting } from './bystander.ts';

const lb = 0.45359237;

/** A weight without a unit counts where kilograms and pounds give the same band; 3 kg is 6.6139 lb. */
export function hearsWeight(b: Bystander, told: WeightTold): Bystander {
  const weightToldAgain = b.weightToldAgain && sameNumber(b, told);
  const settled = (weight: Bystander['weight']): Bystander => ({ ...b, weight, bareWeight: null, weightToldAgain });
  const likely = (kg: number) => kg >= 0.3 && kg <= 200;
  if (told === 'unknown') return settled('unknown');
  if ('kg' in told) return likely(told.kg) ? settled({ kg: told.kg }) : b;
  if ('unit' in told) {
    const kg = (b.bareWeight ?? 0) * (told.unit === 'kg' ? 1 : lb);
    return likely(kg) ? settled({ kg }) : b;
  }
  if (!likely(told.bare) && !likely(told.bare * lb)) return b;
  if (told.bare < 3) return settled({ band: 'under-3', bare: told.bare });
  if (told.bare * lb > 3) return settled({ band: 'over-3', bare: told.bare });
  return { ...b, weight: null, bareWeight: told.bare, weightToldAgain };
}

/** The answer to the question; to a number repeated in doubt, a yes or the same number settles it. */
export function hearsWeightAnswer(b: Bystander, told: Answers['weight']): Bystander {
  const again = b.clarifying === 'doubt' && (told === 'as-told' || sameNumber(b, told));
  if (again) {
    const exact = told !== 'as-told' && told !== 'unknown' && 'kg' in told;
    return { ...b, ...(exact && { weight: { kg: told.kg } }), weightToldAgain: true };
  }
  return told === 'as-told' ? b : hearsWeight(b, told);
}

function numberOf({ weight }: Pick<Bystander, 'weight'>): number | undefined {
  if (weight === null || weight === 'unknown') return undefined;
  return 'kg' in weight ? weight.kg : weight.bare;
}

function sameNumber(b: Bystander, told: WeightTold): boolean {
  const number = told === 'unknown' || 'unit' in told ? undefined : 'kg' in told ? told.kg : told.bare;
  return number !== undefined && number === numberOf(b);
}

/** Between which rows of WHO's table the child's youngest and oldest age lie; -1 is not yet born. */
export function ageRows({ born }: Bystander, { timeZone }: Setting, atMs: number): readonly [number, number] | null {
  if (born === null) return null;
  const age = (date: string) => dayNumber(atMs, timeZone) - Date.parse(date) / 86_400_000;
  const young = whoWeights.filter(({ days }) => days <= age(born.latest)).length - 1;
  const old =
    born.earliest === null
      ? whoWeights.length
      : whoWeights.filter(({ days }) => days < age(born.earliest ?? '')).length;
  return [young, old];
}

/** No weight that was told or filed, in either unit it may have had, is one at any age the child can have. */
export function hardlyFits(b: Bystander, setting: Setting, atMs: number): boolean {
  const number = numberOf(b);
  const rows = ageRows(b, setting, atMs);
  if (number === undefined || rows === null || b.weight === null || b.weight === 'unknown') return false;
  const least = whoWeights[rows[0]]?.leastKg ?? 0;
  const most = whoWeights[rows[1]]?.mostKg ?? Number.POSITIVE_INFINITY;
  return ('kg' in b.weight ? [number] : [number, number * lb]).every((kg) => kg < least || kg > most);
}
