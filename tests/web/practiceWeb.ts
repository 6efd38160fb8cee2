/** The practice interface before a line that only echoes, on a free port for each test. */
import { afterEach, beforeEach, expect } from 'vitest';
import { practiceApp } from '#src/web/server.ts';
import { listen, type Socket } from '#src/web/socket.ts';
import { createTicker, type Ticker } from '#src/web/ticker.ts';
import { type FakeLine, fakeLine } from './fakeLine.ts';

export const phone = '+12025550123';
export const texts = `/practice/phones/${encodeURIComponent(phone)}/texts`;

export interface PracticeWeb {
  /** The line of the running test. */
  line(): FakeLine;
  url(): string;
  /** What the interface reported as faults of its own. */
  faults(): readonly unknown[];
  /** From now on the database does not answer. */
  breakDatabase(): void;
  call(
    method: string,
    path: string,
    body?: unknown,
    headers?: Record<string, string>,
  ): Promise<{ readonly status: number; readonly headers: Headers; readonly body: unknown }>;
}

/** Registers the hooks; every test gets a line of its own. */
export function practiceWeb(): PracticeWeb {
  let line: FakeLine;
  let ticker: Ticker;
  let faults: unknown[];
  let broken: boolean;
  let web: Socket;

  beforeEach(async () => {
    line = fakeLine();
    ticker = createTicker();
    faults = [];
    broken = false;
    const app = practiceApp({
      line,
      seeds: { families: [] },
      nurses: [{ name: 'Ada', number: '+12025550101' }],
      zone: 'America/New_York',
      emergencyNumber: '911',
      protocol: 'unsigned',
      stateMap: () => ({ machines: [] }),
      ticker,
      alive: async () => {
        if (broken) throw new Error('no database');
      },
      report: (fault) => faults.push(fault),
    });
    web = await listen(app, '127.0.0.1', 0);
  });

  afterEach(async () => {
    ticker.end();
    await web.close();
  });

  return {
    line: () => line,
    url: () => web.url,
    faults: () => faults,
    breakDatabase() {
      broken = true;
    },
    async call(method, path, body, headers = {}) {
      const sending = body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) };
      const json = body === undefined ? {} : { 'Content-Type': 'application/json' };
      const response = await fetch(web.url + path, { method, ...sending, headers: { ...json, ...headers } });
      return { status: response.status, headers: response.headers, body: await response.json() };
    },
  };
}

/** The body of a refusal. */
export const refused = (code: string) => ({ error: { code, message: expect.any(String) } });
