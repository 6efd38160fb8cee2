/** Simulated nights: fifty seeds, in short ten, of the whole line under every fault there is, and planted faults that the rules must see. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Database } from '#src/store/database.ts';
import { migrate } from '#src/store/migrate.ts';
import { inFull } from '#tests/needs.ts';
import { databases } from '#tests/store/databases.ts';
import { playNight } from './world.ts';

const hours = 0.5;
const seedsATest = 10;
const [embedded] = databases();

describe('simulated nights', () => {
  let database: Database;

  beforeAll(async () => {
    if (embedded === undefined) throw new Error('the embedded database is always there');
    database = await embedded.open();
    await migrate(database, 'live');
  });
  afterAll(async () => database.close());

  it.each(inFull ? [1, 11, 21, 31, 41] : [1])(
    'from seed %i on hold every rule',
    async (first) => {
      const faults = new Set<string>();
      let texts = 0;
      for (let seed = first; seed < first + seedsATest; seed += 1) {
        const outcome = await playNight(database, seed, hours);
        expect(outcome.broken, `replay with npm run sim -- --seed ${seed} --hours ${hours}`).toEqual([]);
        texts += outcome.texts;
        for (const name of outcome.faults.keys()) faults.add(name);
      }
      expect(texts).toBeGreaterThan(100);
      expect([...faults]).toEqual(
        expect.arrayContaining(['process killed', 'database away', 'webhook lost', 'carrier: timeout']),
      );
    },
    180_000,
  );

  it('are the same each time for one seed', async () => {
    const first = await playNight(database, 7, hours);
    expect(await playNight(database, 7, hours)).toEqual(first);
  });

  it.each([
    ['a carrier whose lists are empty', /never heard|sent 2 times/],
    ['a sweep that never comes', /timers? .*(late|not fired)/],
  ] as const)('see a planted fault: %s', async (plant, words) => {
    const nights = [];
    for (const seed of [1, 2]) nights.push(...(await playNight(database, seed, hours, plant)).broken);
    expect(nights.join('\n')).toMatch(words);
  });
});
