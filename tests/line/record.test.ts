/** The record of a case: numbered without gaps, each event bound to the one before, and nothing of a person in the clear. */
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { canonicalJson } from '#src/line/record.ts';
import { databases } from '#tests/store/databases.ts';
import { nurses, parent } from './fakes.ts';
import { openWorld, type World } from './world.ts';

interface EventRow {
  readonly number: number;
  readonly body: Buffer;
  readonly hash: Buffer;
}

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;

  beforeAll(async () => {
    world = await openWorld(open);
    await world.line.enrol(parent, {
      child: 'Robin',
      born: '2026-01-02',
      tubeKind: 'g',
      firstPlaced: null,
      weightKg: 7,
      weighedOn: null,
      language: 'en',
    });
    for (const body of ['tube fell out', 'person please', 'mumble', 'boom']) await world.text(body);
  });
  afterAll(async () => world.close());

  const events = () =>
    world.database.query<EventRow>('SELECT number, body, hash FROM event WHERE case_id = 1 ORDER BY number');

  it('chains every event by SHA-256 over the hash before and the canonical JSON, to the case’s last', async () => {
    let before = Buffer.alloc(0);
    const rows = await events();
    expect(rows.map((row) => row.number)).toEqual([1, 2, 3, 4]);
    for (const row of rows) {
      const body = world.parts.seal.open(row.body);
      expect(canonicalJson(JSON.parse(body))).toBe(body);
      before = createHash('sha256').update(before).update(body).digest();
      expect(row.hash).toEqual(before);
    }
    expect(await world.database.query('SELECT last_number, last_hash FROM "case"')).toEqual([
      { last_number: 4, last_hash: before },
    ]);
  });

  it('tells what happened and what was decided', async () => {
    const [first] = await events();
    expect(JSON.parse(world.parts.seal.open(first?.body ?? Buffer.alloc(0)))).toMatchObject({
      machine: 'conversation',
      event: { type: 'told', clinicOpen: false },
      effects: [{ type: 'say' }, { type: 'startTimer' }],
    });
  });

  it('has no number, name or text in the clear in any table', async () => {
    const tables = ['phone', 'family', '"case"', 'event', 'message', 'timer', 'page', 'audit'];
    const secrets = [parent, ...nurses.map((nurse) => nurse.number), 'Robin', 'fell out', 'askUnwell'];
    for (const table of tables) {
      for (const { line } of await world.database.query<{ line: string }>(
        `SELECT row_to_json(t)::text AS line FROM ${table} t`,
      )) {
        const bytes = Buffer.from(line.replaceAll('\\\\x', '').replaceAll(/[^0-9a-f]/g, ''), 'hex').toString('latin1');
        for (const secret of secrets) expect(line.includes(secret) || bytes.includes(secret)).toBe(false);
      }
    }
  });
});

describe('canonical JSON', () => {
  it('orders keys at every depth and leaves lists alone', () => {
    expect(canonicalJson({ b: [3, 1, { z: 1, a: null }], a: 'é' })).toBe('{"a":"é","b":[3,1,{"a":null,"z":1}]}');
  });
});
