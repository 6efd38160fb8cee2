/** What a nurse does by text beside taking, clearing and closing: over the real way of one event, on stand-in machines. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { databases } from '#tests/store/databases.ts';
import { nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const [ada = '', bea = ''] = nurses.map((nurse) => nurse.number);
const other = '+12025550151';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
  });
  beforeEach(async () => {
    await world.line.reset(startMs, { families: [] });
    await world.text('tube');
    await world.text('person');
  });
  afterAll(async () => world.close());

  const states = async () => (await world.line.newestCase(parent))?.states.conversation;

  it('takes only the page she names by its code', async () => {
    await world.text('tube', other);
    await world.text('person', other);
    expect(await world.text('take A02', ada)).toEqual([`${other} text askHowIn`, `${ada} text taken`]);
  });

  it('sends in only after a yes, and asks which of two', async () => {
    expect(await world.text('go in', ada)).toEqual([`${ada} text sendInConfirm`]);
    expect(await states()).not.toContain('nurse.goIn');
    expect((await world.text('yes', ada)).at(-1)).toBe(`${ada} text sentIn`);
    expect(await states()).toContain('nurse.goIn');
    await world.text('tube', other);
    await world.text('person', other);
    for (const word of ['go in', 'close', 'fact tube gj', 'call', 'tell them hi', 'wrong', 'more', 'pass'])
      expect(await world.text(word, ada)).toEqual([`${ada} text which`]);
  });

  it('relays her words, her name with them, and the answer goes to her and answers nothing else', async () => {
    expect(await world.text('ask is she awake?', ada)).toEqual([
      `${parent} text askHowIn`,
      `${parent} text relay`,
      `${ada} text told`,
    ]);
    const answer = await world.text('yes');
    expect(answer).toContain(`${ada} text reply`);
    expect((await states())?.at(-1)).toBe('relayed');
    // The next one is the line's again, and still copied to her.
    expect(await world.text('tube')).toContain(`${ada} text reply`);
    expect((await states())?.at(-1)).toBe('told');
  });

  it('hears a danger in an answer to her as a danger', async () => {
    await world.text('tell them ring me', ada);
    await world.text('danger');
    expect((await states())?.at(-1)).toBe('signs');
  });

  it('lets nobody talk in a case another has', async () => {
    await world.text('danger');
    await world.text('take', bea);
    expect(await world.text('call', ada)).not.toContain(`${parent} text ringSoon`);
  });

  it('puts her through by a call to her that goes on to the family, which is told the number', async () => {
    const sent = await world.text('call', ada);
    expect(sent).toContain(`${parent} text ringSoon`);
    expect(sent).toContain(`${ada} call bridgeCall`);
  });

  it('takes a page by the key 1 in its own call, once, and from nobody else', async () => {
    await world.text('danger');
    const [call] = await world.database.query<{ id: number }>("SELECT id FROM message WHERE kind = 'call' ORDER BY id");
    const key = { messageId: String(call?.id), number: ada, digit: '1', id: 'CA1', cause: 'key' };
    for (const wrong of [{ digit: '2' }, { number: bea }, { number: parent }, { messageId: '9999' }])
      expect(await world.line.pressKey({ ...key, ...wrong })).toEqual({ go: 'nothing' });
    expect(await world.line.pressKey(key)).toEqual({ go: 'taken' });
    await world.line.pressKey(key);
    expect((await states())?.filter((type) => type === 'take')).toHaveLength(1);
  });

  it('rings the family by the key 1 in the call that puts her through', async () => {
    await world.text('call', ada);
    const [call] = await world.database.query<{ id: number }>('SELECT id FROM message WHERE bridge_to IS NOT NULL');
    const key = { messageId: String(call?.id), number: ada, digit: '1', id: 'CA2', cause: 'key' };
    expect(await world.line.pressKey(key)).toEqual({ go: 'ring', number: parent });
    expect(await world.line.pressKey({ ...key, digit: '2' })).toEqual({ go: 'nothing' });
  });

  it('corrects no reading, and a fact only after a yes', async () => {
    expect(await world.text('fact ph 5.5', ada)).toEqual([`${ada} text factNot`]);
  });

  it('keeps how it ended, and that the line was wrong', async () => {
    expect(await world.text('wrong it misread the kit', ada)).toEqual([`${ada} text reported`]);
    expect(await states()).toContain('nurse.reports');
    const [row] = await world.database.query<{ reported_ms: number }>('SELECT reported_ms FROM "case"');
    expect(row?.reported_ms).toBe(startMs);
    expect(await world.text('close: at home, well', ada)).toEqual([`${ada} text closeConfirm`]);
    expect(await world.text('yes', ada)).toContain(`${ada} text closed`);
  });

  it("gives a caregiver who types a nurse's words a caregiver's answer", async () => {
    for (const word of ['clear', 'go in', 'close', 'pass', 'call'])
      expect((await world.text(word)).every((sent) => sent.startsWith(parent))).toBe(true);
    expect((await states())?.filter((type) => type.startsWith('nurse.'))).toEqual([]);
  });
});
