/** What a family gets when the line itself fails: the fixed message, everybody on call, and a person who has the case. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { safeWords } from '#src/line/safeMessage.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, fallbackNumber, minuteMs, nurses, parent, protocol, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const numbers = nurses.map((nurse) => nurse.number);
const [ada = '', bea = ''] = numbers;
const words = safeWords(protocol.site);
const fault = `EMERGENCY. The line has a fault and a family gets no guidance from it. Ring ${parent} now.`;
const everybody = (wrote: string) =>
  numbers.flatMap((number) => ['text', 'call'].map((kind) => `${number} ${kind} ${fault}${wrote} Reply TAKE.`));

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
  });
  beforeEach(async () => world.line.reset(startMs, { families: [] }));
  afterAll(async () => world.close());

  it('answers a text whose step throws, calls everybody, and gives the case to a person', async () => {
    await world.text('tube');
    expect(await world.text('boom goes it')).toEqual([
      `${parent} text ${words}`,
      ...everybody(' They wrote: "boom goes it".'),
    ]);
    expect(await world.line.newestCase(parent)).toMatchObject({
      asking: null,
      disposition: 'nurse',
      states: { conversation: ['told'] },
      pages: numbers.map((to) => ({ to, level: 'emergency', takenAt: null })),
      due: [{ what: 'page', at: '2027-03-06T02:15:00.000-05:00' }],
    });
    expect((await world.line.thread(parent)).filter((entry) => entry.direction === 'in')).toHaveLength(2);
  });

  it('calls in the order of the rota, whoever the line heard first', async () => {
    await world.text('hello', numbers[2]);
    await world.text('hello', bea);
    await world.text('tube');
    expect((await world.text('boom')).slice(1)).toEqual(everybody(' They wrote: "boom".'));
  });

  it('takes silence for a fault', async () => {
    await world.text('tube');
    expect((await world.text('silence'))[0]).toBe(`${parent} text ${words}`);
  });

  it('keeps a first text too, in a case that is a person’s from the start', async () => {
    const broken = await openWorld(open, {
      machines: {
        ...world.parts.machines,
        openCase: () => {
          throw new Error('broken');
        },
      },
      onCall: () => [],
    });
    expect((await broken.text('tube'))[0]).toBe(`${parent} text ${words}`);
    expect(await broken.line.newestCase(parent)).toMatchObject({
      disposition: 'nurse',
      facts: {},
      pages: [{ to: fallbackNumber }],
    });
    await broken.close();
  });

  it('keeps calling until somebody takes it, then passes on what is written', async () => {
    await world.text('tube');
    await world.text('boom');
    await world.line.advance(startMs + 11 * minuteMs, 'clock');
    expect(await world.sent('clock')).toEqual([...everybody(''), ...everybody('')]);
    expect(await world.text('take', bea)).toEqual([`${bea} text taken`]);
    await world.line.advance(startMs + 60 * minuteMs, 'later');
    expect(await world.sent('later')).toEqual([]);
    expect(await world.text('hello?')).toEqual([
      `${parent} text ${words}`,
      `${bea} text ${fault} They wrote: "hello?". Reply TAKE.`,
    ]);
    await world.text('close', bea);
    expect(await world.text('yes', bea)).toEqual([`${bea} text closed`]);
    expect(await world.text('tube')).toEqual([`${parent} text askUnwell`]);
  });

  it('gives a case to a person when its timer throws', async () => {
    await world.text('tube');
    await world.text('bomb');
    await world.line.advance(startMs + 5 * minuteMs, 'clock');
    expect(await world.sent('clock')).toEqual(expect.arrayContaining([`${parent} text ${words}`, ...everybody('')]));
    expect(await world.line.newestCase(parent)).toMatchObject({ disposition: 'nurse' });
  });

  it('tells a nurse whose text failed to send it again', async () => {
    const broken = await openWorld(open, {
      wordForNurse: () => {
        throw new Error('no words');
      },
    });
    expect((await broken.text('take', ada))[0]).toContain('did not act on your text');
    await broken.close();
  });

  it('answers when a step fails once and not again', async () => {
    let failures = 1;
    const shaky = await openWorld(open, {
      carrier: fakeCarrier(),
      word: (say) => {
        if (failures-- > 0) throw new Error('once');
        return say.key;
      },
    });
    expect(await shaky.text('tube')).toEqual([`${parent} text askUnwell`]);
    await shaky.close();
  });

  it('fits two segments of the 7-bit alphabet (153 characters each, 3GPP TS 23.040 9.2.3.24.1)', () => {
    expect(words.length).toBeLessThanOrEqual(306);
    expect(words).toMatch(/^[A-Za-z0-9 .,']+$/);
  });
});
