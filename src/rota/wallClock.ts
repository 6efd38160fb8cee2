/** A time of day at a place, as an instant: the same rule for missing and doubled times as the rota's calendars. */
import ICAL from 'ical.js';
import type { DateTime } from 'luxon';
import { listedZone } from './zones.ts';

/** The instant (epoch ms) of `clock` (`HH:MM`) on that day, in the zone of `day`. */
export function atClock(day: DateTime<true>, clock: string): number {
  const [hour = 0, minute = 0] = clock.split(':').map(Number);
  const time = { year: day.year, month: day.month, day: day.day, hour, minute, second: 0, isDate: false };
  return new ICAL.Time(time, listedZone(day.zoneName)).toUnixTime() * 1000;
}
