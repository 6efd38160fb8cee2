/** What the reader knows in these tests: an open case in New York, at ten past two on a March night of 2027. */
import type { QuestionKey } from '#machines/facts.ts';
import { type Open, type Reading, read } from '#src/reading/read.ts';

export const now = '2027-03-06T02:10:00-05:00';

/** Nothing asked, no tube in. */
export const open: Open = {
  asking: null,
  clarifying: null,
  bareWeight: null,
  answered: null,
  caseOpen: true,
  tubeIn: false,
  nowMs: Date.parse(now),
  timeZone: 'America/New_York',
  language: 'en',
};

/** The event a text becomes. */
export function eventOf(text: string, known: Partial<Open> = {}): Reading['event'] {
  return read(text, { ...open, ...known }).event;
}

/** The value read as the answer to a question; why not, where it is unclear; else the type of the event. */
export function answerTo(asking: QuestionKey, text: string, known: Partial<Open> = {}): unknown {
  const event = eventOf(text, { ...known, asking });
  if (event.type === 'unclear') return `unclear: ${event.why}`;
  return 'value' in event && event.type === `answer.${asking}` ? event.value : event.type;
}

/** Milliseconds of a clock time of that night, or of the evening before. */
export function at(clock: string, day: '2027-03-05' | '2027-03-06' = '2027-03-06'): number {
  return Date.parse(`${day}T${clock}:00-05:00`);
}
