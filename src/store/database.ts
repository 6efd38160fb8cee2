/** The database port: the same `pg` pool and the same SQL, whether the database is embedded or a server. */
import type { PoolClient, QueryResultRow } from 'pg';
import pg from 'pg';

/** A statement with a name is prepared once a connection. */
export interface Statement {
  readonly name: string;
  readonly text: string;
}

export interface Queryable {
  query<Row extends QueryResultRow>(statement: Statement | string, values?: readonly unknown[]): Promise<Row[]>;
}

export interface Database extends Queryable {
  /** Where it is, for a person; holds no secret. */
  readonly where: string;
  /** Runs `work` in one transaction: committed when it resolves, rolled back when it rejects. */
  transaction<T>(work: (client: Queryable) => Promise<T>): Promise<T>;
  close(): Promise<void>;
}

/** Names a statement. The name is the whole of its identity on a connection: one name, one text. */
export function statement(name: string, text: string): Statement {
  return { name, text };
}

/** By the server's own numbers of the types `bigint` and `bigint[]`. */
const numberParsers = new Map<number, (text: string) => number | number[]>([
  [20, Number],
  [1016, numbersOf],
]);

/** `bigint` columns hold counts and epoch milliseconds, all of them safe integers. */
export const types: pg.CustomTypesConfig = {
  getTypeParser: (oid, format) => numberParsers.get(oid) ?? pg.types.getTypeParser(oid, format),
};

/** "{1,2}", as the server writes an array of numbers. */
function numbersOf(text: string): number[] {
  return text === '{}' ? [] : text.slice(1, -1).split(',').map(Number);
}

/** The port over a pool. `closing` runs after the pool has ended. */
export function overPool(pool: pg.Pool, where: string, closing: () => Promise<void>): Database {
  // A connection cut while it is in use fails the statement that waits for it; without a listener it would end the process.
  pool.on('connect', (client) => client.on('error', () => undefined));
  return {
    where,
    query: (text, values) => withClient(pool, (client) => runOn(client).query(text, values)),
    transaction: (work) => withClient(pool, (client) => transactionOn(client, work)),
    close: async () => {
      await pool.end();
      await closing();
    },
  };
}

/**
 * Clients go back without the error: a pool throws a client away that is released with one, and the embedded database
 * has a single session behind every client (a broken server connection is noticed by the pool itself).
 */
async function withClient<T>(pool: pg.Pool, work: (client: PoolClient) => Promise<T>): Promise<T> {
  const client = await pool.connect();
  try {
    return await work(client);
  } finally {
    client.release();
  }
}

async function transactionOn<T>(client: PoolClient, work: (client: Queryable) => Promise<T>): Promise<T> {
  await client.query('BEGIN');
  try {
    const result = await work(runOn(client));
    await client.query('COMMIT');
    return result;
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined); // a broken connection has rolled back already
    throw error;
  }
}

function runOn(client: PoolClient): Queryable {
  return {
    query: async <Row extends QueryResultRow>(text: Statement | string, values: readonly unknown[] = []) => {
      const query = typeof text === 'string' ? { text } : text;
      const result = await client.query<Row>(values.length > 0 ? { ...query, values: [...values] } : query);
      // A text of several statements has several results.
      return [result].flat().flatMap((one) => one.rows);
    },
  };
}
