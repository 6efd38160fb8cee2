/** The embedded database: PostgreSQL inside this process, kept in a folder that one process at a time may open. */
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { PGlite, type PGliteOptions } from '@electric-sql/pglite';
import { createPgConfig } from '@electric-sql/pglite/node-postgres';
import pg from 'pg';
import { type Database, overPool, types } from './database.ts';
import { lockFolder } from './folderLock.ts';

/** Opens (or makes) the database in `folder`. Throws `FolderInUse` while another process has it. */
export async function openEmbedded(folder: string): Promise<Database> {
  await mkdir(dirname(folder), { recursive: true });
  const lock = await lockFolder(folder);
  try {
    return await openLite({ dataDir: folder }, folder, lock.release);
  } catch (error) {
    await lock.release();
    throw error;
  }
}

/** A database in memory, gone when it is closed; empty, or as the library's dump of a data folder has it. */
export function openInMemory(dump?: Blob): Promise<Database> {
  return openLite({ dataDir: 'memory://', ...(dump && { loadDataDir: dump }) }, 'memory', async () => undefined);
}

async function openLite(options: PGliteOptions, where: string, release: () => Promise<void>): Promise<Database> {
  const lite = await PGlite.create(options);
  // One session: everything must go through this pool, or statements land inside somebody else's open transaction.
  const pool = new pg.Pool({ ...poolOver(lite), max: 1, idleTimeoutMillis: 0, types });
  return overPool(pool, where, async () => {
    await lite.close();
    await release();
  });
}

/** The library's own configuration type is not `pg`'s, though it is what `pg` takes; this copies the fields across. */
function poolOver(lite: PGlite): pg.PoolConfig {
  const config = createPgConfig(lite);
  return Object.assign<pg.PoolConfig, typeof config>({}, config);
}
