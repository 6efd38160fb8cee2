import { describe, expect, it } from 'vitest';
import type { Site } from '#machines/protocol/settings.ts';
import { clinicOpen, nextWorkingDay } from '#src/rota/clinicHours.ts';

const site: Site = {
  emergencyNumber: '911',
  hospital: 'Owlet Hill',
  clinicNumber: '+12125550140',
  fallbackNumber: '+12125550141',
  timeZone: 'America/New_York',
  clinicDays: [1, 2, 3, 4, 5],
  clinicOpens: '08:00',
  clinicCloses: '17:00',
  holidays: 'US',
};

describe('clinic open', () => {
  it.each([
    ['Friday a moment before it opens', '2027-03-05T07:59:59-05:00', false],
    ['Friday as it opens', '2027-03-05T08:00:00-05:00', true],
    ['Friday in its last minute', '2027-03-05T16:59:59-05:00', true],
    ['Friday as it closes', '2027-03-05T17:00:00-05:00', false],
    ['Saturday', '2027-03-06T10:00:00-05:00', false],
    ['Sunday', '2027-03-07T10:00:00-05:00', false],
    ['Monday', '2027-03-08T10:00:00-05:00', true],
    ['Thanksgiving', '2027-11-25T10:00:00-05:00', false],
    ['the Friday after it', '2027-11-26T10:00:00-05:00', true],
    ['Independence Day kept on a Monday', '2027-07-05T10:00:00-04:00', false],
    ['New Year 2028 kept on the Friday of the old year', '2027-12-31T10:00:00-05:00', false],
    ['Veterans Day kept on a Friday', '2028-11-10T10:00:00-05:00', false],
  ])('%s', (_name, instant, open) => {
    expect(clinicOpen(site, Date.parse(instant))).toBe(open);
  });

  it('uses the zone of the site, not of the machine', () => {
    const at = Date.parse('2027-03-05T22:30:00Z');
    expect(clinicOpen(site, at)).toBe(false);
    expect(clinicOpen({ ...site, timeZone: 'America/Los_Angeles' }, at)).toBe(true);
  });

  it('works on a holiday when the site keeps no calendar, and closes on a state holiday when it keeps that one', () => {
    const thanksgiving = Date.parse('2027-11-25T10:00:00-05:00');
    expect(clinicOpen({ ...site, holidays: null }, thanksgiving)).toBe(true);
    expect(clinicOpen({ ...site, holidays: 'US-NY' }, thanksgiving)).toBe(false);
  });

  it('crashes on a calendar or a zone the seeds would have refused', () => {
    const at = Date.parse('2027-03-05T10:00:00-05:00');
    expect(() => clinicOpen({ ...site, holidays: 'ZZ' }, at)).toThrow(RangeError);
    expect(() => clinicOpen({ ...site, holidays: 'US-ZZ' }, at)).toThrow(RangeError);
    expect(() => clinicOpen({ ...site, timeZone: 'Mars/Olympus' }, at)).toThrow(RangeError);
  });
});

describe('next working day', () => {
  it.each([
    ['in the night of a Saturday', '2027-03-06T02:10:00-05:00', '2027-03-08'],
    ['in the night of a working day', '2027-03-08T02:10:00-05:00', '2027-03-08'],
    ['while the clinic is open', '2027-03-08T08:00:00-05:00', '2027-03-09'],
    ['on a Friday evening', '2027-03-05T18:00:00-05:00', '2027-03-08'],
    ['before a holiday', '2027-11-24T18:00:00-05:00', '2027-11-26'],
    ['before Christmas of a Saturday', '2027-12-23T18:00:00-05:00', '2027-12-27'],
    ['before a new year kept early', '2027-12-30T18:00:00-05:00', '2028-01-03'],
  ])('%s', (_name, instant, day) => {
    expect(nextWorkingDay(site, Date.parse(instant))).toBe(day);
  });

  it('crashes where there is none', () => {
    expect(() => nextWorkingDay({ ...site, clinicDays: [] }, 0)).toThrow(RangeError);
  });
});
