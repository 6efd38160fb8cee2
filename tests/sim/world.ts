/**
 * A simulated night: the whole live line on a clock of its own, many families and nurses at once, every fault there is. One
 * seeded scheduler does one thing at a time and lets the world come to rest before the next, so a seed is always the same night.
 */
import { mock } from 'node:test';
import { type App, liveOn } from '#src/app.ts';
import { fateOfStatus } from '#src/carrier/status.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { createMetrics } from '#src/watch/watch.ts';
import { word } from '#src/wording/word.ts';
import { accountSid, authToken, lineNumber } from '#tests/carrier/double.ts';
import { Dice, drawFile } from '#tests/dislodgement/attack/alphabet.ts';
import { type Made, SimulatedCarrier } from './carrier.ts';
import { type Busy, Cut, count, faulty, type Incarnation, type Trouble } from './faults.ts';
import { broken } from './rules.ts';
import { answers, between, firstTexts, nurseTexts } from './words.ts';

const secondMs = 1_000;
const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
/** Both nights the clocks change (America/New_York, 2027), an ordinary night, and a clinic's morning. */
const starts = ['2027-03-14T00:40-05:00', '2027-11-07T00:40-04:00', '2027-03-06T02:10-05:00', '2027-03-09T07:20-05:00'];
/** Longer than a fate may stay unknown. */
const restMs = 50 * minuteMs;

const { protocol, rota } = loadSeeds('seeds');
const seal = createSeal(practiceKey);

export interface Outcome {
  readonly broken: readonly string[];
  readonly texts: number;
  readonly events: number;
  readonly sent: number;
  readonly faults: ReadonlyMap<string, number>;
}

/** A line or a world made wrong on purpose, to see that the rules see it. */
export type Plant = 'a carrier whose lists are empty' | 'a sweep that never comes';

interface Planned {
  readonly atMs: number;
  readonly place: number;
  readonly what: string;
  readonly run: () => Promise<unknown> | unknown;
}

/** Plays one night on this database, which is emptied first. `hours` is how long families text; then the line comes to rest. */
export async function playNight(database: Database, seed: number, hours: number, plant?: Plant): Promise<Outcome> {
  await emptied(database);
  mock.timers.enable({ apis: ['setInterval'] }); // the sweep runs when the scheduler says so
  try {
    return await new Night(database, seed, hours, plant).play();
  } finally {
    mock.timers.reset();
  }
}

/** Everything of a line but what its migrations made. */
async function emptied(database: Database): Promise<void> {
  const tables = await database.query<{ name: string }>(
    `SELECT quote_ident(tablename) AS name FROM pg_tables
     WHERE schemaname = 'public' AND tablename NOT IN ('migration', 'line', 'protocol')`,
  );
  if (tables.length > 0)
    await database.query(`TRUNCATE ${tables.map(({ name }) => name).join(', ')} RESTART IDENTITY CASCADE`);
}

class Night {
  readonly #database: Database;
  readonly #dice: Dice;
  readonly #untilMs: number;
  readonly #trouble: Trouble = { on: true, databaseAway: false, met: new Map() };
  readonly #busy: Busy = { count: 0 };
  readonly #carrier: SimulatedCarrier;
  readonly #planned: Planned[] = [];
  readonly #broken: string[] = [];
  #place = 0;
  #nowMs: number;
  /** The line's clock may jump; the world's does not. */
  #skewMs = 0;
  #life: Incarnation = { dead: false };
  #app: App | null = null;
  #wake: () => void = () => {};
  #sweepAtMs = Number.POSITIVE_INFINITY;
  #deaf = false;
  #texts = 0;
  #events = 0;

  constructor(database: Database, seed: number, hours: number, plant: Plant | undefined) {
    this.#database = database;
    this.#dice = new Dice(seed);
    this.#nowMs = Date.parse(this.#dice.pick(starts));
    this.#untilMs = this.#nowMs + hours * hourMs;
    this.#carrier = new SimulatedCarrier(this.#dice, this.#trouble, () => this.#lineMs());
    this.#carrier.blind = plant === 'a carrier whose lists are empty';
    this.#deaf = plant === 'a sweep that never comes';
    this.#carrier.onMade = (made) => this.#news(made);
  }

  async play(): Promise<Outcome> {
    this.#trouble.on = false;
    await this.#start();
    this.#plan(0, 'sweep', () => this.#sweep());
    await this.#runUntil(this.#nowMs + 2 * secondMs);
    const families = Array.from({ length: 6 }, (_, index) => `+1202555${1100 + index}`);
    for (const phone of families) {
      const file = drawFile(this.#dice);
      if (file !== null) await this.#app?.line.enrol(phone, { ...file, language: this.#dice.pick(['en', 'es']) });
      this.#plan(this.#dice.pick([1, 5, 20, 40]) * minuteMs, 'a first text', () => this.#firstText(phone));
      if (this.#dice.chance(0.1)) this.#carrier.unreachable.add(phone);
    }
    this.#trouble.on = true;
    this.#plan(this.#dice.pick([3, 9, 20]) * minuteMs, 'trouble', () => this.#happen());
    await this.#runUntil(this.#untilMs);
    await this.#rest();
    return this.#outcome();
  }

  /** No more trouble: the line comes back, and everything still open has its time to be settled. */
  async #rest(): Promise<void> {
    this.#trouble.on = false;
    this.#trouble.databaseAway = false;
    if (this.#app === null) await this.#start();
    for (let atMs = 0; atMs <= restMs; atMs += 2 * minuteMs) this.#plan(atMs, 'sweep', () => this.#sweep());
    await this.#runUntil(this.#nowMs + restMs + minuteMs);
    const nowMs = this.#lineMs();
    this.#broken.push(...(await broken({ database: this.#database, seal, protocol, carrier: this.#carrier, nowMs })));
    await this.#app?.line.stop();
  }

  #outcome(): Outcome {
    const { met } = this.#trouble;
    return {
      broken: this.#broken,
      texts: this.#texts,
      events: this.#events,
      sent: this.#carrier.made.length,
      faults: met,
    };
  }

  #lineMs(): number {
    return this.#nowMs + this.#skewMs;
  }

  #plan(inMs: number, what: string, run: Planned['run']): void {
    this.#place += 1;
    this.#planned.push({ atMs: this.#nowMs + inMs, place: this.#place, what, run });
    this.#planned.sort((a, b) => a.atMs - b.atMs || a.place - b.place);
  }

  async #runUntil(untilMs: number): Promise<void> {
    for (let next = this.#planned[0]; next !== undefined && next.atMs <= untilMs; next = this.#planned[0]) {
      this.#planned.shift();
      this.#nowMs = Math.max(this.#nowMs, next.atMs);
      this.#events += 1;
      await next.run();
      await this.#quiet();
      if (this.#life.dead) await this.#reborn();
      await this.#planSweep();
    }
    this.#nowMs = Math.max(this.#nowMs, untilMs);
  }

  /** Until nothing waits for the database or the carrier any more. */
  async #quiet(): Promise<void> {
    for (let still = 0; still < 4; still = this.#busy.count === 0 ? still + 1 : 0) {
      await new Promise((resolve) => setImmediate(resolve));
    }
  }

  async #start(): Promise<void> {
    const life: Incarnation = { dead: false };
    this.#life = life;
    const metrics = createMetrics();
    const ground = {
      config: {
        accountSid,
        tokens: [authToken] as const,
        from: lineNumber,
        publicUrl: 'https://line.example',
        key: practiceKey,
        oldKey: null,
        metricsToken: null,
        watcherUrl: null,
      },
      rota,
      rotaFolder: 'seeds',
      protocol,
      word,
      mail: null,
      metrics,
      watch: metrics,
      database: faulty(this.#database, life, this.#trouble, this.#dice, this.#busy),
      log: createLog({ write: () => {} }),
      httpClient: this.#carrier.client(life, this.#busy),
      fetch: async () => new Response(null, { status: 503 }),
      clock: { now: async () => this.#lineMs() },
      wallMs: () => this.#lineMs(),
      alarm: {
        start: async (wake: () => void) => {
          this.#wake = wake;
        },
        arm: () => {},
        stop: async () => {},
      },
      checkpoint: () => this.#maybeDie(life),
    };
    try {
      this.#app = await liveOn(ground);
    } catch (error) {
      if (!(error instanceof Cut)) throw error;
      this.#app = null;
      this.#plan(5 * secondMs, 'start again', () => this.#reborn());
    }
  }

  async #reborn(): Promise<void> {
    if (this.#app !== null && !this.#life.dead) return;
    this.#app = null;
    this.#life.dead = true;
    await this.#quiet();
    await this.#start();
    await this.#quiet();
    if (this.#life.dead) this.#plan(secondMs, 'start again', () => this.#reborn());
  }

  #maybeDie(life: Incarnation): void {
    if (!this.#trouble.on || life.dead || !this.#dice.chance(0.004)) return;
    count(this.#trouble, 'process killed');
    life.dead = true;
  }

  /** A promise is kept: what is due has fired once the sweep is over, if nothing went wrong in it. */
  async #sweep(): Promise<void> {
    this.#sweepAtMs = Number.POSITIVE_INFINITY;
    if (this.#app === null || this.#life.dead) return;
    const before = [...this.#trouble.met.values()].reduce((sum, one) => sum + one, 0);
    const away = this.#trouble.databaseAway;
    if (!this.#deaf) this.#wake();
    await this.#quiet();
    const after = [...this.#trouble.met.values()].reduce((sum, one) => sum + one, 0);
    if (away || after !== before || this.#life.dead) return;
    const [row] = await this.#database.query<{ late: number }>(
      'SELECT count(*) AS late FROM timer WHERE due_ms <= $1',
      [this.#lineMs()],
    );
    if ((row?.late ?? 0) > 0) this.#broken.push(`${row?.late} timers were due and not fired by a sweep`);
  }

  /** The sweep comes each second in life; here when something can have come due, or a text is not heard yet. */
  async #planSweep(): Promise<void> {
    const [row] = await this.#database.query<{ next_ms: number | null; heard: number }>(
      `SELECT LEAST((SELECT min(due_ms) FROM timer), (SELECT min(GREATEST(look_ms, hold_until_ms)) FROM message
         WHERE state IN ('waiting', 'carrying', 'unknown'))) AS next_ms,
         (SELECT count(*) FROM message WHERE direction = 'in') AS heard`,
    );
    const isLost = (row?.heard ?? 0) < this.#carrier.inbound.length;
    const lost = isLost ? minuteMs : Number.POSITIVE_INFINITY;
    const inMs = Math.min(lost, Math.max(secondMs, (row?.next_ms ?? Number.POSITIVE_INFINITY) - this.#lineMs()));
    const atMs = this.#nowMs + inMs;
    if (atMs >= this.#sweepAtMs || !Number.isFinite(atMs)) return;
    this.#sweepAtMs = atMs;
    this.#plan(inMs, 'sweep', () => (this.#sweepAtMs === atMs ? this.#sweep() : undefined));
  }

  #firstText(phone: string): void {
    this.#say(phone, this.#dice.pick(firstTexts));
    this.#plan(this.#thinkMs(), 'the next text', () => this.#nextText(phone));
  }

  async #nextText(phone: string): Promise<void> {
    if (this.#nowMs >= this.#untilMs) return;
    const asking = await this.#asking(phone);
    const body =
      asking === null || this.#dice.chance(0.12) ? this.#dice.pick(between) : this.#dice.pick(answers[asking]);
    this.#say(phone, body);
    if (body === 'STOP' && this.#dice.chance(0.5)) this.#carrier.optedOut.add(phone);
    if (body === 'START') this.#carrier.optedOut.delete(phone);
    this.#plan(this.#thinkMs(), 'the next text', () => this.#nextText(phone));
  }

  #thinkMs(): number {
    return this.#dice.pick([5 * secondMs, 40 * secondMs, 2 * minuteMs, 4 * minuteMs, 9 * minuteMs, 70 * minuteMs]);
  }

  /** What a family sees asked; where the line cannot tell, it texts something. */
  async #asking(phone: string) {
    if (this.#app === null || this.#life.dead) return null;
    const { on, databaseAway } = this.#trouble;
    this.#trouble.on = false;
    try {
      return (await this.#app.line.newestCase(phone))?.asking ?? null;
    } finally {
      this.#trouble.on = on;
      this.#trouble.databaseAway = databaseAway;
    }
  }

  /** The carrier has the text; its webhook may come at once, late, twice or never. */
  #say(from: string, body: string): void {
    this.#texts += 1;
    const sid = `IN${String(this.#texts).padStart(6, '0')}`;
    this.#carrier.inbound.push({ sid, from, body, atMs: this.#lineMs() });
    const deliver = (inMs: number) => this.#plan(inMs, 'a webhook', () => this.#hook(sid, from, body));
    if (this.#dice.chance(0.05)) count(this.#trouble, 'webhook lost');
    else deliver(this.#dice.chance(0.1) ? this.#dice.pick([2, 10, 50]) * secondMs : 0);
    if (this.#dice.chance(0.08)) {
      count(this.#trouble, 'webhook twice');
      deliver(this.#dice.pick([0, 1, 30]) * secondMs);
    }
  }

  async #hook(id: string, from: string, body: string): Promise<void> {
    if (this.#app === null || this.#life.dead) return;
    const heard = this.#app.line.hear({ from, body, id, cause: `hook ${id} ${this.#place}` });
    await heard.catch(() => count(this.#trouble, 'webhook failed'));
  }

  /** Status callbacks: late, out of order, twice or never; and a nurse who reads may answer. */
  #news(made: Made): void {
    const gone = made.kind === 'Messages' && this.#carrier.unreachable.has(made.to);
    const words =
      made.kind === 'Calls' ? ['ringing', 'completed'] : gone ? ['sent', 'undelivered'] : ['sent', 'delivered'];
    made.status = words[1] ?? 'sent';
    for (const status of words) {
      if (this.#dice.chance(0.08)) {
        count(this.#trouble, 'callback lost');
        continue;
      }
      const tell = () => this.#callback(made, status);
      this.#plan(this.#dice.pick([0, 1, 3, 20, 90]) * secondMs, 'a callback', tell);
      if (this.#dice.chance(0.05)) this.#plan(this.#dice.pick([1, 60]) * secondMs, 'a callback again', tell);
    }
    if (rota.nurses.some(({ number }) => number === made.to) && this.#dice.chance(0.35)) {
      const body = this.#dice.pick(nurseTexts);
      this.#plan(this.#dice.pick([15 * secondMs, 2 * minuteMs, 6 * minuteMs]), 'a nurse', () => {
        if (this.#nowMs < this.#untilMs) this.#say(made.to, body);
      });
    }
  }

  async #callback(made: Made, status: string): Promise<void> {
    const fate = fateOfStatus(status);
    if (fate === null || this.#app === null || this.#life.dead) return;
    await this.#app.line.noteFate(String(made.id), fate, made.sid).catch(() => count(this.#trouble, 'callback failed'));
  }

  /** The database goes away for a while, or the line's clock jumps. */
  #happen(): void {
    if (this.#dice.chance(0.5)) {
      count(this.#trouble, 'database away');
      this.#trouble.databaseAway = true;
      this.#plan(this.#dice.pick([2, 20, 180]) * secondMs, 'the database is back', () => {
        this.#trouble.databaseAway = false;
      });
    } else {
      count(this.#trouble, 'clock jumped');
      this.#skewMs += this.#dice.pick([-90, -5, 5, 90]) * secondMs;
    }
    this.#plan(this.#dice.pick([7, 23, 55]) * minuteMs, 'trouble', () => this.#happen());
  }
}
