import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { outTooLong } from '#machines/rules/outTooLong.ts';

const at = Date.parse('2027-03-06T07:10:00Z');
const hourMs = 3_600_000;

describe('out too long', () => {
  it.each([
    ['just now', 0, false],
    ['4 h', 4 * hourMs, false],
    ['a moment over 4 h', 4 * hourMs + 1, true],
    ['a time still to come', -1, true],
  ])('%s', (_name, agoMs, tooLong) => {
    expect(outTooLong(at - agoMs, at, defaultClinical)).toBe(tooLong);
  });

  it('nobody knows counts as too long, not asked yet does not', () => {
    expect(outTooLong('unknown', at, defaultClinical)).toBe(true);
    expect(outTooLong(null, at, defaultClinical)).toBe(false);
  });

  it("uses the site's hours", () => {
    const clinical = { ...defaultClinical, outTooLongHours: 2 };
    expect(outTooLong(at - 2 * hourMs, at, clinical)).toBe(false);
    expect(outTooLong(at - 3 * hourMs, at, clinical)).toBe(true);
  });
});
