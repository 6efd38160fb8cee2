/** What the carrier knows and the line must: a refusal goes another way, an unknown fate is settled, a lost text is still answered. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Fate } from '#src/carrier/port.ts';
import { noteFate, settleUnsure } from '#src/line/fates.ts';
import { hearText } from '#src/line/inbound.ts';
import { createLogReader } from '#src/line/inboundLog.ts';
import type { HeardText } from '#src/line/line.ts';
import { createOutbox, type Outbox } from '#src/line/outbox.ts';
import type { Parts } from '#src/line/parts.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const ada = nurses[0]?.number ?? '';
const refused = (why: string): Fate => ({ fate: 'refused', why });

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  let carrier: ReturnType<typeof fakeCarrier>;
  let wallMs: number;
  let outbox: Outbox;
  let parts: Parts;

  beforeAll(async () => {
    world = await openWorld(open);
  });
  beforeEach(async () => {
    await world.line.reset(startMs, { families: [] });
    await world.database.query('DELETE FROM carrier_log');
    carrier = fakeCarrier();
    wallMs = startMs;
    parts = { ...world.parts, carrier, wallMs: () => wallMs };
    outbox = createOutbox(parts);
  });
  afterAll(async () => world.close());

  let heard = 0;
  const hear = async (body: string) => {
    heard += 1;
    await world.line.hear({ from: parent, body, id: `heard-${heard}`, cause: `heard-${heard}` });
  };
  /** Opens a case whose first answer is carried already; what a test queues after it is the test's own. */
  const openCase = async () => {
    await world.text('tube');
    carrier.sent.length = 0;
  };
  /** The line's own outbox carries by the practice world's carrier, so a test writes what the turn did and carries itself. */
  const queueSame = async (to: string, kind: 'text' | 'call' = 'text') => {
    await world.database.query(
      `INSERT INTO message (phone_id, case_id, direction, kind, body, at_ms, cause, state)
       SELECT p.id, (SELECT max(id) FROM "case"), 'out', $2, $3, $4, 'test', 'waiting' FROM phone p WHERE p.finder = $1`,
      [parts.seal.finder(to), kind, parts.seal.seal('words'), startMs],
    );
  };
  /** Two texts with the same words to one phone, one after the other, and nobody knows what became of either. */
  const sendTwoUnknown = async () => {
    await openCase();
    for (let sends = 0; sends < 2; sends += 1) {
      await queueSame(parent);
      carrier.next.push({ fate: 'unknown' });
      await outbox.carry();
      wallMs += 10_000;
    }
  };
  /** A look-up finds one record, whatever it asks for. */
  const thatFinds = (carrierId: string): Parts => {
    const made = [{ carrierId, fate: 'accepted' }] as const;
    return { ...parts, carrier: { ...carrier, find: async () => ({ fate: 'found', made }) } };
  };
  const sent = () => carrier.sent.map(({ to, kind, body }) => `${to} ${kind} ${body}`);
  const states = async () =>
    (await world.database.query<{ state: string }>("SELECT state FROM message WHERE cause = 'test' ORDER BY id")).map(
      ({ state }) => state,
    );

  it.each([
    ['opted out', '21610', true],
    ['a landline', '30006', false],
    ['a handset out of reach', '30003', false],
  ])('reads a text out by telephone and calls a nurse, once: %s', async (_name, code, optedOut) => {
    await openCase();
    await queueSame(parent);
    await queueSame(parent);
    carrier.next.push(refused(code), refused(code));
    await outbox.carry();
    expect(sent().sort()).toEqual(
      [
        `${parent} text words`,
        `${parent} text words`,
        `${parent} call words`,
        `${parent} call words`,
        `${ada} text page urgent`,
      ].sort(),
    );
    expect(
      await world.database.query('SELECT opted_out FROM phone WHERE finder = $1', [parts.seal.finder(parent)]),
    ).toEqual([{ opted_out: optedOut }]);
  });

  it('does the same when the refusal comes later, by a callback, however often it comes', async () => {
    await openCase();
    await queueSame(parent);
    await outbox.carry();
    const id = Number(carrier.sent[0]?.id);
    await noteFate(parts, id, 'refused', 'c1');
    await noteFate(parts, id, 'refused', 'c1');
    await noteFate(parts, id, 'accepted', 'c1');
    await outbox.carry();
    expect(sent()).toEqual([`${parent} text words`, `${parent} call words`, `${ada} text page urgent`]);
    await noteFate(parts, id, 'delivered', 'c1');
    await noteFate(parts, id, 'refused', 'c1');
    expect(await states()).toEqual(['delivered']);
  });

  it('rings a nurse whom a page’s text does not reach; her page climbs on by itself', async () => {
    await openCase();
    await hear('person');
    await world.line.settle('person');
    await queueSame(ada);
    carrier.next.push(refused('30003'));
    await outbox.carry();
    expect(sent()).toEqual([`${ada} text words`, `${ada} call words`]);
  });

  it('takes a look-up’s find for one message only: of two equal calls one was never made, and is made', async () => {
    await openCase();
    await hear('person'); // her phone's row
    await world.line.settle('person');
    await queueSame(ada, 'call');
    carrier.next.push({ fate: 'unknown' });
    await outbox.carry();
    wallMs += minuteMs;
    await queueSame(ada, 'call');
    await outbox.carry();
    const made = [{ carrierId: `carrier-${carrier.sent[1]?.id}`, fate: 'accepted' }] as const;
    await settleUnsure({ ...parts, carrier: { ...carrier, find: async () => ({ fate: 'found', made }) } });
    expect(await states()).toEqual(['waiting', 'accepted']);
  });

  it('takes no find for its own while the same words are in hand, and looks again once they are not', async () => {
    await openCase();
    await queueSame(parent);
    carrier.next.push({ fate: 'unknown' });
    await outbox.carry();
    wallMs += minuteMs;
    await queueSame(parent);
    const answer = Promise.withResolvers<Fate>();
    carrier.next.push(answer.promise);
    const carrying = outbox.carry();
    await expect.poll(() => carrier.sent.length).toBe(2);
    const finding = thatFinds('the second');
    await settleUnsure(finding);
    expect(await states()).toEqual(['unknown', 'carrying']);
    answer.resolve({ fate: 'accepted', carrierId: 'the second' });
    await carrying;
    wallMs += 2_000;
    await settleUnsure(finding);
    expect(await states()).toEqual(['waiting', 'accepted']);
  });

  it('leaves a find to the earlier of two texts with the same words, though the later is looked up first', async () => {
    await sendTwoUnknown();
    const first = '(SELECT min(id) FROM message WHERE state = $2)';
    await world.database.query(`UPDATE message SET look_ms = $1 WHERE id = ${first}`, [wallMs + 20_000, 'unknown']);
    const finding = thatFinds('the first');
    await settleUnsure(finding);
    expect(await states()).toEqual(['unknown', 'unknown']);
    wallMs += 20_000;
    await settleUnsure(finding);
    expect(await states()).toEqual(['accepted', 'waiting']);
  });

  it('gives a find back once a callback says whose it is', async () => {
    await sendTwoUnknown();
    const finding = thatFinds('the first');
    await settleUnsure(finding);
    expect(await states()).toEqual(['accepted', 'waiting']);
    const [later] = await world.database.query<{ id: number }>(
      "SELECT max(id) AS id FROM message WHERE cause = 'test'",
    );
    await noteFate(parts, later?.id ?? 0, 'delivered', 'the first');
    expect(await states()).toEqual(['unknown', 'delivered']);
    await settleUnsure(finding);
    expect(await states()).toEqual(['waiting', 'delivered']);
  });

  it('looks an unknown fate up again and again, and gives up only after half an hour, by another way', async () => {
    await openCase();
    await queueSame(parent);
    carrier.next.push({ fate: 'unknown' });
    carrier.found = 'unknown';
    await outbox.carry();
    for (; wallMs < startMs + 30 * minuteMs; wallMs += 10_000) {
      await settleUnsure(parts);
      expect(await states()).toEqual(['unknown']);
    }
    wallMs += minuteMs;
    await settleUnsure(parts);
    expect(await states()).toEqual(['refused']);
    await outbox.carry();
    expect(sent()).toEqual([`${parent} text words`, `${parent} call words`, `${ada} text page urgent`]);
  });

  it('believes what a look-up tells of a message: delivered, or refused and gone another way', async () => {
    await openCase();
    await queueSame(parent);
    carrier.next.push({ fate: 'unknown' });
    await outbox.carry();
    wallMs += minuteMs;
    const made = [{ carrierId: 'c9', fate: 'refused' }] as const;
    await settleUnsure({ ...parts, carrier: { ...carrier, find: async () => ({ fate: 'found', made }) } });
    await outbox.carry();
    expect(await states()).toEqual(['refused']);
    expect(sent()).toContain(`${parent} call words`);
  });

  it('hears a text that never reached the line from the carrier’s log, once, and none from before its first minute', async () => {
    const texts: HeardText[] = [];
    const reader = createLogReader(parts, async (text) => {
      texts.push(text);
      await world.line.hear(text);
    });
    const logged = (id: string, atMs: number) => ({ id, from: parent, body: 'tube', media: [], atMs });
    carrier.logged = [logged('old', startMs - minuteMs)];
    await reader();
    await world.line.hear({ from: parent, body: 'tube', id: 'came', cause: 'came' });
    carrier.logged = [
      logged('later', startMs + 20_000),
      logged('came', startMs + 1000),
      logged('lost', startMs + 10_000),
    ];
    await reader(); // less than a minute later
    expect(texts).toEqual([]);
    wallMs += minuteMs;
    await reader();
    expect(texts.map(({ id, saidAtMs }) => [id, saidAtMs])).toEqual([
      ['lost', startMs + 10_000],
      ['later', startMs + 20_000],
    ]);
    wallMs += minuteMs;
    await reader();
    expect(texts).toHaveLength(2);
  });

  it('reads its log again from where it stood when the carrier or the database failed', async () => {
    let fails = true;
    const heardSince = async (sinceMs: number) => {
      asked.push(sinceMs);
      if (fails) throw new Error('no answer');
      return [];
    };
    const asked: number[] = [];
    const reader = createLogReader({ ...parts, carrier: { ...carrier, heardSince } }, async () => undefined);
    await reader();
    wallMs += minuteMs;
    await expect(reader()).rejects.toThrow('no answer');
    fails = false;
    wallMs += 60 * minuteMs;
    await reader();
    wallMs += minuteMs;
    await reader();
    expect(asked.map((ms) => (ms - startMs) / minuteMs)).toEqual([-15, -15, 46]);
  });

  it('counts the times of a late text from when it was said, and takes it for no answer to what was asked since', async () => {
    const opens: { nowMs: number; asking: string | null }[] = [];
    const reading: Parts['read'] = (text, open) => {
      opens.push({ nowMs: open.nowMs, asking: open.asking });
      return world.parts.read(text, open);
    };
    const hearing = { ...parts, read: reading };
    await openCase();
    await world.line.advance(startMs + 10 * minuteMs, 'later');
    await hearText(hearing, { from: parent, body: 'person', id: 'l1', cause: 'l1', saidAtMs: startMs - minuteMs });
    await hearText(hearing, { from: parent, body: 'person', id: 'l2', cause: 'l2' });
    expect(opens).toEqual([
      { nowMs: startMs - minuteMs, asking: null },
      { nowMs: startMs + 10 * minuteMs, asking: 'unwell' },
    ]);
  });
});
