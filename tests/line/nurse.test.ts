/** A nurse's phone: taking, clearing, closing, and being a parent as well. */
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { databases } from '#tests/store/databases.ts';
import { fallbackNumber, minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const [ada = '', bea = ''] = nurses.map((nurse) => nurse.number);
const other = '+12025550151';
const wren = {
  child: 'Wren',
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: 7,
  weighedOn: null,
  language: 'en',
} as const;

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
  });
  beforeEach(async () => world.line.reset(startMs, { families: [] }));
  afterAll(async () => world.close());

  const pages = async (phone: string) =>
    (await world.line.newestCase(phone))?.pages.map((page) => `${page.to} ${page.takenAt !== null}`);

  it('takes every open page of hers in one text, and each family is told', async () => {
    for (const phone of [parent, other]) {
      await world.text('tube', phone);
      await world.text('person', phone);
    }
    expect(await world.text('take', ada)).toEqual([
      `${parent} text askHowIn`,
      `${other} text askHowIn`,
      `${ada} text taken`,
    ]);
    expect(await pages(parent)).toEqual([`${ada} true`]);
    expect((await world.line.newestCase(other))?.states.conversation.at(-1)).toBe('take');
    // Once more changes nothing, and says what she has.
    expect(await world.text('take', ada)).toEqual([`${ada} text taken`]);
  });

  it('reads who has a case once another person took it, and takes it over only by a yes', async () => {
    await world.text('danger');
    expect(await world.text('take', bea)).toEqual([`${parent} text askHowIn`, `${bea} text taken`]);
    expect(await world.text('take', ada)).toEqual([`${ada} text heldBy`]);
    expect(await world.text('no', ada)).toEqual([`${ada} text dropped`]);
    expect(await pages(parent)).toEqual([`${ada} false`, `${bea} true`]);
  });

  it('has nothing to take where nobody called her', async () => {
    expect(await world.text('take', ada)).toEqual([`${ada} text nothingToTake`]);
  });

  it('lets one of two who take in the same instant have it', async () => {
    await world.text('danger');
    const answers = await Promise.all([world.text('take', ada), world.text('take', bea)]);
    const toNurses = answers.flat().filter((answer) => !answer.startsWith(parent));
    expect(toNurses.map((answer) => answer.split(' ')[2]).sort()).toEqual(['heldBy', 'taken']);
    expect((await world.line.newestCase(parent))?.states.conversation).toEqual(['signs', 'take']);
  });

  it('sends further news to the one who took it', async () => {
    await world.text('tube');
    await world.text('danger');
    await world.text('take', bea);
    await world.line.advance(startMs + 5 * minuteMs, 'clock');
    expect(await world.sent('clock')).toEqual([`${parent} text askHowIn`, `${bea} text news`]);
  });

  it('clears one hard insertion after her yes, within a quarter of an hour', async () => {
    await world.text('tube');
    await world.text('hard');
    expect(await world.text('clear', ada)).toEqual([`${ada} text clearConfirm`]);
    // Whoever clears it has taken it: the family hears both.
    expect(await world.text('yes', ada)).toEqual([
      `${parent} text askHowIn`,
      `${parent} text askUnwell`,
      `${ada} text cleared`,
    ]);
    expect(await world.text('yes', ada)).toEqual([`${ada} text notSure`]);
    expect(await world.text('clear', ada)).toEqual([`${ada} text clearNotNow`]);
  });

  it('clears nothing on a late yes, on a no, or where two could be meant', async () => {
    await world.text('tube');
    await world.text('hard');
    await world.text('clear', ada);
    expect(await world.text('no', ada)).toEqual([`${ada} text dropped`]);
    await world.text('clear', ada);
    await world.line.advance(startMs + 16 * minuteMs, 'clock');
    expect(await world.text('yes', ada)).toEqual([`${ada} text dropped`]);
    await world.text('tube', other);
    await world.text('hard', other);
    expect(await world.text('clear', ada)).toEqual([`${ada} text clearNotNow`]);
    expect(await world.text('clear A02', ada)).toEqual([`${ada} text clearConfirm`]);
    expect(await world.text('yes', ada)).toEqual([
      `${other} text askHowIn`,
      `${other} text askUnwell`,
      `${ada} text cleared`,
    ]);
    expect((await world.line.newestCase(parent))?.disposition).toBe('hold');
  });

  it('takes a yes only right after its question: whatever she texts between undoes it', async () => {
    await world.text('tube');
    await world.text('hard');
    for (const between of ['take', 'claer', 'clear A02']) {
      expect(await world.text('clear', ada)).toEqual([`${ada} text clearConfirm`]);
      await world.text(between, ada);
      expect(await world.text('yes', ada), between).toEqual([`${ada} text notSure`]);
    }
    expect((await world.line.newestCase(parent))?.disposition).toBe('hold');
  });

  it('keeps what waits for her yes while she looks at the child', async () => {
    await world.text('tube');
    await world.text('hard');
    await world.text('clear', ada);
    await world.text('more', ada);
    expect(await world.text('yes', ada)).toContain(`${ada} text cleared`);
  });

  it("knows a case by the child's name too, and shows the family's first words beside its last", async () => {
    const said = vi.spyOn(world.parts, 'wordForNurse');
    await world.line.enrol(parent, wren);
    await world.text('tube');
    for (const text of ['one', 'two', 'three']) await world.text(text);
    await world.text('hard');
    expect(await world.text('TAKE wren', ada)).toContain(`${ada} text taken`);
    expect(await world.text('more robin', ada)).toEqual([`${ada} text notSure`]);
    await world.text('more Wren', ada);
    const words = said.mock.calls.flatMap(([say]) => (say.key === 'moreSaid' ? [say.params.texts] : []));
    expect(words).toEqual([['tube', 'three', 'hard']]);
    expect(await world.text('clear wren', ada)).toEqual([`${ada} text clearConfirm`]);
  });

  it('lets nobody clear a case she was not called for', async () => {
    await world.text('tube');
    await world.text('hard');
    expect(await world.text('clear', bea)).toEqual([`${bea} text clearNotNow`]);
  });

  it('closes a case after her yes; the next text opens another', async () => {
    await world.text('tube');
    await world.text('person');
    expect(await world.text('close', ada)).toEqual([`${ada} text closeConfirm`]);
    expect(await world.text('yes', ada)).toEqual([`${parent} text closedByNurse`, `${ada} text closed`]);
    expect(await world.line.newestCase(parent)).toMatchObject({ id: '1', due: [] });
    expect(await world.text('thanks')).toEqual([`${parent} text thanks`]);
    await world.text('tube');
    expect(await world.line.newestCase(parent)).toMatchObject({ id: '2' });
    expect(await world.text('close', bea)).toEqual([`${bea} text nothingPending`]);
  });

  it('tells her the words it reads when it is not sure, also from the fallback number', async () => {
    expect(await world.text('what is it', ada)).toEqual([`${ada} text notSure`]);
    expect(await world.text('what is it', fallbackNumber)).toEqual([`${fallbackNumber} text notSure`]);
    expect(await world.text('stop', ada)).toEqual([`${ada} text stopped`]);
  });

  it('hears her as a parent where her own child is the matter', async () => {
    expect(await world.text('tube', ada)).toEqual([`${ada} text askUnwell`]);
    expect(await world.text('yes', ada)).toEqual([`${ada} text askUnwell`]);
    expect((await world.line.newestCase(ada))?.states.conversation).toEqual(['told', 'unclear']);
    expect(await world.text('take', ada)).toEqual([`${ada} text nothingToTake`]);
  });
});
