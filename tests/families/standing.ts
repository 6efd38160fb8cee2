/** A practice database on disk with nobody enrolled, and the families command run on it as a site runs it. All families are invented. */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { familiesCommand } from '#src/families/command.ts';
import { enrolledFamilies } from '#src/line/families.ts';
import { createLog } from '#src/log.ts';
import { openEmbedded } from '#src/store/embedded.ts';
import { migrate } from '#src/store/migrate.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';

export const nowMs = Date.parse('2027-03-06T02:10:00-05:00');

export const head =
  'phone,phones,child,born,tubeKind,firstPlaced,weightKg,weighedOn,language,latexAllergy,cannotWait,stemLengthCm';
export const wren =
  '+12125550150,+1 (212) 555-0151;+12125550152,Wren,2023-04-18,g,2024-02-06,13.4,2027-02-21,en,no,"feed, 9 pm",1.7';
export const ode = '+12125550150,,Ode,2025-01-02,gj,2025-03-04,"9,5",2027-02-21,en,yes,,';
export const ilan = '+12125550160,,Ilan,2019-07-14,g,,,,es,,,';

export interface Standing {
  readonly folder: string;
  /** Runs one call and returns what it printed; where it is refused, its message is the last line. */
  run(...words: string[]): Promise<string[]>;
  /** Writes a file of families and returns its path. */
  file(text: string): string;
  enrolled(): Promise<Awaited<ReturnType<typeof enrolledFamilies>>>;
  /** The audit, oldest first: what, and by whom. */
  audit(): Promise<string[]>;
  end(): void;
}

let template: Promise<string> | undefined;

/** Making a database takes seconds, copying its folder a fraction. */
async function makeTemplate(): Promise<string> {
  const folder = join(mkdtempSync(join(tmpdir(), 'families-')), 'line');
  const database = await openEmbedded(folder);
  await migrate(database, 'practice');
  await database.query('INSERT INTO clock (now_ms) VALUES ($1)', [nowMs]);
  await database.close();
  return folder;
}

export async function stand(): Promise<Standing> {
  const top = mkdtempSync(join(tmpdir(), 'families-'));
  const folder = join(top, 'line');
  const environment = { NIGHTJAR_DATA: folder, NIGHTJAR_SEEDS: 'seeds' };
  const log = createLog({ write: () => {} });
  const seal = createSeal(practiceKey);
  template ??= makeTemplate();
  cpSync(await template, folder, { recursive: true });
  const reading = async <T>(read: (database: Awaited<ReturnType<typeof openEmbedded>>) => Promise<T>): Promise<T> => {
    const open = await openEmbedded(folder);
    try {
      return await read(open);
    } finally {
      await open.close();
    }
  };
  return {
    folder,
    run: async (...words) => {
      const printed: string[] = [];
      await familiesCommand(words, environment, log, (text) => printed.push(...text.split('\n'))).catch(
        (error: unknown) => printed.push(error instanceof Error ? error.message : String(error)),
      );
      return printed;
    },
    file: (text) => {
      const path = join(top, 'families.csv');
      writeFileSync(path, text);
      return path;
    },
    enrolled: () => reading((open) => enrolledFamilies({ seal }, open)),
    audit: () =>
      reading(async (open) => {
        const rows = await open.query<{ what: string; by_whom: Buffer | null }>(
          'SELECT what, by_whom FROM audit ORDER BY id',
        );
        return rows.map((row) => `${row.what} by ${row.by_whom === null ? 'the line' : seal.open(row.by_whom)}`);
      }),
    end: () => rmSync(top, { recursive: true }),
  };
}
