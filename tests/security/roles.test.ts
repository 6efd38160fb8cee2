/** Least rights: the line runs as a role that may do what its statements do and nothing else. On a server only: roles are the server's. */
import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import { migrateAsOwner } from '#src/store/migrateCommand.ts';
import { openServer } from '#src/store/server.ts';
import { attack } from '#tests/fuzz/attack.ts';
import { fakeLog } from '#tests/line/fakes.ts';
import { freshUrl } from '#tests/store/databases.ts';

const server = process.env.TEST_DATABASE_URL;
const mark = randomUUID().slice(0, 8);
const [owner, line] = [`owner_${mark}`, `line_${mark}`];
const password = randomUUID();

/** The site's own files, for roles of this test alone. */
async function sql(file: string): Promise<string> {
  const text = await readFile(new URL(`../../deploy/${file}`, import.meta.url), 'utf8');
  return text.replaceAll('nightjar_owner', owner).replaceAll('nightjar_line', line);
}

describe.skipIf(!server)('the role of the line', () => {
  const name = `roles_${mark}`;
  const url = freshUrl(server ?? 'postgresql://none', name);
  const as = (role: string): Database => {
    const there = new URL(url);
    [there.username, there.password] = [role, password];
    return openServer(there.href, 6, () => undefined);
  };
  const onServer = async (at: string, ...statements: string[]) => {
    const database = openServer(at, 1, () => undefined);
    for (const statement of statements) await database.query(statement);
    await database.close();
  };

  beforeAll(async () => {
    await onServer(server ?? '', `CREATE DATABASE ${name}`);
    const passwords = [owner, line].map((role) => `ALTER ROLE ${role} PASSWORD '${password}'`);
    await onServer(url, await sql('roles.sql'), ...passwords);
    const database = as(owner);
    await migrateAsOwner(database, fakeLog());
    await database.query(await sql('rights.sql'));
    await database.close();
  });
  afterAll(async () => {
    const roles = [owner, line].map((role) => `DROP ROLE ${role}`);
    await onServer(server ?? '', `DROP DATABASE ${name} WITH (FORCE)`, ...roles);
  });

  it('is enough for a whole night of texts, pages, callbacks and faults', async () => {
    const test = { name: 'server', open: async () => as(line) } as const;
    const { faults, standing, log } = await attack({ face: 'live', requests: 300, seed: 5, lanes: 3 }, test);
    expect(faults).toEqual([]);
    expect(standing.events).toBeGreaterThan(30);
    expect(log).not.toContain('42501'); // insufficient privilege (PostgreSQL, appendix A)
  });

  it('is enough for the alarms', async () => {
    const database = as(line);
    const log = fakeLog();
    await migrateAsOwner(database, log);
    await database.close();
    expect(log.lines).toEqual([]);
  });

  it.each([
    "UPDATE event SET type = 'x'",
    'DELETE FROM event',
    'TRUNCATE event',
    'DELETE FROM message',
    'DELETE FROM phone',
    'DELETE FROM "case"',
    "UPDATE audit SET what = 'x'",
    'DELETE FROM audit',
    'DELETE FROM family',
    "UPDATE line SET kind = 'practice'",
    'INSERT INTO clock (now_ms) VALUES (0)',
    'DELETE FROM migration',
    'ALTER TABLE event DISABLE TRIGGER ALL',
    'DROP TABLE event',
    'CREATE TABLE mine (a int)',
    'CREATE SCHEMA mine',
    'CREATE ROLE mine',
    "SELECT pg_read_file('/etc/passwd')",
    "COPY phone TO PROGRAM 'cat'",
  ])('may not: %s', async (statement) => {
    const database = as(line);
    await expect(database.query(statement)).rejects.toMatchObject({ code: '42501' });
    await database.close();
  });

  it('may not migrate, and says who may', async () => {
    const database = as(owner);
    const [last] = await database.query<{ number: number }>('SELECT max(number) AS number FROM migration');
    await database.query('UPDATE migration SET number = -1 WHERE number = $1', [last?.number]);
    const lines = as(line);
    await expect(migrate(lines, 'live')).rejects.toMatchObject({ code: 'migration-forbidden' });
    await lines.close();
    await database.query('UPDATE migration SET number = $1 WHERE number = -1', [last?.number]);
    await database.close();
  });
});

describe('the rights', () => {
  it('name every table there is', async () => {
    const schema = await readFile(new URL('../store/schema.sql', import.meta.url), 'utf8');
    const tables = new Set([...schema.matchAll(/^(\w+)\.\w+ /gm)].map(([, table]) => table));
    const rights = await sql('rights.sql');
    const granted = [...rights.matchAll(/^GRANT [A-Z, ]+\s+ON ([^;]+?) TO/gm)]
      .flatMap(([, names = '']) => names.split(', '))
      .map((table) => table.replaceAll('"', ''))
      .filter((table) => !/SCHEMA/.test(table));
    expect(granted.sort()).toEqual([...tables].sort());
  });
});
