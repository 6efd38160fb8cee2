/** The blind corpora as data: texts written without sight of the reader, each with what it has to be read as. */

import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { z } from 'zod';
import { type LanguageCode, questionKeys, signs } from '#machines/facts.ts';

/** Corpora no reader was mended by: they measure it, each the language in front of its name. */
export const unseenCorpora = [
  'en-unseen',
  'en-fresh',
  'en-fresh2',
  'en-fresh3',
  'en-fresh4',
  'en-fresh5',
  'en-fresh6',
  'es-unseen',
  'es-fresh2',
  'es-fresh3',
  'es-fresh4',
  'es-fresh5',
  'es-fresh6',
  'fr-unseen',
  'fr-fresh2',
  'fr-fresh3',
  'fr-fresh4',
  'fr-fresh5',
  'fr-fresh6',
] as const;

/** A language's own corpus is what its reader was mended by. */
export type CorpusName = LanguageCode | (typeof unseenCorpora)[number];

const languageOf: Readonly<Record<CorpusName, LanguageCode>> = {
  en: 'en',
  es: 'es',
  fr: 'fr',
  'en-unseen': 'en',
  'en-fresh': 'en',
  'en-fresh2': 'en',
  'en-fresh3': 'en',
  'en-fresh4': 'en',
  'en-fresh5': 'en',
  'en-fresh6': 'en',
  'es-unseen': 'es',
  'es-fresh2': 'es',
  'es-fresh3': 'es',
  'es-fresh4': 'es',
  'es-fresh5': 'es',
  'es-fresh6': 'es',
  'fr-unseen': 'fr',
  'fr-fresh2': 'fr',
  'fr-fresh3': 'fr',
  'fr-fresh4': 'fr',
  'fr-fresh5': 'fr',
  'fr-fresh6': 'fr',
};

const oneOrMore = <T extends z.ZodType>(schema: T) =>
  z.union([schema.transform((one) => [one]), z.array(schema).min(1)]);

/** One accepted value; several are written as a list. The looser forms say only what safety and use need. */
const value = z.union([
  z.string(),
  z.strictObject({ earliest: z.string().nullable(), latest: z.string() }),
  z.strictObject({ atLeastLatest: z.string(), latestAtMost: z.string().optional() }),
  z.strictObject({ notBefore: z.string(), notAfter: z.string() }),
  z.strictObject({ kg: z.number() }),
  z.strictObject({ bare: z.number() }),
  z.strictObject({ unit: z.enum(['kg', 'lb']) }),
  z.strictObject({ low: z.number().optional(), high: z.number() }),
  z.strictObject({ highAtLeast: z.number() }),
]);
export type Value = z.infer<typeof value>;

/** Facts told beside the answer; `cameOutAt` is an ISO time. */
const told = z.strictObject({
  children: z.array(z.number()).optional(),
  severalChildren: z.literal(true).optional(),
  tubeKind: value.optional(),
  halfOutOf: z.enum(['g', 'gj', 'j']).optional(),
  firstPlaced: value.optional(),
  weight: value.optional(),
  cameOutAt: value.optional(),
  ownTube: value.optional(),
  kit: value.optional(),
  insertedHow: value.optional(),
  ph: value.optional(),
  latexAllergy: z.literal(true).optional(),
  /** In whatever words. */
  cannotWait: z.literal(true).optional(),
});
export type ToldExpected = z.infer<typeof told>;

const signList = z.array(z.enum(signs));
const expectation = z.strictObject({
  value: oneOrMore(value).optional(),
  event: oneOrMore(z.string()).optional(),
  /** Why it is no answer, where that matters. */
  why: z.string().optional(),
  step: z.number().optional(),
  about: z.enum(['tube', 'thanks', 'other']).optional(),
  signs: z.strictObject({ sure: signList.default([]), near: signList.default([]) }).optional(),
  /** Further signs that may be heard sure as well. */
  alsoSure: signList.optional(),
  /** No sign may be heard as sure; anything else will do. */
  noSure: z.literal(true).optional(),
  person: z.literal(true).optional(),
  /** What it says of a rehearsal. */
  rehearsal: z.enum(['wish', 'over', 'real']).nullable().optional(),
  /** Whether it says who is writing. */
  saysWho: z.boolean().optional(),
  /** Has to be heard too. */
  told: told.optional(),
  /** May be missed, never misread. */
  mayTell: told.optional(),
});
export type Expectation = z.infer<typeof expectation>;

const state = {
  asking: z.enum(questionKeys).nullable(),
  tubeIn: z.boolean(),
};
const text = z.strictObject({
  text: z.string(),
  /** `must-reask` has no expectation: no answer may be read from it. */
  label: z.enum(['exact', 'may-reask', 'must-reask']),
  expect: expectation.optional(),
  asking: state.asking.optional(),
  tubeIn: state.tubeIn.optional(),
  clarifying: z.enum(['sign', 'unit', 'how', 'last-seen', 'look']).optional(),
  bareWeight: z.number().optional(),
});
const file = z.strictObject({
  ...state,
  now: z.iso.datetime({ offset: true }),
  zone: z.string(),
  caseOpen: z.boolean().default(true),
  children: z.array(z.string()).default([]),
  texts: z.array(text).min(1),
});
export type Entry = z.infer<typeof text>;
export type CorpusFile = z.infer<typeof file> & { readonly name: string; readonly language: LanguageCode };

/** All files of a corpus, by name. Throws a zod error on a malformed entry. */
export function corpusFiles(corpus: CorpusName): CorpusFile[] {
  const folder = new URL(`./${corpus}/`, import.meta.url);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({
      ...file.parse(parse(readFileSync(new URL(name, folder), 'utf8'))),
      name: `${corpus}/${name.slice(0, -5)}`,
      language: languageOf[corpus],
    }));
}
