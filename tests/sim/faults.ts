/** The database of a process that may die: statements fail before or after they ran, connections are cut, the server goes away. */
import type { Database, Queryable } from '#src/store/database.ts';
import type { Dice } from '#tests/dislodgement/attack/alphabet.ts';

/** One process of the line, from its start to its death. */
export interface Incarnation {
  dead: boolean;
}

/** What troubles the world just now. */
export interface Trouble {
  /** Off while a rule looks, and at the end of a night. */
  on: boolean;
  databaseAway: boolean;
  /** How many faults there were, by their names. */
  readonly met: Map<string, number>;
}

export class Cut extends Error {}

/** Work under way: the world stands still until it is none. */
export interface Busy {
  count: number;
}

const cutShare = 0.002;

export function count(trouble: Trouble, name: string): void {
  trouble.met.set(name, (trouble.met.get(name) ?? 0) + 1);
}

export function faulty(database: Database, life: Incarnation, trouble: Trouble, dice: Dice, busy: Busy): Database {
  const alive = (): void => {
    if (life.dead) throw new Cut('the process is dead');
    if (trouble.on && trouble.databaseAway) throw new Cut('the database is away');
  };
  const maybeCut = (when: string): void => {
    if (!trouble.on || !dice.chance(cutShare)) return;
    count(trouble, `connection cut ${when}`);
    throw new Cut('the connection is cut');
  };
  const guarded = async <T>(work: () => Promise<T>): Promise<T> => {
    busy.count += 1;
    try {
      alive();
      maybeCut('before');
      const result = await work();
      alive();
      maybeCut('after'); // done, but nobody hears of it
      return result;
    } finally {
      busy.count -= 1;
    }
  };
  const over = (client: Queryable): Queryable => ({
    query: (text, values) => guarded(() => client.query(text, values)),
  });
  return {
    ...over(database),
    where: database.where,
    transaction: (work) =>
      guarded(() =>
        database.transaction(async (client) => {
          const result = await work(over(client));
          alive(); // a dead process commits nothing
          return result;
        }),
      ),
    close: async () => undefined,
  };
}
