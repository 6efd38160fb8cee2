/** Reads clock times: "1:50", "2am", "around midnight", "half past ten", as moments that have already been. */
import { DateTime } from 'luxon';
import { zoneOf } from '#machines/rules/zone.ts';
import type { Lexicon } from './lexicon.ts';

/** A way of writing a clock time, and how it is read; `half` begins with a or p. */
export interface ClockForm {
  readonly pattern: RegExp;
  readonly read: (match: RegExpMatchArray) => {
    readonly hour: number;
    readonly minute: number;
    readonly half?: string | undefined;
  };
}

/** A part of a day with the hour it begins; `daysAgo` is by today. */
export interface DayPart {
  readonly pattern: RegExp;
  readonly hour: number;
  readonly daysAgo: number;
}

export interface ClockTime {
  readonly at: number;
  readonly end: number;
  readonly hour: number;
  readonly minute: number;
  /** Neither am nor pm nor a 24-hour form: both halves of the day are possible. */
  readonly bare: boolean;
}

function clockTime(match: RegExpMatchArray, hour: number, minute: number, half: string | undefined): ClockTime[] {
  const at = match.index ?? 0;
  const end = at + match[0].length;
  if (minute > 59 || hour > 23) return [];
  if (half === undefined) return [{ at, end, hour, minute, bare: hour >= 1 && hour <= 12 }];
  if (hour < 1 || hour > 12) return [];
  return [{ at, end, hour: (hour % 12) + (half.startsWith('p') ? 12 : 0), minute, bare: false }];
}

/** Every clock time of a text, in order. A number alone counts only after "at", "around" and the like. */
export function clockTimesIn(text: string, { clock }: Lexicon): ClockTime[] {
  const found: ClockTime[] = [];
  let rest = text;
  for (const { pattern, read } of clock.clockForms) {
    for (const match of rest.matchAll(pattern)) {
      const { hour, minute, half } = read(match);
      found.push(...clockTime(match, hour, minute, half));
      rest = rest.slice(0, match.index) + ' '.repeat(match[0].length) + rest.slice(match.index + match[0].length);
    }
  }
  return found.sort((a, b) => a.at - b.at);
}

/** How soon to come a clock time must be to be taken for a slip instead of a time of the day before. */
const soonMs = { bare: 90 * 60_000, named: 4 * 3_600_000 };
const clockSlackMs = 60_000;

/** The last such moment on the told day, or ever; 'future' where it has not come yet. */
export function momentOf(time: ClockTime, nowMs: number, timeZone: string, daysAgo: number | null): number | 'future' {
  const now = DateTime.fromMillis(nowMs, { zone: zoneOf(timeZone) });
  const hours = time.bare ? [time.hour % 12, (time.hour % 12) + 12] : [time.hour];
  const days = daysAgo === null ? [-1, 0, 1] : [daysAgo];
  const moments = days
    .flatMap((back) =>
      hours.map((hour) => now.startOf('day').minus({ days: back }).set({ hour, minute: time.minute }).toMillis()),
    )
    .sort((a, b) => a - b);
  const soon = time.bare ? soonMs.bare : soonMs.named;
  const coming = moments.some((moment) => moment > nowMs + clockSlackMs && moment <= nowMs + soon);
  const past = moments.filter((moment) => moment <= nowMs + clockSlackMs).at(-1);
  return past === undefined || coming ? 'future' : Math.min(past, nowMs);
}
