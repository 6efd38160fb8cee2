/** The shape of the site's own facts: numbers, zone, hours. */

import { IANAZone } from 'luxon';
import { z } from 'zod';
import { languageCodes } from '#machines/facts.ts';
import { quietHoursSetting } from '#machines/rules/quietHours.ts';
import { siteWordsSchema } from './siteWords.ts';

/** ITU-T E.164 by shape: a plus and 7 to 15 digits. */
export const phoneNumber = matching(/^\+[1-9]\d{6,14}$/, 'a telephone number: "+" and 7 to 15 digits, in quotes');

const clock = matching(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time of day as "HH:MM"');
const weekday = z.int('whole numbers from 1 (Monday) to 7').min(1, '1 (Monday) to 7').max(7, '1 (Monday) to 7');
const zoneBound = 'a time zone of the IANA list, as "America/New_York"';
const hospitalBound = 'a name of 1 to 60 characters';
const languagesBound = 'a list of en, es and fr, with en always among them';
const daysBound = 'a list of at least one weekday, each once';

/** Parses the site part of a protocol; every fact has to be there. */
export const siteSchema = z
  .strictObject(
    {
      emergencyNumber: matching(/^\d{3,6}$/, '3 to 6 digits, in quotes'),
      hospital: z.string(hospitalBound).trim().min(1, hospitalBound).max(60, hospitalBound),
      hospitalNumber: phoneNumber.exactOptional(),
      clinicNumber: phoneNumber,
      fallbackNumber: phoneNumber,
      timeZone: z.string(zoneBound).refine((zone) => IANAZone.isValidZone(zone), zoneBound),
      languages: z
        .array(z.enum(languageCodes, languagesBound), languagesBound)
        .refine((codes) => codes.includes('en'), languagesBound)
        .exactOptional(),
      words: siteWordsSchema.exactOptional(),
      clinicDays: z
        .array(weekday, daysBound)
        .min(1, daysBound)
        .refine((days) => new Set(days).size === days.length, daysBound),
      clinicOpens: clock,
      clinicCloses: clock,
      quietFrom: clockWithin(quietHoursSetting.from).exactOptional(),
      quietUntil: clockWithin(quietHoursSetting.until).exactOptional(),
      holidays: matching(
        /^[A-Z]{2}(-[A-Z0-9]{1,3})?$/,
        'a country, or country and state, as US or US-NY; or null',
      ).nullable(),
      handoverNumber: phoneNumber.exactOptional(),
      handoverAt: clock.exactOptional(),
    },
    "the site's facts",
  )
  .superRefine((site, context) => {
    if (site.clinicOpens >= site.clinicCloses) {
      context.addIssue({
        code: 'custom',
        path: ['clinicOpens'],
        message: `before clinicCloses (${site.clinicCloses})`,
      });
    }
  });

function clockWithin({ least, most }: { readonly least: string; readonly most: string }) {
  const bound = `a time of day from "${least}" to "${most}"`;
  return matching(/^([01]\d|2[0-3]):[0-5]\d$/, bound).refine((time) => least <= time && time <= most, bound);
}

function matching(shape: RegExp, bound: string): z.ZodString {
  return z.string(bound).regex(shape, bound);
}
