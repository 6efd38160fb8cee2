/** The course of a case, read off its events: readings, tubes and whether they might be used, what the family was told, who decided. */
import type { Disposition } from '#machines/facts.ts';
import { phVerdict } from '#machines/rules/phVerdict.ts';
import { keysOf } from '#src/protocol/samples.ts';
import { prefacesOf, type Reading, readingOf, type Stands, weightKgOf } from './event.ts';
import type { CaseRecord, RecordedEvent } from './read.ts';

/** Number of the event it is read off: of one moment, what happened first comes first. */
interface ReadOff {
  readonly event: number;
}

/** From an epoch ms to another; null where it still holds. */
export interface Span {
  readonly fromMs: number;
  readonly untilMs: number | null;
}

export interface CourseReading extends Reading, ReadOff {
  readonly atMs: number;
  readonly verdict: ReturnType<typeof phVerdict>;
  /** Sent while the recheck waited: noted, not counted. */
  readonly early: boolean;
  /** Told with words of correction. */
  readonly corrects: boolean;
}

export interface TubeSpan extends Span, ReadOff {
  readonly tube: 'own' | 'temporary';
  readonly kind: string | null;
  readonly how: 'easy' | 'hard' | null;
  /** When it might be used, and when not, one after the other. */
  readonly use: readonly (Span & { readonly allowed: boolean })[];
}

export interface Course {
  /** The end of what is drawn: when it was closed, or the last that happened. */
  readonly endMs: number;
  /** When the first tube came out, as told or last seen in; null where nobody knows. */
  readonly cameOutMs: number | null;
  readonly readings: readonly CourseReading[];
  readonly weights: readonly (ReadOff & { readonly atMs: number; readonly kg: number })[];
  readonly told: readonly (Span & ReadOff & { readonly disposition: Disposition })[];
  readonly tubes: readonly TubeSpan[];
  readonly nurse: readonly NurseAct[];
}

/** What a nurse decided: cleared, sent in, corrected, closed, passed the page on, or said that the line was wrong. */
export interface NurseAct extends ReadOff {
  readonly atMs: number;
  readonly what: keyof typeof acts;
  /** In her words, where she gave any. */
  readonly words: string | null;
}

/** By the event each is recorded as. */
const acts = {
  clear: 'nurse.clear',
  goIn: 'nurse.goIn',
  corrects: 'nurse.corrects',
  close: 'nurse.close',
  reports: 'nurse.reports',
  pass: 'pass',
} as const;

export function courseOf(record: CaseRecord): Course {
  const { events, closedMs } = record;
  const standing = events.flatMap(({ number, atMs, body }) =>
    body.stands ? [{ event: number, atMs, ...body.stands }] : [],
  );
  return {
    endMs: closedMs ?? events.at(-1)?.atMs ?? record.openedMs,
    cameOutMs: cameOut(standing),
    readings: events.flatMap((event) => readingIn(record, event)),
    weights: events.flatMap(({ number, atMs, body }) => {
      const kg = weightKgOf(body);
      return kg === null ? [] : [{ event: number, atMs, kg }];
    }),
    told: runsOf(standing, ({ disposition }) => disposition, closedMs).map(({ fromMs, untilMs, event, value }) => ({
      ...{ fromMs, untilMs, event },
      disposition: value,
    })),
    tubes: tubesOf(standing, closedMs),
    nurse: events.flatMap(actIn),
  };
}

type Standing = Stands & ReadOff & { readonly atMs: number };

/** As it was known when the case began to know it: after a tube went in again, a later time is of that one. */
function cameOut(standing: readonly Standing[]): number | null {
  const told = standing.find(({ facts }) => facts.cameOutAt !== undefined)?.facts.cameOutAt;
  return told === undefined ? null : Date.parse(told);
}

function readingIn({ clinical }: CaseRecord, { number, atMs, body }: RecordedEvent): CourseReading[] {
  const reading = readingOf(body);
  if (reading === null) return [];
  return [
    {
      ...reading,
      event: number,
      atMs,
      verdict: phVerdict(reading, clinical),
      early: prefacesOf(body).includes('earlyReading'),
      corrects: body.event?.corrects ?? false,
    },
  ];
}

function actIn({ number, atMs, body: { event } }: RecordedEvent): NurseAct[] {
  const what = keysOf(acts).find((act) => acts[act] === event?.type);
  return what === undefined ? [] : [{ event: number, atMs, what, words: event?.outcome ?? event?.what ?? null }];
}

/** Stretches over which a value stays the same; where it is null there is none. */
function runsOf<T>(
  standing: readonly Standing[],
  of: (one: Standing) => T | null,
  endMs: number | null,
): (Span & ReadOff & { readonly value: T; readonly standing: readonly Standing[] })[] {
  const runs: (ReadOff & { value: T | null; fromMs: number; standing: Standing[] })[] = [];
  for (const one of standing) {
    const value = of(one);
    const last = runs.at(-1);
    if (last?.value === value) last.standing.push(one);
    else runs.push({ value, event: one.event, fromMs: one.atMs, standing: [one] });
  }
  return runs.flatMap(({ value, event, fromMs, standing: within }, index) =>
    value === null ? [] : [{ value, event, fromMs, untilMs: runs[index + 1]?.fromMs ?? endMs, standing: within }],
  );
}

/** A closed case says nothing of a tube any more, but the tube stays in: only its coming out ends it. */
function tubesOf(standing: readonly Standing[], closedMs: number | null): TubeSpan[] {
  return runsOf(standing, ({ tubeIn }) => tubeIn, null).map(({ value, standing: within, ...span }) => {
    const last = within.at(-1);
    return {
      ...span,
      tube: value,
      kind: last?.facts.tubeKind ?? null,
      how: last?.facts.insertedHow ?? null,
      use: runsOf(within, ({ disposition }) => isUse(disposition), span.untilMs ?? closedMs).map(
        ({ value: allowed, fromMs, untilMs }) => ({ allowed, fromMs, untilMs }),
      ),
    };
  });
}

function isUse(disposition: Disposition | null): boolean {
  return disposition === 'use' || disposition === 'own-tube';
}
