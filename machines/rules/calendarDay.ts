/** A calendar day of the clinic, kept in UTC so that counting days never meets a clock change. */

import { DateTime } from 'luxon';

const shape = /^\d{4}-\d{2}-\d{2}$/;
const dayMs = 86_400_000;

/** The day `yyyy-mm-dd` names. Dates are checked where they enter, so another shape is a fault in the code and throws `RangeError`. */
export function calendarDay(date: string): DateTime<true> {
  const day = DateTime.fromISO(date, { zone: 'utc' });
  if (!shape.test(date) || !day.isValid) throw new RangeError(`not a calendar day: ${date}`);
  return day;
}

/** Whole days from one calendar day to another, negative where the second comes first. */
export function daysBetween(from: string, to: string): number {
  return (calendarDay(to).toMillis() - calendarDay(from).toMillis()) / dayMs;
}
