/** The way of one text: answered for good, once, in order, and never with silence. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Line } from '#src/line/line.ts';
import { databases } from '#tests/store/databases.ts';
import { minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const [ada, bea] = nurses.map((nurse) => nurse.number);

describe.each(databases())('on the $name database', ({ name, open }) => {
  let world: World;
  let line: Line;
  let text: World['text'];

  beforeAll(async () => {
    world = await openWorld(open);
    ({ line, text } = world);
  });
  beforeEach(async () => line.reset(startMs, { families: [] }));
  afterAll(async () => world.close());

  it('opens a case for a text about a tube and answers it', async () => {
    expect(await text('tube is out')).toEqual([`${parent} text askUnwell`]);
    const found = await line.newestCase(parent);
    expect(found).toMatchObject({
      asking: 'unwell',
      states: { conversation: ['told'] },
      pages: [],
      due: [{ what: 'silence', at: '2027-03-06T02:15:00.000-05:00' }],
    });
  });

  it('answers a repeated id with nothing and changes nothing', async () => {
    await text('tube is out', parent, 'same');
    expect(await text('tube is out', parent, 'same')).toEqual([]);
    expect(await text('tube is out', '+12025550151', 'same')).toEqual([]);
    expect((await line.newestCase(parent))?.states.conversation).toEqual(['told']);
    expect(await line.newestCase('+12025550151')).toBeNull();
  });

  it('asks a first text about something else one question, and its yes opens', async () => {
    expect(await text('hello')).toEqual([`${parent} text askAboutTube`]);
    expect(await line.newestCase(parent)).toBeNull();
    expect(await text('yes')).toEqual([`${parent} text askUnwell`]);
    expect((await line.newestCase(parent))?.states.conversation).toEqual(['told']);
  });

  it('takes its no for an answer', async () => {
    await text('hello');
    expect(await text('no')).toEqual([`${parent} text notAboutTube`]);
    expect(await line.newestCase(parent)).toBeNull();
  });

  it('opens nothing for a thank-you, but does for a danger sign', async () => {
    expect(await text('thanks a lot')).toEqual([`${parent} text thanks`]);
    expect(await text('danger')).toEqual([
      `${parent} text opening`,
      `${ada} text page emergency`,
      `${ada} call pageCall emergency`,
      `${bea} text page emergency`,
      `${bea} call pageCall emergency`,
    ]);
    expect((await line.newestCase(parent))?.pages).toEqual([
      { to: ada, level: 'emergency', at: '2027-03-06T02:10:00.000-05:00', takenAt: null },
      { to: bea, level: 'emergency', at: '2027-03-06T02:10:00.000-05:00', takenAt: null },
    ]);
  });

  it('answers help, an empty text, NUL and half characters', async () => {
    expect(await text('help')).toEqual([`${parent} text help`]);
    expect(await text('')).toEqual([`${parent} text askAboutTube`]);
    expect(await text('tube \0 \ud800', parent, 'id \0')).toEqual([`${parent} text askUnwell`]);
    expect((await line.thread(parent)).at(-2)).toEqual({
      direction: 'in',
      body: 'tube  \ufffd',
      at: '2027-03-06T02:10:00.000-05:00',
      kind: 'text',
    });
  });

  it('takes a picture without words for a picture', async () => {
    await text('tube');
    await line.hear({ from: parent, body: '', id: 'picture', cause: 'picture', media: ['https://carrier.example/1'] });
    expect((await line.newestCase(parent))?.states.conversation).toEqual(['told', 'media']);
  });

  it('calls the fallback number where the rota names nobody', async () => {
    await text('tube');
    expect(await text('gap')).toEqual([`${parent} text askHowIn`, '+12025550109 text page urgent']);
  });

  it('fires a timer at its own time, and one due at once within its own request', async () => {
    await text('tube');
    await line.advance(startMs + 60 * minuteMs, 'clock');
    expect(await line.sentBecauseOf('clock')).toEqual([
      { to: parent, body: 'askHowIn', at: '2027-03-06T02:15:00.000-05:00', kind: 'text' },
      { to: ada, body: 'news', at: '2027-03-06T02:15:00.000-05:00', kind: 'text' },
    ]);
    expect(await line.now()).toBe(startMs + 60 * minuteMs);
    expect((await line.newestCase(parent))?.due).toEqual([]);
    expect(await text('now')).toEqual([`${parent} text askHowIn`, `${parent} text closedByNurse`]);
  });

  it('restarts a timer instead of letting the old one fire', async () => {
    await text('tube');
    await line.advance(startMs + 4 * minuteMs, 'clock-1');
    await text('mumble');
    await line.advance(startMs + 8 * minuteMs, 'clock-2');
    expect(await line.sentBecauseOf('clock-2')).toEqual([]);
    await line.advance(startMs + 9 * minuteMs, 'clock-3');
    expect(await line.sentBecauseOf('clock-3')).toHaveLength(2);
  });

  it('does not let the clock go back', async () => {
    await expect(line.advance(startMs - 1, 'back')).rejects.toMatchObject({ code: 'clock-backward' });
  });

  it('confirms a STOP once; then only answers leave, and nothing by itself', async () => {
    await text('tube');
    expect(await text('stop')).toEqual([`${parent} text stopped`, `${ada} text page urgent`]);
    await line.advance(startMs + 10 * minuteMs, 'clock');
    expect((await line.sentBecauseOf('clock')).map((sent) => sent.to)).toEqual([ada]);
    expect(await text('person')).toEqual([`${parent} text askHowIn`, `${ada} text page urgent`]);
  });

  it('keeps the file a case began with, and enrols for the next', async () => {
    const family = {
      child: 'Robin',
      born: null,
      tubeKind: 'g',
      firstPlaced: null,
      weightKg: 7,
      weighedOn: null,
      language: 'en',
    } as const;
    await line.enrol(parent, family);
    await line.enrol(parent, { ...family, child: 'Wren' });
    expect(await line.families()).toEqual([{ number: parent, child: 'Wren' }]);
    await line.reset(startMs, { families: [{ number: '+12025550151', ...family }] });
    expect(await line.families()).toEqual([{ number: '+12025550151', child: 'Robin' }]);
  });

  it('takes two texts of one phone in the order they came', async () => {
    const bodies = ['tube', 'mumble', 'person', 'hard', 'mumble', 'now'];
    await Promise.all(
      bodies.map((body, place) => line.hear({ from: parent, body, id: `order-${place}`, cause: 'order' })),
    );
    await line.settle('order');
    const states = (await line.newestCase(parent))?.states.conversation;
    expect(states).toEqual(['told', 'unclear', 'person', 'correct', 'unclear', 'repeat', 'xstate.after.now']);
    const thread = await line.thread(parent);
    expect(thread.filter((entry) => entry.direction === 'in').map((entry) => entry.body)).toEqual(bodies);
  });

  // The embedded database has one connection, so there everything waits its turn.
  if (name === 'server') {
    it('never lets one phone wait for another', async () => {
      await text('tube');
      await text('tube', '+12025550151');
      const { database, parts } = world;
      await database.transaction(async (client) => {
        await client.query('SELECT 1 FROM phone p JOIN "case" c ON c.phone_id = p.id WHERE p.finder = $1 FOR UPDATE', [
          parts.seal.finder(parent),
        ]);
        expect(await text('person', '+12025550151')).toEqual(['+12025550151 text askHowIn', `${ada} text page urgent`]);
        expect(await text('tube', '+12025550152')).toEqual(['+12025550152 text askUnwell']);
      });
    });
  }

  it('answers twenty phones at once, each with its own', async () => {
    const phones = Array.from({ length: 20 }, (_, place) => `+120255501${String(place).padStart(2, '0')}`);
    const answers = await Promise.all(phones.map((phone) => text('tube', phone)));
    expect(answers).toEqual(phones.map((phone) => [`${phone} text askUnwell`]));
  });
});
