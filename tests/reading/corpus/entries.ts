/** The blind corpora as data: texts written without sight of the reader, each with what it has to be read as. */

import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { z } from 'zod';
import { inPlaceTroubles, type LanguageCode, languageCodes, questionKeys, signs } from '#machines/facts.ts';

const folder = new URL('./', import.meta.url);

/** Texts that were written without sight of the reader, and measured it before it was mended by them: the language in front of each name. */
export const unseenCorpora: readonly string[] = readdirSync(folder)
  .filter((name) => name.includes('-'))
  .sort();

/** A language's own corpus has its code for a name: what the reader was mended by from the beginning. */
function languageOf(corpus: string): LanguageCode {
  const code = languageCodes.find((one) => one === corpus.split('-')[0]);
  if (code === undefined) throw new Error(`${corpus} does not begin with a language`);
  return code;
}

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
  notOnFile: z.literal(true).optional(),
  tubeKind: value.optional(),
  halfOutOf: z.enum(['g', 'gj', 'j']).optional(),
  inPlace: z.enum(inPlaceTroubles).optional(),
  backIn: z.enum(['easy', 'hard', 'in']).optional(),
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
  clarifying: z.enum(['sign', 'unit', 'how', 'last-seen', 'look', 'doubt']).optional(),
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
export function corpusFiles(corpus: string): CorpusFile[] {
  const files = new URL(`${corpus}/`, folder);
  const language = languageOf(corpus);
  return readdirSync(files)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => ({
      ...file.parse(parse(readFileSync(new URL(name, files), 'utf8'))),
      name: `${corpus}/${name.slice(0, -5)}`,
      language,
    }));
}
