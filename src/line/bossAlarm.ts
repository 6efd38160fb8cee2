/** The live line's alarm: one job of the queue library for each due second, on the same database as the rows it wakes for. */
import { PgBoss } from 'pg-boss';
import type { Log } from '#src/log.ts';
import type { Database } from '#src/store/database.ts';
import type { Alarm } from './alarm.ts';

const queue = 'wake';
const dayS = 86_400;
/** Any number, the same in every process and no other lock's: who holds it starts the library. */
const startLock = 6_271_804;
/** How many armed seconds a process remembers; forgetting one costs a job that is there already. */
const rememberMost = 10_000;

export interface BossAlarmParts {
  readonly database: Database;
  readonly backend: 'postgres' | 'pglite';
  readonly log: Log;
  /** Epoch ms. */
  readonly wallMs: () => number;
}

/** An alarm over the line's own pool, which is the only door to an embedded database. Not for a practice clock. */
export function bossAlarm({ database, backend, log, wallMs }: BossAlarmParts): Alarm {
  const boss = new PgBoss({ db: { executeSql: (text, values) => execute(database, text, values) }, backend });
  const armed = new Set<number>();
  let ring = (): void => undefined;
  const failed = (error: unknown): void => log.error({ error }, 'the alarm failed; the sweep still comes each second');
  boss.on('error', failed);

  const send = async (second: number): Promise<void> => {
    await boss.send(queue, null, { id: jobId(second), startAfter: new Date(second * 1000), deleteAfterSeconds: 60 });
  };

  return {
    start: async (wake) => {
      ring = wake;
      await alone(database, backend, async () => {
        await boss.start();
        await boss.createQueue(queue, { retentionSeconds: 60 * dayS, retryLimit: 0 });
      });
      await boss.work(queue, { pollingIntervalSeconds: 1, batchSize: 100 }, async () => wake());
    },
    arm: (dueMs) => {
      if (dueMs <= wallMs()) return ring();
      const second = Math.ceil(dueMs / 1000);
      if (armed.has(second)) return;
      if (armed.size >= rememberMost) armed.clear();
      armed.add(second);
      send(second).catch(failed);
    },
    stop: () => boss.stop({ graceful: true, close: false }),
  };
}

/**
 * One process after the other: on a new database the library's own tables are made by whoever comes first, and it does not wait
 * for the others. An embedded database has one process, and one connection that must not wait for itself.
 */
async function alone(database: Database, backend: BossAlarmParts['backend'], work: () => Promise<void>): Promise<void> {
  if (backend === 'pglite') return work();
  await database.transaction(async (client) => {
    await client.query('SELECT pg_advisory_xact_lock($1)', [startLock]);
    await work();
  });
}

/** The same for one second in every process, so that a second arming is no second job. A UUID of version 8 (RFC 9562). */
function jobId(second: number): string {
  return `00000000-0000-8000-8000-${second.toString(16).padStart(12, '0')}`;
}

async function execute(database: Database, text: string, values?: unknown[]): Promise<{ rows: object[] }> {
  return { rows: await database.query(text, values) };
}
