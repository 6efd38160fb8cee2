/** A private PostgreSQL for one bench: started on loopback on a free port, never as root, gone afterwards. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';

const debianRoot = '/usr/lib/postgresql';

export interface Server {
  readonly url: string;
  stop(): void;
}

/** Starts one, or returns null where PostgreSQL is not installed. `TEST_DATABASE_URL` names a running one instead. */
export async function startServer(): Promise<Server | null> {
  const given = process.env.TEST_DATABASE_URL;
  if (given !== undefined) return { url: given, stop: () => {} };
  const bin = binaries();
  if (bin === null) return null;
  const folder = mkdtempSync(join(tmpdir(), 'nightjar-bench-'));
  chmodSync(folder, 0o777);
  const data = join(folder, 'data');
  const port = await freePort();
  execFileSync(...unprivileged([join(bin, 'initdb'), '-D', data, '-U', 'bench', '-A', 'trust']), { stdio: 'ignore' });
  const settings = [
    '-c',
    `port=${port}`,
    '-c',
    'listen_addresses=127.0.0.1',
    '-c',
    `unix_socket_directories=${folder}`,
  ];
  const [command, args] = unprivileged([join(bin, 'postgres'), '-D', data, ...settings]);
  const child = spawn(command, args, { stdio: 'ignore' });
  const url = `postgres://bench@127.0.0.1:${port}/postgres`;
  await untilReady(url);
  return { url, stop: () => stop(child, folder) };
}

function binaries(): string | null {
  if (!existsSync(debianRoot)) return null;
  const versions = readdirSync(debianRoot).sort((a, b) => Number(b) - Number(a));
  return (
    versions.map((version) => join(debianRoot, version, 'bin')).find((bin) => existsSync(join(bin, 'initdb'))) ?? null
  );
}

/** PostgreSQL refuses to run as root. */
function unprivileged(command: readonly string[]): [string, string[]] {
  if (process.getuid?.() !== 0) return [command[0] ?? '', command.slice(1)];
  return ['setpriv', ['--reuid', 'nobody', '--regid', 'nogroup', '--clear-groups', ...command]];
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => (typeof address === 'object' && address !== null ? resolve(address.port) : reject(address)));
    });
  });
}

async function untilReady(url: string): Promise<void> {
  for (let attempt = 0; attempt < 100; attempt += 1) {
    const client = new pg.Client(url);
    try {
      await client.connect();
      await client.end();
      return;
    } catch {
      await pause(100);
    }
  }
  throw new Error('the private PostgreSQL did not start');
}

function stop(child: ChildProcess, folder: string): void {
  child.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  child.kill('SIGINT');
}
