/** When a family is asked whether it has called the clinic: on a working day, while it can still call. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/site.ts';
import { atClockMs } from './quietHours.ts';
import { zoneOf } from './zone.ts';

/** So long before the clinic closes, or as it opens where its day is shorter. Common practice, no source. */
const beforeClosingHours = 2;
/** A week has every weekday, and every clinic works on one. */
const daysAhead = 7;

/**
 * The asking on the first working day that begins at or after `fromMs`; epoch ms. Holidays are not known here: asked on one,
 * a family says no and is asked again.
 */
export function clinicAskAtMs(fromMs: number, site: Site): number {
  const from = DateTime.fromMillis(fromMs, { zone: zoneOf(site.timeZone) });
  for (let ahead = 0; ahead <= daysAhead; ahead += 1) {
    const day = from.plus({ days: ahead });
    const opensMs = atClockMs(day, site.clinicOpens);
    if (!site.clinicDays.includes(day.weekday) || opensMs < fromMs) continue;
    return Math.max(opensMs, atClockMs(day, site.clinicCloses) - beforeClosingHours * 3_600_000);
  }
  throw new RangeError('a clinic without a working day');
}
