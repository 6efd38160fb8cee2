/** One event of a case as its record keeps it: what happened, what was decided, and how the case stood after it. */
import { z } from 'zod';
import { dispositions, type PageLevel, type PageReason, pageLevels, pageReasons } from '#machines/facts.ts';

const range = z.object({ low: z.number(), high: z.number() });
const told = z.looseObject({
  ph: range.optional(),
  weight: z.unknown().optional(),
});
/** Its words are the machines' own; here only what the record shows is looked at. */
const happened = z.looseObject({
  type: z.string(),
  at: z.number(),
  value: z.unknown().optional(),
  told: told.optional(),
  corrects: z.boolean().optional(),
  nurse: z.string().optional(),
  outcome: z.string().optional(),
  what: z.string().optional(),
});

const call = z.object({
  type: z.literal('callNurse'),
  place: z.number(),
  level: z.enum(pageLevels),
  reasons: z.array(z.enum(pageReasons)),
});
const say = z.object({
  type: z.literal('say'),
  say: z.object({ preface: z.array(z.looseObject({ key: z.string() })) }),
});

const stands = z.object({
  disposition: z.enum(dispositions).nullable(),
  tubeIn: z.enum(['own', 'temporary']).nullable(),
  clearable: z.boolean(),
  facts: z.object({
    tubeKind: z.string().optional(),
    weightKg: z.number().optional(),
    cameOutAt: z.string().optional(),
    insertedHow: z.enum(['easy', 'hard']).optional(),
  }),
});
export type Stands = z.infer<typeof stands>;

/** A case parked for a person has an event without machine, meaning or decision. */
const bodyShape = z.object({
  at: z.number(),
  machine: z.enum(['conversation', 'paging', 'aftercare']).optional(),
  event: happened.optional(),
  effects: z.array(z.looseObject({ type: z.string() })).default([]),
  /** SHA-256 of the text that came in. */
  heard: z.string().optional(),
  /** SHA-256 of each message it brought about, in order. */
  said: z.array(z.string()).default([]),
  stands: stands.optional(),
  /** SHA-256 of the machines' snapshots after it. */
  snapshots: z.string().optional(),
});
export type EventBody = z.infer<typeof bodyShape>;

export interface Call {
  readonly place: number;
  readonly level: PageLevel;
  readonly reasons: readonly PageReason[];
}

/** Parses an event's opened body. Throws where it is none: only a line writes them. */
export function parseEvent(json: string): EventBody {
  return bodyShape.parse(JSON.parse(json));
}

/** Whom an event had called, in order. */
export function callsOf(body: EventBody): readonly Call[] {
  return body.effects.flatMap((effect) => call.safeParse(effect).data ?? []);
}

/** The short sentences put before what an event had said to the family, by their keys. */
export function prefacesOf(body: EventBody): readonly string[] {
  return body.effects.flatMap((effect) => say.safeParse(effect).data?.say.preface.map(({ key }) => key) ?? []);
}

export interface Reading {
  readonly low: number;
  readonly high: number;
}

/** The pH an event told, as an answer or unasked. */
export function readingOf({ event }: EventBody): Reading | null {
  const answered = event?.type === 'answer.ph' ? range.safeParse(event.value).data : undefined;
  return answered ?? event?.told?.ph ?? null;
}

const weightShape = z.union([z.object({ kg: z.number() }), z.object({ unit: z.enum(['kg', 'lb']) })]);

/** The weight an event told with a unit, kg; the unit alone settles the number told before it. */
export function weightKgOf({ event, stands: after }: EventBody): number | null {
  const said = event?.type === 'answer.weight' ? event.value : event?.told?.weight;
  const weight = weightShape.safeParse(said).data;
  if (weight === undefined) return null;
  return 'kg' in weight ? weight.kg : (after?.facts.weightKg ?? null);
}
