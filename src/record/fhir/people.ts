/** Who is in a case: the child, the caregiver who texts, the people called, and the line itself. */
import type { Device, Patient, Practitioner, RelatedPerson, Resource } from '@medplum/fhirtypes';
import { nameOf, type Person } from '../read.ts';
import type { Frame } from './frame.ts';

/** Of the child only what the file has; of the caregiver the number alone, which is how the family is reached. */
export function people(frame: Frame): Resource[] {
  return [patient(frame), caregiver(frame), line(frame), ...peopleCalled(frame).map((person) => nurse(frame, person))];
}

/** Everybody who was called or wrote, each once. */
export function peopleCalled({ record }: Frame): readonly Person[] {
  const all = [...record.pages.map(({ person }) => person), ...record.messages.flatMap(({ nurse: one }) => one ?? [])];
  return [...new Map(all.map((person) => [person.phoneId, person])).values()];
}

/** The key of somebody on call. */
export function keyOf({ phoneId }: Person): string {
  return `nurse ${phoneId}`;
}

function patient({ id, record: { file } }: Frame): Patient {
  return {
    resourceType: 'Patient',
    id: id('child'),
    ...(file?.child != null && { name: [{ use: 'nickname' as const, text: file.child }] }),
    ...(file?.born != null && { birthDate: file.born }),
  };
}

function caregiver({ id, ref, record: { number, file } }: Frame): RelatedPerson {
  return {
    resourceType: 'RelatedPerson',
    id: id('caregiver'),
    patient: ref<Patient>('child'),
    relationship: [{ text: 'Caregiver who texts the line' }],
    telecom: [{ system: 'sms', value: number, use: 'mobile' }],
    ...(file !== null && { communication: [{ language: languageOf(file.language), preferred: true }] }),
  };
}

/** BCP 47, as FHIR wants it. */
function languageOf(code: string) {
  return { coding: [{ system: 'urn:ietf:bcp:47', code }] };
}

function line({ id }: Frame): Device {
  return {
    resourceType: 'Device',
    id: id('line'),
    deviceName: [{ name: 'Nightjar text-message line', type: 'user-friendly-name' }],
    type: { text: 'Text-message line for a gastrostomy tube that came out' },
  };
}

function nurse({ id }: Frame, person: Person): Practitioner {
  return { resourceType: 'Practitioner', id: id(keyOf(person)), name: [{ text: nameOf(person) }] };
}
