/** The waits of a page against published answer times. [seen]: an excerpt of the source was read. */

import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { clinicalSettings } from '#machines/protocol/settings.ts';

describe('waits of a page', () => {
  // [seen] Moss et al, Chest 1999;116:1019: median answer to a page 3 min, 75th percentile 8 min.
  it('gives a page its median time to be answered before it is repeated, and no longer in an emergency', () => {
    expect(defaultClinical.emergencyRepeatMinutes).toBe(3);
    expect(defaultClinical.urgentRepeatMinutes).toBeGreaterThanOrEqual(3);
    expect(defaultClinical.routineRepeatMinutes).toBeGreaterThanOrEqual(3);
  });

  it('calls the third person in an emergency soon after three of four pages would have been answered', () => {
    expect(defaultClinical.emergencyThirdMinutes).toBeGreaterThanOrEqual(8);
    expect(defaultClinical.emergencyThirdMinutes).toBeLessThanOrEqual(10);
  });

  // [seen] URAC Health Call Center Accreditation: call-backs within 30 min on average.
  it('has called all three within 30 minutes at every level', () => {
    for (const level of ['emergency', 'urgent', 'routine'] as const) {
      expect(defaultClinical[`${level}ThirdMinutes`]).toBeLessThanOrEqual(30);
    }
    expect(clinicalSettings.urgentThirdMinutes.most).toBeLessThanOrEqual(30);
    expect(clinicalSettings.emergencyThirdMinutes.most).toBeLessThanOrEqual(30);
  });

  // The waits agreed for this product: 3/6/10, 5/10/15, 10/20/30.
  it.each([
    ['emergency', 3, 6, 10],
    ['urgent', 5, 10, 15],
    ['routine', 10, 20, 30],
  ] as const)('%s: %i / %i / %i min', (level, again, second, third) => {
    expect(defaultClinical[`${level}RepeatMinutes`]).toBe(again);
    expect(defaultClinical[`${level}SecondMinutes`]).toBe(second);
    expect(defaultClinical[`${level}ThirdMinutes`]).toBe(third);
  });

  // [seen] hospital teaching on NPSA Alert 05: wait one hour, nothing down the tube, repeat.
  it('rechecks after the published hour', () => {
    expect(defaultClinical.recheckMinutes).toBe(60);
  });

  // [seen] NPSA/2010/RRR010: the warning signs to look for in the first 72 h.
  it('asks about the next day within the published 72 h', () => {
    expect(clinicalSettings.nextDayAfterHours.most).toBeLessThanOrEqual(72);
  });
});
