/** English phrases for facts: kinds of tube, dates, times, weights, readings, and the child's name. */
import type { TubeKind } from '#machines/facts.ts';
import type { Scene } from '../catalogue.ts';
import { factPhrases } from '../factPhrases.ts';

/** The child inside a sentence. */
export function childIn(scene: Scene): string {
  return scene.child ?? 'your child';
}

export const tubeKindNames: Readonly<Record<TubeKind, string>> = {
  g: 'G tube',
  gj: 'GJ tube',
  j: 'J tube',
  'half-out': 'Tube half out',
  unknown: 'Feeding tube, kind not known',
  nose: 'Nose tube',
};

/** "12 Mar 2026 to 3 Apr 2026", "1:50 am", "11:50 pm on Fri 5 Mar", "6.92 kg", "5 to 5.5". */
export const { dates, time, number, weight, reading, length } = factPhrases({
  locale: 'en-US',
  clock: (at) => `${at.toFormat('h:mm')} ${at.hour < 12 ? 'am' : 'pm'}`,
  onDay: (clock, day) => `${clock} on ${day}`,
  dayFormat: 'd LLL yyyy',
  monthFormat: 'LLL yyyy',
  weekdayFormat: 'ccc d LLL',
  orBefore: (day) => `${day} or before`,
  fromTo: (first, last) => `${first} to ${last}`,
  orLess: (number) => `${number} or less`,
  orMore: (number) => `${number} or more`,
  weightUnknown: 'weight not known',
  under3Kg: 'under 3 kg',
  over3Kg: 'over 3 kg',
  justUnder3Kg: 'just under 3 kg',
  justOver3Kg: 'just over 3 kg',
});

/** "1 day", "7 days". */
export function days(count: number): string {
  return count === 1 ? '1 day' : `${count} days`;
}

/** "1 more day", "7 more days". */
export function moreDays(count: number): string {
  return count === 1 ? '1 more day' : `${count} more days`;
}
