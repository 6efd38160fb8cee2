/** Weights against the exact pound and the WHO tables. [seen]: the source was read; [run]: computed from it. */

import { describe, expect, it } from 'vitest';
import { kgPerLb, settleWeight, weightBand } from '#machines/rules/weight.ts';

const inLb = (lb: number) => {
  const settled = settleWeight({ unit: 'lb' }, lb);
  if (!('settled' in settled) || settled.settled === 'unknown' || !('kg' in settled.settled)) {
    throw new Error(`${lb} lb did not settle`);
  }
  return settled.settled;
};

describe('the exact pound', () => {
  // [seen] International yard and pound agreement 1959; NIST SP 811, appendix B; NIST Handbook 44, appendix C.
  it('is 0.45359237 kg', () => {
    expect(kgPerLb).toBe(0.45359237);
    expect(inLb(1).kg).toBe(0.45359237);
  });

  // [run] by the exact pound.
  it.each([
    ['6 lb 9 oz', 6 + 9 / 16, 2.9767, 'under-3'],
    ['6.61 lb', 6.61, 2.99825, 'under-3'],
    ['3 kg', 6.613867865546327, 3, '3'],
    ['6.62 lb', 6.62, 3.00278, 'over-3'],
    ['6 lb 10 oz', 6 + 10 / 16, 3.00505, 'over-3'],
    ['14 lb, one stone', 14, 6.35029, 'over-3'],
  ])('%s', (_told, lb, kg, band) => {
    const settled = inLb(lb);
    expect(settled.kg).toBeCloseTo(kg, 5);
    expect(weightBand(settled)).toBe(band);
  });

  // [run] A widely used conversion rounds the pound to 0.453592 and puts exactly 3 kg into the lower band.
  it('a rounded pound would take the wrong side of 3 kg; this one does not', () => {
    const exactly3kgInLb = 6.613867865546327;
    expect(weightBand({ kg: exactly3kgInLb * 0.453592 })).toBe('under-3');
    expect(weightBand(inLb(exactly3kgInLb))).toBe('3');
  });

  // [run] 16 oz to the pound, NIST Handbook 44, appendix C.
  it('no whole ounce is exactly 3 kg', () => {
    for (let ounces = 16; ounces <= 320; ounces += 1) expect(weightBand(inLb(ounces / 16))).not.toBe('3');
  });

  // [run] the window in which a bare number needs its unit.
  it.each([
    [2.99, false],
    [3, true],
    [6.6138, true],
    [6.6139, false],
  ])('a bare %d is asked for its unit: %s', (bare, asked) => {
    expect('askUnit' in settleWeight({ bare }, null)).toBe(asked);
  });
});

describe('WHO weight-for-age', () => {
  // [run] from the WHO child growth standards by day, anthro commit b776d8a: WHO's own implausibility flags, -6 and +5 SD.
  it.each([
    ['boy, birth', 0.94, 6.25],
    ['girl, birth', 0.95, 5.92],
    ['boy, 12 months', 4.48, 16.06],
    ['girl, 12 months', 3.97, 16.33],
    ['boy, 60 months', 7.28, 35.26],
    ['girl, 60 months', 6.99, 38.81],
  ])('%s: no weight WHO finds plausible is refused', (_child, least, most) => {
    for (const kg of [least, most]) expect(settleWeight({ kg }, null)).toEqual({ settled: { kg } });
  });
});
