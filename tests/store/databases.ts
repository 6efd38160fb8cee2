/** The databases every test of the store and the line runs on: the embedded one always, a server where one is given. */
import { randomUUID } from 'node:crypto';
import pg from 'pg';
import type { Database } from '#src/store/database.ts';
import { openInMemory } from '#src/store/embedded.ts';
import { openServer } from '#src/store/server.ts';
import { emptyDump } from './empty.ts';

export interface TestDatabase {
  readonly name: 'embedded' | 'server';
  /** A fresh, empty database, gone when it is closed. */
  open(): Promise<Database>;
}

/** `TEST_DATABASE_URL` names a server on which the tests may make databases. */
export function databases(): readonly TestDatabase[] {
  const url = process.env.TEST_DATABASE_URL;
  const embedded: TestDatabase = { name: 'embedded', open: openEmptied };
  return url === undefined ? [embedded] : [embedded, { name: 'server', open: () => openFresh(url) }];
}

/** Embedded databases of this worker that nobody uses. */
const spare: Database[] = [];

/** Opening one takes half a second, emptying one a twentieth: what a test is done with, the next one gets, emptied. */
export async function openEmptied(): Promise<Database> {
  const lite = spare.pop() ?? (await openInMemory(await emptyDump()));
  let closed = false;
  const unlessClosed = () => {
    if (closed) throw new Error('this database is closed; another test may have it');
    return lite;
  };
  return {
    where: lite.where,
    query: async (text, values) => unlessClosed().query(text, values),
    transaction: async (work) => unlessClosed().transaction(work),
    close: async () => {
      unlessClosed();
      closed = true;
      await lite.query(emptying);
      spare.push(lite);
    },
  };
}

/** Lets a process end that ran on embedded databases; a worker of the tests is ended from outside. */
export async function closeSpare(): Promise<void> {
  await Promise.all(spare.splice(0).map((lite) => lite.close()));
}

/** Of everything a test may have made in a database. */
const emptying = `DO $$
DECLARE made record;
BEGIN
  FOR made IN SELECT nspname FROM pg_namespace WHERE nspname !~ '^(pg_|information_schema$)' LOOP
    EXECUTE format('DROP SCHEMA %I CASCADE', made.nspname);
  END LOOP;
END $$;
CREATE SCHEMA public`;

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
