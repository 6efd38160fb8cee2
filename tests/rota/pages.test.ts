/** The rota at page time: a place without anybody goes to the fallback number, loudly; a swap agreed on puts each in the other's place. */
import { afterEach, describe, expect, it } from 'vitest';
import { phonesOf } from '#src/line/reach.ts';
import { answerMs, askedSwap, askSwap, settleSwap } from '#src/rota/swaps.ts';
import { fakeLog, fallbackNumber, minuteMs, nurses } from '#tests/line/fakes.ts';
import { openWorld, type World } from '#tests/line/world.ts';
import { databases } from '#tests/store/databases.ts';

const [ada, bea, cleo] = nurses.map(({ number }) => number);
const outsider = { name: 'Dot', number: '+12025550104' };
const everybody = [...nurses, outsider];
const rota = {
  nurses: everybody,
  nurseOf: (number: string) => everybody.find((nurse) => nurse.number === number) ?? null,
};

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  afterEach(async () => world.close());

  it('a gap goes to the fallback number, and the log and the page say so', async () => {
    const log = fakeLog();
    world = await openWorld(open, {
      log,
      onCall: () => [null, nurses[1] ?? null, nurses[2] ?? null],
      wordForNurse: (said) => (said.key === 'page' && said.params.gap ? 'nobody on the rota' : said.key),
    });
    expect(await world.text('danger')).toEqual([
      '+12025550150 text opening',
      `${fallbackNumber} text nobody on the rota`,
      `${fallbackNumber} call pageCall`,
      `${bea} text page`,
      `${bea} call pageCall`,
    ]);
    expect(JSON.stringify(log.lines)).toContain('the rota names nobody: the page goes to the fallback number');
  });

  it('a swap holds from its beginning to its end once it is agreed on, and not before', async () => {
    world = await openWorld(open, rota);
    const { parts, database } = world;
    const phones = await phonesOf(database, parts.seal, [ada, outsider.number].map(String), 0);
    const [one = 0, other = 0] = [ada, outsider.number].map((number) => phones.get(String(number))?.phoneId);
    const nowMs = await world.line.now();
    const span = { fromMs: nowMs, toMs: nowMs + 60 * minuteMs };
    await askSwap(database, nowMs, one, other, span);
    expect(await world.text('danger')).toContain(`${ada} text page emergency`);

    const asked = await askedSwap(database, parts.seal, other, nowMs);
    if (asked === null) throw new Error('a swap was asked for');
    expect(asked).toMatchObject({ ...span, askerNumber: ada });
    expect(await askedSwap(database, parts.seal, one, nowMs)).toBeNull();
    await settleSwap(database, asked, nowMs, 'yes');
    expect(await askedSwap(database, parts.seal, other, nowMs)).toBeNull();
    expect(await world.text('danger')).toContain(`${outsider.number} text page emergency`);

    await world.line.advance(span.toMs, 'later');
    expect(await world.text('danger')).toContain(`${ada} text page emergency`);
  });

  it('two who are both on call stand in each other’s place', async () => {
    world = await openWorld(open, rota);
    const { parts, database } = world;
    const phones = await phonesOf(database, parts.seal, [ada, cleo].map(String), 0);
    const [one = 0, other = 0] = [ada, cleo].map((number) => phones.get(String(number))?.phoneId);
    const nowMs = await world.line.now();
    await askSwap(database, nowMs, one, other, { fromMs: nowMs, toMs: nowMs + minuteMs });
    const asked = await askedSwap(database, parts.seal, other, nowMs);
    if (asked === null) throw new Error('a swap was asked for');
    await settleSwap(database, asked, nowMs, 'yes');
    const sent = await world.text('danger');
    expect(sent).toContain(`${cleo} text page emergency`);
    expect(sent).not.toContain(`${ada} text page emergency`);
  });

  it.each([
    ['refused', 0, 'no'],
    ['never answered', answerMs, null],
  ] as const)('a swap that is %s changes nothing', async (_what, waitMs, word) => {
    world = await openWorld(open, rota);
    const { parts, database } = world;
    const phones = await phonesOf(database, parts.seal, [ada, cleo].map(String), 0);
    const [one = 0, other = 0] = [ada, cleo].map((number) => phones.get(String(number))?.phoneId);
    const nowMs = await world.line.now();
    await askSwap(database, nowMs, one, other, { fromMs: nowMs, toMs: nowMs + 2 * answerMs });
    const asked = await askedSwap(database, parts.seal, other, nowMs);
    if (asked !== null && word !== null) await settleSwap(database, asked, nowMs, word);
    expect(await askedSwap(database, parts.seal, other, nowMs + waitMs)).toBeNull();
    expect(await world.text('danger')).toContain(`${ada} text page emergency`);
  });
});
