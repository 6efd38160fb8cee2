/** The bench: every figure the line is held to, each part also alone: `npm run bench -- floor peer`. Nothing here is a test. */
import { cpus } from 'node:os';
import pg from 'pg';
import { floor } from './floor.ts';
import type { Ground, Part } from './ground.ts';
import { load } from './load.ts';
import { peer } from './peer.ts';
import { rechecksDue } from './rechecks.ts';
import { startServer } from './server.ts';
import { start } from './start.ts';
import { stored } from './stored.ts';

/** In the order they run. */
const parts = new Map<string, Part>([
  ['floor', floor],
  ['peer', peer],
  ['load', load],
  ['rechecks', rechecksDue],
  ['stored', stored],
  ['start', start],
]);

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !parts.has(name));
if (unknown.length > 0) {
  process.stderr.write(`No part is called ${unknown.join(', ')}; there are: ${[...parts.keys()].join(', ')}\n`);
  process.exit(2);
}

const server = await startServer();
try {
  process.stdout.write(`${await machine(server?.url ?? null)}\n`);
  for (const [name, part] of parts) if (asked.length === 0 || asked.includes(name)) await run(name, part);
} finally {
  server?.stop();
}

async function run(name: string, part: Part): Promise<void> {
  process.stdout.write(`\n${name}\n`);
  const ground: Ground = { serverUrl: server?.url ?? null };
  await part(ground);
}

/** What the figures depend on. Without fsync a commit costs less than it would in life. */
async function machine(url: string | null): Promise<string> {
  const here = `Node ${process.versions.node}, ${cpus().length} processors`;
  if (url === null)
    return `${here}. SKIPPED: everything on PostgreSQL: it is not installed and TEST_DATABASE_URL is not set`;
  const client = new pg.Client(url);
  await client.connect();
  const { rows } = await client.query(
    "SELECT current_setting('server_version') AS version, current_setting('fsync') AS fsync",
  );
  await client.end();
  return `${here}, PostgreSQL ${rows[0].version} with fsync ${rows[0].fsync}`;
}
