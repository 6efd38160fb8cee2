/** The pH verdict against published readings. [seen]: an excerpt of the source was read; [memory]: unverified. */

import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { phVerdict } from '#machines/rules/phVerdict.ts';

const single = (ph: number) => ({ low: ph, high: ph });
const everyAfterFeed = (['off', 6.5, 7] as const).map((phAfterFeed) => ({ ...defaultClinical, phAfterFeed }));

describe('pH against published readings', () => {
  // [seen] NPSA/2011/PSA002, restated by NHS England on 5 December 2013: pH 1 to 5.5, on strips of 0.5-unit steps.
  it.each([1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5])('NPSA 2011: %d passes', (ph) => {
    expect(phVerdict(single(ph), defaultClinical)).toBe('passes');
  });

  // [seen] NPSA guidance: feeding is not started at 6 or more.
  it.each([6, 6.5, 7, 7.5, 8, 8.5, 9])('NPSA 2011: %d does not pass, whatever a site has set', (ph) => {
    for (const clinical of everyAfterFeed) expect(phVerdict(single(ph), clinical)).not.toBe('passes');
  });

  it.each([
    ['lowest endotracheal pH, Gilbertson et al, JPEN 2011;35:540 [seen]', 6],
    ['a milk feed, from, Sondheimer et al, Pediatr Res 1984, abstract 1609 [seen]', 6.6],
    ['a milk feed, to, as above [seen]', 6.8],
    ['mean endotracheal pH, Gilbertson [seen]', 8.4],
    ['peritoneal fluid, physiology [memory]', 7.4],
  ])('%s: never passes alone', (_source, ph) => {
    for (const clinical of everyAfterFeed) expect(phVerdict(single(ph), clinical)).not.toBe('passes');
  });

  // [memory] physiology: peritoneal fluid about 7.4. A gastrostomy's wrong place is the peritoneum.
  it('peritoneal fluid is high for every site and every strip, after a feed too', () => {
    for (const clinical of everyAfterFeed) {
      for (const phStripStep of [0.1, 0.2, 0.5, 1]) {
        expect(phVerdict(single(7.4), { ...clinical, phStripStep })).toBe('high');
      }
    }
  });

  // [seen] NPSA/2011/PSA002: 6 and above is never a pass, so the loosest limit a site can set is "under 6".
  it('no site can raise the limit', () => {
    expect(clinicalSettings.phLimit.most).toBe(6);
    expect(clinicalSettings.phLimit.default).toBeLessThanOrEqual(clinicalSettings.phLimit.most);
  });
});
