/** Many processes of the line on one PostgreSQL, started and killed at random under load. Skipped where there is no server. */
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readdir } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Double, lineNumber, startDouble } from '#tests/carrier/double.ts';
import { backends, type Home, patienceMs } from '#tests/contract/process.ts';
import { Dice } from '#tests/dislodgement/attack/alphabet.ts';
import { postSigned, spawnLine } from './stand.ts';

const server = backends().find(({ name }) => name === 'server');
const processes = 4;
const phones = Array.from({ length: 12 }, (_, index) => `+1202555${1100 + index}`);
const said = ['the g tube fell out', 'no', 'can i talk to a nurse', 'what', 'she is fine'];

interface Running {
  readonly child: ChildProcess;
  readonly url: string;
}

describe.skipIf(server === undefined)('many processes on one server', () => {
  let home: Home;
  let double: Double;
  let client: pg.Client;
  const running = new Set<Running>();
  const dice = new Dice(20_270_306);

  async function start(): Promise<void> {
    const child = spawnLine({ CARRIER_URL: double.url, ...home.environment });
    const died = once(child, 'exit').then(() => Promise.reject(new Error('a process did not start')));
    const [message] = await Promise.race([once(child, 'message'), died]);
    died.catch(() => undefined);
    const one = { child, url: z.object({ url: z.string() }).parse(message).url };
    running.add(one);
    child.once('exit', () => running.delete(one));
  }

  async function end(signal: 'SIGKILL' | 'SIGTERM', one: Running): Promise<number | null> {
    running.delete(one);
    one.child.kill(signal);
    const [code] = await once(one.child, 'exit');
    return typeof code === 'number' ? code : null;
  }

  /** One text, to whichever process is there, until one has answered it. */
  async function text(from: string, body: string, id: string): Promise<void> {
    for (;;) {
      const one = running.size > 0 ? dice.pick([...running]) : null;
      const form = { MessageSid: id, From: from, To: lineNumber, Body: body };
      const answer = one && (await postSigned(one.url, '/carrier/text', form).catch(() => null));
      if (answer?.status === 200) return;
      await pause(50);
    }
  }

  const rows = async (sql: string) => (await client.query(sql)).rows;
  /** Nothing waits any more; a message in the hands of a dead process is looked up after ten seconds. */
  const settled = () =>
    expect
      .poll(() => rows("SELECT id, state FROM message WHERE state IN ('waiting', 'carrying', 'unknown')"), {
        timeout: 90_000,
        interval: 250,
      })
      .toEqual([]);

  beforeAll(async () => {
    if (server === undefined) return;
    home = await server.home();
    double = await startDouble();
    client = new pg.Client({ connectionString: home.environment.DATABASE_URL });
    await client.connect();
    await Promise.all(Array.from({ length: processes }, start));
  }, patienceMs);

  afterAll(async () => {
    await Promise.all([...running].map((one) => end('SIGKILL', one)));
    await client?.end();
    await double?.close();
    await home?.remove();
  });

  it('migrate it once though they start together', async () => {
    const files = await readdir(new URL('../../src/store/migrations/', import.meta.url));
    expect(await rows('SELECT number FROM migration ORDER BY number')).toEqual(
      files.map((_, index) => ({ number: index + 1 })),
    );
  });

  it(
    'lose nothing, send nothing twice and keep each phone’s order while they are killed and the schema grows',
    async () => {
      let texting = true;
      const killing = (async () => {
        for (let kills = 0; texting && kills < 6; kills += 1) {
          await pause(300);
          if (running.size > 1) await end('SIGKILL', dice.pick([...running]));
          await start();
        }
      })();
      const texts = phones.map(async (phone) => {
        for (const [place, body] of said.entries()) await text(phone, body, `${phone}-${place}`);
      });
      // What a newer release adds while this one still runs.
      for (const table of ['phone', 'message', '"case"', 'timer', 'page', 'event', 'family']) {
        await client.query(`ALTER TABLE ${table} ADD COLUMN later text`);
        await pause(100);
      }
      await Promise.all(texts);
      texting = false;
      await killing;
      await settled();
      const heard = await rows(
        `SELECT t.carrier_id, count(o.id)::int AS answers FROM message t LEFT JOIN message o
         ON o.direction = 'out' AND o.cause = t.cause AND o.phone_id = t.phone_id
       WHERE t.direction = 'in' GROUP BY t.carrier_id`,
      );
      expect(heard).toHaveLength(phones.length * said.length);
      expect(heard.filter(({ answers }) => answers === 0)).toEqual([]);
      const ids = double.made.map(({ form }) => Number(new URL(form.StatusCallback ?? '').searchParams.get('message')));
      const out = await rows(
        "SELECT id::int, urgent OR tries > 1 AS free FROM message WHERE direction = 'out' ORDER BY id",
      );
      expect(ids.toSorted((a, b) => a - b)).toEqual(out.map(({ id }) => id));
      const free = new Set(out.flatMap((row) => (row.free ? [row.id] : [])));
      for (const phone of phones) {
        const mine = ids.filter((id, place) => double.made[place]?.form.To === phone && !free.has(id));
        expect(mine).toEqual(mine.toSorted((a, b) => a - b));
      }
    },
    3 * patienceMs,
  );

  it(
    'fire each timer once, whoever comes first',
    async () => {
      const due = await rows("SELECT case_id, machine, id FROM timer WHERE machine = 'conversation'");
      const before = await rows("SELECT count(*)::int AS fired FROM event WHERE type LIKE 'xstate.after.%'");
      await client.query("UPDATE timer SET due_ms = 0 WHERE machine = 'conversation'");
      await expect
        .poll(() => rows('SELECT 1 FROM timer WHERE due_ms = 0'), { timeout: 30_000, interval: 100 })
        .toEqual([]);
      const after = await rows("SELECT count(*)::int AS fired FROM event WHERE type LIKE 'xstate.after.%'");
      expect(due.length).toBeGreaterThan(0);
      expect(after[0]?.fired - before[0]?.fired).toBe(due.length);
    },
    patienceMs,
  );

  it(
    'heal when every connection of theirs is cut',
    async () => {
      await client.query("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'nightjar'");
      await text(phones[0] ?? '', 'ok', 'after the cut');
      expect(await rows("SELECT 1 AS heard FROM message WHERE carrier_id = 'after the cut'")).toEqual([{ heard: 1 }]);
      expect(running.size).toBeGreaterThan(0);
      await settled(); // what was in hand as it was cut is looked up
    },
    patienceMs,
  );

  it(
    'end what they have begun on SIGTERM, and nothing stays in their hands',
    async () => {
      const texts = phones.map((phone) => text(phone, 'thanks', `${phone}-last`));
      const codes = await Promise.all([...running].slice(1).map((one) => end('SIGTERM', one)));
      await Promise.all(texts);
      expect(codes.length).toBeGreaterThan(0);
      expect(codes.filter((code) => code !== 0)).toEqual([]);
      const [last] = running;
      if (last !== undefined) expect(await end('SIGTERM', last)).toBe(0);
      expect(await rows("SELECT id FROM message WHERE state = 'carrying'")).toEqual([]);
      const heard = await rows("SELECT count(*)::int AS heard FROM message WHERE carrier_id LIKE '%-last'");
      expect(heard).toEqual([{ heard: phones.length }]);
    },
    patienceMs,
  );
});
