/** A practice line's database with nobody enrolled, and the families' calls run on it. All families are invented. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { familiesCall } from '#src/families/command.ts';
import { enrolledFamilies } from '#src/line/families.ts';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { openEmptied } from '#tests/store/databases.ts';

export const nowMs = Date.parse('2027-03-06T02:10:00-05:00');

export const head =
  'phone,phones,child,born,tubeKind,firstPlaced,weightKg,weighedOn,language,latexAllergy,cannotWait,stemLengthCm';
export const wren =
  '+12125550150,+1 (212) 555-0151;+12125550152,Wren,2023-04-18,g,2024-02-06,13.4,2027-02-21,en,no,"feed, 9 pm",1.7';
export const ode = '+12125550150,,Ode,2025-01-02,gj,2025-03-04,"9,5",2027-02-21,en,yes,,';
export const ilan = '+12125550160,,Ilan,2019-07-14,g,,,,es,,,';

export interface Standing {
  readonly database: Database;
  /** Runs one call and returns what it printed; where it is refused, its message is the last line. */
  run(...words: string[]): Promise<string[]>;
  /** Writes a file of families and returns its path. */
  file(text: string): string;
  enrolled(): Promise<Awaited<ReturnType<typeof enrolledFamilies>>>;
  /** The audit, oldest first: what, and by whom. */
  audit(): Promise<string[]>;
  end(): Promise<void>;
}

export async function stand(): Promise<Standing> {
  const top = mkdtempSync(join(tmpdir(), 'families-'));
  const seal = createSeal(practiceKey);
  const database = await openEmptied();
  await migrate(database, 'practice');
  await database.query('INSERT INTO clock (now_ms) VALUES ($1)', [nowMs]);
  return {
    database,
    run: async (...words) => {
      const printed: string[] = [];
      try {
        const call = familiesCall(words, { NIGHTJAR_SEEDS: 'seeds' }, (text) => printed.push(...text.split('\n')));
        await call(database, seal, 'practice');
      } catch (error) {
        printed.push(error instanceof Error ? error.message : String(error));
      }
      return printed;
    },
    file: (text) => {
      const path = join(top, 'families.csv');
      writeFileSync(path, text);
      return path;
    },
    enrolled: () => enrolledFamilies({ seal }, database),
    audit: async () => {
      const rows = await database.query<{ what: string; by_whom: Buffer | null }>(
        'SELECT what, by_whom FROM audit ORDER BY id',
      );
      return rows.map((row) => `${row.what} by ${row.by_whom === null ? 'the line' : seal.open(row.by_whom)}`);
    },
    end: async () => {
      rmSync(top, { recursive: true });
      await database.close();
    },
  };
}
