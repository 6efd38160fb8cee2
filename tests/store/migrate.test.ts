/** Migrations: run once, also by ten at once; one golden schema; practice and live never mixed. */
import { readdir, readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import { databases } from './databases.ts';
import { schemaOf } from './schema.ts';

const golden = new URL('./schema.sql', import.meta.url);

describe.each(databases())('on the $name database', ({ open }) => {
  let database: Database;

  beforeAll(async () => {
    database = await open();
    await Promise.all(Array.from({ length: 10 }, () => migrate(database, 'practice')));
  });
  afterAll(async () => database.close());

  it('run once though ten started at once', async () => {
    const files = await readdir(new URL('../../src/store/migrations/', import.meta.url));
    const numbers = files.sort().map((file) => ({ number: Number(file.slice(0, 4)) }));
    expect(await database.query('SELECT number FROM migration ORDER BY number')).toEqual(numbers);
    expect(numbers).toEqual(numbers.map((_, index) => ({ number: index + 1 })));
  });

  it('make the golden schema', async () => {
    expect(await schemaOf(database)).toBe(await readFile(golden, 'utf8'));
  });

  it('refuse a live line on a practice database and name it', async () => {
    await expect(migrate(database, 'live')).rejects.toMatchObject({ code: 'wrong-database', where: database.where });
    expect(await database.query('SELECT kind FROM line')).toEqual([{ kind: 'practice' }]);
  });

  it('refuse a database of a newer release, and a migration that was changed', async () => {
    await database.query("INSERT INTO migration (number, hash) VALUES (99, 'x')");
    await expect(migrate(database, 'practice')).rejects.toMatchObject({ code: 'database-newer' });
    await database.query('DELETE FROM migration WHERE number = 99');
    await database.query("UPDATE migration SET hash = 'x'");
    await expect(migrate(database, 'practice')).rejects.toMatchObject({ code: 'migration-changed' });
  });

  it('let nobody change or remove an event', async () => {
    await database.query("INSERT INTO phone (finder, number) VALUES ('a', 'b')");
    await database.query("INSERT INTO protocol (id, body) VALUES ('p', '{}')");
    await database.query('INSERT INTO "case" (phone_id, protocol_id, opened_ms) VALUES (1, \'p\', 0)');
    await database.query(
      "INSERT INTO event (case_id, number, at_ms, type, body, hash) VALUES (1, 1, 0, 'told', 'a', 'b')",
    );
    await expect(database.query('UPDATE event SET at_ms = 1')).rejects.toThrow('only ever added');
    await expect(database.query("UPDATE event SET body = 'x'")).rejects.toThrow('only ever added');
    await expect(database.query('DELETE FROM event')).rejects.toThrow('only ever added');
    const rewriting = (sql: string) =>
      database.transaction(async (client) => {
        await client.query("SET LOCAL nightjar.rewrites_bodies = 'on'");
        await client.query(sql);
      });
    await expect(rewriting("UPDATE event SET hash = 'x', body = 'x'")).rejects.toThrow('only ever added');
    await expect(rewriting('DELETE FROM event')).rejects.toThrow('only ever added');
    await expect(rewriting("UPDATE event SET body = 'x'")).resolves.toBeUndefined();
    expect(await database.query('SELECT at_ms FROM event')).toEqual([{ at_ms: 0 }]);
  });
});
