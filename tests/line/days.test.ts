/** The days after, on the whole practice line: what comes at its time, what a night holds, and who is reminded of a case. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type App, openPractice } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const seeds = loadSeeds('seeds');
const { families } = seeds;
const nurses = seeds.rota.nurses.map(({ number }) => number);
const stranger = '+12025550199';
/** A Saturday; the clinic opens on Monday. */
const night = '2027-03-06T02:10:00-05:00';

let app: App;
let folder: string;
let count = 0;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-days-'));
  const log = createLog({ write: () => {} });
  await copyEmpty(join(folder, 'data'));
  app = await openPractice({ port: 0, dataFolder: join(folder, 'data'), databaseUrl: null, seedsFolder: 'seeds' }, log);
});
afterAll(async () => {
  await app.stop();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(() => app.line.reset(Date.parse(night), { families }));

/** As `Sat 05:10 the first words ...` to the family, `Sat 05:10 nurse 1` to a nurse. */
async function sentBy(cause: string): Promise<string[]> {
  const sent = await app.line.sentBecauseOf(cause);
  return sent
    .filter(({ to }) => to === stranger || nurses.includes(to))
    .map(
      ({ to, body, at }) =>
        `${clockOf(at)} ${to === stranger ? body.split(/[.?!\n]/, 1) : `nurse ${nurses.indexOf(to) + 1}: ${body}`}`,
    );
}
const clockOf = (at: string) =>
  new Intl.DateTimeFormat('en-GB', {
    weekday: 'short',
    hour: '2-digit',
    minute: '2-digit',
    timeZone: seeds.protocol.site.timeZone,
  }).format(new Date(at));

const toFamily = (words: string) => !words.includes('nurse 1:');

async function text(body: string, from = stranger): Promise<string[]> {
  const cause = `text-${++count}`;
  await app.line.hear({ from, body, id: cause, cause });
  await app.line.settle(cause);
  return sentBy(cause);
}
async function clock(to: string): Promise<string[]> {
  const cause = `clock-${++count}`;
  await app.line.advance(Date.parse(to), cause);
  return sentBy(cause);
}
async function texts(...bodies: readonly string[]): Promise<string[]> {
  let last: string[] = [];
  for (const body of bodies) last = await text(body);
  return last;
}

const placed = [
  'my 9 kg sons g tube fell out 10 min ago, his first tube was placed 2 years ago',
  'no',
  'no',
  'yes',
  'easy',
  'no',
];

describe('the days after a temporary tube', () => {
  it('ask the feed in the night, the signs in the morning, the clinic on Monday, and the signs once more', async () => {
    await texts(...placed, 'yes', 'yes', '5', 'yes');
    expect(await clock('2027-03-06T05:10:00-05:00')).toEqual([
      expect.stringMatching(/^Sat 05:\d\d Did the first feed go well/),
    ]);
    await text('yes');
    // The night holds what comes due in it until seven.
    expect((await clock('2027-03-07T06:59:00-05:00')).filter(toFamily)).toEqual([]);
    expect(await clock('2027-03-07T07:00:00-05:00')).toEqual([
      expect.stringMatching(/^Sun 07:00 Is your child well today/),
    ]);
    await text('yes');
    expect((await clock('2027-03-08T15:00:00-05:00')).filter(toFamily)).toEqual([
      expect.stringMatching(/^Mon 15:00 Have you called the clinic/),
    ]);
    expect(await text('i was wrong about the feed')).toEqual([expect.stringMatching(/Did the first feed go well/)]);
    await text('yes');
    expect((await clock('2027-03-09T07:00:00-05:00')).filter(toFamily).at(-1)).toMatch(
      /^Tue 07:00 Is your child well today/,
    );
  });

  it('open the case again on a danger sign or a tube that came out, whatever was asked', async () => {
    await texts(...placed, 'yes', 'yes', '5', 'yes');
    await clock('2027-03-07T07:00:00-05:00');
    expect((await text('it came out again')).join()).toMatch(/nurse 1: AGAIN URGENT .*came out again/);
    const danger = await text('he is blue and cannot breathe');
    expect(danger[0]).toMatch(/Call 911 now/);
  });
});

describe('a case that waits for its nurse', () => {
  const held = async () => {
    await texts(...placed, 'no');
    await text('take', nurses[0]);
  };

  it('reminds her after half an hour without a text of hers, then calls the next person', async () => {
    await held();
    expect(await clock('2027-03-06T02:39:00-05:00')).toEqual([]);
    expect(await clock('2027-03-06T02:40:00-05:00')).toEqual([
      expect.stringMatching(/^Sat 02:40 nurse 1: URGENT news/),
    ]);
    const climbed = await clock('2027-03-06T02:50:00-05:00');
    expect(climbed.filter((words) => words.includes('nurse '))).toEqual([
      expect.stringMatching(/^Sat 02:50 nurse 2: .*URGENT/),
    ]);
  });

  it('does not while she writes with the family', async () => {
    await held();
    await clock('2027-03-06T02:35:00-05:00');
    await text('tell them I am looking into it', nurses[0]);
    expect(await clock('2027-03-06T03:04:00-05:00')).toEqual([]);
    expect(await clock('2027-03-06T03:05:00-05:00')).toEqual([
      expect.stringMatching(/^Sat 03:05 nurse 1: URGENT news/),
    ]);
  });
});
