/** A stranger who texts without end costs little and is never left alone with a danger; a family with a case is never held back. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerEveryMs, textsMost } from '#src/line/restraint.ts';
import { databases } from '#tests/store/databases.ts';
import { parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const stranger = '+12025550171';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  let nowMs = startMs;

  beforeAll(async () => {
    nowMs = startMs;
    world = await openWorld(open, { kind: 'live', clock: { now: async () => nowMs }, wallMs: () => nowMs });
  });
  afterAll(async () => world.close());

  it('answers each of the first texts, then one in ten minutes, and keeps them all', async () => {
    for (let sent = 0; sent < textsMost; sent += 1)
      expect(await world.text('mumble', stranger)).toEqual([`${stranger} text askAboutTube`]);
    for (let more = 0; more < 20; more += 1) expect(await world.text('mumble', stranger)).toEqual([]);
    nowMs += answerEveryMs;
    expect(await world.text('mumble', stranger)).toEqual([`${stranger} text askAboutTube`]);
    expect(await world.text('mumble', stranger)).toEqual([]);
    const heard = (await world.line.thread(stranger)).filter(({ direction }) => direction === 'in');
    expect(heard).toHaveLength(textsMost + 22);
  });

  it('hears a wish to stop, and a danger always', async () => {
    expect(await world.text('stop', stranger)).toEqual([]);
    expect(await world.database.query('SELECT opted_out FROM phone WHERE opted_out')).toHaveLength(1);
    expect(await world.text('danger', stranger)).toEqual(
      expect.arrayContaining([`${stranger} text opening`, expect.stringContaining('call')]),
    );
  });

  it('answers every text of an open case, however many', async () => {
    await world.text('tube', parent);
    for (let sent = 0; sent < textsMost * 2; sent += 1)
      expect(await world.text('mumble', parent)).toEqual([`${parent} text askUnwell`]);
  });
});
