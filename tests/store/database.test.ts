/** The database port: a failed statement or transaction harms nothing beside it. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Database, statement } from '#src/store/database.ts';
import { databases } from './databases.ts';

const divide = statement('test.divide', 'SELECT 6 / $1::int AS result');

describe.each(databases())('on the $name database', ({ name, open }) => {
  let database: Database;

  beforeAll(async () => {
    database = await open();
    await database.query('CREATE TABLE number (value bigint PRIMARY KEY)');
  });
  afterAll(async () => database.close());

  it('reads bigint as a number and goes on after errors of every sort', async () => {
    await expect(database.query(divide, [0])).rejects.toMatchObject({ code: '22012' });
    await expect(database.query('SELEC 1')).rejects.toMatchObject({ code: '42601' });
    await expect(database.query('SELECT 1; SELECT 1 / 0')).rejects.toMatchObject({ code: '22012' });
    expect(await database.query(divide, [3])).toEqual([{ result: 2 }]);
    expect(await database.query('SELECT 1767225600000::bigint AS ms')).toEqual([{ ms: 1767225600000 }]);
  });

  it('commits a transaction whole or not at all', async () => {
    await database.transaction(async (client) => client.query('INSERT INTO number VALUES (1)'));
    const failing = database.transaction(async (client) => {
      await client.query('INSERT INTO number VALUES (2)');
      await client.query(divide, [0]);
    });
    await expect(failing).rejects.toMatchObject({ code: '22012' });
    expect(await database.query('SELECT value FROM number')).toEqual([{ value: 1 }]);
  });

  it('has more transactions than connections without losing one', async () => {
    const values = Array.from({ length: 40 }, (_, index) => index + 100);
    await Promise.all(
      values.map((value) => database.transaction((client) => client.query('INSERT INTO number VALUES ($1)', [value]))),
    );
    expect(await database.query('SELECT count(*) AS count FROM number WHERE value >= 100')).toEqual([{ count: 40 }]);
  });

  // The embedded one has no connection to cut.
  if (name === 'server')
    it('outlives a connection cut in the middle of a transaction', async () => {
      const cut = database.transaction(async (client) => {
        const [mine] = await client.query<{ pid: number }>('SELECT pg_backend_pid() AS pid');
        await database.query('SELECT pg_terminate_backend($1)', [mine?.pid]);
        await expect.poll(() => database.query('SELECT FROM pg_stat_activity WHERE pid = $1', [mine?.pid])).toEqual([]);
        await client.query('INSERT INTO number VALUES (3)');
      });
      await expect(cut).rejects.toThrow();
      expect(await database.query('SELECT value FROM number WHERE value = 3')).toEqual([]);
    });
});
