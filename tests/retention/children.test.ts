/** A family with two tube-fed children, both with a case: a bundle names the one it is about, a copy has both, an erasure leaves neither. */
import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Bundle, Resource } from '@medplum/fhirtypes';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPractice } from '#src/app.ts';
import type { Enrolment } from '#src/line/line.ts';
import { createLog } from '#src/log.ts';
import { recordCommand } from '#src/record/command.ts';
import { retentionCommand } from '#src/retention/command.ts';
import { withExisting } from '#src/store/existing.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const log = createLog({ write: () => {} });
const [parent, grandmother, other, imke] = ['+12125550171', '+12125550172', '+12125550101', '+12125550151'];
const startMs = Date.parse('2027-03-06T02:10:00-05:00');
const tam: Enrolment = {
  ...{
    child: 'Tam',
    born: '2024-05-01',
    tubeKind: 'g',
    firstPlaced: '2025-01-10',
    weightKg: 11.5,
    weighedOn: '2027-02-01',
  },
  ...{ language: 'en', latexAllergy: false, cannotWait: 'quillbark syrup', chartLast4: '7731', phones: [grandmother] },
  siblings: [
    {
      child: 'Ivo',
      born: '2022-03-04',
      tubeKind: 'gj',
      firstPlaced: '2023-05-06',
      weightKg: 14.25,
      weighedOn: '2027-02-01',
    },
  ],
};
/** Who, what the nurse asks, and what they write; each case is closed by her two days before the next one opens. */
const nights = [
  [parent, 'how is the magpie', "tam's tube fell out", 'no', 'yes', 'can a nurse call me, the jackdaw is loud'],
  [grandmother, 'where is the nuthatch', "ivo's tube fell out", 'no', 'yes', 'my kingfisher hat is lost'],
  [other, 'is she well', "wren's tube fell out", 'no', 'can a nurse call me'],
  [parent, 'who is it', 'a tube fell out', 'no', 'can a nurse call me'],
] as const;
/** Everything of the two that is sealed somewhere. */
const theirs = /\b(?:Tam|Ivo)\b|jackdaw|kingfisher|magpie|nuthatch|quillbark|7731|2125550171|2125550172/i;

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-siblings-'));
  await copyEmpty(folder);
  const app = await openPractice({ port: 0, databaseUrl: null, dataFolder: folder, seedsFolder: 'seeds' }, log);
  const { line } = app;
  const say = async (from: string, body: string) => {
    const cause = `${from} ${body} ${await line.now()}`;
    await line.hear({ from, body, id: cause, cause });
    await line.settle(cause);
  };
  await line.reset(startMs, { families: [] });
  await line.enrol(parent, tam);
  const { phones: _phones, siblings: _siblings, ...one } = tam;
  await line.enrol(other, { ...one, child: 'Wren', cannotWait: null, chartLast4: null });
  for (const [from, asked, ...texts] of nights) {
    for (const body of texts) await say(from, body);
    for (const body of ['take', 'more', `ask ${asked}`, 'close', 'yes']) await say(imke, body);
    await line.advance((await line.now()) + 48 * 60 * 60_000, `after ${from}`);
  }
  await app.stop();
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const out = () => join(folder, '../', `${folder.split('/').at(-1)}.json`);
async function retention(...words: string[]): Promise<string> {
  const printed: string[] = [];
  await retentionCommand(words, { NIGHTJAR_DATA: folder }, log, (text) => printed.push(text));
  return printed.join('\n');
}
async function record(...words: string[]): Promise<string> {
  const printed: string[] = [];
  await recordCommand([...words, '--data', folder], {}, log, (text) => printed.push(text));
  return printed.join('\n');
}
/** Everything sealed in the database, opened. */
async function allWords(): Promise<string> {
  return withExisting({ environment: {}, folder, log }, async (database, seal) => {
    const rows = await database.query<{ what: string; value: Buffer }>(
      `SELECT 'phone' AS what, number AS value FROM phone UNION ALL SELECT 'family', file FROM family
       UNION ALL SELECT 'case', file FROM "case" WHERE file IS NOT NULL UNION ALL SELECT 'state', snapshots FROM "case" WHERE snapshots IS NOT NULL
       UNION ALL SELECT 'event', body FROM event UNION ALL SELECT direction || ' ' || phone_id, body FROM message UNION ALL SELECT 'sheet', sheet FROM handover`,
    );
    return rows.map(({ what, value }) => `${what}: ${seal.open(value)}`).join('\n');
  });
}

describe('a family with two tube-fed children', () => {
  it.each([
    ['1', 'Tam', '2024-05-01', 'Ivo'],
    ['2', 'Ivo', '2022-03-04', 'Tam'],
  ])('has a bundle of case %s that names %s, and the other child nowhere', async (number, child, born, sibling) => {
    await record(number, '--fhir', out());
    const bundle: Bundle = JSON.parse(readFileSync(out(), 'utf8'));
    const all: Resource[] = (bundle.entry ?? []).flatMap(({ resource }) => resource ?? []);
    expect(all.filter(({ resourceType }) => resourceType === 'Patient')).toMatchObject([
      { name: [{ text: child }], birthDate: born },
    ]);
    expect(JSON.stringify(bundle)).not.toMatch(new RegExp(`\\b${sibling}\\b`));
    const text = await record(number);
    expect(text).toContain(`Child: ${child}, born ${born}`);
    expect(text).not.toMatch(new RegExp(`\\b${sibling}\\b`));
  });

  it('has a record that names both while nobody said which of them it is, and a bundle that names neither', async () => {
    expect(await record('4')).toContain('Child: Ivo or Tam');
    await record('4', '--fhir', out());
    const bundle: Bundle = JSON.parse(readFileSync(out(), 'utf8'));
    const patients = (bundle.entry ?? []).filter(({ resource }) => resource?.resourceType === 'Patient');
    expect(patients.map(({ resource }) => Object.keys(resource ?? {}).sort())).toEqual([['id', 'resourceType']]);
  });

  it('is copied out whole, by either of its phones', async () => {
    const copies = [];
    for (const number of [parent, grandmother]) {
      await retention('export', number, '--out', out());
      copies.push(readFileSync(out(), 'utf8'));
    }
    expect(copies[1]).toBe(copies[0]);
    for (const words of ['Tam', 'Ivo', 'jackdaw', 'kingfisher', 'quillbark', '7731', parent, grandmother])
      expect(copies[0]).toContain(words);
    expect(copies[0]).not.toMatch(/Wren/i);
  });

  it('is erased whole: neither child is left, in what the nurse was told either, and another family’s record is', async () => {
    expect(await allWords()).toMatch(theirs);
    expect(await retention('erase', grandmother, '--by', 'Wilma')).toContain('3 cases');
    const left = (await allWords()).split('\n');
    expect(left.filter((line) => theirs.test(line))).toEqual([]);
    expect(left.filter((line) => /wren/i.test(line)).length).toBeGreaterThan(5);
    expect(await record('verify')).toMatch(/^4 cases, \d+ events: as the line wrote them/);
    expect(await record('3')).toContain('Child: Wren');
  });
});
