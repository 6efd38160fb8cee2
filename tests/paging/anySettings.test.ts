/** The way up for whatever a site has set; too slow for the mutation run. */
import '#tests/seed.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pageLevels } from '#machines/facts.ts';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { page, raise } from './calls.ts';

const aReasonOf = { emergency: 'warning-sign', urgent: 'hard-insertion', routine: 'weight-unknown' } as const;

describe('the way up', () => {
  it('is on time for any settings within their bounds', () => {
    const within = (name: keyof typeof clinicalSettings) =>
      fc.integer({ min: clinicalSettings[name].least, max: clinicalSettings[name].most });
    const ascending = (one: number, other: number) => one - other;
    for (const level of pageLevels) {
      const waits = fc.tuple(
        within(`${level}RepeatMinutes`),
        within(`${level}SecondMinutes`),
        within(`${level}ThirdMinutes`),
      );
      fc.assert(
        fc.property(waits, within('pageAgainMinutes'), (anyWaits, pageAgainMinutes) => {
          const [repeat = 0, second = 0, third = 0] = anyWaits.sort(ascending);
          const line = page(
            clinicalWith({
              [`${level}RepeatMinutes`]: repeat,
              [`${level}SecondMinutes`]: second,
              [`${level}ThirdMinutes`]: third,
              pageAgainMinutes,
            }),
          );
          const all = [...line.send(raise(aReasonOf[level])), ...line.advance(third + 60)];
          const did = all.filter(({ type }) => type !== 'began');
          const firstRound = third + Math.max(repeat, pageAgainMinutes);
          expect(did.slice(0, 8).map(({ minute }) => minute)).toEqual([
            0,
            repeat,
            second,
            third,
            third + repeat,
            firstRound,
            firstRound,
            firstRound,
          ]);
        }),
        { numRuns: 40 },
      );
    }
  });
});
