/** Several phones of one family in one case: all of them hear what is said, one case whoever texts first, none waits for another for ever. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Enrolment } from '#src/line/line.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, minuteMs, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const mother = parent;
const father = '+12025550151';
const aunt = '+12025550152';
const neighbour = '+12025550160';
const family: Enrolment = {
  child: 'Wren',
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: null,
  weighedOn: null,
  language: 'en',
  phones: [father, aunt],
};

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  const carrier = fakeCarrier();
  beforeEach(async () => {
    world = await openWorld(open, { carrier, word: (said, { language }) => `${said.key} ${language}` });
    await world.line.enrol(mother, family);
  });
  afterEach(() => world.close());

  const caseOf = async (number: string) => (await world.line.newestCase(number))?.id;
  const cases = () => world.database.query<{ id: number }>('SELECT id FROM "case"');

  it('another phone of the family joins the open case and hears its question alone; then both hear all', async () => {
    await world.text('tube', mother);
    const caughtUp = await world.text('hello', father);
    expect(caughtUp[0]).toBe(`${father} text askHowIn en`);
    expect(caughtUp).not.toContain(`${mother} text askHowIn en`);
    expect(await world.text('tube', father)).toEqual([`${mother} text askUnwell en`, `${father} text askUnwell en`]);
    expect(await world.text('tube', mother)).toEqual([`${mother} text askUnwell en`, `${father} text askUnwell en`]);
    expect(await caseOf(father)).toBe(await caseOf(mother));
    expect(await caseOf(aunt)).toBeUndefined();
  });

  it('a danger told by the phone that joins is heard by every phone of the case', async () => {
    await world.text('tube', father);
    const sent = await world.text('danger', aunt);
    expect(sent.slice(0, 2)).toEqual([`${father} text opening en`, `${aunt} text opening en`]);
    expect(sent.join()).toContain('page emergency');
  });

  it('a promise that comes true is told to all of them', async () => {
    await world.text('tube', mother);
    await world.text('danger', father);
    await world.line.advance(startMs + 5 * minuteMs, 'five minutes');
    expect(await world.sent('five minutes')).toEqual(
      expect.arrayContaining([`${mother} text askHowIn en`, `${father} text askHowIn en`]),
    );
  });

  it('who texted STOP is answered and hears no more; the other goes on', async () => {
    await world.text('tube', mother);
    await world.text('tube', father);
    const sent = await world.text('stop', father);
    expect(sent.filter((line) => line.startsWith(father))).toEqual([`${father} text stopped en`]);
    expect(sent.filter((line) => line.startsWith(mother))).toEqual([`${mother} text askHowIn en`]);
    expect(await world.text('tube', mother)).toEqual([`${mother} text askUnwell en`]);
  });

  it('another family, and an unknown phone, have cases of their own', async () => {
    await world.text('tube', mother);
    expect(await world.text('tube', neighbour)).toEqual([`${neighbour} text askUnwell en`]);
    expect(await caseOf(neighbour)).not.toBe(await caseOf(mother));
  });

  it('once the case is closed, a phone that had joined opens one of its own', async () => {
    await world.text('tube', mother);
    await world.text('tube', father);
    await world.database.query('UPDATE "case" SET closed_ms = $1', [startMs]);
    expect(await world.text('tube', father)).toEqual([`${father} text askUnwell en`]);
    expect(await caseOf(father)).not.toBe(await caseOf(mother));
  });

  it('a case that a person has tells every phone so', async () => {
    await world.text('tube', mother);
    await world.text('tube', father);
    const sent = await world.text('boom', father);
    expect(sent.filter((line) => line.includes('This line cannot guide you now'))).toHaveLength(2);
    expect((await world.text('well?', mother)).filter((line) => line.includes('cannot guide'))).toHaveLength(2);
  });

  it('a text refused by a phone that joined is read out to it', async () => {
    await world.text('tube', mother);
    await world.text('tube', father);
    carrier.next.push({ fate: 'accepted', carrierId: 'm' }, { fate: 'refused', why: '30006' });
    await world.text('tube', mother);
    expect(await world.sent('refused')).toEqual([`${father} call askUnwell en`]);
  });

  it('two phones that text in the same moment open one case', async () => {
    await Promise.all([mother, father, aunt].map((from) => world.text('tube', from)));
    expect(await cases()).toHaveLength(1);
    const joined = await Promise.all([mother, father, aunt].map(caseOf));
    expect(new Set(joined).size).toBe(1);
  });

  it('twenty texts at once from each of three phones are all answered, in order for each phone', async () => {
    await world.text('tube', mother);
    const texts = Array.from({ length: 20 }, (_, n) => n);
    await Promise.all(
      [mother, father, aunt].flatMap((from) => texts.map((n) => world.text(`tube ${n}`, from, `${from} ${n}`))),
    );
    expect(await cases()).toHaveLength(1);
    const heard = await world.database.query(`SELECT FROM event WHERE type IN ('told', 'repeat')`);
    expect(heard).toHaveLength(61);
    const unsaid = await world.database.query(
      `SELECT cause FROM message GROUP BY cause HAVING count(*) FILTER (WHERE direction = 'out') = 0`,
    );
    expect(unsaid).toEqual([]);
    for (const phone of [mother, father, aunt]) {
      const bodies = (await world.line.thread(phone))
        .filter(({ direction }) => direction === 'in')
        .map(({ body }) => body);
      expect(bodies.slice(-20)).toEqual(texts.map((n) => `tube ${n}`));
    }
    expect(world.parts.log).toMatchObject({ lines: [] });
  });
});
