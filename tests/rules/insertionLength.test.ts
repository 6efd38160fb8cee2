import { describe, expect, it } from 'vitest';
import { insertionLength } from '#machines/rules/insertionLength.ts';

describe('insertion length', () => {
  // Common practice, no source.
  it.each([
    ['under-3', 3, 4],
    ['3', 4, 4],
    ['over-3', 4, 6],
    ['unknown', 4, 4],
  ] as const)('%s: %i to %i cm', (band, lowCm, highCm) => {
    expect(insertionLength(band)).toEqual({ lowCm, highCm });
  });

  it('gives without a known weight only what every band allows', () => {
    const { lowCm, highCm } = insertionLength('unknown');
    for (const band of ['under-3', '3', 'over-3'] as const) {
      expect(lowCm).toBeGreaterThanOrEqual(insertionLength(band).lowCm);
      expect(highCm).toBeLessThanOrEqual(insertionLength(band).highCm);
    }
  });
});
