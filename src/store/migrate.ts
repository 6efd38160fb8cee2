/** Migrations: numbered SQL files, each run once, in order, also when many processes start at once. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { DatabaseNewer, MigrationChanged, WrongDatabase } from '#src/errors.ts';
import type { Database, Queryable } from './database.ts';
import { MigrationForbidden } from './errors.ts';

export type LineKind = 'practice' | 'live';

interface Migration {
  readonly number: number;
  readonly file: string;
  readonly text: string;
  readonly hash: string;
}

const folder = new URL('./migrations/', import.meta.url);

/** Any number, the same in every process: who holds it migrates. */
const migrationLock = 6_271_803;

/**
 * Brings the database to this release and marks a new one as `kind`.
 * Throws `WrongDatabase` for the other kind, `DatabaseNewer` and `MigrationChanged` rather than guess,
 * and `MigrationForbidden` where the role may not.
 */
export async function migrate(database: Database, kind: LineKind): Promise<void> {
  try {
    await migrateOnce(database, kind);
  } catch (error) {
    const forbidden = error instanceof Error && 'code' in error && error.code === insufficientPrivilege;
    throw forbidden ? new MigrationForbidden(database.where) : error;
  }
}

/** A role that owns nothing may start a line where nothing is to be done. Source of the code: PostgreSQL, appendix A. */
const insufficientPrivilege = '42501';

async function migrateOnce(database: Database, kind: LineKind): Promise<void> {
  await database.transaction(async (client) => {
    await client.query('SELECT pg_advisory_xact_lock($1)', [migrationLock]);
    await markKind(client, database.where, kind);
    const done = await doneMigrations(client);
    const known = readMigrations();
    const last = Math.max(0, ...done.keys());
    if (last > known.length) throw new DatabaseNewer(database.where, last, known.length);
    for (const migration of known) await runOnce(client, migration, done.get(migration.number));
  });
}

async function markKind(client: Queryable, where: string, kind: LineKind): Promise<void> {
  if (!(await isThere(client, 'line'))) {
    await client.query(
      "CREATE TABLE line (single boolean PRIMARY KEY DEFAULT true CHECK (single), kind text NOT NULL CHECK (kind IN ('practice', 'live')))",
    );
    await client.query('INSERT INTO line (kind) VALUES ($1)', [kind]);
  }
  const [found] = await client.query<{ kind: string }>('SELECT kind FROM line');
  if (found?.kind !== kind) throw new WrongDatabase(where, found?.kind ?? 'nameless', kind);
}

async function doneMigrations(client: Queryable): Promise<ReadonlyMap<number, string>> {
  if (!(await isThere(client, 'migration')))
    await client.query('CREATE TABLE migration (number integer PRIMARY KEY, hash text NOT NULL)');
  const rows = await client.query<{ number: number; hash: string }>('SELECT number, hash FROM migration');
  return new Map(rows.map((row) => [row.number, row.hash]));
}

/** Looked at first: even "create if it is not there" needs the right to create. */
async function isThere(client: Queryable, table: string): Promise<boolean> {
  const [row] = await client.query<{ there: boolean }>('SELECT to_regclass($1) IS NOT NULL AS there', [table]);
  return row?.there === true;
}

async function runOnce(client: Queryable, migration: Migration, doneHash: string | undefined): Promise<void> {
  if (doneHash === migration.hash) return;
  if (doneHash !== undefined) throw new MigrationChanged(migration.file);
  await client.query(migration.text);
  await client.query('INSERT INTO migration (number, hash) VALUES ($1, $2)', [migration.number, migration.hash]);
}

function readMigrations(): readonly Migration[] {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.sql'))
    .sort();
  return files.map((file, index) => {
    const text = readFileSync(new URL(file, folder), 'utf8');
    return { number: index + 1, file, text, hash: createHash('sha256').update(text).digest('hex') };
  });
}
