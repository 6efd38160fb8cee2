/** The clock port: where the line gets the time. Nothing else in the line reads one. */
import { MissingRow } from '#src/errors.ts';
import type { Queryable } from '#src/store/database.ts';
import { statement } from '#src/store/database.ts';

export interface Clock {
  /** Epoch ms. Inside a transaction, pass its client. */
  now(client: Queryable): Promise<number>;
}

/** A live line's time is the real one. */
export const realClock: Clock = { now: async () => Date.now() };

const readClock = statement('clock.read', 'SELECT now_ms FROM clock');

/** The practice line's time stands in the database and moves only when it is told to. */
export const practiceClock: Clock = {
  now: async (client) => {
    const [row] = await client.query<{ now_ms: number }>(readClock);
    if (row === undefined) throw new MissingRow('clock');
    return row.now_ms;
  },
};
