/** A handover that cannot be put together: the day team is told, and the clock goes on to the next one. */
import { afterEach, describe, expect, it } from 'vitest';
import { fakeLog, parent, protocol, startMs } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

const handoverNumber = '+12025550142';
const site = { ...protocol.site, handoverNumber, handoverAt: '07:30' };
const hourMs = 3_600_000;

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  afterEach(async () => world.close());

  it('is told to the day team and tried again the next morning', async () => {
    let broken = true;
    const log = fakeLog();
    world = await openWorld(open, {
      log,
      protocol: { ...protocol, site },
      rotaGaps: () => {
        if (broken) throw new Error('broken');
        return [];
      },
    });
    await world.line.reset(startMs, { families: [] });
    await world.text('tube');
    await world.line.advance(startMs + 12 * hourMs, 'first');
    expect((await world.sent('first')).filter((sent) => sent.startsWith(handoverNumber))).toEqual([
      `${handoverNumber} text handoverFailed`,
    ]);
    expect(JSON.stringify(log.lines)).toContain('what is scheduled failed twice and is put off');
    broken = false;
    await world.line.advance(startMs + 36 * hourMs, 'second');
    expect((await world.sent('second')).filter((sent) => sent.startsWith(handoverNumber))).toEqual([
      `${handoverNumber} text handover`,
    ]);
  });

  it('is not given at a site without a number for it', async () => {
    world = await openWorld(open);
    await world.line.reset(startMs, { families: [] });
    await world.text('tube');
    await world.line.advance(startMs + 36 * hourMs, 'on');
    expect((await world.sent('on')).filter((sent) => !sent.startsWith(parent))).not.toContainEqual(
      expect.stringContaining('handover'),
    );
    expect(await world.database.query('SELECT what FROM scheduled')).toEqual([]);
  });
});
