/** The shape of the clinical settings, built from their table: each value within its bounds, the waits in order. */

import { z } from 'zod';
import { phAfterFeedSetting } from './phAfterFeed.ts';
import { type Clinical, type ClinicalName, clinicalSettings, type NumberSetting } from './settings.ts';

/** The values a site starts from, each setting at its default. */
export const defaultClinical: Clinical = {
  ...everySetting((setting) => setting.default),
  phAfterFeed: phAfterFeedSetting.default,
};

/** Pairs that have to rise: the first waits less than the second. */
const rising: readonly (readonly [ClinicalName, ClinicalName])[] = [
  ['emergencyRepeatMinutes', 'emergencySecondMinutes'],
  ['emergencySecondMinutes', 'emergencyThirdMinutes'],
  ['urgentRepeatMinutes', 'urgentSecondMinutes'],
  ['urgentSecondMinutes', 'urgentThirdMinutes'],
  ['routineRepeatMinutes', 'routineSecondMinutes'],
  ['routineSecondMinutes', 'routineThirdMinutes'],
  ['staySecondWarningDays', 'stayFirstWarningDays'],
];

/** Parses the clinical part of a protocol; a setting that is left out takes its default, a name it does not know is refused. */
export const clinicalSchema = z
  .strictObject(
    {
      ...everySetting((setting) => numberWithin(setting).default(setting.default)),
      phAfterFeed: z.literal(phAfterFeedSetting.choices, '"off", 6.5 or 7').default(phAfterFeedSetting.default),
    },
    'a list of settings',
  )
  .superRefine((clinical, context) => {
    for (const [less, more] of rising) {
      if (clinical[less] >= clinical[more]) {
        context.addIssue({ code: 'custom', path: [less], message: `less than ${more} (${clinical[more]})` });
      }
    }
  });

/** A count of tries or days is whole; everything else may have decimals. */
function numberWithin({ least, most, unit }: NumberSetting): z.ZodNumber {
  const whole = unit === 'tries' || unit === 'days';
  const bound = `${whole ? 'a whole number from ' : ''}${least} to ${most} ${unit}`;
  const number = z.number(bound).min(least, bound).max(most, bound);
  return whole ? number.int(bound) : number;
}

function everySetting<T>(make: (setting: NumberSetting) => T): Record<ClinicalName, T> {
  const made = Object.entries(clinicalSettings).map(([name, setting]) => [name, make(setting)] as const);
  // The entries are the table's own, so the names are; the type of `fromEntries` cannot say that.
  return Object.fromEntries(made) as Record<ClinicalName, T>;
}
