import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { ProtocolRefused } from '#machines/protocol/errors.ts';
import { defaultClinical } from '#machines/protocol/load.ts';
import { weightBand } from '#machines/rules/weight.ts';
import { loadFamilies, loadProtocol, loadSeeds } from '#src/seeds.ts';
import { SeedsRefused } from '#src/seedsErrors.ts';

const folder = join(import.meta.dirname, '../../seeds');
const seeds = loadSeeds(folder);
const protocolText = readFileSync(join(folder, 'protocol.yaml'), 'utf8');

describe('the practice seeds', () => {
  it('write out every clinical setting, at its default', () => {
    expect(parse(protocolText).clinical).toEqual(defaultClinical);
    expect(seeds.protocol.clinical).toEqual(defaultClinical);
  });

  it("are the site of the practice line's contract", () => {
    expect(seeds.protocol.site).toMatchObject({
      timeZone: 'America/New_York',
      clinicDays: [1, 2, 3, 4, 5],
      clinicOpens: '08:00',
      clinicCloses: '17:00',
      holidays: 'US',
      emergencyNumber: '911',
    });
  });

  it('ring only numbers kept for fiction, and nobody twice', () => {
    // NANP: NXX-555-0100 to 0199 are kept for fictional use.
    const { clinicNumber, fallbackNumber, handoverNumber = 'none' } = seeds.protocol.site;
    const people = [...seeds.rota.nurses, ...seeds.families].map((person) => person.number);
    const numbers = [...people, clinicNumber, fallbackNumber, handoverNumber];
    for (const number of numbers) expect(number).toMatch(/^\+1[2-9]\d\d55501\d\d$/);
    expect(new Set(numbers).size).toBe(numbers.length);
  });

  it('say in every file that they are invented', () => {
    for (const file of ['protocol.yaml', 'rota.yaml', 'families.yaml']) {
      expect(readFileSync(join(folder, file), 'utf8'), file).toContain('invented');
    }
  });

  it('hold a child over 3 kg with a gastrostomy, a combination tube, and a baby under 3 kg', () => {
    const files = seeds.families;
    const band = (weightKg: number | null) => weightBand(weightKg === null ? 'unknown' : { kg: weightKg });
    expect(files.some((file) => file.tubeKind === 'g' && band(file.weightKg) === 'over-3')).toBe(true);
    expect(files.some((file) => file.tubeKind === 'gj')).toBe(true);
    expect(files.some((file) => band(file.weightKg) === 'under-3')).toBe(true);
  });
});

describe('wrong seeds', () => {
  const family = `
- number: "+12125550101"
  language: en
  child: Wren
  born: 2023-04-18
  tubeKind: g
  firstPlaced: 2024-02-06
  weightKg: 13.4
  weighedOn: 2026-09-21
`;

  it('a family file fills in what may be left out', () => {
    expect(loadFamilies(family)[0]).toMatchObject({ latexAllergy: false, cannotWait: null });
  });

  it.each([
    ['a day that is none', family.replace('2024-02-06', '2024-02-30')],
    ['a kind the file cannot hold', family.replace('tubeKind: g', 'tubeKind: nose')],
    ['a weight of no child', family.replace('13.4', '1340')],
    ['a language nobody speaks here', family.replace('language: en', 'language: xx')],
    ['a missing field', family.replace('  weighedOn: 2026-09-21\n', '')],
    ['a field it does not know', `${family}  hair: brown\n`],
    ['one number twice', family + family],
    ['no list', '5'],
  ])('a family with %s is refused', (_what, wrong) => {
    expect(() => loadFamilies(wrong)).toThrow(SeedsRefused);
  });

  it('a protocol outside its bounds is refused by field, value and bound', () => {
    const wrong = protocolText.replace('phLimit: 6', 'phLimit: 6.5');
    expect(() => loadProtocol(wrong)).toThrow(ProtocolRefused);
    expect(() => loadProtocol(wrong)).toThrow('clinical.phLimit is 6.5; it has to be 4 to 6 pH');
  });

  it.each(['ZZ', 'US-ZZ'])('a holiday calendar that does not exist is refused: %s', (name) => {
    expect(() => loadProtocol(protocolText.replace('holidays: US', `holidays: ${name}`))).toThrow(SeedsRefused);
  });

  it('an empty folder and a text that is no YAML are refused by file', () => {
    const empty = mkdtempSync(join(tmpdir(), 'seeds-'));
    try {
      expect(() => loadSeeds(empty)).toThrow('protocol.yaml refused');
      writeFileSync(join(empty, 'protocol.yaml'), 'a: [1');
      expect(() => loadSeeds(empty)).toThrow('readable YAML');
    } finally {
      rmSync(empty, { recursive: true });
    }
  });
});
