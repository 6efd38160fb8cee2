/** Opens the database a line has already filled, to read it: the one the environment names, or a folder given by name. */
import { existsSync } from 'node:fs';
import { z } from 'zod';
import { practiceConfig, sealKeys } from '#src/config.ts';
import { NoLineDatabase } from '#src/errors.ts';
import type { Log } from '#src/log.ts';
import type { Database } from './database.ts';
import { openEmbedded } from './embedded.ts';
import type { LineKind } from './migrate.ts';
import { createSeal, practiceKey, type Seal } from './seal.ts';
import { openServer } from './server.ts';

export interface Source {
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Goes before the environment's database. */
  readonly folder: string | undefined;
  readonly log: Log;
}

/** Hands the open database and its seal to `work`. Throws `NoLineDatabase` where no line ever was, `FolderInUse` while one runs. */
export async function withExisting<T>(
  source: Source,
  work: (database: Database, seal: Seal, kind: LineKind) => Promise<T>,
): Promise<T> {
  const database = await openExisting(source);
  try {
    const kind = await kindOf(database);
    return await work(
      database,
      createSeal(...(kind === 'live' ? sealKeys(source.environment) : ([practiceKey] as const))),
      kind,
    );
  } finally {
    await database.close();
  }
}

async function openExisting({ environment, folder: named, log }: Source): Promise<Database> {
  const config = practiceConfig(environment);
  if (named === undefined && config.databaseUrl !== null) {
    return openServer(config.databaseUrl, 1, (error) => log.warn({ error }, 'a database connection broke'));
  }
  const folder = named ?? config.dataFolder;
  if (!existsSync(folder)) throw new NoLineDatabase(folder);
  return openEmbedded(folder);
}

/** Which kind of line a database belongs to. */
async function kindOf(database: Database): Promise<LineKind> {
  const [there] = await database.query<{ there: boolean }>("SELECT to_regclass('line') IS NOT NULL AS there");
  if (there?.there !== true) throw new NoLineDatabase(database.where);
  const [row] = await database.query<{ kind: string }>('SELECT kind FROM line');
  return z.enum(['practice', 'live']).parse(row?.kind);
}

/** What time it is for the line, epoch ms: a practice line's own clock, else real time. */
export async function nowOf(database: Database): Promise<number> {
  const [row] = await database.query<{ now_ms: number }>('SELECT now_ms FROM clock');
  return row?.now_ms ?? Date.now();
}
