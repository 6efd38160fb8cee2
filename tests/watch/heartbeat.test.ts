/** The heartbeat: a sick line tells a person by text and call, a well one tells its watcher, and neither throws. */
import { pino } from 'pino';
import { describe, expect, it } from 'vitest';
import type { Outgoing } from '#src/carrier/port.ts';
import type { Health } from '#src/watch/health.ts';
import { createHeartbeat } from '#src/watch/heartbeat.ts';
import { well } from './well.ts';

const minuteMs = 60_000;

function world(health: () => Promise<Health>) {
  const sent: Outgoing[] = [];
  const asked: string[] = [];
  const at = { wallMs: 0 };
  const heartbeat = createHeartbeat({
    health,
    carrier: {
      send: async (message) => {
        sent.push(message);
        return { fate: 'accepted', carrierId: null };
      },
      find: async () => ({ fate: 'unknown' }),
      fetchMedia: async () => ({ fate: 'later' }),
      heardSince: async () => [],
    },
    toNumber: '+12025550109',
    watcherUrl: 'https://watcher.example/beat',
    fetch: async (url) => {
      asked.push(String(url));
      return new Response();
    },
    wallMs: () => at.wallMs,
    log: pino({ enabled: false }),
  });
  return { heartbeat, sent, asked, at };
}

describe('the heartbeat', () => {
  it('tells the watcher that a well line lives, and nobody else', async () => {
    const { heartbeat, sent, asked } = world(async () => well);
    await heartbeat.beat();
    expect(asked).toEqual(['https://watcher.example/beat']);
    expect(sent).toEqual([]);
  });

  it.each([
    ['texts that wait', { ...well, outboxWaitMs: 3 * minuteMs }, /texts wait to be sent, the oldest for 3 min/],
    ['timers that are late', { ...well, timerLateMs: 5 * minuteMs }, /late by 5 min/],
  ])('calls a person by text and telephone for %s, and the watcher hears nothing', async (_what, sick, words) => {
    const { heartbeat, sent, asked } = world(async () => sick);
    await heartbeat.beat();
    expect(sent.map(({ kind, to }) => `${kind} ${to}`)).toEqual(['text +12025550109', 'call +12025550109']);
    expect(sent[0]?.body).toMatch(words);
    expect(asked).toEqual([]);
  });

  it('tells of a database that does not answer, past the outbox that lies in it', async () => {
    const { heartbeat, sent } = world(() => Promise.reject(new Error('gone')));
    await heartbeat.beat();
    expect(sent[0]?.body).toContain('the database does not answer');
  });

  it('repeats itself after half an hour, not every minute', async () => {
    const { heartbeat, sent, at } = world(() => Promise.reject(new Error('gone')));
    for (let minute = 0; minute <= 30; minute += 1) {
      at.wallMs = minute * minuteMs;
      await heartbeat.beat();
    }
    expect(sent.filter(({ kind }) => kind === 'text')).toHaveLength(2);
  });
});
