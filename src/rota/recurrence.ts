/** A calendar's events as spans of time: recurring ones worked out, exceptions left out, overrides in their place (RFC 5545). */
import ICAL from 'ical.js';
import type { Zones } from './zones.ts';

export interface CalendarZones {
  readonly zones: Zones;
  /** Of local times that name no zone, and of whole days. */
  readonly floating: ICAL.Timezone;
}

export interface Span {
  /** Epoch ms, the end not included. */
  readonly startMs: number;
  readonly endMs: number;
}

/** An event and everything that says when it takes place. */
export interface Series {
  readonly event: ICAL.Component;
  readonly start: ICAL.Time;
  /** The end of a span that starts then. */
  readonly endOf: (start: ICAL.Time) => number;
  readonly rules: readonly ICAL.Recur[];
  readonly extraStarts: readonly ICAL.Time[];
  /** Starts that are left out: excepted, or overridden by another event. Epoch ms. */
  readonly without: ReadonlySet<number>;
}

type TimeOfDay = Pick<ICAL.Time, 'hour' | 'minute' | 'second'>;

const fastest = new Set(['SECONDLY', 'MINUTELY']);

/** Every event that takes place, an override as an event of its own. Throws where one cannot be placed in time. */
export function seriesOf(calendar: ICAL.Component, zones: CalendarZones): readonly Series[] {
  const events = calendar.getAllSubcomponents('vevent');
  const overrides = events.filter((event) => event.hasProperty('recurrence-id'));
  const series = events.map((event) => seriesOfEvent(event, overrides, zones));
  return series.filter(({ event }) => String(event.getFirstPropertyValue('status')).toUpperCase() !== 'CANCELLED');
}

/** The spans of a series that touch `fromMs` to `toMs` (epoch ms). */
export function spansIn(series: Series, fromMs: number, toMs: number): readonly Span[] {
  const spans = new Map<number, Span>();
  const add = (start: ICAL.Time): void => {
    const startMs = start.toUnixTime() * 1000;
    const endMs = series.endOf(start);
    if (startMs < toMs && endMs > fromMs && !series.without.has(startMs)) spans.set(startMs, { startMs, endMs });
  };
  add(series.start);
  for (const extra of series.extraStarts) add(extra);
  for (const rule of series.rules) {
    const starts = rule.iterator(series.start);
    for (let start = starts.next(); start !== null && start !== undefined; start = starts.next()) {
      const wanted = start.clone();
      if (wanted.toUnixTime() * 1000 >= toMs) break;
      add(wanted);
    }
  }
  return [...spans.values()];
}

function seriesOfEvent(event: ICAL.Component, overrides: readonly ICAL.Component[], zones: CalendarZones): Series {
  const [start] = timesOf(event, 'dtstart', zones);
  if (start === undefined) throw new RangeError('an event without DTSTART');
  const isOverride = event.hasProperty('recurrence-id');
  if (isOverride && event.getFirstProperty('recurrence-id')?.getFirstParameter('range'))
    throw new RangeError('RANGE=THISANDFUTURE is not read: end the series and begin another');
  const uid = event.getFirstPropertyValue('uid');
  const replaced = overrides.filter((other) => !isOverride && other.getFirstPropertyValue('uid') === uid);
  const without = [
    ...timesOf(event, 'exdate', zones, start),
    ...replaced.flatMap((other) => timesOf(other, 'recurrence-id', zones, start)),
  ];
  return {
    event,
    start,
    endOf: endOf(event, start, zones),
    rules: isOverride ? [] : event.getAllProperties('rrule').map((rule) => ruleOf(rule.getFirstValue(), start)),
    extraStarts: isOverride ? [] : timesOf(event, 'rdate', zones),
    without: new Set(without.map((time) => time.toUnixTime() * 1000)),
  };
}

/**
 * A shift with DTEND ends at the local time that DTEND names, on the nights the clocks change too: people hand over by the clock on
 * the wall. (RFC 5545, 3.8.5.3, would keep its exact hours and leave an hour without anybody each autumn.) With DURATION it
 * lasts just that long, whole days by the wall.
 */
function endOf(event: ICAL.Component, start: ICAL.Time, zones: CalendarZones): Series['endOf'] {
  const [end] = timesOf(event, 'dtend', zones);
  const duration = event.getFirstPropertyValue('duration');
  if (end !== undefined) {
    const local = end.subtractDate(start);
    return (from) => {
      const until = later(from, local);
      until.zone = end.zone;
      return until.toUnixTime() * 1000;
    };
  }
  if (duration instanceof ICAL.Duration) {
    const { weeks, days, hours, minutes, seconds } = duration;
    const exactMs = ((hours * 60 + minutes) * 60 + seconds) * 1000;
    const nominal = new ICAL.Duration({ weeks, days, hours: 0, minutes: 0, seconds: 0, isNegative: false });
    return (from) => later(from, nominal).toUnixTime() * 1000 + exactMs;
  }
  if (event.getFirstProperty('dtstart')?.type !== 'date') throw new RangeError('a shift without DTEND or DURATION');
  const wholeDay = ICAL.Duration.fromSeconds(86_400);
  return (from) => later(from, wholeDay).toUnixTime() * 1000;
}

function later(from: ICAL.Time, by: ICAL.Duration): ICAL.Time {
  const until = from.clone();
  until.addDuration(by);
  return until;
}

/** UNTIL is an instant; written as a local time it is of the zone of the start, as a day it is all of that day. */
function ruleOf(value: unknown, start: ICAL.Time): ICAL.Recur {
  if (!(value instanceof ICAL.Recur)) throw new RangeError('a recurrence that is no rule');
  if (fastest.has(value.freq)) throw new RangeError('a shift that recurs within the hour');
  const rule = value.clone();
  const { until } = rule;
  if (until?.isDate) rule.until = local(until, start.zone, { hour: 23, minute: 59, second: 59 });
  else if (until && until.zone !== ICAL.Timezone.utcTimezone) rule.until = local(until, start.zone);
  return rule;
}

/** The times of a property, in their zones. A bare day stands for the time of day of `like`, or for midnight. */
function timesOf(event: ICAL.Component, name: string, zones: CalendarZones, like?: ICAL.Time): ICAL.Time[] {
  return event.getAllProperties(name).flatMap((property) => {
    const zone = property.getFirstParameter('tzid');
    return property.getValues().map((value: unknown) => {
      if (!(value instanceof ICAL.Time)) throw new RangeError(`${name.toUpperCase()} that is no time`);
      if (value.isDate) return local(value, like?.zone ?? zones.floating, like ?? { hour: 0, minute: 0, second: 0 });
      if (value.zone === ICAL.Timezone.utcTimezone) return value.clone();
      return local(value, zone ? zones.zones(zone) : zones.floating);
    });
  });
}

/** The same day of the calendar, at the time of day of `time`, in a zone. */
function local(day: ICAL.Time, zone: ICAL.Timezone, time: TimeOfDay = day): ICAL.Time {
  const { hour, minute, second } = time;
  return new ICAL.Time({ year: day.year, month: day.month, day: day.day, hour, minute, second, isDate: false }, zone);
}
