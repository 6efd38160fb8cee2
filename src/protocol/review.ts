/** What the site looks at every week: a sample of texts beside what they were read as, every clearance, every report of a nurse. */
import { createHash } from 'node:crypto';
import { DateTime } from 'luxon';
import type { CaseSignal } from '#machines/case.ts';
import { caseCode } from '#src/line/cases.ts';
import type { PastCase } from './compare.ts';
import { Replay } from './replay.ts';

export interface ReadText {
  readonly id: number;
  readonly atMs: number;
  readonly text: string;
  /** What the machines were told it says. */
  readonly readAs: string;
}

export interface Clearance {
  readonly id: number;
  readonly atMs: number;
  /** What was held: kind, reading and how it went in. */
  readonly held: string;
  /** Where the case stood at the end of its record. */
  readonly became: string;
}

export interface Review {
  readonly readings: readonly ReadText[];
  readonly clearances: readonly Clearance[];
  readonly reports: readonly Report[];
}

/** A nurse said that the line was wrong. */
export interface Report {
  readonly id: number;
  readonly atMs: number;
  readonly what: string;
}

/** How many readings a review looks at; common practice, no source. */
export const sampleSize = 30;

/** The texts and clearances of one case since an epoch ms. `texts` are those its machines heard, in order. */
export function reviewOf(past: PastCase, texts: readonly string[], sinceMs: number): Review {
  const readings = past.signals.filter(isText).flatMap(({ event }, index): ReadText[] => {
    const text = texts[index];
    return text === undefined || event.at < sinceMs
      ? []
      : [{ id: past.id, atMs: event.at, text, readAs: plain(event) }];
  });
  const reports = past.signals.flatMap(({ event }): Report[] =>
    event.type === 'nurse.reports' && event.at >= sinceMs ? [{ id: past.id, atMs: event.at, what: event.what }] : [],
  );
  return { readings, clearances: clearancesOf(past).filter(({ atMs }) => atMs >= sinceMs), reports };
}

/** The same texts for the same cases always, and nobody's choice: by their hash. */
export function sampled(readings: readonly ReadText[]): readonly ReadText[] {
  const key = ({ id, atMs, text }: ReadText) => createHash('sha256').update(`${id} ${atMs} ${text}`).digest('hex');
  return [...readings].sort((a, b) => (key(a) < key(b) ? -1 : 1)).slice(0, sampleSize);
}

/** The review as text. It quotes families: it is for the people who look after them. */
export function reviewReport({ readings, clearances, reports }: Review, zone: string): string {
  const at = (ms: number) => DateTime.fromMillis(ms, { zone }).toFormat('d LLL HH:mm');
  const read = readings.map(
    ({ id, atMs, text, readAs }) => `${caseCode(id)}  ${at(atMs)}  "${text}"\n       read as  ${readAs}`,
  );
  const cleared = clearances.map(
    ({ id, atMs, held, became }) => `${caseCode(id)}  ${at(atMs)}  ${held}; then ${became}`,
  );
  return [
    `${clearances.length} ${clearances.length === 1 ? 'clearance' : 'clearances'}, every one of them:`,
    ...cleared,
    `${reports.length} ${reports.length === 1 ? 'report' : 'reports'} that the line was wrong:`,
    ...reports.map(
      ({ id, atMs, what }) => `${caseCode(id)}  ${at(atMs)}  ${what === '' ? 'not said why' : `"${what}"`}`,
    ),
    `${readings.length} ${readings.length === 1 ? 'text' : 'texts'} beside what was read. It quotes families: keep it as you keep their files.`,
    ...read,
  ].join('\n');
}

function isText({ machine, event }: CaseSignal): boolean {
  return machine === 'conversation' && !event.type.startsWith('nurse.');
}

function plain({ at: _at, clinicOpen: _open, ...event }: CaseSignal['event']): string {
  const { type, ...rest } = event;
  const said = Object.entries(rest).filter(([, value]) => value !== false && JSON.stringify(value) !== '{}');
  return [type, ...said.map(([name, value]) => `${name} ${JSON.stringify(value)}`)].join(', ');
}

/** The case is played again, so that what was held stands there as it was. */
function clearancesOf({ id, protocol, file, openedMs, signals, untilMs }: PastCase): readonly Clearance[] {
  const replay = Replay.opened(protocol, file, openedMs);
  const held: Omit<Clearance, 'became'>[] = [];
  for (const signal of signals) {
    replay.waitUntil(signal.event.at);
    if (signal.event.type === 'nurse.clear') held.push({ id, atMs: signal.event.at, held: heldNow(replay) });
    replay.hear(signal);
  }
  replay.waitUntil(untilMs);
  return held.map((clearance) => ({ ...clearance, became: replay.view.disposition ?? 'nothing told yet' }));
}

function heldNow({ view }: Replay): string {
  const { tubeKind, ph, insertedHow } = view.facts;
  return `${tubeKind ?? 'unknown kind'}, pH ${ph ?? 'not read'}, went in ${insertedHow ?? 'nobody knows how'}`;
}
