/** The practice line as a process of its own: started, spoken to over HTTP, killed, started again. */
import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import pg from 'pg';
import { copyEmpty } from '#tests/store/empty.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const node = join(root, 'node_modules/.bin/node');

/** A place for the data of one practice line. */
export interface Home {
  readonly environment: Readonly<Record<string, string>>;
  remove(): Promise<void>;
}

export interface Backend {
  readonly name: string;
  /** With an empty database in it. */
  home(): Promise<Home>;
  /** With nothing in it that a line would not make itself. */
  bareHome(): Promise<Home>;
}

/** The embedded database always; a server too where `TEST_DATABASE_URL` names one that may make databases. */
export function backends(): readonly Backend[] {
  const server = process.env.TEST_DATABASE_URL;
  const embedded = { name: 'embedded', home: embeddedHome, bareHome: bareFolder };
  if (!server) return [embedded];
  const home = () => serverHome(server);
  return [embedded, { name: 'server', home, bareHome: home }];
}

/** A folder of its own for an embedded database, which is there and empty. */
export async function embeddedHome(): Promise<Home> {
  const home = await bareFolder();
  await copyEmpty(home.environment.NIGHTJAR_DATA);
  return home;
}

async function bareFolder() {
  const folder = await mkdtemp(join(tmpdir(), 'nightjar-contract-'));
  return {
    environment: { NIGHTJAR_DATA: join(folder, 'data') },
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

async function serverHome(server: string): Promise<Home> {
  const name = `contract_${randomUUID().replaceAll('-', '')}`;
  const url = new URL(server);
  url.pathname = `/${name}`;
  await onServer(server, `CREATE DATABASE ${name}`);
  return {
    environment: { DATABASE_URL: url.href },
    remove: () => onServer(server, `DROP DATABASE ${name} WITH (FORCE)`),
  };
}

async function onServer(url: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

export interface Running {
  readonly url: string;
  /** All that the process wrote to its standard output, line by line. */
  readonly lines: readonly string[];
  /** The end of what it logged. */
  log(): string;
  /** Sends the signal and resolves once the process is gone. */
  end(signal: 'SIGTERM' | 'SIGINT' | 'SIGKILL'): Promise<Ended>;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
}

/** Starts a practice line on a free port and waits for the line that says it answers. */
export async function startProcess(home: Home): Promise<Running> {
  const child = spawnMain(['practice'], { PORT: '0', ...home.environment });
  const ended = endOf(child);
  let noise = '';
  child.stderr?.on('data', (chunk) => {
    noise += String(chunk);
  });
  const lines: string[] = [];
  if (child.stdout === null) throw new TypeError('the process has a standard output');
  const reader = createInterface(child.stdout);
  reader.on('line', (line) => lines.push(line));
  const first = await Promise.race([once(reader, 'line').then(() => lines[0]), ended.then(() => undefined)]);
  const url = first?.match(/http:\S+/)?.[0];
  if (url === undefined) throw new Error(`the practice line did not start:\n${noise}`);
  return {
    url,
    lines,
    log: () => noise.slice(-2000),
    end(signal) {
      child.kill(signal);
      return ended;
    },
  };
}

/** Runs the entry to its end; for what refuses to start. */
export async function runMain(args: readonly string[], environment: Readonly<Record<string, string>>) {
  const child = spawnMain(args, environment);
  let out = '';
  let noise = '';
  child.stdout?.on('data', (chunk) => {
    out += String(chunk);
  });
  child.stderr?.on('data', (chunk) => {
    noise += String(chunk);
  });
  return { ...(await endOf(child)), out, noise };
}

/** Compiled code is kept between starts, so that a test may start many times. */
const compiled = join(tmpdir(), 'nightjar-contract-compiled');

/** Starting can be slow while other tests run. */
export const patienceMs = 120_000;

/** Nothing of our own environment but the path: a variable set here must not change what is tested. */
function spawnMain(args: readonly string[], environment: Readonly<Record<string, string>>): ChildProcess {
  return spawn(node, ['src/main.ts', ...args], {
    cwd: root,
    env: { PATH: process.env.PATH, NODE_COMPILE_CACHE: compiled, ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

function endOf(child: ChildProcess): Promise<Ended> {
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (code, signal) => resolve({ code, signal }));
  });
}
