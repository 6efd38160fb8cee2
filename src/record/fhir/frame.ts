/** What every resource of one bundle shares: ids that are the same at every export, references to them, local times. */
import { createHash } from 'node:crypto';
import type { CodeableConcept, Coding, Period, Reference, Resource } from '@medplum/fhirtypes';
import { DateTime } from 'luxon';
import type { Course, Span } from '../course.ts';
import type { CaseRecord } from '../read.ts';

export interface Frame {
  readonly record: CaseRecord;
  readonly course: Course;
  /** The id of what a key names in this case. */
  id(key: string): string;
  /** A reference within the bundle. */
  ref<T extends Resource>(key: string): Reference<T>;
  /** Local time with its offset. */
  at(ms: number): string;
  period(span: Span): Period;
}

export function frameOf(record: CaseRecord, course: Course): Frame {
  const at = (ms: number) =>
    DateTime.fromMillis(ms, { zone: record.site.timeZone }).toFormat("yyyy-MM-dd'T'HH:mm:ssZZ");
  const id = (key: string) => uuidOf(`${record.id} ${record.openedMs} ${record.protocolId} ${record.number} ${key}`);
  return {
    record,
    course,
    id,
    ref: (key) => ({ reference: urnOf(id(key)) }),
    at,
    period: ({ fromMs, untilMs }) => ({ start: at(fromMs), ...(untilMs !== null && { end: at(untilMs) }) }),
  };
}

export function urnOf(id: string): string {
  return `urn:uuid:${id}`;
}

export function coded(coding: Coding, text?: string): CodeableConcept {
  return { coding: [coding], ...(text !== undefined && { text }) };
}

/** A UUID made of a hash: version 8, RFC 9562 section 5.8. */
function uuidOf(name: string): string {
  const bytes = createHash('sha256').update(name).digest().subarray(0, 16);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x80;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
