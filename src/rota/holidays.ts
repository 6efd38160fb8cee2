/** The clinic's public holidays: which days of a year it is closed. */

import Holidays from 'date-holidays';

/**
 * 5 U.S.C. 6103(b) and Executive Order 11582: a federal holiday on a Saturday or Sunday is kept on the Friday before or the Monday
 * after. The library knows that for every US holiday but this one.
 */
const veteransDay = '11-11 and if sunday then next monday if saturday then previous friday';

const calendars = new Map<string, Holidays>();
const years = new Map<string, ReadonlySet<string>>();

/** Whether there is a calendar of that name: a country, or country and state, as `US` or `US-NY`. */
export function knowsCalendar(name: string): boolean {
  const { country, state } = split(name);
  const library = new Holidays();
  if (!Object.hasOwn(library.getCountries(), country)) return false;
  return state === undefined || Object.hasOwn(library.getStates(country) ?? {}, state);
}

/** Whether the day (`yyyy-mm-dd`) is a public holiday, or one is kept on it, in that calendar. An unknown calendar throws `RangeError`. */
export function isHoliday(name: string, date: string): boolean {
  return holidaysOf(name, date.slice(0, 4)).has(date);
}

/** Working a year out is slow, so each is kept. */
function holidaysOf(name: string, year: string): ReadonlySet<string> {
  const key = `${name} ${year}`;
  const known = years.get(key);
  if (known) return known;
  const days = calendarOf(name)
    .getHolidays(Number(year))
    .filter((holiday) => holiday.type === 'public')
    .map((holiday) => holiday.date.slice(0, 10));
  const made = new Set(days);
  years.set(key, made);
  return made;
}

function calendarOf(name: string): Holidays {
  const known = calendars.get(name);
  if (known) return known;
  if (!knowsCalendar(name)) throw new RangeError(`no holiday calendar ${name}`);
  const { country, state } = split(name);
  const made = state === undefined ? new Holidays(country) : new Holidays(country, state);
  if (country === 'US') made.setHoliday(veteransDay, { name: 'Veterans Day', type: 'public' });
  calendars.set(name, made);
  return made;
}

function split(name: string): { country: string; state: string | undefined } {
  const [country = '', state] = name.split('-');
  return { country, state };
}
