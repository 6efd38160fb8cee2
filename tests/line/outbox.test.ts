/** The outbox: one message in flight for each phone, in our order; unknown fates hold ten seconds, emergencies only a call for a call. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Fate } from '#src/carrier/port.ts';
import { alarmCause } from '#src/line/alarm.ts';
import { claimChains } from '#src/line/chain.ts';
import { holdMs, settleUnsure } from '#src/line/fates.ts';
import { createOutbox, type Outbox } from '#src/line/outbox.ts';
import type { Parts } from '#src/line/parts.ts';
import { lockPhoneOf } from '#src/line/phones.ts';
import { writeMessages } from '#src/line/write.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const other = '+12025550151';

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
    carrier = fakeCarrier();
    wallMs = startMs;
    parts = { ...world.parts, carrier, wallMs: () => wallMs };
    outbox = createOutbox(parts);
  });
  afterAll(async () => world.close());

  async function queue(
    to: string,
    body: string,
    urgent = false,
    kind: 'text' | 'call' = 'text',
    cause = 'test',
  ): Promise<void> {
    const { database, seal } = world.parts;
    await database.transaction(async (client) => {
      const phoneId = await lockPhoneOf(parts, client, to);
      const turn = { client, nowMs: startMs, cause, paused: false, dueMs: [] };
      await writeMessages(seal, turn, null, [{ phoneId, kind, body, urgent }]);
    });
  }
  /** An outbox whose carrier does something before it takes each message. */
  function outboxThat(before: (body: string) => Promise<unknown>): Outbox {
    const send: Parts['carrier']['send'] = async (message) => {
      await before(message.body);
      return carrier.send(message);
    };
    return createOutbox({ ...parts, carrier: { ...carrier, send } });
  }
  const bodies = () => carrier.sent.map((message) => message.body);
  const states = async () =>
    (await world.database.query<{ state: string }>('SELECT state FROM message ORDER BY id')).map((row) => row.state);

  it('carries each phone’s messages in order, one after the other', async () => {
    let answer: (fate: Fate) => void = () => undefined;
    carrier.next.push(new Promise((resolve) => (answer = resolve)));
    for (const body of ['one', 'two', 'three']) await queue(parent, body);
    await queue(other, 'elsewhere');
    const carried = outbox.carry();
    await expect.poll(bodies).toEqual(['one', 'elsewhere']);
    answer({ fate: 'accepted', carrierId: 'c1' });
    await carried;
    expect(bodies()).toEqual(['one', 'elsewhere', 'two', 'three']);
    expect(await states()).toEqual(['accepted', 'accepted', 'accepted', 'accepted']);
    expect(carrier.sent[0]).toEqual({
      id: expect.stringMatching(/^[0-9]+$/),
      to: parent,
      body: 'one',
      kind: 'text',
      saidAtMs: startMs,
    });
  });

  it('claims at once what may follow a message, and puts it back untried behind a fate that is not known', async () => {
    const triesOf = async () =>
      (await world.database.query<{ tries: number }>('SELECT tries FROM message ORDER BY id')).map(
        ({ tries }) => tries,
      );
    for (const body of ['one', 'two', 'three']) await queue(parent, body);
    const inHand: string[][] = [];
    carrier.next.push({ fate: 'accepted', carrierId: 'c1' }, { fate: 'later' });
    await outboxThat(async () => inHand.push(await states())).carry();
    expect(inHand[0]).toEqual(['carrying', 'carrying', 'carrying']);
    expect(bodies()).toEqual(['one', 'two']);
    expect(await states()).toEqual(['accepted', 'waiting', 'waiting']);
    expect(await triesOf()).toEqual([1, 1, 0]);
    wallMs += 1000;
    await outbox.carry();
    expect(bodies()).toEqual(['one', 'two', 'two', 'three']);
    expect(await triesOf()).toEqual([1, 2, 1]);
  });

  it('begins nothing of a chain later than a second after its claim, nor once it is to stop', async () => {
    for (const body of ['one', 'two', 'three']) await queue(parent, body);
    const inHand: number[] = [];
    await outboxThat(async () => {
      inHand.push((await states()).filter((state) => state === 'carrying').length);
      wallMs += 1000;
    }).carry();
    expect(bodies()).toEqual(['one', 'two', 'three']);
    expect(inHand).toEqual([3, 2, 1]);
    for (const body of ['four', 'five']) await queue(parent, body);
    const stopping: Outbox = outboxThat(async () => void stopping.stop());
    await stopping.carry();
    await stopping.stop();
    expect(bodies().slice(3)).toEqual(['four']);
    expect((await states()).slice(3)).toEqual(['accepted', 'waiting']);
  });

  it.each([
    { what: 'a text that waits for another try', changed: 'hold_until_ms = 1 + $1::bigint', goes: ['one'] },
    { what: 'an emergency', changed: 'urgent = true, cause = cause || $1::text', goes: ['two', 'one', 'three'] },
  ])('lets no chain pass $what', async ({ changed, goes }) => {
    for (const body of ['one', 'two', 'three']) await queue(parent, body);
    const second = '(SELECT id FROM message ORDER BY id OFFSET 1 LIMIT 1)';
    await world.database.query(`UPDATE message SET ${changed} WHERE id = ${second}`, [startMs]);
    const inHand: string[][] = [];
    await outboxThat(async () => inHand.push(await states())).carry();
    expect(bodies().toSorted()).toEqual(goes.toSorted());
    expect(bodies().at(-1)).toBe(goes.at(-1));
    expect(inHand[0]?.[2]).toBe('waiting');
  });

  it('lets an emergency call wait for another call to the same phone only, until its fate is known or for ten seconds', async () => {
    carrier.next.push({ fate: 'unknown' });
    await queue(parent, 'first', true, 'call');
    await queue(parent, 'second', true, 'call');
    await queue(parent, 'third', true, 'call');
    await queue(parent, 'call 911', true);
    await queue(other, 'elsewhere', true, 'call');
    await outbox.carry();
    expect(bodies().sort()).toEqual(['call 911', 'elsewhere', 'first']);
    wallMs += holdMs - 1;
    await outbox.carry();
    expect(bodies()).toHaveLength(3);
    wallMs += 1;
    await outbox.carry();
    expect(bodies().slice(3)).toEqual(['second', 'third']);
  });

  it('lets no call wait for one that the carrier wants later', async () => {
    carrier.next.push({ fate: 'later' });
    await queue(parent, 'first', true, 'call');
    await queue(parent, 'second', true, 'call');
    await outbox.carry();
    expect(bodies()).toEqual(['first', 'second']);
  });

  it('holds later messages behind an unknown fate for ten seconds, but no emergency', async () => {
    carrier.next.push({ fate: 'unknown' });
    await queue(parent, 'one');
    await queue(parent, 'two');
    await queue(parent, 'call 911', true);
    await outbox.carry();
    expect(bodies().sort()).toEqual(['call 911', 'one']);
    wallMs += holdMs - 1;
    await outbox.carry();
    expect(bodies()).toHaveLength(2);
    wallMs += 1;
    await outbox.carry();
    expect(bodies().at(-1)).toBe('two');
  });

  it('takes a carrier that throws for an unknown fate', async () => {
    const resetting: Parts['carrier'] = { ...carrier, send: () => Promise.reject(new Error('reset')) };
    await queue(parent, 'one');
    await createOutbox({ ...parts, carrier: resetting }).carry();
    expect(await states()).toEqual(['unknown']);
  });

  it.each([
    { found: 'accepted', state: 'accepted', sends: 1 },
    { found: 'absent', state: 'accepted', sends: 2 },
    { found: 'unknown', state: 'unknown', sends: 1 },
  ] as const)('looks an unknown fate up before any second try: $found', async ({ found, state, sends }) => {
    carrier.next.push({ fate: 'unknown' });
    carrier.found = found;
    await queue(parent, 'one');
    await outbox.carry();
    await settleUnsure(parts);
    expect(await states()).toEqual(['unknown']);
    wallMs += holdMs;
    await settleUnsure(parts);
    wallMs += holdMs;
    await outbox.carry();
    await settleUnsure(parts);
    expect(await states()).toEqual([state]);
    expect(bodies()).toHaveLength(sends);
  });

  it('believes a status callback more than a lost answer', async () => {
    carrier.next.push({ fate: 'unknown' });
    await queue(parent, 'one');
    await queue(parent, 'two');
    await outbox.carry();
    const sentId = Number(carrier.sent[0]?.id);
    await outbox.note(sentId, 'delivered', 'c1');
    await outbox.carry();
    expect(await states()).toEqual(['delivered', 'accepted']);
    await outbox.note(sentId, 'accepted', 'c1');
    expect(await states()).toEqual(['delivered', 'accepted']);
  });

  it('tries again later, waiting longer each time, and gives up in the end', async () => {
    for (let tries = 0; tries < 8; tries += 1) carrier.next.push({ fate: 'later' });
    await queue(parent, 'one');
    for (let seconds = 0; seconds < 300; seconds += 1) {
      await outbox.carry();
      wallMs += 1000;
    }
    expect(bodies()).toHaveLength(8);
    expect(await states()).toEqual(['refused']);
  });

  it('stops only once what a round was just claiming is carried and marked', async () => {
    await queue(parent, 'one');
    outbox.kick();
    await outbox.stop();
    expect(await states()).toEqual(['accepted']);
  });

  it('goes on after a message the carrier refuses', async () => {
    carrier.next.push({ fate: 'refused', why: '21610' });
    await queue(parent, 'one');
    await queue(parent, 'two');
    await outbox.carry();
    expect(await states()).toEqual(['refused', 'accepted']);
  });

  it('comes back for what stood behind a slow text and an emergency', async () => {
    for (const [body, urgent] of [
      ['one', false],
      ['call 911', true],
      ['three', false],
    ] as const)
      await queue(parent, body, urgent);
    const urgentMarked = async () => (await states())[1] === 'accepted';
    await outboxThat(async (body) => {
      if (body === 'one') await expect.poll(urgentMarked).toBe(true);
    }).carry();
    expect(bodies()).toEqual(['call 911', 'one', 'three']);
  });

  it('claims an answer before a hundred texts that only came due', async () => {
    const phone = (place: number) => `+121255501${String(place).padStart(2, '0')}`;
    for (let place = 0; place < 100; place += 1) await queue(phone(place), 'due', false, 'text', alarmCause);
    await queue(other, 'answer');
    const { chains, more } = await claimChains(parts);
    const claimed = chains.flatMap(({ messages }) => messages.map(({ body }) => parts.seal.open(body)));
    expect(claimed.filter((body) => body === 'answer')).toHaveLength(1);
    expect(claimed).toHaveLength(100);
    expect(more).toBe(true);
  });

  it('sends nothing twice though two processes carry at once', async () => {
    const second = createOutbox(parts);
    for (let place = 0; place < 30; place += 1) await queue(place % 2 ? parent : other, `text ${place}`);
    await Promise.all([outbox.carry(), second.carry()]);
    await Promise.all([outbox.carry(), second.carry()]);
    expect(new Set(bodies()).size).toBe(30);
    expect(bodies()).toHaveLength(30);
    const odd = bodies().filter((body) => Number(body.slice(5)) % 2 === 1);
    expect(odd).toEqual(odd.toSorted((a, b) => Number(a.slice(5)) - Number(b.slice(5))));
  });
});
