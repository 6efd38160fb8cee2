import { describe, expect, it } from 'vitest';
import { kgPerLb, meantKg, saysSameNumber, settleWeight, surelyOverKg, weightBand } from '#machines/rules/weight.ts';

describe('settling a weight', () => {
  it.each([0.3, 2.99, 3, 3.01, 200])('%d kg stays as told', (kg) => {
    expect(settleWeight({ kg }, null)).toEqual({ settled: { kg } });
  });

  it.each([0, -3, 0.29, 200.01, 2900, Number.NaN, Number.POSITIVE_INFINITY])('%d kg is no child', (kg) => {
    expect(settleWeight({ kg }, null)).toEqual({ implausible: true });
  });

  it.each([
    [0.3, 'under-3'],
    [2.99, 'under-3'],
    [6.6139, 'over-3'],
    [12, 'over-3'],
    [400, 'over-3'],
  ])('a bare %d means %s in either unit', (bare, band) => {
    expect(settleWeight({ bare }, null)).toEqual({ settled: { band, bare } });
  });

  it.each([3, 3.01, 5, 6.6138, 3 / kgPerLb])('a bare %d needs its unit', (bare) => {
    expect(settleWeight({ bare }, null)).toEqual({ askUnit: bare });
  });

  it.each([0, -4, 0.2, 450, Number.NaN])('a bare %d is no child in either unit', (bare) => {
    expect(settleWeight({ bare }, null)).toEqual({ implausible: true });
  });

  it('the unit settles the number that waited for it', () => {
    expect(settleWeight({ unit: 'kg' }, 5)).toEqual({ settled: { kg: 5 } });
    expect(settleWeight({ unit: 'lb' }, 4)).toEqual({ settled: { kg: 1.81436948 } });
  });

  it('a unit with no number waiting is asked again', () => {
    expect(settleWeight({ unit: 'kg' }, null)).toEqual({ implausible: true });
  });

  it('a new number takes the place of the one that waited', () => {
    expect(settleWeight({ bare: 4 }, 5)).toEqual({ askUnit: 4 });
    expect(settleWeight({ kg: 4 }, 5)).toEqual({ settled: { kg: 4 } });
  });

  it('unknown stays unknown', () => {
    expect(settleWeight('unknown', 5)).toEqual({ settled: 'unknown' });
  });
});

describe('weight band', () => {
  it.each([
    [2.99, 'under-3'],
    [2.9999999, 'under-3'],
    [3, '3'],
    [3.0000001, 'over-3'],
    [3.01, 'over-3'],
  ])('%d kg is %s', (kg, band) => {
    expect(weightBand({ kg })).toBe(band);
  });

  it.each(['under-3', '3', 'over-3'] as const)('a settled band stays: %s', (band) => {
    expect(weightBand({ band })).toBe(band);
  });

  it('unknown has no band', () => {
    expect(weightBand('unknown')).toBe('unknown');
    expect(weightBand(null)).toBe('unknown');
  });
});

describe('surely over a weight', () => {
  it.each([
    [{ kg: 6.01 }, true],
    [{ kg: 6 }, false],
    [{ kg: 2 }, false],
    [{ band: 'over-3' } as const, false],
    ['unknown' as const, false],
    [null, false],
  ])('%j over 6 kg: %s', (weight, sure) => {
    expect(surelyOverKg(weight, 6)).toBe(sure);
  });
});

describe('what a weight may mean', () => {
  it('is itself where its unit was told, either unit where it was not, and nothing where no number was', () => {
    expect(meantKg({ kg: 7 })).toEqual([7]);
    expect(meantKg({ band: 'over-3', bare: 20 })).toEqual([20, 20 * kgPerLb]);
    expect(meantKg({ band: 'over-3' })).toEqual([]);
    expect(meantKg('unknown')).toEqual([]);
    expect(meantKg(null)).toEqual([]);
  });
});

describe('a weight told again', () => {
  it.each([
    [{ kg: 7 }, { kg: 7 }],
    [{ kg: 7 }, { bare: 7 }],
    [{ band: 'over-3', bare: 20 }, { kg: 20 }],
    [{ band: 'over-3', bare: 20 }, { bare: 20.004 }],
  ] as const)('%o is the same number as %o', (weight, told) => {
    expect(saysSameNumber(weight, told)).toBe(true);
  });

  it.each([
    [{ kg: 7 }, { kg: 17 }],
    [{ kg: 7 }, { bare: 17 }],
    [{ band: 'over-3', bare: 20 }, { kg: 20 * kgPerLb }],
    [{ kg: 0.005 }, { kg: 0 }],
    [{ kg: 7 }, 'unknown'],
    [{ kg: 7 }, { unit: 'kg' }],
    [{ band: 'over-3' }, { bare: 7 }],
    ['unknown', { kg: 7 }],
    [null, { kg: 7 }],
  ] as const)('%o is not the same number as %o', (weight, told) => {
    expect(saysSameNumber(weight, told)).toBe(false);
  });
});
