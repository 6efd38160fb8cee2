/** A line of stand-ins on a database of its own, and the few moves a test makes on it. */
import { createLine } from '#src/line/createLine.ts';
import type { Line } from '#src/line/line.ts';
import type { Parts } from '#src/line/parts.ts';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import type { TestDatabase } from '#tests/store/databases.ts';
import { fakeParts, parent } from './fakes.ts';

export interface World {
  readonly database: Database;
  readonly parts: Parts;
  readonly line: Line;
  /** Sends one text and returns what left because of it, as `to kind body`. */
  text(body: string, from?: string, id?: string): Promise<string[]>;
  /** What left because of a request, in the same form. */
  sent(cause: string): Promise<string[]>;
  close(): Promise<void>;
}

let made = 0;

/** A started line; `change` replaces stand-ins. */
export async function openWorld(open: TestDatabase['open'], change: Partial<Parts> = {}): Promise<World> {
  const database = await open();
  await migrate(database, change.kind ?? 'practice');
  const parts = fakeParts(database, change);
  const line = createLine(parts);
  await line.start();
  const sent = async (cause: string) =>
    (await line.sentBecauseOf(cause)).map((message) => `${message.to} ${message.kind} ${message.body}`);
  return {
    database,
    parts,
    line,
    sent,
    text: async (body, from = parent, id = `text-${++made}`) => {
      const cause = `cause-${++made}`;
      await line.hear({ from, body, id, cause });
      await line.settle(cause);
      return sent(cause);
    },
    close: async () => {
      await line.stop();
      await database.close();
    },
  };
}
