/** A line's process with the carrier's double beside it, which outlives it: what the carrier saw stays seen over every kill. */
import { type ChildProcess, spawn } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import twilio from 'twilio';
import { z } from 'zod';
import { accountSid, authToken, type Double, lineNumber, startDouble } from '#tests/carrier/double.ts';
import type { Home } from '#tests/contract/process.ts';
import { type Grave, type Order, publicUrl, type Report } from './orders.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const node = join(root, 'node_modules/.bin/node');
const compiled = join(tmpdir(), 'nightjar-contract-compiled');

/** Longer than an unknown fate holds what comes after it. */
const pastHoldMs = 11_000;
const patienceMs = 30_000;
const goneMs = 1_000;
/** The smallest picture there is. */
const onePixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

export type { Grave };

/** The process is gone; whoever waited for it asks again once it is back. */
export class Gone extends Error {}

const answerShape = z.looseObject({
  id: z.number().optional(),
  url: z.string().optional(),
  fault: z.string().optional(),
});

export class Stand {
  readonly #home: Home;
  readonly #waiting = new Map<number, { resolve: (report: Report) => void; reject: (why: Error) => void }>();
  #double: Double | null = null;
  #child: ChildProcess | null = null;
  #url = '';
  #asked = 0;
  #told = 0;
  #noise = '';
  #nowMs: number;
  #wallMs: number;
  /** How often the process was started again after a kill. */
  deaths = 0;
  /** While true, every step of a machine throws. */
  #failing = false;
  /** Where to die still, in this order; the first is the place of the process that runs. */
  #graves: Grave[] = [];

  constructor(home: Home, nowMs: number) {
    this.#home = home;
    this.#nowMs = nowMs;
    this.#wallMs = nowMs;
  }

  get double(): Double {
    if (this.#double === null) throw new Error('the stand is not open');
    return this.#double;
  }

  get nowMs(): number {
    return this.#nowMs;
  }

  async open(): Promise<void> {
    this.#double = await startDouble({
      nowMs: () => this.#wallMs,
      onMake: (when) => this.#met(when === 'asked' ? 'carrier asked' : 'carrier made it'),
    });
    await this.#start();
  }

  async close(): Promise<void> {
    this.#child?.kill('SIGKILL');
    await this.#double?.close();
    await this.#home.remove();
  }

  /** The end of what the process logged. */
  log(): string {
    return this.#noise.slice(-3000);
  }

  /** The carrier is asked to make something, or has made it and not answered yet. */
  #met(when: 'carrier asked' | 'carrier made it'): void {
    const grave = this.#graves[0];
    if (grave?.name !== when) return;
    if (grave.pass > 1) this.#graves[0] = { ...grave, pass: grave.pass - 1 };
    else this.#child?.kill('SIGKILL');
  }

  async #start(): Promise<void> {
    const child = spawnLine({
      CARRIER_URL: this.double.url,
      NOW_MS: String(this.#nowMs),
      WALL_MS: String(this.#wallMs),
      GRAVE: JSON.stringify(this.#graves[0] ?? null),
      FAILING: this.#failing ? 'yes' : '',
      ...this.#home.environment,
    });
    child.stderr?.on('data', (chunk) => {
      this.#noise = (this.#noise + String(chunk)).slice(-20_000);
    });
    this.#child = child;
    const ready = Promise.withResolvers<string>();
    child.on('message', (message) => {
      const { id, url, fault, ...report } = answerShape.parse(message);
      if (url !== undefined) ready.resolve(url);
      const asking = this.#waiting.get(id ?? -1);
      this.#waiting.delete(id ?? -1);
      if (fault === undefined) asking?.resolve(report as Report);
      else asking?.reject(new Error(fault));
    });
    child.on('exit', () => {
      const gone = new Gone('the process is gone');
      for (const asking of this.#waiting.values()) asking.reject(gone);
      this.#waiting.clear();
      ready.reject(gone);
      if (this.#child === child) this.#child = null;
    });
    this.#url = await ready.promise;
  }

  /** Gives one order; rejects with `Gone` if the process dies over it. */
  order(order: Order): Promise<Report> {
    const child = this.#child;
    if (child === null) return Promise.reject(new Gone('the process is gone'));
    const id = ++this.#asked;
    const { promise, resolve, reject } = Promise.withResolvers<Report>();
    this.#waiting.set(id, { resolve, reject });
    child.send({ id, ...order }, (error) => {
      if (error !== null) reject(new Gone(error.message));
    });
    return promise;
  }

  /** Every process from now on dies at the next of these places, until none is left. */
  async dieAt(graves: readonly Grave[]): Promise<void> {
    this.#graves = [...graves];
    await this.order({ order: 'die', grave: graves[0] ?? null });
  }

  /** Whether the machines are broken. */
  async fail(failing: boolean): Promise<void> {
    this.#failing = failing;
    await this.survive(() => this.order({ order: 'fail', failing }));
  }

  /** The carrier's webhook, signed; repeated until the line has answered it, as often as the process dies over it. */
  text(from: string, body: string, id: string): Promise<void> {
    return this.survive(() => this.#post('/carrier/text', { MessageSid: id, From: from, To: lineNumber, Body: body }));
  }

  /** The same of a text that is nothing but a picture, which the carrier keeps under this name. */
  picture(from: string, name: string, id: string): Promise<void> {
    this.double.media.set(name, { type: 'image/png', bytes: onePixel });
    const address = `https://api.twilio.com/2010-04-01/Accounts/${accountSid}/Messages/MM1/Media/${name}`;
    const media = { NumMedia: '1', MediaUrl0: address, MediaContentType0: 'image/png' };
    const form = { MessageSid: id, From: from, To: lineNumber, Body: '', ...media };
    return this.survive(() => this.#post('/carrier/text', form));
  }

  /** The clock goes on, and everything due and queued is done, callbacks of the carrier included. */
  async advance(ms: number): Promise<void> {
    this.#nowMs += ms;
    this.#wallMs = Math.max(this.#wallMs, this.#nowMs);
    await this.settled();
  }

  async settled(): Promise<void> {
    await this.survive(async () => {
      const untilMs = performance.now() + patienceMs;
      for (;;) {
        await this.#time();
        const { open } = await this.order({ order: 'settle' });
        if (open === 0) break;
        if (performance.now() > untilMs) throw new Error(`${open} messages, pictures and timers do not settle`);
        this.#wallMs += pastHoldMs; // what became of a message in hand is looked up by the sweep
        await this.#time();
        await pause(200);
      }
    });
    for (; this.#told < this.double.made.length; this.#told += 1) await this.survive(() => this.#callback(this.#told));
  }

  /** Does it again on a new process for as long as the process dies over it. */
  async survive<T>(work: () => Promise<T>): Promise<T> {
    for (;;) {
      try {
        if (this.#child === null) await this.#start();
        return await work();
      } catch (error) {
        // The end of a process is heard a little after that of its socket.
        for (let ms = 0; ms < goneMs && this.#child !== null; ms += 10) await pause(10);
        if (this.#child !== null) throw error;
        this.deaths += 1;
        this.#graves.shift();
        this.#wallMs += pastHoldMs;
      }
    }
  }

  async #time(): Promise<void> {
    await this.order({ order: 'time', nowMs: this.#nowMs, wallMs: this.#wallMs });
  }

  async #callback(place: number): Promise<void> {
    const made = this.double.made[place];
    if (made === undefined) return;
    const callback = new URL(made.form.StatusCallback ?? '');
    const news = made.resource === 'Messages' ? { MessageStatus: 'delivered' } : { CallStatus: 'completed' };
    await this.#post(callback.pathname + callback.search, news);
  }

  async #post(path: string, form: Record<string, string>): Promise<void> {
    const response = await postSigned(this.#url, path, form);
    if (response.status >= 300) throw new Error(`the line answered ${response.status}\n${this.log()}`);
  }
}

/** A webhook as the carrier makes it. */
export function postSigned(url: string, path: string, form: Record<string, string>): Promise<Response> {
  const signature = twilio.getExpectedTwilioSignature(authToken, publicUrl + path, form);
  const headers = { 'X-Twilio-Signature': signature };
  return fetch(url + path, { method: 'POST', headers, body: new URLSearchParams(form) });
}

/** The line runs with a heap that grows in small steps: a page of a night's texts is soon done with. */
export const smallHeap = ['--max-semi-space-size=3', '--heap-growing-percent=35'] as const;

/** Starts the line's process; `environment` says on what database, against which carrier, and at what time. */
export function spawnLine(environment: Readonly<Record<string, string>>): ChildProcess {
  return spawn(node, [...smallHeap, 'tests/faults/child.ts'], {
    cwd: root,
    env: { PATH: process.env.PATH, NODE_COMPILE_CACHE: compiled, ...environment },
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });
}
