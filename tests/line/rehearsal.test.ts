/** A rehearsal on the line: marked, paging nobody, ended by whatever may be real, by silence, by a word; after it all is real. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { gather } from '#src/handover/gather.ts';
import type { Enrolment } from '#src/line/line.ts';
import { pauseLine } from '#src/line/pause.ts';
import { eachPastCase } from '#src/protocol/pastCases.ts';
import { verifyCase } from '#src/record/verify.ts';
import { readHealth } from '#src/watch/health.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const [ada = '', bea = '', cleo = ''] = nurses.map(({ number }) => number);
const father = '+12025550151';
const neighbour = '+12025550160';
const wren: Enrolment = {
  child: 'Wren',
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: null,
  weighedOn: null,
  language: 'en',
  phones: [father],
};

const began = `${parent} text PRACTICE. rehearsalBegan`;
const over = `${parent} text PRACTICE. rehearsalOver`;
const real = `${parent} text rehearsalReal`;
const result = (how: string, to = ada) => `${to} text rehearsalResult ${how}`;

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  const carrier = fakeCarrier();

  beforeAll(async () => {
    world = await openWorld(open, {
      carrier,
      word: ({ key }, { rehearsal }) => `${rehearsal === true ? 'PRACTICE. ' : ''}${key}`,
      wordForNurse: ({ key, params }) =>
        key === 'page' || key === 'pageCall'
          ? `${key} ${params.level}`
          : key === 'rehearsalResult'
            ? `${key} ${params.how}`
            : key === 'rehearsalNot'
              ? `${key} ${params.why}`
              : key,
    });
  });
  beforeEach(async () => {
    await world.line.reset(startMs, { families: [{ number: parent, ...wren }] });
    Object.assign(world.parts.log, { lines: [] });
  });
  afterAll(() => world.close());

  const advance = async (minutes: number) => {
    const cause = `after ${minutes} ${Math.random()}`;
    await world.line.advance((await world.line.now()) + minutes * minuteMs, cause);
    return world.sent(cause);
  };
  const pages = async () => (await world.database.query('SELECT FROM page')).length;
  const openCases = () =>
    world.database.query<{ phone_id: number; rehearsal: boolean }>(
      'SELECT phone_id, rehearsal FROM "case" WHERE closed_ms IS NULL ORDER BY id',
    );
  const pause = () =>
    world.database.transaction((client) =>
      pauseLine(client, world.parts.seal, { atMs: startMs, by: 'Ada', why: null }, null),
    );
  const verdicts = async () => {
    const rows = await world.database.query<{ id: number }>('SELECT id FROM "case" ORDER BY id');
    return Promise.all(rows.map(({ id }) => verifyCase(world.database, world.parts.seal, id)));
  };

  it('begins with a family that asks for it, marks every text, and pages nobody for what would page', async () => {
    expect(await world.text('practise')).toEqual([began]);
    expect(await world.text('tube')).toEqual([`${parent} text PRACTICE. askUnwell`]);
    expect(await world.text('stiff')).toEqual([`${parent} text PRACTICE. askUnwell`]);
    expect(await world.line.newestCase(parent)).toMatchObject({ rehearsal: true, pages: [] });
    expect(await pages()).toBe(0);
    expect(await verdicts()).toMatchObject([{ whole: true, events: 3 }]);
  });

  it('ends where a step comes to rest, notes what would have been paged, and sends one result', async () => {
    await world.text('practise');
    expect(await world.text('hard')).toEqual([`${parent} text PRACTICE. askHowIn`, over, result('done')]);
    expect(await pages()).toBe(0);
    expect(await openCases()).toEqual([]);
    expect(await verdicts()).toMatchObject([{ whole: true, events: 3 }]);
    // From now on it is real.
    expect(await world.text('tube')).toEqual([`${parent} text askUnwell`]);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
  });

  it.each([
    ['danger', ['opening'], 'emergency'],
    ['person', ['askHowIn'], 'urgent'],
    ['silence', ['askUnwell'], null], // read as a tube that came out again
  ])('"%s" is real at once: the practice is closed, the real case answers unmarked', async (body, says, level) => {
    await world.text('practise');
    await world.text('tube');
    const sent = await world.text(body);
    expect(sent.filter((one) => one.startsWith(parent))).toEqual([...says.map((key) => `${parent} text ${key}`), real]);
    expect(sent.join('\n')).not.toContain('PRACTICE.');
    expect(sent.at(-1)).toBe(result('real'));
    expect(sent.some((one) => one.startsWith(`${ada} text page`))).toBe(level !== null);
    if (level !== null) expect(sent).toContain(`${ada} text page ${level}`);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
    expect((await verdicts()).map(({ whole }) => whole)).toEqual([true, true]);
  });

  it('"this is real" is real, whatever else it says', async () => {
    await world.text('practise');
    await world.text('tube');
    expect(await world.text('real')).toEqual([`${parent} text askUnwell`, real, result('real')]);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
  });

  it('is over by a word, and by STOP, which ends all texts', async () => {
    await world.text('practise');
    await world.text('tube');
    expect(await world.text('over')).toEqual([over, result('asked')]);
    await world.text('practise');
    expect(await world.text('stop')).toEqual([`${parent} text PRACTICE. stopped`, result('stopped')]);
    expect(await openCases()).toEqual([]);
    expect(await pages()).toBe(0);
    // Who opted out is not started, neither by a wish nor by a nurse.
    expect(await world.text('practise')).toEqual([`${parent} text askAboutTube`]);
    expect(await world.text('practice wren', ada)).toEqual([`${ada} text rehearsalNot opted-out`]);
  });

  it('is over after 20 minutes without a text of the family, with one message; each text counts them afresh', async () => {
    await world.text('practise');
    await advance(19);
    await world.text('tube');
    const sent = await advance(20);
    expect(sent).toEqual([`${parent} text PRACTICE. askHowIn`, over, result('quiet')]);
    expect(await openCases()).toEqual([]);
    expect(await advance(600)).toEqual([]);
    expect(await pages()).toBe(0);
    expect(await world.text('danger')).toContain(`${parent} text opening`);
    expect(await pages()).toBeGreaterThan(0);
  });

  it('is sent by a nurse by name or number, who hears one line then and the result later', async () => {
    const sent = await world.text('Practice Wren', bea);
    expect(sent).toEqual([began, `${bea} text rehearsalSent`]);
    expect(await world.text('practice wren', ada)).toEqual([`${ada} text rehearsalNot open`]);
    await world.text('tube');
    expect(await world.text('hard')).toContain(result('done', bea));
    expect(await world.text('practice 202 555 0150', ada)).toEqual([began, `${ada} text rehearsalSent`]);
    expect(await world.text('over')).toEqual([over, result('asked')]);
  });

  it('is not sent where it cannot be: no name, nobody of it, several, an open case of any phone of the family', async () => {
    expect(await world.text('practice', ada)).toEqual([`${ada} text rehearsalNot nobody-named`]);
    expect(await world.text('practice nobody', ada)).toEqual([`${ada} text rehearsalNot not-found`]);
    await world.line.enrol(neighbour, { ...wren, phones: [] });
    expect(await world.text('practice wren', ada)).toEqual([`${ada} text rehearsalNot several`]);
    await world.text('tube', father);
    expect(await world.text(`practice ${parent}`, ada)).toEqual([`${ada} text rehearsalNot open`]);
    expect(await world.text(`practice ${parent}`, father)).not.toContain(began);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
  });

  it('another phone of the family whose tube is out has a real case, and the practice is over', async () => {
    await world.text('practise');
    await world.text('tube');
    const sent = await world.text('danger', father);
    expect(sent.slice(0, 2)).toEqual([over, result('elsewhere')]);
    expect(sent).toContain(`${father} text opening`);
    expect(sent).toContain(`${ada} text page emergency`);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
    expect(await world.text('danger')).toContain(`${parent} text opening`);
    expect((await world.line.newestCase(parent))?.id).toBe((await world.line.newestCase(father))?.id);
  });

  it('another phone of the family that says nothing of a tube joins nothing', async () => {
    await world.text('practise');
    expect(await world.text('hello', father)).toEqual([`${father} text askAboutTube`]);
    expect(await openCases()).toMatchObject([{ rehearsal: true }]);
  });

  it('a family that rings in it wants a person: that is real', async () => {
    await world.text('practise');
    await world.line.hearCall({ from: parent, id: 'call', cause: 'call' });
    await world.line.settle('call');
    const sent = await world.sent('call');
    expect(sent).toContain(result('real'));
    expect(sent).toContain(`${ada} text page urgent`);
    expect(sent.join('\n')).not.toContain('PRACTICE.');
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
  });

  it('an unknown phone can practise too', async () => {
    expect(await world.text('practise', neighbour)).toEqual([`${neighbour} text PRACTICE. rehearsalBegan`]);
    expect(await world.text('tube', neighbour)).toEqual([`${neighbour} text PRACTICE. askUnwell`]);
  });

  it('a nurse who is a parent practises on her own phone, and still takes her pages', async () => {
    await world.line.enrol(ada, { ...wren, child: 'Pia', phones: [] });
    expect(await world.text('practice', ada)).toEqual([`${ada} text PRACTICE. rehearsalBegan`]);
    await world.text('danger', neighbour);
    expect(await world.text('take', ada)).toEqual([`${neighbour} text askHowIn`, `${ada} text taken`]);
    expect(await world.text('tube', ada)).toEqual([`${ada} text PRACTICE. askUnwell`]);
    expect(await world.text('danger', ada)).toContain(`${bea} text page emergency`);
  });

  it('is refused while the line is paused: a nurse is told so, a family gets what every text gets', async () => {
    await pause();
    expect(await world.text('practice wren', ada)).toEqual([`${ada} text pausedNoAdvice`]);
    expect((await world.text('practise'))[0]).toBe(`${parent} text paused`);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
  });

  it('ends with a pause, at the next text or when its timer comes true, and a text then pages everybody', async () => {
    await world.text('practise');
    await pause();
    const sent = await world.text('tube');
    expect(sent.slice(0, 3)).toEqual([over, result('paused'), `${parent} text paused`]);
    for (const number of [ada, bea, cleo])
      expect(sent.join('\n')).toContain(`${number} text EMERGENCY. The line is paused`);
    await world.line.reset(startMs, { families: [{ number: parent, ...wren }] });
    await world.text('practise');
    await world.text('tube');
    await pause();
    expect(await advance(5)).toEqual([over, result('paused')]);
    expect(await pages()).toBe(0);
  });

  it('a turn that fails twice in it is taken as real: the safe message, unmarked, and everybody on call', async () => {
    await world.text('practise');
    const sent = await world.text('boom');
    expect(sent[0]).toMatch(/^\S+ text Call 911 now/);
    expect(sent.filter((one) => one.includes('EMERGENCY. The line has a fault'))).toHaveLength(6);
    expect(await openCases()).toMatchObject([{ rehearsal: false }]);
    expect(await verdicts()).toMatchObject([{ whole: true }]);
  });

  it('a text of it that does not arrive is not read out and calls nobody', async () => {
    await world.text('practise');
    carrier.next.push({ fate: 'refused', why: '30006' });
    await world.text('tube');
    expect(await world.sent('refused')).toEqual([]);
    expect(await pages()).toBe(0);
  });

  it('is counted nowhere as a case: not in the watch, the handover, a pause, or what another protocol would have done', async () => {
    await world.text('practise');
    await world.text('hello', neighbour);
    expect(await readHealth(world.database, startMs)).toMatchObject({ openCases: 0, openPages: 0 });
    const sources = { ...world.parts, viewCase: world.parts.machines.viewCase };
    expect((await gather(sources, world.database, startMs)).cases).toEqual([]);
    const past: number[] = [];
    await eachPastCase(world.database, world.parts.seal, ({ id }) => void past.push(id));
    expect(past).toEqual([]);
    await world.text('real');
    expect(await readHealth(world.database, startMs)).toMatchObject({ openCases: 1 });
    expect((await gather(sources, world.database, startMs)).cases).toHaveLength(1);
  });
});
