/** The rota looked through: who would be called, day by day, with holidays and clinic hours, and everything that does not hold. */
import { DateTime } from 'luxon';
import type { Site } from '#machines/protocol/settings.ts';
import { isWorkingDay } from './clinicHours.ts';
import { type Clash, doublesIn, gapsIn, overlapsIn, type Stretch } from './gaps.ts';
import { isHoliday } from './holidays.ts';
import { onCall, type Rota } from './rota.ts';

export interface RotaCheck {
  readonly lines: readonly string[];
  readonly gaps: number;
}

const ordinals = ['first', 'second', 'third'];
const dayMs = 86_400_000;

/** Looks through the rota between two times (epoch ms); the lines are for a person to read. */
export function checkRota(rota: Rota, site: Site, fromMs: number, toMs: number): RotaCheck {
  const zone = site.timeZone;
  const gaps = gapsIn(rota, fromMs, toMs);
  const overlaps = overlapsIn(rota, fromMs, toMs);
  const doubles = doublesIn(rota, fromMs, toMs);
  const stretch = ({ place, startMs, endMs }: Stretch) =>
    `${ordinals[place]} line, ${moment(startMs, zone)} to ${moment(endMs, zone)}`;
  const names = ({ nurses }: Clash) => `${nurses[0].name} and ${nurses[1].name}`;
  return {
    gaps: gaps.length,
    lines: [
      `On call from ${moment(fromMs, zone)} to ${moment(toMs, zone)}, ${zone}`,
      ...daysOf(zone, fromMs, toMs).flatMap((day) => dayLines(rota, site, day, fromMs, toMs)),
      '',
      ...gaps.map((gap) => `GAP: ${stretch(gap)}: nobody; pages go to the fallback number`),
      ...overlaps.map((clash) => `OVERLAP: ${stretch(clash)}: ${names(clash)}; whose shift began last is called`),
      ...doubles.map((clash) => `TWICE: ${stretch(clash)}: ${clash.nurses[0].name} has an earlier line too`),
      `${gaps.length} gaps, ${overlaps.length} overlaps, ${doubles.length} times with one person on two lines`,
    ],
  };
}

function dayLines(rota: Rota, site: Site, day: DateTime<true>, fromMs: number, toMs: number): string[] {
  const startMs = Math.max(day.toMillis(), fromMs);
  const endMs = Math.min(day.plus({ days: 1 }).toMillis(), toMs);
  return [
    '',
    `${day.toFormat('ccc d LLL yyyy')}  ${clinicWords(site, day)}${clockChange(day)}`,
    ...rota.lines.map(
      (_line, place) => `  ${(ordinals[place] ?? '').padEnd(7)}${holders(rota, place, day, startMs, endMs)}`,
    ),
  ];
}

function clinicWords(site: Site, day: DateTime<true>): string {
  if (isWorkingDay(site, day)) return `clinic ${site.clinicOpens} to ${site.clinicCloses}`;
  const isKept = site.holidays !== null && isHoliday(site.holidays, day.toFormat('yyyy-MM-dd'));
  return isKept ? 'clinic closed, holiday' : 'clinic closed';
}

function clockChange(day: DateTime<true>): string {
  const hours = (day.plus({ days: 1 }).toMillis() - day.toMillis()) / 3_600_000;
  return hours === 24 ? '' : `; the clocks change, this day has ${hours} hours`;
}

/** Who would be called at each moment of the day, told where it changes. */
function holders(rota: Rota, place: number, day: DateTime<true>, startMs: number, endMs: number): string {
  const shifts = rota.lines[place]?.(startMs, endMs) ?? [];
  const turns = shifts.flatMap((shift) => [shift.startMs, shift.endMs]).filter((ms) => ms > startMs && ms < endMs);
  const changes = [...new Set([startMs, ...turns])].sort((a, b) => a - b);
  const told: { readonly at: string; readonly name: string }[] = [];
  for (const ms of changes) {
    const name = onCall(rota, ms)[place]?.name ?? 'NOBODY';
    if (told.at(-1)?.name === name) continue;
    told.push({ at: DateTime.fromMillis(ms, { zone: day.zone }).toFormat('HH:mm'), name });
  }
  return told.map(({ at, name }) => `${at} ${name}`).join('  ');
}

function daysOf(zone: string, fromMs: number, toMs: number): readonly DateTime<true>[] {
  const days: DateTime<true>[] = [];
  for (let day = localDay(fromMs, zone); day.toMillis() < toMs; day = day.plus({ days: 1 })) days.push(day);
  return days;
}

function localDay(ms: number, zone: string): DateTime<true> {
  const local = DateTime.fromMillis(ms, { zone, locale: 'en' });
  if (!local.isValid) throw new RangeError(`no local time in ${zone}`);
  return local.startOf('day');
}

function moment(ms: number, zone: string): string {
  return DateTime.fromMillis(ms, { zone, locale: 'en' }).toFormat('ccc d LLL HH:mm');
}

/** Weeks as milliseconds. */
export function weeksMs(weeks: number): number {
  return weeks * 7 * dayMs;
}
