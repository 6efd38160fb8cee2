/**
 * The record finds what somebody with every right over the database changed behind the line's back: they drop the trigger that
 * refuses changes, and change, remove or move rows. The hashes are SHA-256 (FIPS 180-4), computed here by Node's own library.
 */
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Verdict, verifyCase } from '#src/record/verify.ts';
import type { Queryable } from '#src/store/database.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
    for (const body of ['tube fell out', 'person please', 'mumble', 'mumble', 'mumble']) await world.text(body);
    await world.database.query('DROP TRIGGER event_append_only ON event');
  });
  afterAll(async () => world.close());

  /** What is found after some changes, all undone again. */
  const changedBy = async (change: (client: Queryable) => Promise<unknown>): Promise<string> => {
    let verdict: Verdict | null = null;
    const undone = new Error('undone');
    const changing = world.database.transaction(async (client) => {
      await change(client);
      verdict = await verifyCase(client, world.parts.seal, 1);
      throw undone;
    });
    await expect(changing).rejects.toThrow(undone);
    return JSON.stringify(verdict);
  };
  const run = (...statements: string[]) =>
    changedBy(async (client) => {
      for (const text of statements) await client.query(text);
    });

  it('is whole as the line wrote it', async () => {
    expect(await run()).toBe('{"whole":true,"events":5}');
  });

  it('finds an event whose text was exchanged for another one, sealed by the same key', async () => {
    const body = world.parts.seal.seal('{"at":0,"type":"parked"}');
    const found = await changedBy((client) => client.query('UPDATE event SET body = $1 WHERE number = 2', [body]));
    expect(found).toContain('case A01 (number 1): event 2 of 5 was altered');
  });

  it('finds an event whose bytes were changed, and a hash that was', async () => {
    const zeros = String.raw`'\x00'::bytea`;
    expect(await run(`UPDATE event SET body = body || ${zeros} WHERE number = 3`)).toContain(
      'event 3 of 5 was altered: it does not open',
    );
    expect(await run(`UPDATE event SET hash = ${zeros} WHERE number = 4`)).toContain('event 4 of 5 was altered');
  });

  it('finds another time or type beside an event that is whole', async () => {
    expect(await run('UPDATE event SET at_ms = at_ms - 60000 WHERE number = 2')).toContain('event 2 of 5 was altered');
    expect(await run("UPDATE event SET type = 'told' WHERE number = 3")).toContain('event 3 of 5 was altered');
  });

  it('finds an event taken out: the first, one between, one whose gap was closed, the last', async () => {
    expect(await run('DELETE FROM event WHERE number = 1')).toContain('event 1 of 5 is missing');
    expect(await run('DELETE FROM event WHERE number = 3')).toContain('event 3 of 5 is missing');
    const closed = ['DELETE FROM event WHERE number = 3', 'UPDATE event SET number = number - 1 WHERE number > 3'];
    expect(await run(...closed)).toContain('one before it was taken out');
    expect(await run('DELETE FROM event WHERE number = 5')).toContain('event 5 of 5 is missing');
  });

  it('finds two events that changed places', async () => {
    const swap = ['90 WHERE number = 2', '2 WHERE number = 3', '3 WHERE number = 90'];
    const found = await run(...swap.map((to) => `UPDATE event SET number = ${to}`));
    expect(found).toContain('event 2 of 5 was moved: the event stored as number 3 belongs there');
  });

  it('finds the end taken out even where the case’s own number and hash were set back', async () => {
    const found = await run(
      'DELETE FROM event WHERE number > 3',
      'UPDATE "case" SET last_number = 3, last_hash = (SELECT hash FROM event WHERE number = 3)',
      'DELETE FROM timer',
      'DELETE FROM page WHERE at_ms > (SELECT at_ms FROM event WHERE number = 3)',
    );
    expect(found).toMatch(/event 3 left: it was altered, or events after it were taken out|belongs to no event/);
  });

  it('finds a whole chain hashed anew by somebody who has the key', async () => {
    const found = await changedBy(async (client) => {
      const rows = await client.query<{ number: number; body: Buffer }>('SELECT * FROM event ORDER BY number');
      let before = Buffer.alloc(0);
      for (const { number, body } of rows) {
        const text = world.parts.seal.open(body).replace('"clinicOpen":false', '"clinicOpen":true');
        before = createHash('sha256').update(before).update(text).digest();
        const sealed = world.parts.seal.seal(text);
        await client.query('UPDATE event SET body = $2, hash = $3 WHERE number = $1', [number, sealed, before]);
      }
    });
    expect(found).toContain("the case's own last hash is not that of event 5");
  });

  it('finds a text removed, exchanged or set to another time, going out or coming in', async () => {
    const missing = /a message of event \d is missing, was altered or moved/;
    const out = "direction = 'out' AND id = (SELECT min(id) FROM message WHERE direction = 'out' AND case_id = 1)";
    expect(await run(`DELETE FROM message WHERE ${out}`)).toMatch(missing);
    expect(await run(`UPDATE message SET at_ms = at_ms + 1 WHERE ${out}`)).toMatch(missing);
    const other = world.parts.seal.seal('You may use the tube now.');
    const exchanged = await changedBy((client) => client.query(`UPDATE message SET body = $1 WHERE ${out}`, [other]));
    expect(exchanged).toMatch(missing);
    const heard = "direction = 'in' AND id = (SELECT min(id) FROM message WHERE direction = 'in')";
    expect(await run(`DELETE FROM message WHERE ${heard}`)).toContain('the text that event 1 heard is missing');
    expect(await run(`UPDATE message SET body = body || '\\x00'::bytea WHERE ${heard}`)).toContain('does not open');
  });

  it('finds a page removed, moved, changed, added, or taken when nobody took it', async () => {
    const first = 'id = (SELECT min(id) FROM page)';
    expect(await run(`DELETE FROM page WHERE ${first}`)).toMatch(/a page of event \d is missing/);
    expect(await run(`UPDATE page SET at_ms = at_ms - 1 WHERE ${first}`)).toMatch(/a page of event \d is missing/);
    expect(await run(`UPDATE page SET level = 'routine' WHERE ${first}`)).toMatch(/a page of event \d is missing/);
    const added = 'INSERT INTO page (case_id, phone_id, level, at_ms) SELECT 1, min(id), $$urgent$$, 5 FROM phone';
    expect(await run(added)).toContain('belongs to no event');
    expect(await run(`UPDATE page SET taken_ms = at_ms WHERE ${first}`)).toContain('taken at a time no event says');
  });

  it('finds a case closed by nobody, and a state exchanged', async () => {
    expect(await run('UPDATE "case" SET closed_ms = 7')).toContain('the time it was closed');
    const other = world.parts.seal.seal('{"conversation":{},"paging":{},"aftercare":null}');
    const found = await changedBy((client) => client.query('UPDATE "case" SET snapshots = $1', [other]));
    expect(found).toContain("the case's state is not the one event 5 left");
  });
});
