/** The databases every test of the store and the line runs on: the embedded one always, a server where one is given. */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import pg from 'pg';
import { z } from 'zod';
import type { Database } from '#src/store/database.ts';
import { openInMemory } from '#src/store/embedded.ts';
import { openServer } from '#src/store/server.ts';

export interface TestDatabase {
  readonly name: 'embedded' | 'server';
  /** A fresh, empty database, gone when it is closed. */
  open(): Promise<Database>;
}

/** `TEST_DATABASE_URL` names a server on which the tests may make databases. */
export function databases(): readonly TestDatabase[] {
  const url = process.env.TEST_DATABASE_URL;
  const embedded: TestDatabase = { name: 'embedded', open: openFromDump };
  return url === undefined ? [embedded] : [embedded, { name: 'server', open: () => openFresh(url) }];
}

/** The embedded library's own version, so that an upgrade makes its own dump. */
const packageFile = new URL('../package.json', import.meta.resolve('@electric-sql/pglite'));
const { version } = z.object({ version: z.string() }).parse(JSON.parse(readFileSync(packageFile, 'utf8')));

/** Making an empty database takes seconds, loading one a fraction: the first test that runs keeps a dump for all others. */
async function openFromDump(): Promise<Database> {
  const path = join(tmpdir(), `nightjar-empty-database-${version}.tar`);
  const kept = await readFile(path).catch(() => null);
  return openInMemory(new Blob([kept ?? (await makeDump(path))]));
}

async function makeDump(path: string): Promise<Uint8Array<ArrayBuffer>> {
  const lite = await PGlite.create('memory://');
  const dump = new Uint8Array(await (await lite.dumpDataDir('none')).arrayBuffer());
  await lite.close();
  const unfinished = `${path}.${randomUUID()}`;
  await writeFile(unfinished, dump);
  await rename(unfinished, path); // whole or not there: another worker may be reading
  return dump;
}

async function openFresh(url: string): Promise<Database> {
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  await onServer(url, `CREATE DATABASE ${name}`);
  const database = openServer(freshUrl(url, name), 10, () => undefined);
  return {
    ...database,
    close: async () => {
      await database.close();
      await onServer(url, `DROP DATABASE ${name} WITH (FORCE)`);
    },
  };
}

/** The URL of another database on the same server. */
export function freshUrl(url: string, name: string): string {
  const fresh = new URL(url);
  fresh.pathname = `/${name}`;
  return fresh.href;
}

async function onServer(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
