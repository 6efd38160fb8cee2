import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { phVerdict } from '#machines/rules/phVerdict.ts';

const single = (ph: number) => ({ low: ph, high: ph });

describe('pH verdict', () => {
  it.each([
    [0, 'passes'],
    [1, 'passes'],
    [5, 'passes'],
    [5.4, 'passes'],
    [5.5, 'passes'],
    [5.5001, 'after-feed-only'],
    [5.9, 'after-feed-only'],
    [6, 'after-feed-only'],
    [6.5, 'after-feed-only'],
    [7, 'after-feed-only'],
    [7.1, 'high'],
    [8.5, 'high'],
    [9, 'high'],
    [14, 'high'],
    [14.1, 'no-reading'],
    [-0.1, 'no-reading'],
    [55, 'no-reading'],
    [Number.NaN, 'no-reading'],
    [Number.POSITIVE_INFINITY, 'no-reading'],
  ])('%d %s', (ph, verdict) => {
    expect(phVerdict(single(ph), defaultClinical)).toBe(verdict);
  });

  it.each([
    [5, 5.5, 'passes'],
    [5, 6, 'after-feed-only'],
    [5, 7.5, 'high'],
    [6, 5, 'no-reading'],
    [-1, 5, 'no-reading'],
    [5, 15, 'no-reading'],
    [Number.NaN, 5, 'no-reading'],
    [5, Number.NaN, 'no-reading'],
  ])('a range of %d to %d counts at its upper end: %s', (low, high, verdict) => {
    expect(phVerdict({ low, high }, defaultClinical)).toBe(verdict);
  });

  it.each([
    [0.1, 5.9, 'passes'],
    [0.1, 5.95, 'after-feed-only'],
    [0.2, 5.8, 'passes'],
    [0.2, 5.9, 'after-feed-only'],
    [0.3, 5.7, 'passes'],
    [0.3, 5.71, 'after-feed-only'],
    [1, 5, 'passes'],
    [1, 5.1, 'after-feed-only'],
  ])('on a strip of step %d, %d %s', (phStripStep, ph, verdict) => {
    expect(phVerdict(single(ph), { ...defaultClinical, phStripStep })).toBe(verdict);
  });

  it('tenths that are not exact in binary stay on their step', () => {
    const clinical = { ...defaultClinical, phStripStep: 0.1, phLimit: 6 };
    for (let tenths = 0; tenths < 60; tenths += 1) {
      expect(phVerdict(single(tenths / 10), clinical), `${tenths / 10}`).toBe('passes');
      expect(phVerdict(single(tenths * 0.1), clinical), `${tenths * 0.1}`).toBe('passes');
    }
    expect(phVerdict(single(60 * 0.1), clinical)).toBe('after-feed-only');
  });

  it.each([
    ['off', 6, 'high'],
    [6.5, 6.5, 'after-feed-only'],
    [6.5, 6.6, 'high'],
    [7, 7, 'after-feed-only'],
  ] as const)('after a feed up to %s: %d %s', (phAfterFeed, ph, verdict) => {
    expect(phVerdict(single(ph), { ...defaultClinical, phAfterFeed })).toBe(verdict);
  });

  it.each([
    [6, 5.5, 'passes'],
    [6, 5.6, 'high'],
    [6, 6, 'high'],
    [6.5, 6, 'after-feed-only'],
    [6.5, 6.1, 'high'],
    [7, 7, 'high'],
  ])('at the top of a strip that ends at %d there is no upper end: %d %s', (phStripTop, ph, verdict) => {
    expect(phVerdict(single(ph), { ...defaultClinical, phStripTop })).toBe(verdict);
  });

  it('a stricter limit is kept', () => {
    const clinical = { ...defaultClinical, phLimit: 5, phAfterFeed: 'off' } as const;
    expect(phVerdict(single(4.5), clinical)).toBe('passes');
    expect(phVerdict(single(4.6), clinical)).toBe('high');
  });
});
