/** Whose shift an event is: the attendee with a telephone number on the rota, else the one name of the rota in its summary. */
import type ICAL from 'ical.js';
import type { Nurse } from './rota.ts';

/** The person an event names, or null where it is nobody of the rota or more than one. */
export function whose(event: ICAL.Component, nurses: readonly Nurse[]): Nurse | null {
  const numbers = event.getAllProperties('attendee').flatMap((attendee) => numberOf(attendee.getFirstValue()));
  const byNumber = nurses.filter((nurse) => numbers.includes(nurse.number));
  if (byNumber.length > 0) return only(byNumber);
  const words = wordsOf(String(event.getFirstPropertyValue('summary') ?? ''));
  return only(nurses.filter((nurse) => words.includes(nurse.name.toLowerCase())));
}

/** RFC 3966: a global number may hold visual separators and be followed by parameters. */
function numberOf(address: unknown): string[] {
  const [, number] = /^tel:(\+[\d().-]+)(?:;|$)/i.exec(String(address)) ?? [];
  return number === undefined ? [] : [number.replace(/[^+\d]/g, '')];
}

function wordsOf(summary: string): string[] {
  return summary.toLowerCase().match(/[\p{L}\p{M}'’-]+/gu) ?? [];
}

function only(nurses: readonly Nurse[]): Nurse | null {
  const [first, ...others] = nurses;
  return others.length > 0 ? null : (first ?? null);
}
