/** The reader's day, and the days before it. */
import { DateTime } from 'luxon';
import { zoneOf } from '#machines/rules/zone.ts';
import type { Amount } from './durations.ts';
import type { Open } from './said.ts';

/** The reader's day. Every reader asks for it and working it out costs as much as reading, so the last minute's answer is kept. */
export function localToday({ nowMs, timeZone }: Open): DateTime {
  const minute = Math.floor(nowMs / 60_000);
  if (last?.minute === minute && last.timeZone === timeZone) return last.day;
  last = { minute, timeZone, day: DateTime.fromMillis(nowMs, { zone: zoneOf(timeZone) }).startOf('day') };
  return last.day;
}

let last: { readonly minute: number; readonly timeZone: string; readonly day: DateTime } | null = null;

/** The day that long ago; parts of a unit are rounded to fewer days. */
export function daysBack(today: DateTime, { day = 0, week = 0, month = 0, year = 0 }: Amount): DateTime {
  const wholeMonths = Math.floor(month) + Math.floor(year) * 12 + Math.floor((year % 1) * 12);
  const wholeDays = Math.floor(day) + Math.floor(week * 7) + Math.floor((month % 1) * 30);
  return today.minus({ months: wholeMonths, days: wholeDays });
}
