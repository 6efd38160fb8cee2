/** Two practice lines on one PostgreSQL server: processes hold nothing, so it does not matter which of them hears a text. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { converse, goesWell, type Practice, practice } from './phone.ts';
import { backends, type Home, patienceMs, type Running, startProcess } from './process.ts';
import { family, now, phone, tubeOut } from './standing.ts';

const server = backends().find(({ name }) => name === 'server');

describe.skipIf(server === undefined)('two processes on one server', () => {
  let home: Home;
  let both: readonly [Running, Running];
  let one: Practice;
  let two: Practice;

  beforeAll(async () => {
    if (server === undefined) return;
    home = await server.home();
    both = await Promise.all([startProcess(home), startProcess(home)]);
    one = practice(() => both[0].url);
    two = practice(() => both[1].url);
  }, patienceMs);

  afterAll(async () => {
    await Promise.all((both ?? []).map((running) => running.end('SIGTERM')));
    await home?.remove();
  });

  beforeEach(async () => {
    await one.reset(now);
    await one.enrol(phone, family);
  });

  it('answer one id once, though both hear it at the same time', async () => {
    const lines = Array.from({ length: 10 }, (_, index) => (index % 2 === 0 ? one : two));
    const all = await Promise.all(lines.map((line) => line.text(phone, tubeOut, 'once')));
    expect(all.flat().length).toBe((await one.thread(phone)).filter(({ direction }) => direction === 'out').length);
    expect(all.filter((sent) => sent.length > 0)).toHaveLength(1);
    expect((await two.thread(phone)).filter(({ direction }) => direction === 'in')).toHaveLength(1);
  });

  it('go on with each other’s cases, by one clock', async () => {
    await one.text(phone, tubeOut);
    await converse(two, phone, { ...goesWell, ph: '6.5' }, ['recheck']);
    const { now: moved } = await one.clock({ advance: 'PT1H' });
    expect((await two.state()).now).toBe(moved);
    expect(await converse(two, phone, goesWell, ['use'])).toMatchObject({ disposition: 'use' });
  });

  it('answer many phones at once, each request with its own', async () => {
    const phones = Array.from({ length: 20 }, (_, index) => `+1212555${String(180 + index).padStart(4, '0')}`);
    const all = await Promise.all(phones.map((from, index) => (index % 2 === 0 ? one : two).text(from, tubeOut)));
    all.forEach((sent, index) => {
      expect(sent.length).toBeGreaterThan(0);
      expect(new Set(sent.map(({ to }) => to))).toEqual(new Set([phones[index]]));
    });
  });
});
