/** One practice line that stands for a whole test file, put back to the same invented night before each test. */
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { type Answer, type Practice, practice, request } from './phone.ts';
import { type Backend, type Home, patienceMs, type Running, startProcess } from './process.ts';

/** A Saturday night: the clinic is closed. */
export const now = '2027-03-06T02:10:00-05:00';
/** The enrolled family's phone. */
export const phone = '+12125550171';
export const family = {
  child: 'Tam',
  born: '2024-05-01',
  tubeKind: 'g',
  firstPlaced: '2025-01-10',
  weightKg: 11.5,
  weighedOn: '2027-02-01',
  language: 'en',
};
export const tubeOut = 'the g tube fell out';

export interface Standing {
  readonly line: Practice;
  readonly url: () => string;
  readonly call: (method: string, path: string, body?: unknown) => Promise<Answer>;
  /** Ends the process and starts it again on the same data. */
  readonly restart: (signal: 'SIGKILL' | 'SIGTERM') => Promise<void>;
}

/** Registers the hooks of a `describe`: one process, reset to `now` with the family enrolled before each test. */
export function standing(backend: Backend): Standing {
  let home: Home | undefined;
  let running: Running | undefined;
  const url = () => {
    if (running === undefined) throw new Error('the practice line does not run');
    return running.url;
  };
  const line = practice(url);

  beforeAll(async () => {
    home = await backend.home();
    running = await startProcess(home);
  }, patienceMs);

  afterAll(async () => {
    await running?.end('SIGKILL');
    await home?.remove();
  });

  beforeEach(async () => {
    await line.reset(now);
    await line.enrol(phone, family);
  });

  afterEach(({ task }) => {
    if (task.result?.state === 'fail') process.stderr.write(running?.log() ?? '');
  });

  return {
    line,
    url,
    call: (method, path, body) => request(url(), method, path, body),
    async restart(signal) {
      if (home === undefined) throw new Error('the practice line has no home');
      await running?.end(signal);
      running = await startProcess(home);
    },
  };
}

/** The address of a phone's texts. */
export const textsOf = (number: string) => `/practice/phones/${encodeURIComponent(number)}/texts`;

/** The numbers of the nurses on call, in the order a page climbs. */
export async function nursesOf(line: Practice): Promise<readonly [string, string, string]> {
  const [first, second, third] = (await line.state()).nurses.map(({ number }) => number);
  if (first === undefined || second === undefined || third === undefined) throw new Error('three are on call');
  return [first, second, third];
}
