/** US federal holidays against an independent reference, the library `@18f/us-federal-holidays`, with the days they are kept on. */

import { allForYear } from '@18f/us-federal-holidays';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { isHoliday, knowsCalendar } from '#src/rota/holidays.ts';

const years = [2026, 2027, 2028, 2029, 2030, 2031, 2032, 2033, 2034, 2035];

/** The days the reference keeps, and the holidays' own dates; new year's may be kept in the year before. */
function reference(year: number): Set<string> {
  const kept = [year, year + 1].flatMap((each) => allForYear(each).map((holiday) => holiday.dateString));
  const own = allForYear(year, { shiftSaturdayHolidays: false, shiftSundayHolidays: false });
  const days = [...kept, ...own.map((holiday) => holiday.dateString)];
  return new Set(days.filter((date) => date.startsWith(String(year))));
}

describe('US federal holidays', () => {
  it.each(years)('%i: the same days closed as the reference, and no other', (year) => {
    const expected = reference(year);
    expect(expected.size).toBeGreaterThanOrEqual(11);
    for (let day = DateTime.utc(year, 1, 1); day.year === year; day = day.plus({ days: 1 })) {
      const date = day.toFormat('yyyy-MM-dd');
      expect(isHoliday('US', date), date).toBe(expected.has(date));
    }
  });

  // 5 U.S.C. 6103(b), Executive Order 11582: Saturday's is kept on Friday, Sunday's on Monday. Dates: US Office of Personnel Management. [memory]
  it.each(['2026-07-03', '2027-06-18', '2027-07-05', '2027-12-24', '2027-12-31', '2028-11-10'])(
    '%s is kept',
    (date) => {
      expect(isHoliday('US', date)).toBe(true);
    },
  );
});

describe('a calendar by name', () => {
  it.each([
    ['US', true],
    ['US-NY', true],
    ['CA-ON', true],
    ['ZZ', false],
    ['US-ZZ', false],
    ['', false],
  ])('%s: %s', (name, known) => {
    expect(knowsCalendar(name)).toBe(known);
  });

  it('a state has the holidays of its country too', () => {
    expect(isHoliday('US-NY', '2027-11-25')).toBe(true);
  });

  // New York General Construction Law, section 24: Lincoln's birthday, 12 February. [memory]
  it('a state has holidays of its own', () => {
    expect(isHoliday('US-NY', '2027-02-12')).toBe(true);
    expect(isHoliday('US', '2027-02-12')).toBe(false);
  });
});
