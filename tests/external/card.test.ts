/** The bank card as a ruler. [memory] ISO/IEC 7810, ID-1: 85.60 mm by 53.98 mm. */

import { describe, expect, it } from 'vitest';
import { insertionLength } from '#machines/rules/insertionLength.ts';

const shortSideCm = 5.398;

describe('the short side of a card', () => {
  it('is a length the upper band allows', () => {
    const { lowCm, highCm } = insertionLength('over-3');
    expect(shortSideCm).toBeGreaterThanOrEqual(lowCm);
    expect(shortSideCm).toBeLessThanOrEqual(highCm);
  });

  it.each(['under-3', '3', 'unknown'] as const)(
    'is longer than the whole length for %s, so it can be marked on it',
    (band) => {
      expect(shortSideCm).toBeGreaterThan(insertionLength(band).highCm);
    },
  );

  // [run] 53.98 mm x 0.75 = 40.5 mm.
  it('three quarters of it are the 4 cm of every band, to a millimetre', () => {
    expect(Math.abs(shortSideCm * 0.75 - insertionLength('unknown').highCm)).toBeLessThanOrEqual(0.1);
  });

  // [seen] Soscia & Friedman, Paediatr Child Health 2011;16:281, table 3: a balloon tube is seated again at its 4 to 6 cm mark.
  it('the upper band is the published 4 to 6 cm', () => {
    expect(insertionLength('over-3')).toEqual({ lowCm: 4, highCm: 6 });
  });
});
