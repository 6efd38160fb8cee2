/** One line's calendar, read from iCalendar (RFC 5545): its events are shifts, each of the person it names. */
import ICAL from 'ical.js';
import { CalendarRefused } from '#src/errors.ts';
import { type Series, seriesOf, spansIn } from './recurrence.ts';
import type { Nurse, RotaLine, Shift } from './rota.ts';
import { whose } from './whose.ts';
import { listedZone, zonesOf } from './zones.ts';

export interface Calendar {
  readonly shifts: RotaLine;
  /** Events that name nobody of the rota, by their own words: they are no shifts, so where they stand is a gap. */
  readonly nameless: readonly string[];
}

const dayMs = 86_400_000;
/** Working shifts out is slow, so a few weeks are kept; common practice, no source. */
const keepMs = 35 * dayMs;

/**
 * Reads a calendar; local times without a zone are of `timeZone` (IANA). Throws `CalendarRefused` for a text that is no calendar or
 * holds an event that cannot be placed in time.
 */
export function readCalendar(text: string, nurses: readonly Nurse[], timeZone: string): Calendar {
  const { known, nameless } = sortedByPerson(allSeries(text, timeZone), nurses);
  let kept: { fromMs: number; toMs: number; shifts: readonly Shift[] } | undefined;
  const shifts: RotaLine = (fromMs, toMs) => {
    if (kept === undefined || fromMs < kept.fromMs || toMs > kept.toMs) {
      const keptFromMs = fromMs - dayMs;
      const keptToMs = Math.max(toMs, fromMs + keepMs);
      kept = { fromMs: keptFromMs, toMs: keptToMs, shifts: shiftsOf(known, keptFromMs, keptToMs) };
    }
    return kept.shifts.filter((shift) => shift.startMs < toMs && shift.endMs > fromMs);
  };
  return { shifts, nameless };
}

function allSeries(text: string, timeZone: string): readonly Series[] {
  try {
    const calendar = new ICAL.Component(ICAL.parse(text));
    if (calendar.name !== 'vcalendar') throw new RangeError('no VCALENDAR');
    return seriesOf(calendar, { zones: zonesOf(calendar), floating: listedZone(timeZone) });
  } catch (error) {
    throw new CalendarRefused(error instanceof Error ? error.message : String(error));
  }
}

interface KnownSeries {
  readonly series: Series;
  readonly nurse: Nurse;
}

function sortedByPerson(all: readonly Series[], nurses: readonly Nurse[]) {
  const known: KnownSeries[] = [];
  const nameless: string[] = [];
  for (const series of all) {
    const nurse = whose(series.event, nurses);
    if (nurse === null) nameless.push(String(series.event.getFirstPropertyValue('summary') ?? 'no summary'));
    else known.push({ series, nurse });
  }
  return { known, nameless };
}

function shiftsOf(known: readonly KnownSeries[], fromMs: number, toMs: number): readonly Shift[] {
  return known
    .flatMap(({ series, nurse }) => spansIn(series, fromMs, toMs).map((span) => ({ nurse, ...span })))
    .sort((a, b) => a.startMs - b.startMs);
}
