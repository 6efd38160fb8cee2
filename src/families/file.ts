/** What may stand in a family's file, field by field: the bounds every way into the line checks by, and how a sealed file is read. */
import { z } from 'zod';
import { languageCodes } from '#machines/facts.ts';
import type { Seal } from '#src/store/seal.ts';

const dayBound = 'a date as YYYY-MM-DD, or null';
const day = z.iso.date(dayBound).nullable();
const textBound = 'some words, or null';
/** What the database can keep: no NUL, no half of a character. */
const keepable = (text: string) => text.isWellFormed() && !text.includes('\0');
export const words = z
  .string(textBound)
  .trim()
  .min(1, textBound)
  .max(200, 'at most 200 characters')
  .refine(keepable, 'plain text');
const text = words.nullable();
const flagBound = 'true or false';

function measure(least: number, most: number, unit: string) {
  const bound = `${unit} from ${least} to ${most}, or null`;
  return z.number(bound).min(least, bound).max(most, bound).nullable();
}

/**
 * The fields of one child. Weights are bounded as `machines/rules/weight.ts` bounds them, against slips of the keyboard; the
 * other bounds are what such a tube and such a way to a hospital can measure: common practice, no source.
 */
export const fileFields = {
  child: text,
  born: day.default(null),
  tubeKind: z.enum(['g', 'gj', 'unknown'], 'g, gj or unknown'),
  firstPlaced: day,
  weightKg: measure(0.3, 200, 'kg'),
  weighedOn: day,
  language: z.enum(languageCodes, 'en, es or fr'),
  latexAllergy: z.boolean(flagBound).default(false),
  cannotWait: text.default(null),
  consentOn: day.default(null),
  chartLast4: z
    .string()
    .regex(/^[0-9A-Z]{4}$/i, 'the last four characters of the chart number')
    .nullable()
    .default(null),
  tubeSize: z
    .string()
    .regex(/^[0-9]{1,2}(?:\.5)? Fr$/, 'a size such as 14 Fr')
    .nullable()
    .default(null),
  stemLengthCm: measure(0.5, 10, 'cm').default(null),
  fillVolumeMl: measure(0.5, 30, 'ml').default(null),
  acidReducer: z.boolean(flagBound).nullable().default(null),
  hospital: words.max(60, 'at most 60 characters').nullable().default(null),
  hospitalMinutes: measure(0, 1440, 'minutes').default(null),
  reviewedOn: day.default(null),
};

const { language: _, ...siblings } = fileFields;
/** A child beside the first; the language is the family's. */
export const siblingFields = siblings;

const childShape = z.object(fileFields);
const sealedShape = childShape.extend({ siblings: z.array(z.object(siblingFields)).default([]) });

/** A family's file from its sealed JSON: the first child's, with those of the others. */
export function openFile(seal: Seal, sealed: Buffer): z.infer<typeof sealedShape> {
  return sealedShape.parse(JSON.parse(seal.open(sealed)));
}

/** The order in which a file is shown and its columns are named. */
export const fieldNames = z.enum(z.keyof(childShape).options).options;

/** What two dates of a file may not say together; `field` is the one to look at. */
export interface Contradiction {
  readonly field: (typeof fieldNames)[number];
  readonly rule: string;
}

type Dated = Pick<
  z.infer<typeof childShape>,
  'born' | 'firstPlaced' | 'weighedOn' | 'consentOn' | 'reviewedOn' | 'weightKg' | 'hospital' | 'hospitalMinutes'
>;

/** Dates still to come, a tube before its child, a weight without its day. `today` is the site's, as `yyyy-mm-dd`. */
export function contradictions(file: Dated, today: string): Contradiction[] {
  const dates = ['born', 'firstPlaced', 'weighedOn', 'consentOn', 'reviewedOn'] as const;
  const future = dates.filter((field) => (file[field] ?? '') > today);
  const beforeBirth = (['firstPlaced', 'weighedOn'] as const).filter(
    (field) => file.born !== null && file[field] !== null && file[field] < file.born,
  );
  return [
    ...future.map((field) => ({ field, rule: 'not in the future' })),
    ...beforeBirth.map((field) => ({ field, rule: 'not before the child was born' })),
    ...(file.weightKg !== null && file.weighedOn === null
      ? [{ field: 'weighedOn' as const, rule: 'a weight has the day it was taken' }]
      : []),
    ...(file.hospitalMinutes !== null && file.hospital === null
      ? [{ field: 'hospital' as const, rule: 'minutes away have a hospital' }]
      : []),
  ];
}
