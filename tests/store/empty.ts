/** An empty embedded database, made once on a machine for all tests: making one takes seconds, loading or copying it a fraction. */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { access, cp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { z } from 'zod';

/** The embedded library's own version, so that an upgrade makes its own. */
const packageFile = new URL('../package.json', import.meta.resolve('@electric-sql/pglite'));
const { version } = z.object({ version: z.string() }).parse(JSON.parse(readFileSync(packageFile, 'utf8')));
const kept = join(tmpdir(), `nightjar-empty-database-${version}`);

/** As the library dumps it, for one in memory. */
export async function emptyDump(): Promise<Blob> {
  const path = await keptAt(`${kept}.tar`, async (unfinished) => {
    const lite = await PGlite.create('memory://');
    await writeFile(unfinished, new Uint8Array(await (await lite.dumpDataDir('none')).arrayBuffer()));
    await lite.close();
  });
  return new Blob([await readFile(path)]);
}

/** Copies one to `folder`, which is empty or not there yet, for a line to open. */
export async function copyEmpty(folder: string): Promise<void> {
  const path = await keptAt(kept, async (unfinished) => (await PGlite.create(unfinished)).close());
  await cp(path, folder, { recursive: true });
}

/** Whole or not there, whoever else makes it at the same time. */
async function keptAt(path: string, make: (unfinished: string) => Promise<void>): Promise<string> {
  if (await isThere(path)) return path;
  const unfinished = `${path}.${randomUUID()}`;
  await make(unfinished);
  await rename(unfinished, path).catch(async (error) => {
    if (!(await isThere(path))) throw error; // another worker was first
    await rm(unfinished, { recursive: true });
  });
  return path;
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
