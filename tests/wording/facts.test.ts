/** Facts in words: dates, times, weights and readings as a parent or a nurse reads them. */
import { describe, expect, it } from 'vitest';
import { dates, length, number, reading, time, weight } from '#src/wording/en/facts.ts';
import * as es from '#src/wording/es/facts.ts';
import { scene } from './samples.ts';

describe('a date', () => {
  it.each([
    [{ earliest: '2026-03-12', latest: '2026-03-12' }, '12 Mar 2026'],
    [{ earliest: '2026-02-01', latest: '2026-02-28' }, 'Feb 2026'],
    [{ earliest: '2028-02-01', latest: '2028-02-29' }, 'Feb 2028'],
    [{ earliest: '2026-03-01', latest: '2026-04-30' }, '1 Mar 2026 to 30 Apr 2026'],
    [{ earliest: '2026-03-02', latest: '2026-03-31' }, '2 Mar 2026 to 31 Mar 2026'],
    [{ earliest: null, latest: '2026-03-12' }, '12 Mar 2026 or before'],
  ])('reads plainly: %j', (range, said) => {
    expect(dates(range)).toBe(said);
  });
});

describe('a time', () => {
  it.each([
    ['2027-03-06T01:50:00-05:00', '1:50 am'],
    ['2027-03-06T00:05:00-05:00', '12:05 am'],
    ['2027-03-06T12:00:00-05:00', '12:00 pm'],
    ['2027-03-05T23:50:00-05:00', '11:50 pm on Fri 5 Mar'],
    ['2027-03-07T01:10:00-05:00', '1:10 am on Sun 7 Mar'],
  ])("reads on the site's clock: %s", (iso, said) => {
    expect(time(Date.parse(iso), scene)).toBe(said);
  });

  /** New York goes to summer time at 2027-03-14T07:00Z (IANA time zone database). */
  it('follows the clock over the change to summer time', () => {
    const night = { ...scene, nowMs: Date.parse('2027-03-14T06:30:00Z') };
    expect(time(Date.parse('2027-03-14T06:30:00Z'), night)).toBe('1:30 am');
    expect(time(Date.parse('2027-03-14T07:30:00Z'), night)).toBe('3:30 am');
  });
});

describe('a weight', () => {
  it.each([
    [{ kg: 7 }, '7 kg'],
    [{ kg: 6.917286 }, '6.92 kg'],
    [{ kg: 3 }, '3 kg'],
    [{ band: 'under-3' as const }, 'under 3 kg'],
    [{ band: '3' as const }, '3 kg'],
    [{ band: 'over-3' as const }, 'over 3 kg'],
    ['unknown' as const, 'weight not known'],
  ])('reads plainly: %j', (value, said) => {
    expect(weight(value)).toBe(said);
  });

  /** 6.61 lb and 6.62 lb in kilograms, by the exact pound of 0.45359237 kg (NIST SP 811). */
  it('never hides by rounding on which side of 3 kg it lies', () => {
    expect(weight({ kg: 6.61 * 0.45359237 })).toBe('just under 3 kg');
    expect(weight({ kg: 6.62 * 0.45359237 })).toBe('just over 3 kg');
  });
});

describe('a reading', () => {
  it.each([
    [{ low: 5.5, high: 5.5 }, '5.5'],
    [{ low: 5, high: 5.5 }, '5 to 5.5'],
    [{ low: 0, high: 5 }, '5 or less'],
    [{ low: 6, high: 14 }, '6 or more'],
  ])('reads as told: %j', (ph, said) => {
    expect(reading(ph)).toBe(said);
  });
});

describe('a number', () => {
  it('reads without trailing zeros', () => {
    expect([number(5), number(5.5), number(0.1 + 0.2)]).toEqual(['5', '5.5', '0.3']);
  });

  it('names one length once', () => {
    expect([length(4, 4), length(3, 4)]).toEqual(['4 cm', '3-4 cm']);
  });
});

describe('in Spanish', () => {
  it.each([
    [{ earliest: '2026-03-12', latest: '2026-03-12' }, '12 mar 2026'],
    [{ earliest: '2026-09-01', latest: '2026-09-30' }, 'sept 2026'],
    [{ earliest: '2026-03-01', latest: '2026-04-30' }, '1 mar 2026 a 30 abr 2026'],
    [{ earliest: null, latest: '2026-03-12' }, '12 mar 2026 o antes'],
  ])('a date: %j', (range, said) => {
    expect(es.dates(range)).toBe(said);
  });

  it.each([
    ['2027-03-06T01:50:00-05:00', 'la 1:50 am'],
    ['2027-03-06T00:05:00-05:00', 'las 12:05 am'],
    ['2027-03-06T13:00:00-05:00', 'la 1:00 pm'],
    ['2027-03-05T23:50:00-05:00', 'las 11:50 pm del vie 5 mar'],
  ])('a time: %s', (iso, said) => {
    expect(es.time(Date.parse(iso), scene)).toBe(said);
  });

  it('a weight, a reading and a number, with a decimal point', () => {
    expect(es.weight({ kg: 6.917286 })).toBe('6.92 kg');
    expect(es.weight({ kg: 6.61 * 0.45359237 })).toBe('poco menos de 3 kg');
    expect(es.weight({ kg: 6.62 * 0.45359237 })).toBe('poco más de 3 kg');
    expect(es.reading({ low: 5, high: 5.5 })).toBe('5 a 5.5');
    expect([es.reading({ low: 0, high: 5 }), es.reading({ low: 6, high: 14 })]).toEqual(['5 o menos', '6 o más']);
  });
});
