/** The record of a rehearsal: it can be read and checked, and never gets into a chart. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPractice } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { recordCommand } from '#src/record/command.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const log = createLog({ write: () => {} });
const family = '+12125550101';
let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-practised-'));
  await copyEmpty(folder);
  const app = await openPractice({ port: 0, databaseUrl: null, dataFolder: folder, seedsFolder: 'seeds' }, log);
  for (const body of ['can we practice', 'the g tube is out', 'no', 'yes', 'practice over']) {
    await app.line.hear({ from: family, body, id: body, cause: body });
    await app.line.settle(body);
  }
  await app.stop();
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function record(...words: string[]): Promise<string> {
  const printed: string[] = [];
  await recordCommand([...words, '--data', folder], {}, log, (text) => printed.push(text));
  return printed.join('\n');
}

it('is marked in the timeline, and neither drawn nor written as FHIR', async () => {
  const text = await record('1');
  expect(text.split('\n')[0]).toBe('PRACTICE: nothing here happened. It does not belong in a chart.');
  expect(text).toContain('"can we practice"');
  expect(text).toContain('checked and whole');
  for (const option of ['--picture', '--fhir'])
    await expect(record('1', option, join(folder, 'out'))).rejects.toMatchObject({ code: 'record-of-rehearsal' });
});

it('is whole from its beginning to its end', async () => {
  expect(await record('verify')).toMatch(/^1 case, 5 events: as the line wrote them/);
});
