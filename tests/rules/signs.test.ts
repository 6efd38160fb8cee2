import { describe, expect, it } from 'vitest';
import { signs } from '#machines/facts.ts';
import { gradeSign, type SignStage } from '#machines/rules/signs.ts';

const before: SignStage = {
  tubeIn: false,
  born: { earliest: null, latest: '2020-01-01' },
  weight: null,
  today: '2027-03-06',
};
const after: SignStage = { ...before, tubeIn: true };

describe('grade of a sign', () => {
  it.each([
    ['breathing', 'danger', 'danger'],
    ['colour', 'danger', 'danger'],
    ['limp', 'danger', 'danger'],
    ['bleeding', 'danger', 'danger'],
    ['hard-belly', 'danger', 'danger'],
    ['severe-pain', 'danger', 'danger'],
    ['vomit', 'danger', 'danger'],
    ['fever', 'warning', 'warning'],
    ['pain', 'clarify', 'warning'],
    ['fresh-blood', 'clarify', 'warning'],
    ['tight-belly', 'clarify', 'warning'],
    ['leak', 'ignore', 'warning'],
  ] as const)('%s: %s with the tube out, %s with one in', (sign, out, inside) => {
    expect(gradeSign(sign, before)).toBe(out);
    expect(gradeSign(sign, after)).toBe(inside);
  });

  it('every sign has a grade, and no sign is graver with the tube out', () => {
    const gravity = ['ignore', 'clarify', 'warning', 'danger'];
    for (const sign of signs) {
      const [out, inside] = [before, after].map((stage) => gravity.indexOf(gradeSign(sign, stage)));
      expect(out).toBeGreaterThanOrEqual(0);
      expect(inside).toBeGreaterThanOrEqual(out ?? 0);
    }
  });
});

describe('fever', () => {
  it.each([
    ['two months', { earliest: null, latest: '2027-01-06' }, 'danger'],
    ['a day under three months', { earliest: null, latest: '2026-12-07' }, 'danger'],
    ['three months today', { earliest: null, latest: '2026-12-06' }, 'warning'],
    ['perhaps two months, perhaps a year', { earliest: '2026-03-06', latest: '2027-01-06' }, 'danger'],
    ['not born yet, by a slip', { earliest: null, latest: '2027-04-01' }, 'danger'],
    ['grown', { earliest: '2020-01-01', latest: '2020-01-01' }, 'warning'],
  ] as const)('%s: %s', (_age, born, grade) => {
    expect(gradeSign('fever', { ...before, born })).toBe(grade);
  });

  it.each([
    [{ kg: 6.1 }, 'warning'],
    [{ kg: 6 }, 'danger'],
    [{ band: 'over-3' } as const, 'danger'],
    ['unknown' as const, 'danger'],
    [null, 'danger'],
  ])('at an unknown age and a weight of %j: %s', (weight, grade) => {
    expect(gradeSign('fever', { ...before, born: null, weight })).toBe(grade);
  });

  it('a heavy baby of a known young age is still a baby', () => {
    const born = { earliest: null, latest: '2027-01-06' };
    expect(gradeSign('fever', { ...before, born, weight: { kg: 7 } })).toBe('danger');
  });
});
