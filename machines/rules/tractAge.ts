/** The age of the tract: whether anything may be put in, and whether the tube may be used. */

import { DateTime } from 'luxon';
import type { DateRange } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import { daysBetween } from './calendarDay.ts';
import { zoneOf } from './zone.ts';

/** From nothing may go in, to the tube may be used; `young` is a tract held open by a tube that is never used. */
export type TractVerdict = 'unknown' | 'too-young' | 'nearly-too-young' | 'young' | 'usable';

/**
 * Judges the tract by the youngest age it could have, in whole calendar days from the latest day the first tube may have
 * been placed to `today` (`yyyy-mm-dd`, the site's day). A day still to come is an age below 0. Where a site's settings
 * cross, the stricter verdict wins. Sources: the three settings' own, in `protocol/settings.ts`.
 */
export function tractVerdict(
  firstPlaced: DateRange | 'unknown' | null,
  today: string,
  clinical: Clinical,
): TractVerdict {
  if (firstPlaced === null || firstPlaced === 'unknown') return 'unknown';
  const ageDays = daysBetween(firstPlaced.latest, today);
  if (ageDays < clinical.noInsertionUnderDays) return 'too-young';
  if (ageDays < clinical.cautiousUnderDays) return 'nearly-too-young';
  return ageDays > clinical.tractUsableAfterDays ? 'usable' : 'young';
}

/**
 * The calendar day, `yyyy-mm-dd`, it is in an IANA time zone at `atMs`. The protocol has checked the zone; an unknown one
 * throws `RangeError`. Steps ask for the same day again and again, so the last answer is kept.
 */
export function today(atMs: number, timeZone: string): string {
  if (last?.atMs === atMs && last.timeZone === timeZone) return last.day;
  const at = DateTime.fromMillis(atMs, { zone: zoneOf(timeZone) });
  if (!at.isValid) throw new RangeError(`no calendar day at ${atMs} in ${timeZone}`);
  last = { atMs, timeZone, day: at.toFormat('yyyy-MM-dd') };
  return last.day;
}

let last: { readonly atMs: number; readonly timeZone: string; readonly day: string } | null = null;
