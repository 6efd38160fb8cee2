/** The proof at a size that runs with every other test; `npm run proof` walks further. */
import { describe, expect, it } from 'vitest';
import { inFull } from '#tests/needs.ts';
import { faults } from './planted.ts';
import { caughtBy } from './plantedRun.ts';
import { prove } from './prove.ts';
import { exercisedBy, faultsOf } from './report.ts';
import { worlds } from './worlds.ts';

describe('the walk without disturbances, and some nights at random', () => {
  // In short the world in which most is asked; the landing and `npm run proof` walk all.
  for (const world of inFull ? worlds : worlds.slice(0, 1)) {
    it(`breaks no safety rule: ${world.name}`, () => {
      const proven = prove(world, 0, 25);
      expect(faultsOf(proven)).toEqual([]);
      const { S10, ...rest } = exercisedBy(proven);
      expect(Object.entries(rest).filter(([, count]) => count === 0)).toEqual([]);
      expect((S10 ?? 0) > 0).toBe(world.whole);
    });
  }
});

/** Those that show within the first steps. */
const quick = [
  'a tract of exactly the setting counts as usable',
  'pain after the insertion is taken for none',
  'the page for danger-sign is dropped',
  'the page for restricted-kind is dropped',
  'every child is told the longest length',
  'the last try is not called the last',
  'the climb stops at the third person',
];

describe('wrong machines', () => {
  it('are at least 25, each of another name', () => {
    expect(new Set(faults.map(({ name }) => name)).size).toBe(faults.length);
    expect(faults.length).toBeGreaterThanOrEqual(25);
  });

  for (const fault of faults.filter(({ name }) => quick.includes(name))) {
    it(`is caught: ${fault.name}`, () => {
      expect(caughtBy(fault)).toMatchObject({ rule: expect.stringMatching(/^S\d+$/) });
    });
  }
});
