/** Rehearsals on the whole practice line, in the words families use: a danger at every question is real, and nothing else pages. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type App, openPractice } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { copyEmpty } from '#tests/store/empty.ts';

const seeds = loadSeeds('seeds');
const [first] = seeds.families;
if (first === undefined) throw new Error('the seeds have no family');
const { number: family, ...enrolled } = first;
const nurses = seeds.rota.nurses.map(({ number }) => number);
const night = Date.parse('2027-03-06T02:10:00-05:00');
const minuteMs = 60_000;

let app: App;
let folder: string;
let count = 0;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nightjar-rehearsal-'));
  const log = createLog({ write: () => {} });
  await copyEmpty(join(folder, 'data'));
  app = await openPractice({ port: 0, dataFolder: join(folder, 'data'), databaseUrl: null, seedsFolder: 'seeds' }, log);
});
afterAll(async () => {
  await app.stop();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(() => app.line.reset(night, { families: seeds.families }));

interface Sent {
  readonly family: readonly string[];
  readonly nurses: readonly string[];
}

async function sentBy(cause: string): Promise<Sent> {
  const sent = await app.line.sentBecauseOf(cause);
  return {
    family: sent.filter(({ to }) => to === family).map(({ body }) => body),
    nurses: sent.filter(({ to }) => nurses.includes(to)).map(({ kind, body }) => `${kind} ${body}`),
  };
}

async function text(body: string, from = family): Promise<Sent> {
  const cause = `text-${++count}`;
  await app.line.hear({ from, body, id: cause, cause });
  await app.line.settle(cause);
  return sentBy(cause);
}

/** The way to use, by the question each text answers. */
const way = [
  ['the first text', "wren's g tube came out 10 min ago"],
  ['unwell', 'no'],
  ['confirm', 'yes'],
  ['own-tube', 'no'],
  ['kit', 'yes'],
  ['tube-in', 'easy'],
  ['after-in', 'no'],
  ['strips', 'yes'],
  ['contents', 'yes'],
  ['ph', '4.5'],
  ['secured', 'yes'],
] as const;

async function practise(upTo: number): Promise<Sent[]> {
  const sent = [await text('can we practice?')];
  for (const [, answer] of way.slice(0, upTo)) sent.push(await text(answer));
  return sent;
}

const asking = async () => (await app.line.newestCase(family))?.asking;
const isMarked = (body: string) => body.startsWith('PRACTICE. ');

describe.each(way.map(([key], index) => ({ key, index })))('practised up to $key', ({ key, index }) => {
  it.each(["she can't breathe", 'shes gone limp and blue', 'no puede respirar'])('"%s" is real', async (danger) => {
    const played = await practise(index);
    if (index > 0) expect(await asking()).toBe(key);
    expect(played.flatMap((one) => one.family).every(isMarked)).toBe(true);
    expect(played.flatMap((one) => one.nurses)).toEqual([]);
    const real = await text(danger);
    expect(real.family[0]).toMatch(/^Call 911 now\./);
    expect(real.family.filter(isMarked)).toEqual([]);
    expect(real.nurses[0]).toMatch(/^text EMERGENCY Wren/);
    expect(real.nurses[1]).toMatch(/^call /);
    expect(await app.line.newestCase(family)).toMatchObject({ rehearsal: false, disposition: 'emergency' });
  });
});

describe('a whole rehearsal', () => {
  it('comes to its end marked and without a page, and its nurse reads how it went', async () => {
    const sent = await practise(way.length);
    expect(sent.flatMap((one) => one.family).every(isMarked)).toBe(true);
    expect(sent.at(-1)?.family.at(-1)).toContain('From now on a tube that comes out is real');
    expect(sent.flatMap((one) => one.nurses)).toEqual([
      'text PRACTICE RESULT Wren: came to its end (may use it). Answers: 10, not readable: 0. Nothing to do.',
    ]);
    // Nothing follows: no check after the first feed, no call, nothing for the day team.
    await app.line.advance(night + 3 * 24 * 60 * minuteMs, 'three days');
    expect((await sentBy('three days')).family).toEqual([]);
    const real = await text('the g tube came out');
    expect(real.family[0]).toMatch(/^Danger\? Call 911\./);
  });

  it('tells its nurse what would have been paged, what was not read, and where it stopped', async () => {
    expect((await text('practice wren', nurses[0])).nurses).toEqual([
      'text Practice sent to the family of Wren, +12125550101. Nobody is paged for it. You get the result.',
    ]);
    for (const body of ['the g tube is out', 'no', 'yes', 'asdf qwer']) expect((await text(body)).nurses).toEqual([]);
    await app.line.advance(night + 60 * minuteMs, 'an hour');
    expect(await sentBy('an hour')).toEqual({
      family: [
        expect.stringMatching(/^PRACTICE\. Are you still there\?/),
        expect.stringMatching(/^PRACTICE\. Here I would call a nurse\./),
        expect.stringMatching(/^PRACTICE\. No text for 20 minutes, so the practice is over\./),
      ],
      nurses: [
        'text PRACTICE RESULT Wren: ended by 20 minutes of silence. Answers: 2, not readable: 1. Stopped at: own tube. ' +
          'A nurse would have been called: no answer. Nothing to do.',
      ],
    });
  });
});

describe('what may be real', () => {
  it.each([
    ['this is real', 'Danger? Call 911.'],
    ['its really out now', 'Danger? Call 911.'],
    ['not practice', 'Danger? Call 911.'],
    ['yes', 'Call 911 now.'],
    ['i need a nurse', 'Danger? Call 911.'],
  ])('"%s" at the danger signs is answered by a real case: %s', async (body, answer) => {
    await practise(1);
    const { family: said } = await text(body);
    expect(said.filter(isMarked)).toEqual([]);
    expect(said.join('\n')).toContain(answer);
    expect(await app.line.newestCase(family)).toMatchObject({ rehearsal: false });
  });

  it('a case told with words of practice in it is real', async () => {
    for (const body of ['we practiced last week and now it came out', 'can we practice her tube is out']) {
      await app.line.reset(night, { families: seeds.families });
      expect((await text(body)).family[0]).toMatch(/^Danger\? Call 911\./);
    }
  });

  it('a real case goes on as one, whatever is said of practice', async () => {
    await text('the g tube came out');
    for (const body of ['can we practice', 'practice', 'no', 'practice over']) {
      expect((await text(body)).family.filter(isMarked)).toEqual([]);
    }
    expect(await app.line.newestCase(family)).toMatchObject({ rehearsal: false });
  });
});

describe('in the language of the family', () => {
  it.each([
    ['es', 'quiero practicar', 'PRACTICA. ', 'se le salio la sonda', 'no puede respirar'],
    ['fr', "on peut s'entraîner", 'EXERCICE. ', 'la sonde est sortie', 'elle ne respire plus'],
  ] as const)('%s: "%s"', async (language, wish, mark, out, danger) => {
    const stranger = '+12025550188';
    await app.line.enrol(stranger, { ...enrolled, language, phones: [] });
    const bodies = async (body: string) => {
      const cause = `text-${++count}`;
      await app.line.hear({ from: stranger, body, id: cause, cause });
      await app.line.settle(cause);
      return (await app.line.sentBecauseOf(cause)).filter(({ to }) => to === stranger).map((one) => one.body);
    };
    for (const body of [wish, out]) {
      const said = await bodies(body);
      expect(said.length).toBeGreaterThan(0);
      for (const one of said) expect(one.startsWith(mark)).toBe(true);
    }
    const real = await bodies(danger);
    for (const one of real) expect(one.startsWith(mark)).toBe(false);
    expect(real[0]).toContain('911');
    expect(await app.line.newestCase(stranger)).toMatchObject({ rehearsal: false, disposition: 'emergency' });
  });
});
