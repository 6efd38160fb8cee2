/** The family's quiet hours, by its own clock and over both changes of the clocks. */
import { describe, expect, it } from 'vitest';
import { afterQuietHoursMs, quietHoursOf } from '#machines/rules/quietHours.ts';
import { site } from '#tests/dislodgement/night.ts';

const held = (at: string, changes: Partial<typeof site> = {}) =>
  new Date(afterQuietHoursMs(Date.parse(at), { ...site, ...changes })).toISOString();

describe('the quiet hours', () => {
  it('are from nine in the evening until seven where the site names none', () => {
    expect(quietHoursOf(site)).toEqual({ from: '21:00', until: '07:00' });
    expect(quietHoursOf({ ...site, quietFrom: '22:00', quietUntil: '06:30' })).toEqual({
      from: '22:00',
      until: '06:30',
    });
  });

  it.each([
    ['2027-01-12T20:59:59-05:00', '2027-01-13T01:59:59.000Z'],
    ['2027-01-12T21:00:00-05:00', '2027-01-13T12:00:00.000Z'],
    ['2027-01-12T23:59:00-05:00', '2027-01-13T12:00:00.000Z'],
    ['2027-01-13T00:00:00-05:00', '2027-01-13T12:00:00.000Z'],
    ['2027-01-13T06:59:59-05:00', '2027-01-13T12:00:00.000Z'],
    ['2027-01-13T07:00:00-05:00', '2027-01-13T12:00:00.000Z'],
    ['2027-01-13T07:00:30-05:00', '2027-01-13T12:00:30.000Z'],
  ])('hold %s until %s', (at, until) => {
    expect(held(at)).toBe(until);
  });

  // IANA time zone database, America/New_York: the clocks go forward on 14 March 2027 and back on 7 November 2027, at 2:00.
  it.each([
    ['the night the clocks go forward', '2027-03-13T23:00:00-05:00', '2027-03-14T11:00:00.000Z'],
    ['the night the clocks go back', '2027-11-06T23:00:00-04:00', '2027-11-07T12:00:00.000Z'],
  ])('end at seven on the clock on %s', (_, at, until) => {
    expect(held(at)).toBe(until);
  });

  it('end on the minute the site names', () => {
    expect(held('2027-01-13T03:00:00-05:00', { quietUntil: '06:30' })).toBe('2027-01-13T11:30:00.000Z');
  });

  it('are those of the place', () => {
    expect(held('2027-01-13T07:00:00Z', { timeZone: 'Europe/Paris' })).toBe('2027-01-13T07:00:00.000Z');
    expect(held('2027-01-13T07:00:00Z', { timeZone: 'America/Los_Angeles' })).toBe('2027-01-13T15:00:00.000Z');
  });
});
