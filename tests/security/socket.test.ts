/** Slow and huge requests, sent as bytes: each is refused and its connection closed, and others are answered meanwhile. */
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createMetrics } from '#src/watch/watch.ts';
import { liveApp } from '#src/web/server.ts';
import { type Limits, listen, type Socket } from '#src/web/socket.ts';
import { well } from '#tests/watch/well.ts';
import { fakeLine } from '#tests/web/fakeLine.ts';

/** Short, so that the test need not wait. */
const limits: Limits = { headersMs: 200, requestMs: 400, lookMs: 50, headerBytes: 4096 };
const line = fakeLine();
let web: Socket;

beforeAll(async () => {
  const watched = { health: async () => well, metrics: createMetrics(), metricsToken: null };
  const carrier = {
    line,
    publicUrl: 'https://line.example',
    tokens: ['t'],
    emergencyNumber: '911',
    lineNumber: '+12025550100',
  };
  const app = liveApp({ ...carrier, ...watched, report: () => undefined, alive: async () => undefined });
  web = await listen(app, '127.0.0.1', 0, limits);
});
afterAll(() => web.close());

/** All the server says until it closes the connection; `bytes` is all we ever send. */
function said(bytes: string): Promise<string> {
  const { hostname, port } = new URL(web.url);
  return new Promise((resolve) => {
    let heard = '';
    const socket = connect(Number(port), hostname, () => socket.write(bytes));
    socket.on('data', (chunk) => {
      heard += String(chunk);
    });
    socket.on('error', () => undefined);
    socket.on('close', () => resolve(heard));
  });
}

const post = 'POST /carrier/text HTTP/1.1\r\nHost: x\r\nContent-Type: application/x-www-form-urlencoded\r\n';

describe('a connection', () => {
  it('whose headers never end is closed with 408 (RFC 9110 15.5.9)', async () => {
    expect(await said('GET /healthz HTTP/1.1\r\nHost: x\r\nX-Slow: ')).toMatch(/^HTTP\/1\.1 408 /);
  });

  it('whose body never comes is closed with 408', async () => {
    expect(await said(`${post}Content-Length: 100\r\n\r\nBody=a`)).toMatch(/^HTTP\/1\.1 408 /);
  });

  it('with headers that are too large is closed with 431 (RFC 6585 5)', async () => {
    expect(await said(`GET / HTTP/1.1\r\nHost: x\r\nX: ${'a'.repeat(5000)}\r\n\r\n`)).toMatch(/^HTTP\/1\.1 431 /);
  });

  it('that announces a body of a gigabyte is refused before it comes', async () => {
    expect(await said(`${post}Connection: close\r\nContent-Length: 1073741824\r\n\r\nBody=a`)).toMatch(
      /^HTTP\/1\.1 413 /,
    );
  });

  it('that speaks no HTTP is closed', async () => {
    expect(await said('\u0016\u0003\u0001 hello\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /);
  });

  it('that hangs keeps nobody else waiting, and nothing was heard of any of them', async () => {
    const hanging = Array.from({ length: 50 }, () => said(`${post}Content-Length: 100\r\n\r\n`));
    expect((await fetch(`${web.url}/healthz`)).status).toBe(200);
    expect((await Promise.all(hanging)).every((answer) => answer.startsWith('HTTP/1.1 408 '))).toBe(true);
    expect(line.heard).toEqual([]);
  });
});

describe('every answer of a live line', () => {
  it.each(['/', '/healthz', '/nowhere', '/carrier/text'])('at %s has the strict headers', async (path) => {
    const { headers } = await fetch(web.url + path);
    // As the OWASP Secure Headers Project recommends them (from memory).
    expect(Object.fromEntries(headers)).toMatchObject({
      'content-security-policy': expect.stringContaining("default-src 'self'"),
      'permissions-policy': expect.stringContaining('camera=()'),
      'referrer-policy': 'no-referrer',
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      ...(path === '/healthz' ? {} : { 'cache-control': 'no-store', 'strict-transport-security': 'max-age=31536000' }),
    });
    expect(headers.get('x-powered-by')).toBeNull();
  });
});
