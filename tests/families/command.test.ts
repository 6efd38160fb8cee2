/** The families command: a file is taken whole or not at all, every refusal names line, column and rule, every change is in the audit. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FolderInUse, NoLineDatabase } from '#src/errors.ts';
import { familiesCommand } from '#src/families/command.ts';
import { createLog } from '#src/log.ts';
import { openEmbedded } from '#src/store/embedded.ts';
import { migrate } from '#src/store/migrate.ts';
import { copyEmpty } from '#tests/store/empty.ts';
import { head, ilan, ode, type Standing, stand, wren } from './standing.ts';

let site: Standing;
beforeEach(async () => {
  site = await stand();
});
afterEach(() => site.end());

const imported = (...lines: string[]) =>
  site.run('import', site.file([head, ...lines, ''].join('\r\n')), '--by', 'Ada');

describe('a file of families', () => {
  it('is enrolled with its phones and its children, and says so line by line', async () => {
    expect(await imported(wren, ode, ilan)).toEqual([
      'line 2: Wren: enrolled',
      'line 3: Ode: enrolled',
      'line 4: Ilan: enrolled',
    ]);
    const [first, second] = await site.enrolled();
    expect(first).toMatchObject({
      number: '+12125550150',
      morePhones: ['+12125550151', '+12125550152'],
      file: {
        child: 'Wren',
        cannotWait: 'feed, 9 pm',
        stemLengthCm: 1.7,
        latexAllergy: false,
        siblings: [{ child: 'Ode', tubeKind: 'gj', weightKg: 9.5, latexAllergy: true, stemLengthCm: null }],
      },
    });
    expect(second).toMatchObject({
      number: '+12125550160',
      morePhones: [],
      file: { firstPlaced: null, language: 'es' },
    });
    expect(await site.audit()).toEqual(['enrolled by Ada', 'enrolled by Ada']);
  });

  it('read again changes nothing; with another weight it names the field', async () => {
    await imported(wren, ilan);
    expect(await imported(wren.replace('13.4', '13.9'), ilan)).toEqual([
      'line 2: Wren: changed: weightKg',
      'line 3: Ilan: unchanged',
    ]);
    expect(await site.audit()).toEqual(['enrolled by Ada', 'enrolled by Ada', 'changed: weightKg by Ada']);
  });

  it('that leaves a child out takes it off, and says so', async () => {
    await imported(wren, ode);
    expect(await imported(wren)).toEqual(['line 2: Wren: changed: Ode no longer']);
  });

  it('with a line that cannot stand is refused whole', async () => {
    expect(await imported(ilan, wren.replace('13.4', '1340'))).toEqual([
      'line 3: refused: weightKg: kg from 0.3 to 200, or null',
      'nothing was changed: one line is refused',
    ]);
    expect(await site.enrolled()).toEqual([]);
    expect(await site.audit()).toEqual([]);
  });

  it('refuses a phone that a family on the line has, and takes nothing of the file', async () => {
    await imported(wren);
    const other = ilan.replace(',,', ',+12125550152,');
    expect(await imported(other.replace('0160', '0170').replace(',+12125550152,', ',,'), other)).toEqual([
      'line 3: refused: phones: one of these phones belongs to another family',
      'nothing was changed: one line is refused',
    ]);
    expect((await site.enrolled()).map(({ number }) => number)).toEqual(['+12125550150']);
  });
});

describe('one family', () => {
  it('is added, changed, shown, moved to another number, and taken off', async () => {
    const columns = ['phone=+12125550170', 'child=Bo', 'born=2026-06-01', 'tubeKind=g', 'language=fr'];
    expect(await site.run('add', ...columns, '--by', 'Bea')).toEqual(['enrolled']);
    expect(await site.run('add', ...columns, '--by', 'Bea')).toContain('nothing was changed: one line is refused');
    expect(await site.run('add', ...columns, 'child=Mo', '--by', 'Bea')).toEqual(['added to its family']);
    const change = ['change', '--phone', '+12125550170', '--child', 'Mo', '--by', 'Bea'];
    expect(await site.run(...change, 'tubeSize=14', 'acidReducer=yes')).toEqual(['changed: acidReducer, tubeSize']);
    expect(await site.run(...change, 'weightKg=900')).toContain('refused: weightKg: kg from 0.3 to 200, or null');
    expect(await site.run('change', '--phone', '+12125550170', 'tubeSize=14', '--by', 'Bea')).toEqual([
      'this family has no child of that name',
    ]);
    expect(await site.run(...change, 'phone=+12125550171', 'phones=+12125550172')).toEqual(['changed: phones, phone']);
    const shown = await site.run('show', '--phone', '+12125550171');
    expect(shown).toEqual(
      expect.arrayContaining(['child: Bo', 'child: Mo', 'tubeSize: 14 Fr', 'phones: +12125550172']),
    );
    expect(await site.run('show')).toEqual(['+12125550171  Bo, Mo']);
    expect(await site.run('remove', '--phone', '+12125550171', '--by', 'Bea')).toEqual(['removed']);
    expect(await site.run('remove', '--phone', '+12125550171', '--by', 'Bea')).toEqual([
      'no family is enrolled by this phone',
    ]);
    expect(await site.enrolled()).toEqual([]);
    expect(await site.audit()).toEqual([
      'enrolled by Bea',
      'Mo added by Bea',
      'changed: acidReducer, tubeSize by Bea',
      'removed by Bea',
      'changed: phones, phone by Bea',
      'removed by Bea',
    ]);
  });

  it.each([
    [['import', 'x.csv'], 'say who does it: --by NAME'],
    [['import', '--by', 'Ada'], 'name a file'],
    [['change', 'weightKg=3', '--by', 'Ada'], 'name the family by its --phone'],
    [['add', 'Wren', '--by', 'Ada'], '"Wren" is no COLUMN=VALUE'],
    [['dance'], 'say what to do'],
    [[], 'say what to do'],
  ])('%j is no call', async (words, why) => {
    expect((await site.run(...words))[0]?.split('\n')[0]).toBe(why);
  });
});

describe('review', () => {
  it('lists the files whose facts are missing or old', async () => {
    const fresh = 'consentOn=2027-01-05 reviewedOn=2027-01-05'.split(' ');
    await imported(wren, ilan, '+12125550180,,Pia,2026-12-30,g,2027-01-12,2.7,2027-02-20,en,,,');
    expect(await site.run('change', '--phone', '+12125550150', ...fresh, '--by', 'Ada')).toEqual([
      'changed: consentOn, reviewedOn',
    ]);
    expect(await site.run('review')).toEqual([
      '+12125550160  Ilan: first placement not on file; weight not on file; consent not on file; facts not reviewed for 365 days',
      '+12125550180  Pia: weight under 3 kg, older than a week; consent not on file; facts not reviewed for 365 days',
    ]);
  });
});

it('is run on the folder of a line that was stopped, and on no other', async () => {
  const top = mkdtempSync(join(tmpdir(), 'families-'));
  const data = join(top, 'line');
  const log = createLog({ write: () => {} });
  const printed: string[] = [];
  const run = (...words: string[]) =>
    familiesCommand(words, { NIGHTJAR_DATA: data, NIGHTJAR_SEEDS: 'seeds' }, log, (text) => printed.push(text));
  await expect(run('show')).rejects.toThrow(NoLineDatabase);
  await copyEmpty(data);
  const database = await openEmbedded(data);
  await migrate(database, 'practice');
  await expect(run('show')).rejects.toThrow(FolderInUse);
  await database.close();
  await run('add', 'phone=+12125550170', 'child=Bo', 'born=2026-06-01', 'tubeKind=g', 'language=fr', '--by', 'Bea');
  await run('show');
  expect(printed).toEqual(['enrolled', '+12125550170  Bo']);
  rmSync(top, { recursive: true });
});
