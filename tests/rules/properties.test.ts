/** What must hold for every value: knowing less, or a worse value, never opens a gate. */

import '#tests/seed.ts';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { insertionLength } from '#machines/rules/insertionLength.ts';
import { outTooLong } from '#machines/rules/outTooLong.ts';
import { phVerdict } from '#machines/rules/phVerdict.ts';
import { gradeSign } from '#machines/rules/signs.ts';
import { tractVerdict } from '#machines/rules/tractAge.ts';
import { settleWeight, weightBand } from '#machines/rules/weight.ts';

const day = '2027-03-06';
const daysAgo = (days: number) => DateTime.fromISO(day, { zone: 'utc' }).minus({ days }).toFormat('yyyy-MM-dd');
const ageDays = fc.integer({ min: -30, max: 400 });
/** Evenly over the scale: a plain double is nearly always next to nothing. */
const ph = fc.integer({ min: 0, max: 1400 }).map((hundredths) => hundredths / 100);
const within = (name: keyof typeof clinicalSettings) => {
  const { least, most } = clinicalSettings[name];
  return fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => tenths / 10);
};
const days = (name: 'tractUsableAfterDays' | 'noInsertionUnderDays' | 'cautiousUnderDays') =>
  fc.integer({ min: clinicalSettings[name].least, max: clinicalSettings[name].most });
const clinical = fc
  .record({
    tractUsableAfterDays: days('tractUsableAfterDays'),
    noInsertionUnderDays: days('noInsertionUnderDays'),
    cautiousUnderDays: days('cautiousUnderDays'),
    outTooLongHours: within('outTooLongHours'),
    phLimit: within('phLimit'),
    phStripStep: within('phStripStep'),
    phStripTop: within('phStripTop'),
    phAfterFeed: fc.constantFrom('off' as const, 6.5 as const, 7 as const),
  })
  .map((some) => ({ ...defaultClinical, ...some }));

const tractOrder = ['too-young', 'nearly-too-young', 'young', 'usable'];
const phOrder = ['passes', 'after-feed-only', 'high'];

describe('tract age, for every protocol', () => {
  it('a range reaching later never makes the tract older', () => {
    fc.assert(
      fc.property(clinical, ageDays, ageDays, (site, a, b) => {
        const [younger, older] = [Math.min(a, b), Math.max(a, b)];
        const narrow = tractVerdict({ earliest: daysAgo(older), latest: daysAgo(older) }, day, site);
        const wide = tractVerdict({ earliest: daysAgo(older), latest: daysAgo(younger) }, day, site);
        expect(tractOrder.indexOf(wide)).toBeLessThanOrEqual(tractOrder.indexOf(narrow));
      }),
    );
  });

  it('a tract is usable only strictly over the setting, and never under 43 days', () => {
    fc.assert(
      fc.property(clinical, ageDays, (site, age) => {
        const verdict = tractVerdict({ earliest: null, latest: daysAgo(age) }, day, site);
        if (age <= Math.max(site.tractUsableAfterDays, 42)) expect(verdict).not.toBe('usable');
        else if (age >= Math.max(site.noInsertionUnderDays, site.cautiousUnderDays)) expect(verdict).toBe('usable');
      }),
    );
  });
});

describe('pH, for every protocol', () => {
  it('a higher reading is never better', () => {
    fc.assert(
      fc.property(clinical, ph, ph, (site, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const better = phOrder.indexOf(phVerdict({ low, high: low }, site));
        expect(phOrder.indexOf(phVerdict({ low: high, high }, site))).toBeGreaterThanOrEqual(better);
        expect(phOrder.indexOf(phVerdict({ low, high }, site))).toBeGreaterThanOrEqual(better);
      }),
    );
  });

  it('passes only under the limit and under the top of the strip', () => {
    fc.assert(
      fc.property(clinical, ph, (site, reading) => {
        const passes = phVerdict({ low: reading, high: reading }, site) === 'passes';
        expect(!passes || reading < Math.min(site.phLimit, site.phStripTop)).toBe(true);
      }),
    );
  });

  it('an after-feed pass is off where the site says so, and never above its value or at the top', () => {
    fc.assert(
      fc.property(clinical, ph, (site, reading) => {
        const onlyAfterFeed = phVerdict({ low: reading, high: reading }, site) === 'after-feed-only';
        const allowed = reading <= Number(site.phAfterFeed) && reading < site.phStripTop;
        expect(!onlyAfterFeed || (site.phAfterFeed !== 'off' && allowed)).toBe(true);
      }),
    );
  });

  it('any pair of numbers gets a verdict, and only pairs on the scale are readings', () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (low, high) => {
        const onScale = 0 <= low && low <= high && high <= 14;
        expect(phVerdict({ low, high }, defaultClinical) === 'no-reading').toBe(!onScale);
      }),
    );
  });
});

describe('weight', () => {
  it('a bare number settles only what both units agree on', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 200, noNaN: true }), (bare) => {
        const alone = settleWeight({ bare }, null);
        const units = (['kg', 'lb'] as const).map((unit) => settleWeight({ unit }, bare));
        const bands = units.map((settled) => ('settled' in settled ? weightBand(settled.settled) : 'implausible'));
        if ('settled' in alone) expect(bands).toEqual([weightBand(alone.settled), weightBand(alone.settled)]);
        else expect(alone).toEqual({ askUnit: bare });
      }),
    );
  });

  it('a heavier child never gets a shorter length', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 200, noNaN: true }),
        fc.double({ min: 0.3, max: 200, noNaN: true }),
        (a, b) => {
          const light = insertionLength(weightBand({ kg: Math.min(a, b) }));
          const heavy = insertionLength(weightBand({ kg: Math.max(a, b) }));
          expect(heavy.lowCm).toBeGreaterThanOrEqual(light.lowCm);
          expect(heavy.highCm).toBeGreaterThanOrEqual(light.highCm);
        },
      ),
    );
  });
});

describe('time and age', () => {
  it('out longer is never less too long', () => {
    const ago = fc.integer({ min: 0, max: 48 * 3_600_000 });
    fc.assert(
      fc.property(clinical, ago, ago, (site, a, b) => {
        const at = Date.parse('2027-03-06T07:00:00Z');
        const [short, long] = [Math.min(a, b), Math.max(a, b)];
        if (outTooLong(at - short, at, site)) expect(outTooLong(at - long, at, site)).toBe(true);
      }),
    );
  });

  it('a fever in a child who may be younger is never graded lower', () => {
    fc.assert(
      fc.property(ageDays, ageDays, (a, b) => {
        const stage = (age: number) => ({
          tubeIn: false,
          born: { earliest: null, latest: daysAgo(age) },
          weight: null,
          today: day,
        });
        if (gradeSign('fever', stage(Math.max(a, b))) === 'danger') {
          expect(gradeSign('fever', stage(Math.min(a, b)))).toBe('danger');
        }
      }),
    );
  });
});
