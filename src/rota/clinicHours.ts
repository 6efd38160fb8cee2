/** When the clinic is open, by the site's own clock, working days and holidays. */

import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import { zoneOf } from '#machines/rules/zone.ts';
import { isHoliday } from './holidays.ts';

/** Whether the clinic is open at `atMs` (epoch ms): from the minute it opens until just before it closes. */
export function clinicOpen(site: Site, atMs: number): boolean {
  const minute = Math.floor(atMs / 60_000);
  if (last?.site === site && last.minute === minute) return last.open;
  const local = localTime(site, atMs);
  const time = local.toFormat('HH:mm');
  const open = isWorkingDay(site, local) && time >= site.clinicOpens && time < site.clinicCloses;
  last = { site, minute, open };
  return open;
}

/** Every step asks, and the answer holds for its minute: the last is kept. */
let last: { readonly site: Site; readonly minute: number; readonly open: boolean } | null = null;

/**
 * The day (`yyyy-mm-dd`, the site's) on which the clinic next opens after `atMs` (epoch ms): today while it has not opened yet,
 * else the first working day that follows.
 */
export function nextWorkingDay(site: Site, atMs: number): string {
  const local = localTime(site, atMs);
  const opensToday = local.toFormat('HH:mm') < site.clinicOpens;
  for (let ahead = opensToday ? 0 : 1; ahead <= 366; ahead += 1) {
    const day = local.plus({ days: ahead });
    if (isWorkingDay(site, day)) return day.toFormat('yyyy-MM-dd');
  }
  throw new RangeError('a clinic without a working day in a year');
}

/** Whether the clinic works on the day of `day`, a time in the site's zone. */
export function isWorkingDay(site: Site, day: DateTime<true>): boolean {
  if (!site.clinicDays.includes(day.weekday)) return false;
  return site.holidays === null || !isHoliday(site.holidays, day.toFormat('yyyy-MM-dd'));
}

/** The protocol has checked the zone; an unknown one throws. */
function localTime(site: Site, atMs: number): DateTime<true> {
  const local = DateTime.fromMillis(atMs, { zone: zoneOf(site.timeZone), locale: 'en' });
  if (!local.isValid) throw new RangeError(`no local time at ${atMs} in ${site.timeZone}`);
  return local;
}
