/** Random nights: whatever happens in whatever order, no safety rule breaks. A failure prints its seed and the night. */
import { describe, expect, it } from 'vitest';
import { inFull } from '#tests/needs.ts';
import { rules } from './safety.ts';
import { walk } from './walk.ts';

const nights = inFull ? 400 : 90;
const mostHappenings = 40;
const names = Object.keys(rules);

describe('a night of random events', () => {
  const said = new Set<string>();

  it(`breaks none of ${names.length} safety rules in ${nights} nights`, () => {
    for (let seed = 1; seed <= nights; seed += 1) {
      const { broken, log, said: keys } = walk(seed, mostHappenings, names);
      for (const key of keys) said.add(key);
      expect(broken, `walk(${seed}, ${mostHappenings}):\n${log.join('\n')}`).toEqual([]);
    }
  });

  it('has reached the far ends, so that the rules were put to use', () => {
    const farEnds = ['use', 'useStill', 'hold', 'nurse', 'goInCard', 'emergency', 'recheckWait', 'secureAgain'];
    expect(farEnds.filter((key) => !said.has(key))).toEqual([]);
  });

  it('is the same night for the same seed', () => {
    expect(walk(7, mostHappenings, names).log).toEqual(walk(7, mostHappenings, names).log);
  });
});
