/** Tract age against published floors. [seen]: an excerpt of the source was read; [common practice]: of the trade, no citable source. */

import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { defaultClinical } from '#machines/protocol/load.ts';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { tractVerdict } from '#machines/rules/tractAge.ts';

const day = '2027-03-06';
const verdictAt = (ageDays: number, clinical = defaultClinical) => {
  const latest = DateTime.fromISO(day, { zone: 'utc' }).minus({ days: ageDays }).toFormat('yyyy-MM-dd');
  return tractVerdict({ earliest: latest, latest }, day, clinical);
};

describe('tract age against published floors', () => {
  // [seen] Shah & Shah, Gastrostomy Tube Replacement, StatPearls 2020: dislodged under 4 weeks, no replacement without consultation.
  it('under 4 weeks nothing goes in before a nurse is called', () => {
    for (let days = 0; days < 4 * 7; days += 1) expect(['too-young', 'nearly-too-young']).toContain(verdictAt(days));
  });

  // [seen] as above: a percutaneous tract begins to mature at 1 to 2 weeks.
  it('before 2 weeks nothing goes in at all', () => {
    for (let days = 0; days < 2 * 7; days += 1) expect(verdictAt(days)).toBe('too-young');
  });

  it.each([
    ['simple surgical tract, eMedicine 149589 [seen]', 2],
    ['tunnelled tract, eMedicine 149589 [seen]', 3],
    ['percutaneous tract well formed, StatPearls 2020 [seen]', 6],
    ["a children's hospital's pathway: new under 6 weeks [common practice]", 6],
    ["a children's hospital's caregiver protocol: 8 weeks [common practice]", 8],
  ])('by default a tube is never used at the end of "%s"', (_source, weeks) => {
    expect(verdictAt(weeks * 7)).not.toBe('usable');
  });

  // [seen] StatPearls 2020: well formed at 4 to 6 weeks.
  it('no site can set it so that a tube is used in its first 6 weeks', () => {
    const loosest = {
      ...defaultClinical,
      tractUsableAfterDays: clinicalSettings.tractUsableAfterDays.least,
      noInsertionUnderDays: clinicalSettings.noInsertionUnderDays.least,
      cautiousUnderDays: clinicalSettings.cautiousUnderDays.least,
    };
    for (let days = 0; days <= 6 * 7; days += 1) expect(verdictAt(days, loosest)).not.toBe('usable');
  });
});
