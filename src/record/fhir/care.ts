/** What was found out and done: the encounter, readings, weights, tubes and the flag while a tube may not be used. */
import type {
  Device,
  DeviceUseStatement,
  Encounter,
  Flag,
  Observation,
  Patient,
  Practitioner,
  RelatedPerson,
  Resource,
} from '@medplum/fhirtypes';
import type { CourseReading, Span, TubeSpan } from '../course.ts';
import { actWords, readingWords, tubeNames } from '../timeline.ts';
import { coded, type Frame } from './frame.ts';
import { keyOf } from './people.ts';

const loinc = 'http://loinc.org';
const ucum = 'http://unitsofmeasure.org';
const snomed = 'http://snomed.info/sct';
const observationCategory = 'http://terminology.hl7.org/CodeSystem/observation-category';

const interpretation = 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation';
const interpreted = {
  normal: coded({ system: interpretation, code: 'N', display: 'Normal' }),
  high: coded({ system: interpretation, code: 'H', display: 'High' }),
};

export function care(frame: Frame): Resource[] {
  const { course } = frame;
  return [
    encounter(frame),
    ...course.readings.map((reading, index) => ph(frame, reading, index)),
    ...course.weights.map((weight, index) => bodyWeight(frame, weight, index)),
    ...tubes(frame),
  ];
}

/** A virtual encounter is the whole episode. Source: HL7 v3 ActCode, VR. */
function encounter({ id, ref, period, record }: Frame): Encounter {
  const { openedMs, closedMs } = record;
  const takers = record.pages.filter(({ takenMs }) => takenMs !== null).map(({ person }) => keyOf(person));
  return {
    resourceType: 'Encounter',
    id: id('encounter'),
    status: closedMs === null ? 'in-progress' : 'finished',
    class: { system: 'http://terminology.hl7.org/CodeSystem/v3-ActCode', code: 'VR', display: 'virtual' },
    type: [{ text: 'Text-message episode: a gastrostomy tube that came out' }],
    subject: ref<Patient>('child'),
    participant: [
      { individual: ref<RelatedPerson>('caregiver') },
      ...[...new Set(takers)].map((key) => ({ individual: ref<Practitioner>(key) })),
    ],
    period: period({ fromMs: openedMs, untilMs: closedMs }),
  };
}

/** pH of gastric fluid, LOINC 2749-0. Read at home by the caregiver: it is as told, a range as a range. */
function ph({ id, ref, at, record }: Frame, reading: CourseReading, index: number): Observation {
  const { low, high, verdict } = reading;
  const { phLimit } = record.clinical;
  const unit = { unit: 'pH', system: ucum, code: '[pH]' };
  return {
    resourceType: 'Observation',
    id: id(`reading ${index}`),
    status: 'final',
    category: [coded({ system: observationCategory, code: 'laboratory' })],
    code: coded({ system: loinc, code: '2749-0', display: 'pH of Gastric fluid' }),
    ...about(ref),
    effectiveDateTime: at(reading.atMs),
    performer: [ref<RelatedPerson>('caregiver')],
    ...(low === high
      ? { valueQuantity: { value: high, ...unit } }
      : { valueRange: { low: { value: low, ...unit }, high: { value: high, ...unit } } }),
    ...(verdict !== 'no-reading' && { interpretation: [verdict === 'passes' ? interpreted.normal : interpreted.high] }),
    method: { text: 'pH strip on stomach contents, read by the caregiver and told by text message' },
    referenceRange: [{ text: `under ${phLimit}, the site's limit for use of the tube` }],
    note: [{ text: readingWords(reading, phLimit) }],
  };
}

/** The vital-signs profile of body weight. Only what was told with a unit; a filed weight is in the chart already. */
function bodyWeight({ id, ref, at }: Frame, weight: { atMs: number; kg: number }, index: number): Observation {
  return {
    resourceType: 'Observation',
    id: id(`weight ${index}`),
    meta: { profile: ['http://hl7.org/fhir/StructureDefinition/bodyweight'] },
    status: 'final',
    category: [coded({ system: observationCategory, code: 'vital-signs', display: 'Vital Signs' })],
    code: coded({ system: loinc, code: '29463-7', display: 'Body weight' }),
    ...about(ref),
    effectiveDateTime: at(weight.atMs),
    performer: [ref<RelatedPerson>('caregiver')],
    valueQuantity: { value: weight.kg, unit: 'kg', system: ucum, code: 'kg' },
    note: [{ text: 'As told by the caregiver; not weighed for this episode.' }],
  };
}

function about(ref: Frame['ref']) {
  return { subject: ref<Patient>('child'), encounter: ref<Encounter>('encounter') };
}

/** Each tube that was in, its use in time, and the flag while it may not be used. The one that came out is the own tube too. */
function tubes(frame: Frame): Resource[] {
  const { course } = frame;
  const cameOut = course.cameOutMs === null ? [] : [cameOutUse(frame, course.cameOutMs)];
  const hasOwn = cameOut.length > 0 || course.tubes.some(({ tube }) => tube === 'own');
  return [
    ...(hasOwn ? [device(frame, 'own', 'tube own')] : []),
    ...cameOut,
    ...course.tubes.flatMap((span, index) => {
      const key = span.tube === 'own' ? 'tube own' : `tube ${index}`;
      return [
        ...(span.tube === 'own' ? [] : [device(frame, span.tube, key)]),
        deviceUse(frame, span, index, key),
        ...span.use.filter(({ allowed }) => !allowed).map((not, place) => flag(frame, not, `${index} ${place}`)),
      ];
    }),
  ];
}

/** SNOMED CT has a gastrostomy tube; a kit's tube may be of another make, and a combination tube is another thing. */
function device({ id, ref, course }: Frame, tube: TubeSpan['tube'], key: string): Device {
  const isGastrostomy = tube === 'own' && course.tubes.every(({ kind }) => kind === 'g') && course.tubes.length > 0;
  const text = tube === 'own' ? "The child's own feeding tube" : "Temporary tube of the family's emergency kit";
  const type = isGastrostomy
    ? coded({ system: snomed, code: '470571004', display: 'Gastrostomy tube' }, text)
    : { text };
  return { resourceType: 'Device', id: id(key), status: 'active', type, patient: ref<Patient>('child') };
}

function cameOutUse({ id, ref, at }: Frame, cameOutMs: number): DeviceUseStatement {
  return {
    resourceType: 'DeviceUseStatement',
    id: id('use before'),
    status: 'completed',
    subject: ref<Patient>('child'),
    timingPeriod: { end: at(cameOutMs) },
    source: ref<RelatedPerson>('caregiver'),
    device: ref<Device>('tube own'),
    note: [{ text: 'Came out, or was last seen in, at the end of this period, as the caregiver told.' }],
  };
}

function deviceUse(frame: Frame, span: TubeSpan, index: number, key: string): DeviceUseStatement {
  const { id, ref, period, course } = frame;
  const within = course.nurse.filter(
    ({ what, atMs }) => what === 'clear' && atMs >= span.fromMs && atMs <= (span.untilMs ?? atMs),
  );
  const how = span.how === null ? '' : `, ${span.how === 'easy' ? 'went in easily' : 'had to be pushed'}`;
  return {
    resourceType: 'DeviceUseStatement',
    id: id(`use ${index}`),
    status: span.untilMs === null ? 'active' : 'completed',
    subject: ref<Patient>('child'),
    timingPeriod: period(span),
    source: ref<RelatedPerson>('caregiver'),
    device: ref<Device>(key),
    note: [
      { text: `As told: ${tubeNames[span.tube]} in${how}.` },
      ...within.map((act) => ({ text: `A nurse ${actWords(act)}.` })),
    ],
  };
}

function flag({ id, ref, period }: Frame, span: Span, key: string): Flag {
  return {
    resourceType: 'Flag',
    id: id(`flag ${key}`),
    status: span.untilMs === null ? 'active' : 'inactive',
    category: [
      coded({ system: 'http://terminology.hl7.org/CodeSystem/flag-category', code: 'safety', display: 'Safety' }),
    ],
    code: { text: 'Feeding tube must not be used: nothing through it' },
    subject: ref<Patient>('child'),
    period: period(span),
    encounter: ref<Encounter>('encounter'),
    author: ref<Device>('line'),
  };
}
