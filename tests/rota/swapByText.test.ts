/** A swap by text on a line of stand-ins: asked, agreed, paged by; nobody but the rota can, and nothing happens on a doubtful word. */
import { afterEach, describe, expect, it } from 'vitest';
import { nurses, parent } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

const [ada = '', bea = ''] = nurses.map(({ number }) => number);
const dot = { name: 'Dot', number: '+12025550104' };
const everybody = [...nurses, dot];

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  afterEach(async () => world.close());

  const opened = async () => {
    world = await openWorld(open, {
      nurses: everybody,
      nurseOf: (number) => everybody.find((nurse) => nurse.number === number) ?? null,
    });
  };

  it('is asked for, agreed on by a yes, and paged by at once', async () => {
    await opened();
    expect(await world.text('swap tonight with Dot', ada)).toEqual([
      `${dot.number} text swapAsk`,
      `${ada} text swapAsked`,
    ]);
    expect(await world.text('danger')).toContain(`${ada} text page emergency`);
    expect(await world.text('yes', dot.number)).toEqual([`${ada} text swapAgreed`, `${dot.number} text swapAgreed`]);
    expect(await world.text('danger')).toContain(`${dot.number} text page emergency`);
    expect(await world.database.query("SELECT what FROM audit WHERE what LIKE 'swap%'")).toEqual([
      { what: 'swap agreed' },
    ]);
  });

  it('is refused by a no, and both are told', async () => {
    await opened();
    await world.text('swap tonight with Dot', ada);
    expect(await world.text('no swap', dot.number)).toEqual([
      `${ada} text swapRefused`,
      `${dot.number} text swapDeclined`,
    ]);
    expect(await world.text('danger')).toContain(`${ada} text page emergency`);
    expect(await world.text('yes swap', dot.number)).toEqual([`${dot.number} text nothingPending`]);
  });

  it('leaves a bare yes to the clearance that waits for it', async () => {
    await opened();
    await world.text('tube');
    await world.text('hard');
    await world.text('take', ada);
    await world.text('swap tonight with Ada', bea);
    expect(await world.text('clear', ada)).toEqual([`${ada} text clearConfirm`]);
    expect(await world.text('yes', ada)).toContain(`${ada} text cleared`);
    expect(await world.text('yes', ada)).toEqual([`${bea} text swapAgreed`, `${ada} text swapAgreed`]);
  });

  it.each([
    ['with herself', 'swap tonight with ada', ada, 'swapForm'],
    ['without a time', 'swap with bea', ada, 'swapForm'],
  ])('changes nothing %s', async (_what, body, from, said) => {
    await opened();
    expect(await world.text(body, from)).toEqual([`${from} text ${said}`]);
    expect(await world.database.query('SELECT id FROM rota_swap')).toEqual([]);
  });

  it('changes nothing where neither is on call', async () => {
    world = await openWorld(open, {
      nurses: everybody,
      nurseOf: (number) => everybody.find((nurse) => nurse.number === number) ?? null,
      onCall: () => [null, null, null],
    });
    expect(await world.text('swap tonight with bea', ada)).toEqual([`${ada} text swapNobody`]);
  });

  it('is a caregiver’s text from anybody else', async () => {
    await opened();
    expect(await world.text('swap tonight with Dot', parent)).not.toContainEqual(expect.stringContaining('swap'));
    expect(await world.database.query('SELECT id FROM rota_swap')).toEqual([]);
  });
});
