/**
 * Webhooks replayed: the carrier's signature names no time, so an old request stays good for ever. What makes it harmless is that
 * every webhook does its work once, whenever it comes again.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { diceOf } from '#tests/fuzz/dice.ts';
import { openStand, type Stand } from '#tests/fuzz/stand.ts';
import { databases } from '#tests/store/databases.ts';
import { signedPost } from './signedPost.ts';

const parent = '+12025550177';
const dayMs = 86_400_000;

describe.each(databases())('on the $name database', (test) => {
  let stand: Stand;

  beforeAll(async () => {
    stand = await openStand('live', test, { ...diceOf(1), below: () => 59 });
  });
  afterAll(async () => {
    await stand.end();
    await stand.close();
  });

  const post = (path: string, form: Record<string, string>) => signedPost(stand.url, path, form);
  const text = { MessageSid: 'SM-first', From: parent, To: '+12025550100', Body: 'his g tube came out', NumMedia: '0' };
  const sent = () =>
    stand.database.query<{ id: number; state: string }>(
      'SELECT id, state FROM message WHERE direction = \'out\' AND phone_id = (SELECT max(phone_id) FROM "case") ORDER BY id',
    );
  const stateOf = async (id: number) => (await sent()).find((one) => one.id === id)?.state;

  it('a signed text does nothing when it comes again, at once or a day later', async () => {
    expect(await post('/carrier/text', text)).toBe(200);
    const before = await stand.line.thread(parent);
    expect(before.map(({ direction }) => direction)).toEqual(['in', 'out']);
    expect(await post('/carrier/text', text)).toBe(200);
    expect(await stand.line.thread(parent)).toEqual(before);
    await post('/carrier/text', { ...text, MessageSid: 'SM-second', Body: 'she cant breathe' });
    stand.pass(dayMs);
    await stand.line.settle('a day');
    const later = await stand.line.newestCase(parent);
    expect(await post('/carrier/text', text)).toBe(200);
    expect(await stand.line.newestCase(parent)).toEqual(later);
  });

  it('news of a message that comes again, or late, takes nothing back', async () => {
    const [first] = await sent();
    const path = `/carrier/status?message=${first?.id}`;
    for (const MessageStatus of ['sent', 'delivered', 'sent', 'delivered', 'failed', 'queued'])
      expect(await post(path, { MessageSid: 'SM1', MessageStatus })).toBe(204);
    expect(await stateOf(first?.id ?? 0)).toBe('delivered');
  });

  it('news that a message failed goes another way once, however often it comes', async () => {
    const id = (await sent()).at(-1)?.id ?? 0;
    const count = async () => (await stand.database.query('SELECT FROM message')).length;
    await post(`/carrier/status?message=${id}`, { MessageSid: 'SM1', MessageStatus: 'undelivered' });
    await stand.line.settle('another way');
    const after = await count();
    await post(`/carrier/status?message=${id}`, { MessageSid: 'SM1', MessageStatus: 'undelivered' });
    await stand.line.settle('another way');
    expect(await count()).toBe(after);
  });
});
