/** A change of the key while the line runs: the new one writes, both read, and in the end the old one opens nothing. */
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createLine } from '#src/line/createLine.ts';
import { verifyCase } from '#src/record/verify.ts';
import { shelfIn } from '#src/rota/shelf.ts';
import { rotateKey, sealedColumns } from '#src/store/rotate.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { fakeParts, nurses, parent } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from './databases.ts';

const newKey = Buffer.alloc(32, 7);
const both = createSeal(newKey, practiceKey);
const family = {
  child: 'Robin',
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: 7,
  weighedOn: null,
  language: 'en',
} as const;
const others = Array.from({ length: 20 }, (_, index) => `+120255501${String(index + 60)}`);

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
    await world.line.enrol(parent, family);
    for (const body of ['tube fell out', 'person please', 'mumble']) await world.text(body);
    for (const number of others) await world.text('tube', number);
    await shelfIn(world.database, createSeal(practiceKey)).keep('first.ics', { text: 'BEGIN:VCALENDAR', etag: 'a' });
  });
  afterAll(async () => world.close());

  it('goes on for every phone, while everything is sealed anew', async () => {
    const { database } = world;
    const line = createLine(fakeParts(database, { seal: both }));
    await line.start();
    expect(await shelfIn(database, both).find('first.ics')).toEqual({ text: 'BEGIN:VCALENDAR', etag: 'a' });
    const texts = [parent, ...others, '+12025550190', '+12025550191'].flatMap((from) =>
      [0, 1].map((time) => line.hear({ from, body: 'mumble', id: `${from}-${time}`, cause: `${from}-${time}` })),
    );
    const renewed = await rotateKey(database, both);
    await Promise.all(texts);
    await line.settle('settled');
    expect(renewed).toBeGreaterThan(50);
    // What was written with the old key by a process that did not know better is met by another run.
    expect(await rotateKey(database, both)).toBe(0);
    await line.stop();
  });

  it('leaves nothing the old key opens, no phone twice, and every record whole', async () => {
    const { database } = world;
    const seal = createSeal(newKey);
    for (const [table, column] of [...sealedColumns, ['phone', 'number'], ['rota_calendar', 'text']] as const)
      for (const { value } of await database.query<{ value: Buffer }>(
        `SELECT ${column} AS value FROM ${table} WHERE ${column} IS NOT NULL`,
      ))
        expect(() => seal.open(value), `${table}.${column}`).not.toThrow();
    const phones = await database.query<{ number: Buffer; finder: Buffer }>('SELECT number, finder FROM phone');
    const numbers = phones.map(({ number }) => seal.open(number));
    expect(new Set(numbers).size).toBe(numbers.length);
    expect(numbers).toEqual(expect.arrayContaining([parent, ...others, ...nurses.map(({ number }) => number)]));
    expect(phones.every(({ finder }, place) => finder.equals(seal.finder(numbers[place] ?? '')))).toBe(true);
    for (const { id } of await database.query<{ id: number }>('SELECT id FROM "case"'))
      expect(await verifyCase(database, seal, id)).toMatchObject({ whole: true });
    const line = createLine(fakeParts(database, { seal }));
    await line.start();
    expect(await line.newestCase(parent)).toMatchObject({ asking: 'unwell' });
    expect(await line.thread(parent)).toHaveLength(10);
    await line.stop();
  });
});

describe('processes that write with one and with the other key', () => {
  it.each(databases())('make one row of a new phone on the $name database', async ({ open }) => {
    const world = await openWorld(open);
    const seals = [both, createSeal(practiceKey, newKey)];
    const lines = seals.map((seal) => createLine(fakeParts(world.database, { seal })));
    for (const line of lines) await line.start();
    await Promise.all(
      lines.flatMap((line, place) =>
        others.map((from) => line.hear({ from, body: 'tube', id: `${place}${from}`, cause: `${place}${from}` })),
      ),
    );
    expect(await world.database.query('SELECT count(*) AS phones FROM phone WHERE texts_heard > 0')).toEqual([
      { phones: others.length },
    ]);
    expect(await world.database.query('SELECT count(*) AS cases FROM "case"')).toEqual([{ cases: others.length }]);
    for (const line of lines) await line.stop();
    await world.close();
  });
});

describe('the columns', () => {
  it('that hold bytes are all sealed anew, but for hashes and finders', async () => {
    const schema = await readFile(new URL('./schema.sql', import.meta.url), 'utf8');
    const bytes = [...schema.matchAll(/^(\w+)\.(\w+) bytea/gm)].map(([, table, column]) => `${table}.${column}`);
    const renewed = sealedColumns.map(([table, column]) => `${table.replaceAll('"', '')}.${column}`);
    const hashes = ['case.last_hash', 'event.hash', 'phone.finder', 'rota_calendar.finder'];
    expect(bytes.sort()).toEqual([...renewed, ...hashes, 'phone.number', 'rota_calendar.text'].sort());
  });
});
