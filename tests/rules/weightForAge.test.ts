/** A weight against the child's age: asked again outside WHO's own flags, at every age the child can have. */
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { weightFitsAge } from '#machines/rules/weightForAge.ts';
import { whoWeights } from './whoWeights.ts';

const today = '2027-03-06';
const bornDaysAgo = (days: number) => DateTime.fromISO(today, { zone: 'utc' }).minus({ days }).toFormat('yyyy-MM-dd');
const aged = (days: number) => ({ earliest: bornDaysAgo(days), latest: bornDaysAgo(days) });

const rows = whoWeights.map(({ days, leastKg, mostKg }) => [days, leastKg, mostKg] as const);

describe('a weight for the age', () => {
  it.each(rows)('at %d days fits from %d to %d kg, both included', (days, least, most) => {
    const born = aged(days);
    expect(weightFitsAge(least, born, today)).toBe(true);
    expect(weightFitsAge(least - 0.01, born, today)).toBe(false);
    expect(weightFitsAge(most, born, today)).toBe(true);
    expect(weightFitsAge(most + 0.01, born, today)).toBe(false);
  });

  it.each(rows.slice(1))(
    'the day before %d days still has the lighter bound of the row before',
    (days, least, most) => {
      const born = aged(days - 1);
      expect(weightFitsAge(least - 0.01, born, today)).toBe(true);
      expect(weightFitsAge(most, born, today)).toBe(true);
    },
  );

  it('a day past a row the heavier bound of the next one holds', () => {
    expect(weightFitsAge(16.34, aged(366), today)).toBe(true);
    expect(weightFitsAge(21.35, aged(366), today)).toBe(false);
  });

  it('over five years nothing is too heavy, and too light stays too light', () => {
    expect(weightFitsAge(150, aged(1827), today)).toBe(true);
    expect(weightFitsAge(6.9, aged(4000), today)).toBe(false);
  });

  it('of a range of births both ends are allowed for', () => {
    const born = { earliest: bornDaysAgo(730), latest: bornDaysAgo(91) };
    expect(weightFitsAge(2.36, born, today)).toBe(true);
    expect(weightFitsAge(21.34, born, today)).toBe(true);
    expect(weightFitsAge(2.35, born, today)).toBe(false);
    expect(weightFitsAge(21.35, born, today)).toBe(false);
  });

  it('where only the latest birth is known nothing is too heavy', () => {
    expect(weightFitsAge(100, { earliest: null, latest: bornDaysAgo(30) }, today)).toBe(true);
  });

  it('a birth still to come is no reason to ask', () => {
    expect(weightFitsAge(0.5, aged(-3), today)).toBe(true);
  });

  // WHO's own examples: anthro, tests/testthat/test-zscore-weight-for-age.R. [seen]
  it("agrees with WHO's own examples", () => {
    expect(weightFitsAge(10.37, aged(1), today)).toBe(false);
    expect(weightFitsAge(17, aged(1522), today)).toBe(true);
  });

  // [run] from WHO's table: a girl of a year with 7 lb read as kilograms fits, 7 lb itself is a wrong unit.
  it('finds pounds taken for kilograms', () => {
    expect(weightFitsAge(7, aged(365), today)).toBe(true);
    expect(weightFitsAge(7 * 0.45359237, aged(365), today)).toBe(false);
    expect(weightFitsAge(22, aged(730), today)).toBe(false);
    expect(weightFitsAge(22 * 0.45359237, aged(730), today)).toBe(true);
  });
});
