/**
 * A case as a FHIR R4 bundle. Its type is `collection`: the resources of one episode, handed over to be filed. A `document` would
 * need a Composition with an author who stands for it, and no clinician has; a `transaction` would tell a server what to do.
 * Sources of the codes: HL7 FHIR R4 (4.0.1), LOINC 2.82, UCUM, SNOMED CT.
 */
import type { Bundle } from '@medplum/fhirtypes';
import { DateTime } from 'luxon';
import type { Course } from '../course.ts';
import type { CaseRecord } from '../read.ts';
import { care } from './care.ts';
import { frameOf, urnOf } from './frame.ts';
import { people } from './people.ts';
import { talk } from './talk.ts';

/** Ids are the same at every export, so that filing one twice doubles nothing. `nowMs` is the time of the export. */
export function bundleOf(record: CaseRecord, course: Course, nowMs: number): Bundle {
  const frame = frameOf(record, course);
  const resources = [...people(frame), ...care(frame), ...talk(frame)];
  return {
    resourceType: 'Bundle',
    id: frame.id('bundle'),
    type: 'collection',
    timestamp: DateTime.fromMillis(nowMs, { zone: record.site.timeZone }).toFormat("yyyy-MM-dd'T'HH:mm:ss.SSSZZ"),
    entry: resources.map((resource) => ({ fullUrl: urnOf(resource.id ?? frame.id('bundle')), resource })),
  };
}
