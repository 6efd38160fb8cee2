/** The stay limit of a temporary tube: its warnings, its end, and short stays. */
import '#tests/seed.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { site } from '#tests/dislodgement/night.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { beginOwn, beginTemporary, day, later, lines } from './later.ts';

const settled = (did: string[]) => did.filter((line) => /stay|close/.test(line));
const through = (stayDays: number, stayFirstWarningDays = 7, staySecondWarningDays = 2) => {
  const line = later(clinicalWith({ stayDays, stayFirstWarningDays, staySecondWarningDays }));
  line.send(beginTemporary);
  return settled(lines(line.advance(60 * day)));
};
const at = (days: number, words: string) => `${days * 24}h ${words}`;

describe('the stay', () => {
  it('warns 7 and 2 days before the thirtieth, ends on it with a page, and closes a day later', () => {
    expect(through(30)).toEqual([
      at(23, 'stayWarning 7'),
      at(28, 'stayWarning 2'),
      at(30, 'page stay-limit'),
      at(30, 'stayOver'),
      at(31, 'closeCase'),
    ]);
  });

  it.each([
    [8, ['stayWarning 7', 'stayWarning 2']],
    [7, ['stayWarning 2']], // the first would fall on the permission itself
    [3, ['stayWarning 2']],
    [2, []],
    [1, []],
  ])('of %i days skips the warnings whose time has passed', (stayDays, warnings) => {
    expect(through(stayDays).map((line) => line.replace(/^\d+h /, ''))).toEqual([
      ...warnings,
      'page stay-limit',
      'stayOver',
      'closeCase',
    ]);
  });

  it('of 7 days, permitted at night: no warning either once the quiet hours end', () => {
    const line = later(clinicalWith({ stayDays: 7 }), site);
    line.send(beginTemporary);
    expect(settled(lines(line.advance(day)))).toEqual([]);
  });

  it('gives both warnings in time whichever of the two is the earlier, and one where they are the same', () => {
    expect(through(30, 2, 7).slice(0, 2)).toEqual([at(23, 'stayWarning 7'), at(28, 'stayWarning 2')]);
    expect(through(30, 5, 5).slice(0, 2)).toEqual([at(25, 'stayWarning 5'), at(30, 'page stay-limit')]);
  });

  it('ends on its day for any settings within their bounds, warned as many days before as it says', () => {
    const within = (name: 'stayDays' | 'stayFirstWarningDays' | 'staySecondWarningDays') =>
      fc.integer({ min: clinicalSettings[name].least, max: clinicalSettings[name].most });
    const settings = [within('stayDays'), within('stayFirstWarningDays'), within('staySecondWarningDays')] as const;
    fc.assert(
      fc.property(...settings, (stayDays, first, second) => {
        const warned = [...new Set([first, second])]
          .filter((days) => days < stayDays)
          .sort((one, other) => other - one);
        expect(through(stayDays, first, second)).toEqual([
          ...warned.map((days) => at(stayDays - days, `stayWarning ${days}`)),
          at(stayDays, 'page stay-limit'),
          at(stayDays, 'stayOver'),
          at(stayDays + 1, 'closeCase'),
        ]);
      }),
      { numRuns: 40 },
    );
  });

  it('says the days that are really left when a timer fires late, and does not make up for a missed warning', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(20 * day);
    expect(lines(line.advanceAsleep(8.5 * day))).toEqual([at(28.5, 'stayWarning 2')]);
    expect(lines(line.advance(1.5 * day))).toEqual([at(30, 'page stay-limit'), at(30, 'stayOver')]);
  });

  it('is over, not warned of, when the line was down past its end', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(20 * day);
    expect(lines(line.advanceAsleep(15 * day))).toEqual([at(35, 'page stay-limit'), at(35, 'stayOver')]);
  });

  it('does not count for the own tube', () => {
    const line = later();
    line.send(beginOwn);
    expect(settled(lines(line.advance(60 * day)))).toEqual(['104h closeCase']);
  });
});
