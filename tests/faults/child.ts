/**
 * The whole live line as a process of its own, on the database its environment names: its clock stands where the parent sets
 * it, or is real where the parent sets none, and it dies where it is told to. It answers the parent's orders over the channel between them.
 */

import { liveOn } from '#src/app.ts';
import { noAlarm } from '#src/line/alarm.ts';
import { bossAlarm } from '#src/line/bossAlarm.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { openEmbedded } from '#src/store/embedded.ts';
import { practiceKey } from '#src/store/seal.ts';
import { openServer } from '#src/store/server.ts';
import { createMetrics } from '#src/watch/watch.ts';
import { listen } from '#src/web/socket.ts';
import { word } from '#src/wording/word.ts';
import { accountSid, authToken, clientTo, fetchTo, lineNumber } from '#tests/carrier/double.ts';
import { graveShape, type Order, orderShape, publicUrl, type Report } from './orders.ts';

const { DATABASE_URL, NIGHTJAR_DATA = '', CARRIER_URL = '', NOW_MS, WALL_MS, GRAVE = 'null', FAILING } = process.env;

let nowMs = Number(NOW_MS);
let wallMs = Number(WALL_MS);
/** Where to die, and how often it is passed before. */
let grave = graveShape.nullable().parse(JSON.parse(GRAVE));
let passes = 0;
/** Whether steps throw, as those of a broken machine. */
let failing = FAILING === 'yes';

function checkpoint(name: string): void {
  if (name === grave?.name && ++passes === grave.pass) process.kill(process.pid, 'SIGKILL');
  if (name === 'step taken' && failing) throw new Error('a broken machine');
}

const log = createLog();
const database = DATABASE_URL
  ? openServer(DATABASE_URL, 8, (error) => log.warn({ error }, 'a connection broke'))
  : await openEmbedded(NIGHTJAR_DATA);
const { protocol, rota } = loadSeeds('seeds');
const metrics = createMetrics();
const app = await liveOn({
  mail: null,
  config: {
    accountSid,
    tokens: [authToken],
    from: lineNumber,
    publicUrl,
    key: practiceKey,
    oldKey: null,
    metricsToken: null,
    watcherUrl: null,
  },
  metrics,
  watch: metrics,
  rota,
  rotaFolder: 'seeds',
  protocol,
  word,
  database,
  log,
  httpClient: clientTo(CARRIER_URL, 5_000),
  fetch: fetchTo(CARRIER_URL),
  clock: { now: async () => (NOW_MS === undefined ? Date.now() : nowMs) },
  wallMs: () => (NOW_MS === undefined ? Date.now() : wallMs),
  // A live line is never on the embedded database, and the queue library's own start there takes seconds.
  alarm: DATABASE_URL ? bossAlarm({ database, backend: 'postgres', log, wallMs: Date.now }) : noAlarm,
  checkpoint,
});
const socket = await listen(app.web, '127.0.0.1', 0);

async function obey(order: Order): Promise<Report> {
  switch (order.order) {
    case 'time':
      ({ nowMs, wallMs } = order);
      return {};
    case 'die':
      grave = order.grave;
      passes = 0;
      return {};
    case 'fail':
      failing = order.failing;
      return {};
    case 'settle': {
      await app.line.settle('settle');
      const [row] = await database.query<{ open: number }>(
        `SELECT (SELECT count(*) FROM message WHERE state IN ('waiting', 'carrying', 'unknown'))
              + (SELECT count(*) FROM media WHERE state = 'waiting')
              + (SELECT count(*) FROM timer WHERE due_ms <= $1) AS open`,
        [nowMs],
      );
      return { open: row?.open ?? 0 };
    }
    case 'look':
      return { theCase: await app.line.newestCase(order.phone), thread: await app.line.thread(order.phone) };
  }
}

process.on('message', (message) => {
  const { id, ...order } = orderShape.parse(message);
  obey(order).then(
    (report) => process.send?.({ id, ...report }),
    (error: unknown) => process.send?.({ id, fault: String(error) }),
  );
});
process.once('SIGTERM', async () => {
  app.hangUp();
  await socket.close();
  await app.stop();
  process.exit(0);
});
process.send?.({ url: socket.url });
