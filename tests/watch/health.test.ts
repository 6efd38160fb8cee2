/** The line's health, read from its rows, and what a machine that watches may ask over HTTP. */
import { afterEach, describe, expect, it } from 'vitest';
import { ailments, type Health, readHealth } from '#src/watch/health.ts';
import { createMetrics } from '#src/watch/watch.ts';
import { liveApp } from '#src/web/server.ts';
import { listen, type Socket } from '#src/web/socket.ts';
import { minuteMs, startMs } from '#tests/line/fakes.ts';
import { openWorld } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeLine } from '#tests/web/fakeLine.ts';
import { well } from './well.ts';

describe.each(databases())('on the $name database', ({ open }) => {
  it('an idle line is well; a case that waits is no ailment, a timer nobody fired is', async () => {
    const world = await openWorld(open);
    expect(await readHealth(world.database, startMs)).toEqual(well);
    await world.text('tube is out');
    const now = await world.line.now();
    const health = await readHealth(world.database, now);
    expect(health.openCases).toBe(1);
    expect(ailments(health)).toEqual([]);
    const late = await readHealth(world.database, now + 24 * 60 * minuteMs);
    expect(late.timerLateMs).toBeGreaterThan(0);
    expect(ailments(late)[0]).toMatch(/late by/);
    await world.close();
  });
});

describe('over HTTP', () => {
  let web: Socket;
  const open = async (health: () => Promise<Health>, metricsToken: string | null) => {
    const metrics = createMetrics();
    metrics.turnTaken(0.02);
    metrics.textUnread();
    const own = { lineNumber: '+12025550100', emergencyNumber: '911' };
    const carrier = { line: fakeLine(), publicUrl: 'https://line.example', tokens: ['t'], ...own };
    const common = { report: () => undefined, alive: async () => undefined };
    web = await listen(liveApp({ ...carrier, ...common, health, metrics, metricsToken }), '127.0.0.1', 0);
  };
  afterEach(() => web.close());

  it('is ready while it is well, and says what ails it when it is not', async () => {
    let now: Health = well;
    await open(async () => now, null);
    const ready = await fetch(`${web.url}/readyz`);
    expect([ready.status, await ready.json()]).toEqual([200, { ready: true, ailments: [], paused: null }]);
    now = { ...well, outboxWaitMs: 10 * minuteMs };
    const sick = await fetch(`${web.url}/readyz`);
    expect([sick.status, await sick.json()]).toEqual([
      503,
      { ready: false, ailments: ['texts wait to be sent, the oldest for 10 min'], paused: null },
    ]);
  });

  it('is ready while people have paused it, and says since when, not who', async () => {
    await open(async () => ({ ...well, pausedMs: startMs }), 'a token of sixteen');
    const answer = await fetch(`${web.url}/readyz`);
    const paused = { since: '2027-03-06T07:10:00.000Z' };
    expect([answer.status, await answer.json()]).toEqual([200, { ready: true, ailments: [], paused }]);
    const headers = { authorization: 'Bearer a token of sixteen' };
    expect(await (await fetch(`${web.url}/metrics`, { headers })).text()).toContain('nightjar_paused 1');
  });

  it('is not ready without its database', async () => {
    await open(() => Promise.reject(new Error('gone')), null);
    expect((await fetch(`${web.url}/readyz`)).status).toBe(503);
  });

  it('gives its metrics to whoever shows the token, and to nobody else', async () => {
    await open(async () => ({ ...well, openPages: 2, pageWaitMs: 90_000 }), 'a token of sixteen');
    const scrape = (authorization?: string) =>
      fetch(`${web.url}/metrics`, authorization === undefined ? {} : { headers: { authorization } });
    expect((await scrape()).status).toBe(404);
    expect((await scrape('Bearer another token now')).status).toBe(404);
    const text = await (await scrape('Bearer a token of sixteen')).text();
    expect(text).toContain('nightjar_turn_seconds_count 1');
    expect(text).toContain('nightjar_texts_unread_total 1');
    expect(text).toContain('nightjar_pages_open 2');
    expect(text).toContain('nightjar_page_wait_seconds 90');
  });

  it('has no metrics where no token is set', async () => {
    await open(async () => well, null);
    const answer = await fetch(`${web.url}/metrics`, { headers: { authorization: 'Bearer null' } });
    expect(answer.status).toBe(404);
  });
});
