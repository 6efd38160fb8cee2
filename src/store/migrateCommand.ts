/** The command that brings a live line's database to this release as its owner, so that the line itself needs no right to. */
import { serverUrl } from '#src/config.ts';
import { bossAlarm } from '#src/line/bossAlarm.ts';
import type { Log } from '#src/log.ts';
import type { Database } from './database.ts';
import { migrate } from './migrate.ts';
import { openServer } from './server.ts';

type Environment = Readonly<Record<string, string | undefined>>;

/** Throws `ConfigRefused`, and what refuses the database. */
export async function migrateCommand(environment: Environment, log: Log, print: (text: string) => void): Promise<void> {
  const database = openServer(serverUrl(environment), 2, (error) => log.warn({ error }, 'a connection broke'));
  try {
    await migrateAsOwner(database, log);
    print(`${database.where} is at this release. Now its rights: psql --file deploy/rights.sql`);
  } finally {
    await database.close();
  }
}

/** Our own tables, and those of the queue library, which makes them when it is started. */
export async function migrateAsOwner(database: Database, log: Log): Promise<void> {
  await migrate(database, 'live');
  const alarm = bossAlarm({ database, backend: 'postgres', log, wallMs: Date.now });
  await alarm.start(() => undefined);
  await alarm.stop();
}
