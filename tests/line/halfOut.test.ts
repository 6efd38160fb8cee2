/** A tube the line had as half out, and the family says it is not: on the whole practice line, in the words people use. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type App, practiceOn } from '#src/app.ts';
import { createLog } from '#src/log.ts';
import { loadSeeds } from '#src/seeds.ts';
import { databases } from '#tests/store/databases.ts';

const seeds = loadSeeds('seeds');
const night = Date.parse('2027-03-06T02:10:00-05:00');
const parent = '+12125550181';

let app: App;
let count = 0;

/** What the parent was sent because of a text. */
async function text(body: string) {
  const cause = `half-out-${++count}`;
  await app.line.hear({ from: parent, body, id: cause, cause });
  await app.line.settle(cause);
  const sent = await app.line.sentBecauseOf(cause);
  return sent
    .filter(({ to }) => to === parent)
    .map((one) => one.body)
    .join(' ');
}

describe.each(databases())('on the $name database', ({ open }) => {
  beforeAll(async () => {
    app = await practiceOn(await open(), 'seeds', seeds, createLog({ write: () => {} }));
  });
  afterAll(() => app.stop());
  beforeEach(() => app.line.reset(night, { families: seeds.families }));

  it('"not half out" takes it back and asks which tube it is; one in its place is then held, not put in', async () => {
    await text('her tube is half out');
    expect(await text('no')).toContain("Don't push it in or pull it out");
    await text('ok but its not half out its all the way in just loose');
    expect((await app.line.newestCase(parent))?.asking).toBe('tube-kind');
    await text('G. it never came out');
    const theCase = await app.line.newestCase(parent);
    expect(theCase).toMatchObject({ disposition: 'hold', asking: null });
    expect(theCase?.pages.length).toBeGreaterThan(0);
  });

  it('before the danger signs are answered they are asked all the same', async () => {
    await text('her tube is half out');
    const asked = await text('its not half out, its in');
    expect((await app.line.newestCase(parent))?.asking).toBe('unwell');
    expect(asked).toContain('Trouble breathing?');
  });
});
