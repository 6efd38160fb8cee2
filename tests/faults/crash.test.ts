/**
 * The crash walk: the line's process is killed with SIGKILL at every checkpoint of the way of one event, and at the carrier's
 * side of a send, started again, and ends with the same case and the same texts as a night nobody disturbed.
 */
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { checkpoints } from '#src/line/checkpoint.ts';
import { backends, patienceMs } from '#tests/contract/process.ts';
import { inFull } from '#tests/needs.ts';
import { night, type Seen } from './night.ts';
import { type Grave, Stand } from './stand.ts';

/** A Saturday night: the clinic is closed. */
const startMs = Date.parse('2027-03-06T02:10:00-05:00');

/**
 * Several deaths a night, in an order in which the night still passes each place: every process dies once, the next one at the
 * next place. A number is the pass it dies at, the first where there is none.
 */
const walks: readonly (readonly (Grave['name'] | Grave)[])[] = [
  ['text received', 'timers found', 'nurse locked', 'safe message begun'],
  ['phone locked', 'timer locked', 'page taken', 'safe message saved'],
  ['case locked', 'timer fired', 'outbox asked', 'callback received'],
  ['step taken', 'page reached', 'message claimed', 'callback noted'],
  ['step saved', 'carrier asked', 'message handed over', { name: 'step saved', pass: 3 }],
  ['turn committed', 'carrier made it', 'unsure claimed', 'carrier answered', { name: 'carrier answered', pass: 3 }],
  ['alarm armed', 'carrier made it', 'unsure looked up', 'message marked', { name: 'message claimed', pass: 3 }],
  ['media claimed', 'media fetched', 'media settled', { name: 'text received', pass: 5 }],
  ['carrier made it', 'unsure marked', { name: 'carrier asked', pass: 4 }, { name: 'carrier made it', pass: 4 }],
];
const graves = walks.map((walk) => walk.map((grave) => (typeof grave === 'string' ? { name: grave, pass: 1 } : grave)));

it('walks every checkpoint there is', () => {
  const walked = new Set(graves.flat().map(({ name }) => name));
  expect(checkpoints.filter((name) => !walked.has(name))).toEqual([]);
});

describe.each(backends())('on the $name database', (backend) => {
  let stand: Stand;
  let calm: Seen;
  let families = 0;
  const family = () => {
    families += 1;
    return `+1202555${String(1100 + families).padStart(4, '0')}`;
  };

  beforeAll(async () => {
    stand = new Stand(await backend.home(), startMs);
    await stand.open();
    calm = await night(stand, family());
  }, patienceMs);
  afterAll(() => stand.close());
  afterEach(({ task }) => {
    if (task.result?.state === 'fail') process.stderr.write(stand.log());
  });

  it('has a calm night to compare with', () => {
    expect(stand.deaths).toBe(0);
    expect(calm.carried.length).toBeGreaterThan(20);
    expect(new Set(calm.carried).size).toBeGreaterThan(20);
    expect(calm.thread.length).toBeGreaterThan(10);
    // Once as it came, once more as she takes the case again.
    expect(calm.carried.filter((text) => text.includes('/media/LINK'))).toHaveLength(2);
  });

  // In short, two nights: one dies in the midst of a turn, one about the carrier.
  const walked = inFull ? graves : graves.filter((_, index) => index === 2 || index === 5);
  it.each(walked.map((walk) => ({ walk, names: walk.map(({ name, pass }) => `${name} ${pass}`).join(', ') })))(
    'killed at: $names',
    async ({ walk }) => {
      const before = stand.deaths;
      await stand.dieAt(walk);
      expect(await night(stand, family())).toEqual(calm);
      expect(stand.deaths - before).toBe(walk.length);
    },
    patienceMs,
  );
});
