/**
 * A turn that dies anywhere leaves nothing half done. Each test fails the first statement of a turn, then the second, and so
 * on until one passes clean, and once more after the commit, when only its answer is lost.
 */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { createLine } from '#src/line/createLine.ts';
import type { Line } from '#src/line/line.ts';
import type { Database, Queryable } from '#src/store/database.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeParts, minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

class Crash extends Error {}

/** Where it dies: after so many statements inside transactions, or once a commit has gone through. */
interface Fault {
  statementsLeft: number;
  afterCommit: boolean;
}

/** The database of a process that dies: once it has, nothing of it reaches the database any more. */
function dying(database: Database, fault: Fault): Database {
  let dead = false;
  const alive = () => {
    if (dead) throw new Crash('dead');
  };
  return {
    ...database,
    query: (text, values) => {
      alive();
      return database.query(text, values);
    },
    transaction: async (work) => {
      alive();
      const result = await database.transaction((client) =>
        work({
          query: async <Row extends object>(...[text, values]: Parameters<Queryable['query']>) => {
            alive();
            const rows = await client.query<Row>(text, values);
            fault.statementsLeft -= 1;
            if (fault.statementsLeft === 0) {
              dead = true;
              throw new Crash('died inside a turn');
            }
            return rows;
          },
        }),
      );
      if (fault.afterCommit) {
        dead = true;
        throw new Crash('died after the commit');
      }
      return result;
    },
  };
}

const tables = ['phone', '"case"', 'event', 'message', 'timer', 'page', 'family'];
const ada = nurses[0]?.number ?? '';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
  });
  beforeEach(async () => world.line.reset(startMs, { families: [] }));
  afterAll(async () => world.close());

  const everything = async () => {
    const rows = [];
    for (const table of tables) rows.push(await world.database.query(`SELECT * FROM ${table} ORDER BY 1, 2`));
    return rows;
  };

  /** Prepares a state, dies at each place of one move, and looks; `move` is then done again by a process that lives. */
  async function dieEverywhere(prepare: () => Promise<void>, move: (line: Line, id: string) => Promise<void>) {
    let deaths = 0;
    for (let place = 1; ; place += 1) {
      await world.line.reset(startMs, { families: [] });
      await prepare();
      const before = await everything();
      const doomed = createLine(fakeParts(dying(world.database, { statementsLeft: place, afterCommit: false })));
      const died = await move(doomed, `id-${place}`).then(
        () => false,
        () => true,
      );
      if (!died) break;
      deaths += 1;
      expect(await everything()).toEqual(before);
      await move(world.line, `id-${place}`);
      expect(await everything()).not.toEqual(before);
    }
    return deaths;
  }

  it('a text that opens a case', async () => {
    const move = (line: Line, id: string) => line.hear({ from: parent, body: 'danger', id, cause: id });
    expect(await dieEverywhere(async () => undefined, move)).toBeGreaterThan(4);
  });

  it('a text in an open case', async () => {
    const move = (line: Line, id: string) => line.hear({ from: parent, body: 'person', id, cause: id });
    const prepare = async () => void (await world.text('tube'));
    expect(await dieEverywhere(prepare, move)).toBeGreaterThan(3);
  });

  it('a nurse’s take', async () => {
    const move = (line: Line, id: string) => line.hear({ from: ada, body: 'take', id, cause: id });
    const prepare = async () => {
      await world.text('tube');
      await world.text('person');
    };
    expect(await dieEverywhere(prepare, move)).toBeGreaterThan(4);
  });

  it('a timer: it fires once, by the process that lives', async () => {
    const prepare = async () => {
      await world.text('tube');
      await world.database.query('UPDATE clock SET now_ms = now_ms + $1', [5 * minuteMs]);
    };
    expect(await dieEverywhere(prepare, (line, id) => line.settle(id))).toBeGreaterThan(2);
    expect((await world.line.newestCase(parent))?.states.conversation).toEqual(['told', 'xstate.after.quiet']);
  });

  it('an answer lost after the commit: the carrier sends the text again, and it has its one effect', async () => {
    const doomed = createLine(fakeParts(dying(world.database, { statementsLeft: -1, afterCommit: true })));
    const text = { from: parent, body: 'tube', id: 'lost', cause: 'first' };
    await expect(doomed.hear(text)).rejects.toThrow('dead');
    await world.line.hear({ ...text, cause: 'second' });
    await world.line.settle('second');
    expect(await world.sent('first')).toEqual([`${parent} text askUnwell`]);
    expect(await world.sent('second')).toEqual([]);
    expect((await world.line.newestCase(parent))?.states.conversation).toEqual(['told']);
  });

  it('the process that dies with a message in hand: the next one carries it', async () => {
    await world.line.hear({ from: parent, body: 'tube', id: 'hand', cause: 'hand' });
    await world.line.settle('hand');
    await world.database.query("UPDATE message SET state = 'carrying', hold_until_ms = $1 WHERE direction = 'out'", [
      startMs,
    ]);
    const next = createLine(fakeParts(world.database));
    await next.start();
    expect(await world.database.query("SELECT state FROM message WHERE direction = 'out'")).toEqual([
      { state: 'accepted' },
    ]);
    await next.stop();
  });
});
