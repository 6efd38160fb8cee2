/** What each part of the bench stands on: empty databases on one server or embedded, each gone afterwards. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import type { Database } from '#src/store/database.ts';
import { openEmbedded } from '#src/store/embedded.ts';
import { migrate } from '#src/store/migrate.ts';
import { openServer } from '#src/store/server.ts';

/** As many as a line opens. */
export const connections = 8;

/** The PostgreSQL the bench runs on; null where there is none. */
export interface Ground {
  readonly serverUrl: string | null;
}

/** A part of the bench: measures and prints. */
export type Part = (ground: Ground) => Promise<void>;

let made = 0;

/** Runs `work` with the address of an empty database. */
export async function onServer<T>(serverUrl: string, work: (url: string) => Promise<T>): Promise<T> {
  made += 1;
  const name = `bench_${process.pid}_${made}`;
  const admin = new pg.Client(serverUrl);
  await admin.connect();
  await admin.query(`CREATE DATABASE ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  try {
    return await work(url.href);
  } finally {
    await admin.query(`DROP DATABASE ${name} WITH (FORCE)`);
    await admin.end();
  }
}

/** The same, migrated and open. */
export function onMigrated<T>(serverUrl: string, work: (database: Database) => Promise<T>): Promise<T> {
  return onServer(serverUrl, async (url) => {
    const database = openServer(url, connections, () => undefined); // what is in use as it breaks fails by itself
    try {
      await migrate(database, 'live');
      return await work(database);
    } finally {
      await database.close();
    }
  });
}

/** Runs `work` with a folder that is gone afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'nightjar-bench-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function onEmbedded<T>(work: (database: Database) => Promise<T>): Promise<T> {
  return inFolder(async (folder) => {
    const database = await openEmbedded(join(folder, 'data'));
    try {
      await migrate(database, 'live');
      return await work(database);
    } finally {
      await database.close();
    }
  });
}
