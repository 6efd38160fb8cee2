/** The line paused: no advice from any process, the emergency number and a page for every text, until it is resumed. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { pauseLine } from '#src/line/pause.ts';
import { databases } from '#tests/store/databases.ts';
import { minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const [ada = '', bea = '', cleo = ''] = nurses.map((nurse) => nurse.number);
const leading = nurses.map((nurse) => (nurse.number === ada ? { ...nurse, lead: true } : nurse));
const everybody = [ada, bea, cleo];
const stranger = '+12125550151';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open, {
      nurses: leading,
      nurseOf: (number) => leading.find((nurse) => nurse.number === number) ?? null,
    });
  });
  beforeEach(async () => world.line.reset(startMs, { families: [] }));
  afterAll(async () => world.close());

  /** As the command does: from another process, straight into the database. */
  const pause = () =>
    world.database.transaction((client) =>
      pauseLine(client, world.parts.seal, { atMs: startMs, by: 'Ada', why: null }, null),
    );
  const toFamily = (sent: readonly string[], number = parent) => sent.filter((one) => one.startsWith(number));
  const pagedIn = (sent: readonly string[]) =>
    everybody.filter((number) =>
      sent.some((one) => one.startsWith(`${number} text EMERGENCY. The line is paused`) && one.includes(parent)),
    );
  const audited = async () =>
    (await world.database.query<{ what: string }>('SELECT what FROM audit ORDER BY id')).map(({ what }) => what);

  it('answers every text with no advice and pages everybody, in a case, without one, and again', async () => {
    await world.text('tube');
    await world.text('tube', stranger);
    await pause();
    for (const body of ['tube', 'danger', 'thanks', '', 'yes']) {
      const sent = await world.text(body);
      expect(toFamily(sent)).toEqual([`${parent} text paused`]);
      expect(pagedIn(sent)).toEqual(everybody);
    }
    expect(await world.line.newestCase(parent)).toMatchObject({ asking: null, disposition: 'nurse' });
    expect(toFamily(await world.text('tube', '+12125550152'), '+12125550152')).toEqual(['+12125550152 text paused']);
  });

  it('gives who waits for a nudge or a recheck to a person when its timer comes true', async () => {
    await world.text('tube');
    await pause();
    await world.line.advance(startMs + 5 * minuteMs, 'clock');
    const sent = await world.sent('clock');
    expect(toFamily(sent)).toEqual([`${parent} text paused`]);
    expect(pagedIn(sent)).toEqual(everybody);
  });

  it('advises nobody through a nurse either: a page can be taken, nothing cleared or corrected', async () => {
    await world.text('tube');
    await world.text('hard');
    await world.text('clear', ada);
    await pause();
    expect(await world.text('yes', ada)).toEqual([`${ada} text pausedNoAdvice`]);
    expect(await world.text('clear', ada)).toEqual([`${ada} text pausedNoAdvice`]);
    expect(await world.text('fact tube gj', ada)).toEqual([`${ada} text pausedNoAdvice`]);
    expect(await world.text('take', ada)).toEqual([`${parent} text paused`, `${ada} text taken`]);
    expect((await world.line.newestCase(parent))?.states.conversation).not.toContain('nurse.clear');
  });

  it('is paused by a lead who says so twice, and resumed the same way; who and when is kept', async () => {
    await world.text('tube');
    expect(await world.text('Pause the line, wrong lengths', ada)).toEqual([`${ada} text pauseConfirm`]);
    expect(await world.line.pause()).toBeNull();
    expect(await world.text('yes', ada)).toEqual([`${ada} text pausedNow`]);
    expect(await world.line.pause()).toEqual({ atMs: startMs, by: 'Ada', why: 'wrong lengths' });
    expect(await world.text('pause the line', ada)).toEqual([`${ada} text pausedAlready`]);
    expect(toFamily(await world.text('tube', stranger), stranger)).toEqual([`${stranger} text paused`]);
    expect(await world.text('resume the line', ada)).toEqual([`${ada} text resumeConfirm`]);
    expect(await world.text('yes', ada)).toEqual([`${ada} text resumedNow`]);
    expect(await world.line.pause()).toBeNull();
    expect(await world.text('resume the line', ada)).toEqual([`${ada} text notPaused`]);
    expect(await audited()).toEqual(['reset', 'paused', 'resumed']);
    // Who nobody texted meanwhile goes on; who was given to a person stays hers.
    expect(await world.text('tube')).toEqual([`${parent} text askUnwell`]);
    expect(await world.line.newestCase(stranger)).toMatchObject({ disposition: 'nurse' });
  });

  it('is not paused by a no, a late yes, another nurse, or a family', async () => {
    await world.text('pause the line', ada);
    await world.text('no', ada);
    await world.text('yes', ada);
    await world.text('pause the line', ada);
    await world.line.advance(startMs + 16 * minuteMs, 'clock');
    await world.text('yes', ada);
    expect(await world.text('pause the line', bea)).toEqual([`${bea} text pauseLeads`]);
    await world.text('yes', bea);
    await world.text('pause the line');
    await world.text('yes');
    expect(await world.line.pause()).toBeNull();
    expect(await audited()).toEqual(['reset']);
  });

  it('holds once: a second pause changes nothing', async () => {
    expect([await pause(), await pause()]).toEqual([true, false]);
    await expect(world.database.query("INSERT INTO pause (at_ms, by) VALUES (1, 'x')")).rejects.toThrow(
      /pause_one_open/,
    );
  });
});
