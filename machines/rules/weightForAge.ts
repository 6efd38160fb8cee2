/** Whether a weight can be right for the child's age; outside WHO's flags it is asked once more, never refused. */
import type { DateRange } from '#machines/facts.ts';
import { daysBetween } from './calendarDay.ts';

/**
 * From this age in days on: the lighter of WHO's flags for girls and boys at -6 standard deviations, and the heavier at +5.
 * WHO child growth standards, weight for age by day (anthro, weianthro.txt, commit b776d8a), with WHO's adjusted z-score.
 */
const flags: readonly { readonly fromDays: number; readonly leastKg: number; readonly mostKg: number }[] = [
  { fromDays: 0, leastKg: 0.94, mostKg: 6.25 },
  { fromDays: 30, leastKg: 1.44, mostKg: 8.07 },
  { fromDays: 91, leastKg: 2.36, mostKg: 10.86 },
  { fromDays: 183, leastKg: 3.15, mostKg: 13.16 },
  { fromDays: 365, leastKg: 3.97, mostKg: 16.33 },
  { fromDays: 730, leastKg: 5.15, mostKg: 21.34 },
  { fromDays: 1096, leastKg: 6.03, mostKg: 26.58 },
  { fromDays: 1461, leastKg: 6.56, mostKg: 32.49 },
  { fromDays: 1826, leastKg: 6.99, mostKg: 38.81 },
];

/**
 * Whether a child born within `born` can weigh `kg` on `today` (`yyyy-mm-dd`). Between two rows the wider bound holds, and
 * so does the whole range of ages the child can have; above five years nothing is too heavy.
 */
export function weightFitsAge(kg: number, born: DateRange, today: string): boolean {
  const youngestDays = daysBetween(born.latest, today);
  const least = flags.findLast(({ fromDays }) => fromDays <= youngestDays);
  if (least !== undefined && kg < least.leastKg) return false;
  if (born.earliest === null) return true;
  const oldestDays = daysBetween(born.earliest, today);
  const most = flags.find(({ fromDays }) => fromDays >= oldestDays);
  return most === undefined || kg <= most.mostKg;
}
