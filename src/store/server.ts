/** A PostgreSQL server as the database, by its URL. */
import pg from 'pg';
import { type Database, overPool, types } from './database.ts';

/** Opens a pool. `size` is the number of connections; an idle one that breaks is replaced by the pool. */
export function openServer(url: string, size: number, onBroken: (error: Error) => void): Database {
  const pool = new pg.Pool({ connectionString: url, max: size, types, application_name: 'nightjar' });
  pool.on('error', onBroken);
  return overPool(pool, whereOf(url), async () => undefined);
}

/** Host and database of a URL, without user and password. */
function whereOf(url: string): string {
  const { host, pathname } = new URL(url);
  return `postgresql://${host}${pathname}`;
}
