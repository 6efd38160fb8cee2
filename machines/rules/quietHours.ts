/** The hours in which a family is left to sleep: what can wait is held until they end. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/site.ts';
import { zoneOf } from './zone.ts';

/** From when to when, each a time of day as `HH:MM`; the bounds are inclusive. Common practice, no source. */
export const quietHoursSetting = {
  from: { default: '21:00', least: '19:00', most: '23:00' },
  until: { default: '07:00', least: '05:00', most: '09:00' },
} as const;

/** The quiet hours of a site: the first minute of them, and the first after them. */
export function quietHoursOf({ quietFrom, quietUntil }: Site): { readonly from: string; readonly until: string } {
  return { from: quietFrom ?? quietHoursSetting.from.default, until: quietUntil ?? quietHoursSetting.until.default };
}

/** `atMs` itself, or the end of the quiet hours it falls into; epoch ms, by the site's clock. */
export function afterQuietHoursMs(atMs: number, site: Site): number {
  const { from, until } = quietHoursOf(site);
  const local = DateTime.fromMillis(atMs, { zone: zoneOf(site.timeZone) });
  const time = local.toFormat('HH:mm');
  if (time < until) return atClockMs(local, until);
  return time < from ? atMs : atClockMs(local.plus({ days: 1 }), until);
}

/** That time of day (`HH:MM`) on the day of `day`, epoch ms; one that the spring change skips comes an hour later. */
export function atClockMs(day: DateTime, time: string): number {
  const [hour, minute] = time.split(':').map(Number);
  return day.set({ hour: hour ?? 0, minute: minute ?? 0, second: 0, millisecond: 0 }).toMillis();
}
