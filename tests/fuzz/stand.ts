/** The two faces of the house under attack, real but for the carrier: one database each, reached over a socket. */
import { setTimeout as pause } from 'node:timers/promises';
import twilio from 'twilio';
import { liveOn, practiceOn } from '#src/app.ts';
import { noAlarm } from '#src/line/alarm.ts';
import { noCheckpoint } from '#src/line/checkpoint.ts';
import type { Line } from '#src/line/line.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';
import { practiceKey } from '#src/store/seal.ts';
import { createMetrics } from '#src/watch/watch.ts';
import { listen } from '#src/web/socket.ts';
import { word } from '#src/wording/word.ts';
import { accountSid, authToken, lineNumber } from '#tests/carrier/double.ts';
import type { TestDatabase } from '#tests/store/databases.ts';
import type { Dice } from './dice.ts';
import { publicUrl } from './liveProbes.ts';
import type { Face } from './probe.ts';

export interface Stand {
  readonly url: string;
  readonly line: Line;
  readonly database: Database;
  /** Lets some of the live line's time pass; the practice line has requests for that. */
  pass(ms: number): void;
  /** What it logged. */
  log(): string;
  /** Everything due and queued is done; then the line stops, its database stays. */
  end(): Promise<void>;
  close(): Promise<void>;
}

export async function openStand(face: Face, test: TestDatabase, dice: Dice): Promise<Stand> {
  const database = await test.open();
  const lines: string[] = [];
  const log = createLog({ write: (line) => void lines.push(line) });
  const kept = { ...database, close: async () => undefined };
  let nowMs = Date.parse('2027-03-06T02:10:00-05:00');
  const app =
    face === 'practice'
      ? await practiceOn(kept, 'seeds', loadSeeds('seeds'), log)
      : await liveOn({
          ...liveParts(dice),
          database: kept,
          log,
          clock: { now: async () => nowMs },
          wallMs: () => nowMs,
        });
  const socket = await listen(app.web, '127.0.0.1', 0);
  return {
    url: socket.url,
    line: app.line,
    database,
    pass(ms) {
      nowMs += ms;
    },
    log: () => lines.join(''),
    async end() {
      await socket.close();
      await app.line.settle('the end');
      if (face === 'live') await pause(1200); // one more sweep
      app.hangUp();
      await app.stop();
    },
    close: () => database.close(),
  };
}

function liveParts(dice: Dice) {
  const { protocol, rota } = loadSeeds('seeds');
  const metrics = createMetrics();
  return {
    config: {
      accountSid,
      tokens: [authToken] as const,
      from: lineNumber,
      publicUrl,
      key: practiceKey,
      oldKey: null,
      metricsToken: null,
      watcherUrl: null,
    },
    metrics,
    watch: metrics,
    protocol,
    rota,
    rotaFolder: 'seeds',
    word,
    mail: null,
    alarm: noAlarm,
    checkpoint: noCheckpoint,
    httpClient: new MoodyClient(dice),
    fetch: async () =>
      new Response('picture', { status: dice.oneOf([200, 404, 503]), headers: { 'content-type': 'image/png' } }),
  };
}

/** A carrier that mostly takes what it is given; its errors quote what they were given, as some do. */
class MoodyClient extends twilio.RequestClient {
  readonly #dice: Dice;
  #made = 0;

  constructor(dice: Dice) {
    super();
    this.#dice = dice;
  }

  override request: InstanceType<typeof twilio.RequestClient>['request'] = async (options) => {
    const quoted = JSON.stringify(options.data ?? options.params ?? {});
    const mood = this.#dice.below(60);
    if (mood === 0) throw Object.assign(new Error(`reset while sending ${quoted}`), { code: 'ECONNRESET' });
    if (mood === 1) return answer(429, { code: 20429, message: `too many: ${quoted}` });
    if (mood === 2) return answer(400, { code: 21610, message: `opted out: ${quoted}` });
    if (mood === 3) return answer(503, { message: quoted });
    if (options.method === 'get') return answer(200, { messages: [], calls: [], meta: { key: 'messages' } });
    this.#made += 1;
    return answer(201, { sid: `SM${this.#made}`, status: 'queued' });
  };
}

// biome-ignore lint/suspicious/noExplicitAny: the library's own client answers with any body
function answer(statusCode: number, body: object): any {
  return { statusCode, body: JSON.stringify(body), headers: {} };
}
