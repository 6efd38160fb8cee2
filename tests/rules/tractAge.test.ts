import { DateTime, Settings } from 'luxon';
import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { today, tractVerdict } from '#machines/rules/tractAge.ts';

const day = '2027-03-06';
const daysAgo = (days: number) => DateTime.fromISO(day, { zone: 'utc' }).minus({ days }).toFormat('yyyy-MM-dd');
const placed = (days: number) => ({ earliest: daysAgo(days), latest: daysAgo(days) });

describe('tract age', () => {
  it.each([
    [-1, 'too-young'],
    [0, 'too-young'],
    [13, 'too-young'],
    [14, 'nearly-too-young'],
    [27, 'nearly-too-young'],
    [28, 'young'],
    [55, 'young'],
    [56, 'young'],
    [57, 'usable'],
    [4000, 'usable'],
  ])('%i days is %s', (days, verdict) => {
    expect(tractVerdict(placed(days), day, defaultClinical)).toBe(verdict);
  });

  it.each(['unknown', null] as const)('%s is unknown', (told) => {
    expect(tractVerdict(told, day, defaultClinical)).toBe('unknown');
  });

  it.each([
    [200, 57, 'usable'],
    [200, 56, 'young'],
    [200, 27, 'nearly-too-young'],
    [200, 13, 'too-young'],
  ])('a range from %i to %i days ago counts at its younger end', (earliest, latest, verdict) => {
    const range = { earliest: daysAgo(earliest), latest: daysAgo(latest) };
    expect(tractVerdict(range, day, defaultClinical)).toBe(verdict);
  });

  it('an "at least" needs no earliest day', () => {
    expect(tractVerdict({ earliest: null, latest: daysAgo(57) }, day, defaultClinical)).toBe('usable');
  });

  it.each([
    ['cautious under 56, usable after 42', { cautiousUnderDays: 56, tractUsableAfterDays: 42 }, 50, 'nearly-too-young'],
    ['no insertion under 56, cautious under 14', { noInsertionUnderDays: 56, cautiousUnderDays: 14 }, 30, 'too-young'],
    ['no insertion under 56, usable after 42', { noInsertionUnderDays: 56, tractUsableAfterDays: 42 }, 50, 'too-young'],
    ['no insertion under 0', { noInsertionUnderDays: 0 }, 0, 'nearly-too-young'],
    ['no insertion under 0', { noInsertionUnderDays: 0 }, -1, 'too-young'],
  ])('crossing settings, %s: the stricter verdict wins', (_name, settings, days, verdict) => {
    expect(tractVerdict(placed(days), day, { ...defaultClinical, ...settings })).toBe(verdict);
  });

  it('counts calendar days over a clock change and a leap day', () => {
    const over = (latest: string, at: string) => tractVerdict({ earliest: null, latest }, at, defaultClinical);
    expect(over('2027-02-28', '2027-03-28')).toBe('young');
    expect(over('2028-02-28', '2028-03-27')).toBe('young');
    expect(over('2028-02-28', '2028-03-26')).toBe('nearly-too-young');
  });

  it('counts the same days whatever the zone of the machine it runs on', () => {
    Settings.defaultZone = 'America/New_York';
    try {
      // The clocks there change on 14 March 2027: by its midnights the first is an hour short of 28 days.
      expect(tractVerdict({ earliest: null, latest: '2027-02-28' }, '2027-03-28', defaultClinical)).toBe('young');
      expect(tractVerdict({ earliest: null, latest: '2027-02-28' }, '2027-03-27', defaultClinical)).toBe(
        'nearly-too-young',
      );
    } finally {
      Settings.defaultZone = 'system';
    }
  });

  it.each(['2027-3-6', '2027-02-30', '', 'yesterday', '+002027-03-06', '12027-03-06', '2027-03-06T00:06'])(
    'crashes on %j, which no edge lets in, and names it',
    (latest) => {
      const judge = () => tractVerdict({ earliest: null, latest }, day, defaultClinical);
      expect(judge).toThrow(new RangeError(`not a calendar day: ${latest}`));
    },
  );
});

describe('today', () => {
  it.each([
    ['2027-03-06T04:59:59Z', 'America/New_York', '2027-03-05'],
    ['2027-03-06T05:00:00Z', 'America/New_York', '2027-03-06'],
    ['2027-03-06T13:00:00Z', 'Australia/Sydney', '2027-03-07'],
  ])('%s in %s is %s', (instant, zone, date) => {
    expect(today(Date.parse(instant), zone)).toBe(date);
  });

  it('is another day in another zone at the same moment', () => {
    const at = Date.parse('2027-03-06T13:00:00Z');
    expect(today(at, 'America/New_York')).toBe('2027-03-06');
    expect(today(at, 'Australia/Sydney')).toBe('2027-03-07');
  });

  it('is worked out once for the many times one step asks', () => {
    const fromMillis = DateTime.fromMillis;
    let workedOut = 0;
    DateTime.fromMillis = (...moment) => {
      workedOut += 1;
      return fromMillis(...moment);
    };
    try {
      const at = Date.parse('2030-01-01T00:00:00Z');
      expect([today(at, 'utc'), today(at, 'utc')]).toEqual(['2030-01-01', '2030-01-01']);
    } finally {
      DateTime.fromMillis = fromMillis;
    }
    expect(workedOut).toBe(1);
  });

  it('crashes on a zone the protocol would have refused, and names it', () => {
    expect(() => today(0, 'Mars/Olympus')).toThrow(new RangeError('no calendar day at 0 in Mars/Olympus'));
  });
});
