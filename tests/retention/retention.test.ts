/** Keeping and erasing: what is over its time loses its words and keeps its proof; what is on hold, open or broken waits. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Family } from '#src/line/line.ts';
import { readRecord } from '#src/record/read.ts';
import { verifyCase } from '#src/record/verify.ts';
import { eraseFamily, exportFamily } from '#src/retention/family.ts';
import { hold, overdueCases, purge } from '#src/retention/purge.ts';
import { nurses, parent, startMs } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

const dayMs = 86_400_000;
const [ada = ''] = nurses.map(({ number }) => number);
const [first, second, third, stranger] = [parent, '+12025550151', '+12025550152', '+12025550153'];
const robin: Family = {
  ...{ child: 'Robin', born: null, tubeKind: 'g', firstPlaced: null, weightKg: 7, weighedOn: null, language: 'en' },
  ...{ latexAllergy: false, cannotWait: null },
};

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  const hand = () => ({ nowMs: startMs + 200 * dayMs, by: 'Wilma' });
  const daysAgo = (days: number) => hand().nowMs - days * dayMs;

  /** One closed case of each phone, told with words of its own. */
  async function night(number: string, words: string) {
    await world.text(`tube ${words}`, number);
    await world.text(`person ${words}`, number);
    await world.text('take', ada);
    await world.text('close', ada);
    await world.text('yes', ada);
  }
  const whole = (id: number) => verifyCase(world.database, world.parts.seal, id);
  /** Everything sealed in the database, opened. */
  async function allWords(): Promise<string> {
    const rows = await world.database.query<{ value: Buffer }>(
      `SELECT number AS value FROM phone UNION ALL SELECT file FROM family UNION ALL SELECT file FROM "case" WHERE file IS NOT NULL
       UNION ALL SELECT snapshots FROM "case" WHERE snapshots IS NOT NULL UNION ALL SELECT body FROM event
       UNION ALL SELECT body FROM message UNION ALL SELECT sheet FROM handover`,
    );
    return rows.map(({ value }) => world.parts.seal.open(value)).join('\n');
  }

  beforeAll(async () => {
    world = await openWorld(open);
    await world.line.enrol(second, robin);
    await night(first, 'aardvark');
    await night(second, 'bandicoot');
    await world.text('hello dingo', stranger);
    await world.line.advance(startMs + 40 * dayMs, 'later');
    await night(third, 'capybara');
    await world.text('tube echidna', first);
    await world.database.query('INSERT INTO handover (at_ms, sheet, mail) VALUES ($1, $2, $3)', [
      startMs + 1000,
      world.parts.seal.seal('sheet of Robin'),
      'none',
    ]);
  });
  afterAll(async () => world.close());

  it('shows and erases the closed cases that are over their time and not on hold', async () => {
    const { database, parts } = world;
    expect(await overdueCases(database, daysAgo(170))).toEqual([1, 2]);
    expect(await database.transaction((client) => hold(client, parts.seal, 2, true, hand()))).toBe(true);
    expect(await purge(database, parts.seal, daysAgo(170), hand())).toEqual({ cases: 1, phones: 1, broken: [] });
    const words = await allWords();
    expect(words).not.toMatch(/aardvark|dingo/);
    expect(words).not.toContain(stranger);
    expect(words).toMatch(/bandicoot[\s\S]*capybara[\s\S]*echidna/);
    expect(words).toContain('sheet of Robin');
  });

  it('leaves every record whole, the erased one too, and an open case of the same phone as it was', async () => {
    const { database, parts } = world;
    for (const id of [1, 2, 3, 4]) expect(await whole(id)).toMatchObject({ whole: true });
    await expect(readRecord(database, parts.seal, 1)).rejects.toMatchObject({ code: 'case-erased' });
    expect(await world.text('person', first)).toEqual(expect.arrayContaining([`${first} text askHowIn`]));
    expect(await world.line.newestCase(first)).toMatchObject({ id: '4' });
  });

  it('finds an erased event that somebody without the key changed, moved or took out', async () => {
    const { database, parts } = world;
    const undone = new Error('undone');
    for (const sql of [
      "UPDATE event SET hash = '\\x00' WHERE case_id = 1 AND number = 1",
      'UPDATE event SET body = (SELECT body FROM event WHERE case_id = 1 AND number = 2) WHERE case_id = 1 AND number = 1',
      'DELETE FROM event WHERE case_id = 1 AND number = (SELECT max(number) FROM event WHERE case_id = 1)',
      'DELETE FROM event WHERE case_id = 1 AND number = 1',
    ]) {
      const changing = database.transaction(async (client) => {
        await client.query('ALTER TABLE event DISABLE TRIGGER event_append_only');
        await client.query(sql);
        expect(await verifyCase(client, parts.seal, 1), sql).toMatchObject({ whole: false });
        throw undone;
      });
      await expect(changing).rejects.toThrow(undone);
    }
  });

  it('still knows a text that comes again after its words were erased', async () => {
    const thread = await world.line.thread(first);
    const [row] = await world.database.query<{ id: string }>(
      "SELECT carrier_id AS id FROM message WHERE direction = 'in' AND cause = 'erased' ORDER BY id LIMIT 1",
    );
    expect(await world.text('tube aardvark', first, row?.id)).toEqual([]);
    expect(await world.line.thread(first)).toEqual(thread);
  });

  it('keeps a case whose record does not hold, and says which', async () => {
    const { database, parts } = world;
    await database.query('UPDATE "case" SET last_number = last_number + 1 WHERE id = 3');
    expect(await purge(database, parts.seal, daysAgo(100), hand())).toMatchObject({ cases: 0, broken: [3] });
    expect(await allWords()).toContain('capybara');
    await database.query('UPDATE "case" SET last_number = last_number - 1 WHERE id = 3');
  });

  it('copies out everything of one family and nothing of another', async () => {
    const copy = JSON.stringify(await exportFamily(world.database, world.parts.seal, second));
    for (const words of [
      second,
      'Robin',
      'tube bandicoot',
      'person bandicoot',
      'askUnwell',
      '"kind":"told"',
      'enrolled',
    ])
      expect(copy.replaceAll('"type"', '"kind"'), words).toContain(words);
    for (const words of [first, third, 'capybara', 'echidna']) expect(copy).not.toContain(words);
  });

  it('erases no family with a case open or on hold, and then all of it', async () => {
    const { database, parts } = world;
    const erase = (number: string) => database.transaction((client) => eraseFamily(client, parts.seal, number, hand()));
    await expect(erase(first)).rejects.toMatchObject({ code: 'not-erasable' });
    await expect(erase(second)).rejects.toMatchObject({ code: 'not-erasable' });
    expect(await allWords()).toMatch(/Robin[\s\S]*bandicoot/);
    await database.transaction((client) => hold(client, parts.seal, 2, false, hand()));
    expect(await erase(second)).toBe(1);
    const words = await allWords();
    expect(words).not.toMatch(/Robin|bandicoot/);
    expect(words).not.toContain(second);
    expect(words).toMatch(/capybara[\s\S]*echidna/);
    for (const id of [1, 2, 3, 4]) expect(await whole(id)).toMatchObject({ whole: true });
    await expect(erase(second)).rejects.toMatchObject({ code: 'no-such-family' });
    expect(await world.text('tube', second)).toEqual([`${second} text askUnwell`]);
  });

  it('writes down who did what', async () => {
    const rows = await world.database.query<{ what: string; by_whom: Buffer }>(
      "SELECT what, by_whom FROM audit WHERE by_whom IS NOT NULL AND what <> 'enrolled' ORDER BY id",
    );
    expect(rows.map(({ what, by_whom }) => `${what} by ${world.parts.seal.open(by_whom)}`)).toEqual([
      'case 2 on hold by Wilma',
      'purged 1 cases by Wilma',
      'purged 0 cases by Wilma',
      'case 2 off hold by Wilma',
      'a family erased by Wilma',
    ]);
  });
});
