/** The address of a picture: shown by GET alone, kept by nobody, and it runs and loads nothing. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createMetrics } from '#src/watch/watch.ts';
import { liveApp } from '#src/web/server.ts';
import { listen, type Socket } from '#src/web/socket.ts';
import { well } from '#tests/watch/well.ts';
import { fakeLine } from './fakeLine.ts';

describe('a picture', () => {
  let web: Socket;
  beforeAll(async () => {
    const watching = { health: async () => well, metrics: createMetrics(), metricsToken: null };
    const carrier = {
      publicUrl: 'https://line.example',
      tokens: ['t'],
      emergencyNumber: '911',
      lineNumber: '+12025550100',
    };
    const common = { report: () => {}, alive: async () => {} };
    web = await listen(liveApp({ line: fakeLine(), ...carrier, ...common, ...watching }), '127.0.0.1', 0);
  });
  afterAll(() => web.close());

  it('is shown with headers that keep it from being kept, framed, run or guessed at', async () => {
    const answer = await fetch(`${web.url}/media/a.b.c`);
    expect(await answer.text()).toBe('picture');
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      'content-type': 'image/png',
      'cache-control': 'no-store',
      'content-disposition': 'inline; filename="picture"',
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'x-frame-options': 'DENY',
    });
  });

  it.each(['HEAD', 'POST', 'PUT', 'DELETE', 'OPTIONS'])('is not opened by %s', async (method) => {
    expect((await fetch(`${web.url}/media/a.b.c`, { method })).status).toBe(405);
  });

  it('that is unknown or over is not there', async () => {
    for (const token of ['x.y.z', 'a.b.c.d', '%00', '..%2f..', '']) {
      const answer = await fetch(`${web.url}/media/${token}`);
      expect(answer.status).toBe(404);
      expect(await answer.text()).not.toContain('picture');
    }
  });
});
