/** The practice line as a process: how it starts, says that it answers, stops, and refuses to start. */

import express from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { listen } from '#src/web/socket.ts';
import { request } from './phone.ts';
import { backends, embeddedHome, type Home, patienceMs, runMain, startProcess } from './process.ts';

const stateShape = z.object({
  now: z.iso.datetime({ offset: true }),
  zone: z.literal('America/New_York'),
  families: z.array(z.object({ number: z.string(), child: z.string().nullable() })).min(1),
  nurses: z.array(z.object({ name: z.string(), number: z.string() })).length(3),
  protocol: z.literal('unsigned'),
});

describe.each(backends())('on the $name database', ({ bareHome }) => {
  let home: Home;

  beforeAll(async () => {
    home = await bareHome();
  });

  afterAll(() => home.remove());

  it(
    'on a bare place, prints one line with its URL once it answers, at real time, with the world of the seeds',
    async () => {
      const before = Date.now();
      const running = await startProcess(home);
      expect(await request(running.url, 'GET', '/healthz')).toEqual({ status: 200, body: { ok: true } });
      expect(running.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
      expect(running.lines).toHaveLength(1);
      const state = stateShape.parse((await request(running.url, 'GET', '/practice/state')).body);
      expect(Date.parse(state.now)).toBeGreaterThanOrEqual(before);
      expect(Date.parse(state.now)).toBeLessThanOrEqual(Date.now());
      await running.end('SIGTERM');
    },
    patienceMs,
  );

  it(
    'serves the page and the state map',
    async () => {
      const running = await startProcess(home);
      const page = await fetch(running.url);
      expect(page.headers.get('content-type')).toMatch(/^text\/html/);
      expect(await page.text()).toContain('Nightjar');
      const map = await request(running.url, 'GET', '/practice/map');
      expect(map.body).toMatchObject({
        machines: expect.arrayContaining([expect.objectContaining({ name: 'paging' })]),
      });
      await running.end('SIGTERM');
    },
    patienceMs,
  );

  it.each(['SIGTERM', 'SIGINT'] as const)(
    'stops cleanly on %s, also while a page listens',
    async (signal) => {
      const running = await startProcess(home);
      const events = await fetch(`${running.url}/practice/events`);
      expect(await running.end(signal)).toEqual({ code: 0, signal: null });
      await events.text();
    },
    patienceMs,
  );

  it(
    'refuses a port that is taken, and lets go of its database',
    async () => {
      const taken = await listen(express(), '127.0.0.1', 0);
      const port = new URL(taken.url).port;
      const { code, noise } = await runMain(['practice'], { ...home.environment, PORT: port });
      await taken.close();
      expect([code, noise]).toEqual([1, expect.stringContaining(`127.0.0.1:${port}`)]);
      const running = await startProcess(home);
      expect(await running.end('SIGTERM')).toEqual({ code: 0, signal: null });
    },
    patienceMs,
  );
});

describe('the command line', () => {
  it.each([[[]], [['serve']], [['toString']]])('refuses %j and says what there is', async (args) => {
    const { code, noise } = await runMain(args, {});
    expect(code).toBe(1);
    expect(noise).toContain('practice|live|demo');
  });

  it('refuses a live line that lacks something, naming all of it', async () => {
    const { code, noise } = await runMain(['live'], {});
    expect(code).toBe(1);
    for (const variable of ['DATABASE_URL', 'NIGHTJAR_KEY', 'TWILIO_AUTH_TOKEN', 'PUBLIC_URL', 'NIGHTJAR_ROTA']) {
      expect(noise).toContain(`${variable}: is missing`);
    }
  });

  it('refuses seeds that are not there, naming the file', async () => {
    const { code, noise } = await runMain(['practice'], { NIGHTJAR_SEEDS: 'nowhere', PORT: '0' });
    expect([code, noise]).toEqual([1, expect.stringContaining('protocol.yaml')]);
  });
});

describe('the embedded database', () => {
  it(
    'refuses a second process on its folder',
    async () => {
      const home = await embeddedHome();
      const running = await startProcess(home);
      const { code, noise } = await runMain(['practice'], { ...home.environment, PORT: '0' });
      await running.end('SIGTERM');
      await home.remove();
      expect([code, noise]).toEqual([1, expect.stringContaining('in use')]);
    },
    patienceMs,
  );
});
