/** A live line: real time, woken by the alarm or by its own sweep, and the queue library beside our transactions. */
import { PgBoss } from 'pg-boss';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Fate } from '#src/carrier/port.ts';
import type { Clock } from '#src/clock.ts';
import type { Alarm } from '#src/line/alarm.ts';
import { bossAlarm } from '#src/line/bossAlarm.ts';
import { createLine } from '#src/line/createLine.ts';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, fakeLog, fakeParts, minuteMs, parent, startMs } from './fakes.ts';

const patience = { timeout: 120_000, interval: 50 };

describe.each(databases())('on the $name database', ({ name, open }) => {
  let database: Database;
  const backend = name === 'embedded' ? 'pglite' : 'postgres';

  beforeEach(async () => {
    database = await open();
    await migrate(database, 'live');
  });
  afterEach(async () => database.close());

  it('answers, carries and comes back by itself, by the sweep when no alarm rings', async () => {
    let nowMs = startMs;
    const clock: Clock = { now: async () => nowMs };
    const carrier = fakeCarrier();
    const armed: number[] = [];
    const alarm: Alarm = {
      start: async () => undefined,
      arm: (dueMs) => void armed.push(dueMs),
      stop: async () => undefined,
    };
    const line = createLine(fakeParts(database, { kind: 'live', clock, carrier, alarm }));
    await line.start();
    await line.hear({ from: parent, body: 'tube', id: 'one', cause: 'one' });
    await expect.poll(() => carrier.sent.map((message) => message.body), patience).toEqual(['askUnwell']);
    expect(armed).toEqual([startMs + 5 * minuteMs]);
    nowMs += 5 * minuteMs;
    await expect
      .poll(() => carrier.sent.map((message) => message.body), patience)
      .toEqual(['askUnwell', 'askHowIn', 'news']);
    await expect(line.advance(nowMs, 'x')).rejects.toMatchObject({ code: 'practice-only' });
    await expect(line.reset(nowMs, { families: [] })).rejects.toMatchObject({ code: 'practice-only' });
    await line.stop();
    await expect(line.hear({ from: parent, body: 'tube', id: 'two', cause: 'two' })).rejects.toMatchObject({
      code: 'line-stopping',
    });
  });

  it('fires timers while a carrier is silent', async () => {
    let nowMs = startMs;
    const carrier = fakeCarrier();
    let answer: (fate: Fate) => void = () => undefined;
    carrier.next.push(new Promise((resolve) => (answer = resolve)));
    const line = createLine(fakeParts(database, { kind: 'live', clock: { now: async () => nowMs }, carrier }));
    await line.start();
    await line.hear({ from: parent, body: 'tube', id: 'one', cause: 'one' });
    nowMs += 5 * minuteMs;
    const steps = async () => (await line.newestCase(parent))?.states.conversation;
    await expect.poll(steps, patience).toEqual(['told', 'xstate.after.quiet']);
    await expect.poll(() => carrier.sent.map((message) => message.body), patience).toEqual(['askUnwell', 'news']);
    answer({ fate: 'accepted', carrierId: null });
    await expect.poll(() => carrier.sent.map((message) => message.body), patience).toContain('askHowIn');
    await line.stop();
  });

  it('is woken by one job for each due second, however many arm it', async () => {
    const rings: number[] = [];
    const log = fakeLog();
    const alarms = [0, 1].map(() => bossAlarm({ database, backend, log, wallMs: Date.now }));
    for (const alarm of alarms) await alarm.start(() => void rings.push(Date.now()));
    const dueMs = Date.now() + 1500;
    for (const alarm of alarms) for (const ms of [0, 1, 2]) alarm.arm(dueMs + ms);
    alarms[0]?.arm(dueMs + 60 * minuteMs);
    await expect.poll(() => rings.length, patience).toBe(1);
    const jobs = await database.query<{ state: string }>(
      "SELECT state::text FROM pgboss.job WHERE name = 'wake' ORDER BY start_after",
    );
    expect(jobs).toHaveLength(2);
    expect(jobs[1]).toEqual({ state: 'created' });
    alarms[0]?.arm(Date.now() - 1);
    expect(rings).toHaveLength(2);
    for (const alarm of alarms) await alarm.stop();
    expect(log.lines).toEqual([]);
  });

  it('keeps the queue library out of an open transaction, and its work through a rollback', async () => {
    const boss = new PgBoss({
      backend,
      db: { executeSql: async (text, values) => ({ rows: await database.query(text, values) }) },
    });
    await boss.start();
    await boss.createQueue('beside');
    await database.query('CREATE TABLE kept (value int)');
    const sends: Promise<unknown>[] = [];
    const turn = database.transaction(async (client) => {
      await client.query('INSERT INTO kept VALUES (1)');
      sends.push(boss.send('beside', {}));
      await client.query('SELECT pg_sleep(0.2)');
      throw new Error('rolled back');
    });
    await expect(turn).rejects.toThrow('rolled back');
    await Promise.all(sends);
    expect(await database.query('SELECT value FROM kept')).toEqual([]);
    expect(await database.query("SELECT count(*) AS jobs FROM pgboss.job WHERE name = 'beside'")).toEqual([
      { jobs: 1 },
    ]);
    await boss.stop({ graceful: false, close: false });
  });
});
