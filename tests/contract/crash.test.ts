/** The practice line killed with -9 between texts and started again: the case goes on, nothing is lost, nothing comes twice. */
import { describe, expect, it } from 'vitest';
import { inFull } from '#tests/needs.ts';
import { converse, goesWell } from './phone.ts';
import { backends, patienceMs } from './process.ts';
import { family, now, phone, standing } from './standing.ts';

/** In short it is not killed between all texts, but every fourth time. */
const killsEvery = inFull ? 1 : 4;

/** A whole night: a high reading, the hour's wait, a good one. */
const high = { ...goesWell, ph: '6.5' };

describe.each(backends())('on the $name database', (backend) => {
  const { line, restart } = standing(backend);

  async function night(between: () => Promise<void>) {
    await line.text(phone, 'the g tube fell out');
    await converse(line, phone, high, ['recheck'], between);
    await between();
    await line.clock({ advance: 'PT1H' });
    const theCase = await converse(line, phone, goesWell, ['use'], between);
    return { disposition: theCase.disposition, pages: theCase.pages, thread: await line.thread(phone) };
  }

  it(
    'killed between any two texts, and while the recheck waits, ends as if nothing had happened',
    async () => {
      const calm = await night(async () => {});
      await line.reset(now);
      await line.enrol(phone, family);
      let between = 0;
      const killed = await night(async () => {
        between += 1;
        if (between % killsEvery === 0) await restart('SIGKILL');
      });
      expect(killed).toEqual(calm);
      expect(between).toBeGreaterThan(10);
      expect(calm.disposition).toBe('use');
    },
    2 * patienceMs,
  );

  it(
    'killed while it answers has answered for good or not at all',
    async () => {
      const answer = line.text(phone, 'the g tube fell out', 'first').catch(() => 'lost');
      await restart('SIGKILL');
      await answer;
      await line.text(phone, 'the g tube fell out', 'first');
      const thread = await line.thread(phone);
      expect(thread.filter(({ direction }) => direction === 'in')).toHaveLength(1);
      const bodies = thread.filter(({ direction }) => direction === 'out').map(({ body }) => body);
      expect(bodies.length).toBeGreaterThan(0);
      expect(new Set(bodies).size).toBe(bodies.length);
    },
    patienceMs,
  );

  it(
    'keeps its clock over a stop and a kill',
    async () => {
      const { now: moved } = await line.clock({ advance: 'P3DT4H5M6S' });
      await restart('SIGTERM');
      expect((await line.state()).now).toBe(moved);
      await restart('SIGKILL');
      expect((await line.state()).now).toBe(moved);
    },
    patienceMs,
  );
});
