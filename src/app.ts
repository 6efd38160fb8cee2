/** Puts the house together: a practice line or a live one, from the same parts but for carrier, clock, alarm and database. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Express } from 'express';
import type { RequestClient } from 'twilio';
import { openCase, stepCase, viewCase } from '#machines/case.ts';
import { stateMap } from '#machines/stateMap.ts';
import { practiceCarrier } from './carrier/practice.ts';
import { twilioCarrier } from './carrier/twilio.ts';
import { practiceClock, realClock } from './clock.ts';
import type { LiveConfig, PracticeConfig } from './config.ts';
import { ConfigRefused, DatabaseUnreachable } from './errors.ts';
import { smtpMail } from './handover/mail.ts';
import { noAlarm } from './line/alarm.ts';
import { bossAlarm } from './line/bossAlarm.ts';
import { noCheckpoint } from './line/checkpoint.ts';
import { createLine } from './line/createLine.ts';
import type { Line } from './line/line.ts';
import type { Parts } from './line/parts.ts';
import type { Log } from './log.ts';
import { languagesOf, requireSigned, standingOf } from './protocol/signature.ts';
import { readNurse } from './reading/nurse.ts';
import { read } from './reading/read.ts';
import { clinicOpen } from './rota/clinicHours.ts';
import { gapsIn } from './rota/gaps.ts';
import { keepRota, type RotaKeeper } from './rota/keeper.ts';
import { nurseOf, onCall, type Rota } from './rota/rota.ts';
import { loadRota, type RotaFile } from './rota/rotaFile.ts';
import { shelfIn } from './rota/shelf.ts';
import { loadProtocol, loadSeeds, type Seeds as World } from './seeds.ts';
import type { Database } from './store/database.ts';
import { openEmbedded } from './store/embedded.ts';
import { nowOf } from './store/existing.ts';
import { migrate } from './store/migrate.ts';
import { createSeal, practiceKey } from './store/seal.ts';
import { openServer } from './store/server.ts';
import { readHealth } from './watch/health.ts';
import { createHeartbeat, startBeating } from './watch/heartbeat.ts';
import { createMetrics, type Metrics, unwatched } from './watch/watch.ts';
import { liveApp, practiceApp } from './web/server.ts';
import { createTicker } from './web/ticker.ts';
import { word, wordForNurse, wordIn } from './wording/word.ts';

export interface App {
  readonly line: Line;
  readonly web: Express;
  /** Ends what would outlive the socket: streams that pages hold open, the heartbeat. */
  hangUp(): void;
  /** Lets running turns end, then closes the database. */
  stop(): Promise<void>;
}

const connections = 8;
/** The practice line has a number to show, kept free for fiction; nothing can ring it. */
const practiceNumber = '+12025550100';

/** Opens the practice line; a new database is filled from the seeds, at real time. */
export async function openPractice(config: PracticeConfig, log: Log): Promise<App> {
  const seeds = loadSeeds(config.seedsFolder);
  const database = await (config.databaseUrl === null
    ? openEmbedded(config.dataFolder)
    : serverAt(config.databaseUrl, log));
  const publicUrl = `http://127.0.0.1:${config.port}`;
  return opening(database, () => practiceOn(database, config.seedsFolder, seeds, log, publicUrl));
}

/** Migrates the database and starts a practice line on it. */
export async function practiceOn(
  database: Database,
  seedsFolder: string,
  world: World,
  log: Log,
  publicUrl = 'http://127.0.0.1',
): Promise<App> {
  const { families, rota, protocol } = world;
  const seeds = { families };
  await migrate(database, 'practice');
  const seal = createSeal(practiceKey);
  const keeper = await keepRota({
    file: rota,
    folder: seedsFolder,
    timeZone: protocol.site.timeZone,
    shelf: shelfIn(database, seal),
    log,
    now: () => nowOf(database),
  });
  const line = createLine({
    ...rotaParts(keeper.rota),
    ...decidingParts,
    kind: 'practice',
    wallMs: Date.now,
    checkpoint: noCheckpoint,
    watch: unwatched,
    database,
    log,
    protocol,
    clock: practiceClock,
    mail: null,
    alarm: noAlarm,
    carrier: practiceCarrier,
    lineNumber: practiceNumber,
    publicUrl,
    seal,
  });
  const fresh = (await database.query('SELECT FROM clock')).length === 0;
  await line.start();
  if (fresh) await line.reset(await line.now(), seeds);
  keeper.start();
  const ticker = createTicker();
  const web = practiceApp({
    ...webParts(database, log),
    line,
    seeds,
    nurses: rota.nurses,
    zone: protocol.site.timeZone,
    emergencyNumber: protocol.site.emergencyNumber,
    protocol: standingOf(join(seedsFolder, 'protocol.yaml'), protocol).is === 'signed' ? 'signed' : 'unsigned',
    stateMap,
    ticker,
  });
  return { line, web, hangUp: ticker.end, stop: stopping(line, keeper, database) };
}

/** Opens a live line: a signed protocol, PostgreSQL, the real carrier reached by `httpClient`, real time. */
export async function openLive(config: LiveConfig, log: Log, httpClient: RequestClient): Promise<App> {
  const protocol = loadProtocol(fileOf('NIGHTJAR_PROTOCOL', config.protocolFile));
  const spoken = languagesOf(requireSigned(config.protocolFile, protocol));
  const rota = loadRota(fileOf('NIGHTJAR_ROTA', config.rotaFile));
  const database = serverAt(config.databaseUrl, log);
  return opening(database, () => {
    const alarm = bossAlarm({ database, backend: 'postgres', log, wallMs: Date.now });
    const mail = config.mail === null ? null : smtpMail(config.mail);
    const metrics = createMetrics();
    const around = { clock: realClock, wallMs: Date.now, alarm, mail, checkpoint: noCheckpoint, watch: metrics };
    return liveOn({
      metrics,
      ...around,
      config,
      protocol,
      word: wordIn(spoken),
      rota,
      rotaFolder: dirname(config.rotaFile),
      database,
      log,
      httpClient,
      fetch,
    });
  });
}

/** What a live line stands on: the world around it is handed in, so that a test may give it another one. */
export interface LiveGround
  extends Pick<
    Parts,
    'database' | 'log' | 'protocol' | 'word' | 'clock' | 'wallMs' | 'alarm' | 'mail' | 'checkpoint' | 'watch'
  > {
  readonly config: Pick<
    LiveConfig,
    'accountSid' | 'tokens' | 'from' | 'publicUrl' | 'key' | 'oldKey' | 'metricsToken' | 'watcherUrl'
  >;
  readonly metrics: Metrics;
  readonly rota: RotaFile;
  /** Where its calendars that are files stand. */
  readonly rotaFolder: string;
  readonly httpClient: RequestClient;
  /** How pictures are fetched from the carrier. */
  readonly fetch: typeof fetch;
}

/** Migrates the database and starts a live line on it. */
export async function liveOn(ground: LiveGround): Promise<App> {
  const { config, rota, rotaFolder, httpClient, fetch: get, metrics, ...around } = ground;
  const { accountSid, tokens, from, publicUrl } = config;
  const { database, log, protocol, clock } = around;
  await migrate(database, 'live');
  const seal = createSeal(config.key, ...(config.oldKey === null ? [] : [config.oldKey]));
  const keeper = await keepRota({
    file: rota,
    folder: rotaFolder,
    timeZone: protocol.site.timeZone,
    shelf: shelfIn(database, seal),
    log,
    now: () => clock.now(database),
  });
  const carrier = twilioCarrier({ accountSid, authToken: tokens[0], from, publicUrl, httpClient, fetch: get });
  const line = createLine({
    ...rotaParts(keeper.rota),
    ...decidingParts,
    ...around,
    kind: 'live',
    lineNumber: from,
    publicUrl,
    carrier,
    seal,
  });
  await line.start();
  keeper.start();
  const { emergencyNumber, fallbackNumber: toNumber } = protocol.site;
  const health = async () => readHealth(database, await clock.now(database));
  const { wallMs } = around;
  const heartbeat = createHeartbeat({ health, carrier, toNumber, watcherUrl: config.watcherUrl, fetch, wallMs, log });
  const watching = { health, metrics, metricsToken: config.metricsToken };
  const web = liveApp({
    ...webParts(database, log),
    ...watching,
    line,
    publicUrl,
    tokens,
    emergencyNumber,
    lineNumber: from,
  });
  return { line, web, hangUp: startBeating(heartbeat), stop: stopping(line, keeper, database) };
}

const decidingParts = {
  machines: { openCase, stepCase, viewCase },
  read,
  readNurse,
  word,
  wordForNurse,
  clinicOpen,
} satisfies Partial<Parts>;

/** What the line asks of the rota. */
export function rotaParts(rota: () => Rota): Pick<Parts, 'nurses' | 'onCall' | 'nurseOf' | 'rotaGaps'> {
  return {
    nurses: rota().nurses,
    onCall: (atMs) => onCall(rota(), atMs),
    nurseOf: (number) => nurseOf(rota(), number),
    rotaGaps: (fromMs, toMs) => gapsIn(rota(), fromMs, toMs),
  };
}

function webParts(database: Database, log: Log) {
  return {
    alive: async () => {
      await database.query('SELECT 1');
    },
    report: (error: unknown) => log.error({ error }, 'a request failed'),
  };
}

function serverAt(url: string, log: Log): Database {
  return openServer(url, connections, (error) => log.warn({ error }, 'a database connection broke'));
}

/** A database that is open is closed again when the rest cannot be opened. */
async function opening(database: Database, open: () => Promise<App>): Promise<App> {
  try {
    await reach(database);
    return await open();
  } catch (error) {
    await database.close();
    throw error;
  }
}

async function reach(database: Database): Promise<void> {
  try {
    await database.query('SELECT 1');
  } catch (error) {
    throw new DatabaseUnreachable(database.where, codeOf(error));
  }
}

function stopping(line: Line, keeper: RotaKeeper, database: Database): () => Promise<void> {
  return async () => {
    keeper.stop();
    await line.stop();
    await database.close();
  };
}

function fileOf(variable: string, path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    throw new ConfigRefused([`${variable}: the file cannot be read (${codeOf(error)})`]);
  }
}

/** A system's or server's own code says why without repeating what it was given. */
function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : 'no code';
}
