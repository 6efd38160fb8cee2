/** The pause command on a line's database: it stops and resumes the advice of a line that is running on it. */
import { describe, expect, it } from 'vitest';
import { PauseUsage } from '#src/errors.ts';
import { pauseCommand } from '#src/pauseCommand.ts';
import { fakeLog, parent } from './line/fakes.ts';
import { openWorld } from './line/world.ts';
import { databases } from './store/databases.ts';

const url = process.env.TEST_DATABASE_URL;
const servers = databases().filter(({ name }) => name !== 'embedded');

async function run(words: readonly string[], environment: Record<string, string> = {}): Promise<string[]> {
  const printed: string[] = [];
  await pauseCommand(words, environment, fakeLog(), (text) => printed.push(text));
  return printed;
}

describe('the pause command', () => {
  it.each([[], ['--by', ' '], ['resume'], ['stop', '--by', 'Ada'], ['--who', 'Ada']])(
    'is refused: %j',
    async (...words) => {
      await expect(run(words)).rejects.toThrow(PauseUsage);
    },
  );
});

describe.each(servers)('on the $name database', ({ open }) => {
  it('is obeyed by a process that runs, from its next text on, until it is resumed', async () => {
    const world = await openWorld(open);
    const [row] = await world.database.query<{ name: string }>('SELECT current_database() AS name');
    const environment = { DATABASE_URL: new URL(row?.name ?? '', url).href };
    expect(await world.text('tube')).toEqual([`${parent} text askUnwell`]);
    const [said] = await run(['--by', 'Ada', '--why', 'wrong lengths'], environment);
    expect(said).toMatch(/^The line is paused since .* by Ada: wrong lengths\.$/);
    expect((await world.text('tube'))[0]).toBe(`${parent} text paused`);
    expect(await run(['resume', '--by', 'Bea'], environment)).toEqual(['The line is not paused: it gives advice.']);
    expect(await world.text('tube', '+12125550151')).toEqual(['+12125550151 text askUnwell']);
    const audit = await world.database.query<{ what: string; by_whom: Buffer }>('SELECT what, by_whom FROM audit');
    expect(audit.map(({ what, by_whom }) => [what, world.parts.seal.open(by_whom)])).toEqual([
      ['paused', 'Ada'],
      ['resumed', 'Bea'],
    ]);
    await world.close();
  });
});
