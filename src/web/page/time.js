// @ts-check
/** Times as the page shows them: the site's zone, the 24-hour clock. */

/**
 * @param {string} zone IANA name
 * @param {Intl.DateTimeFormatOptions} options
 */
const format = (zone, options) => new Intl.DateTimeFormat('en-GB', { timeZone: zone, ...options });

/**
 * `02:10`
 * @param {string} iso
 * @param {string} zone
 */
export const clockTime = (iso, zone) =>
  format(zone, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(new Date(iso));

/**
 * `Saturday 6 March 2027`
 * @param {string} iso
 * @param {string} zone
 */
export const longDay = (iso, zone) =>
  format(zone, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' })
    .format(new Date(iso))
    .replace(',', '');

/**
 * The time, with the day before it where that is another day than `now`'s.
 * @param {string} iso
 * @param {string} now
 * @param {string} zone
 */
export function timeFrom(iso, now, zone) {
  const time = clockTime(iso, zone);
  if (longDay(iso, zone) === longDay(now, zone)) return time;
  return `${format(zone, { weekday: 'short', day: 'numeric', month: 'short' }).format(new Date(iso)).replace(',', '')} ${time}`;
}

/**
 * `in 5 min`, `in 1 h 30 min`, `in 3 d`; rounded up to the minute, `now` when due.
 * @param {string} iso
 * @param {string} now
 */
export function wait(iso, now) {
  const minutes = Math.ceil((Date.parse(iso) - Date.parse(now)) / 60_000);
  if (minutes <= 0) return 'now';
  if (minutes < 60) return `in ${minutes} min`;
  if (minutes < 48 * 60) return `in ${Math.floor(minutes / 60)} h${minutes % 60 ? ` ${minutes % 60} min` : ''}`;
  return `in ${Math.floor(minutes / 1440)} d`;
}

/**
 * A date `2026-11-02` as `2 Nov 2026`; a calendar date belongs to no zone.
 * @param {string} date
 */
export const calendarDay = (date) =>
  format('UTC', { day: 'numeric', month: 'short', year: 'numeric' }).format(new Date(`${date}T00:00:00Z`));
