/** The language of a conversation: by enrolment, else by what is written, changeable in words, and only what the site has on. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Family } from '#src/line/line.ts';
import { read } from '#src/reading/read.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeParts, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const family: Family = {
  child: 'Robin',
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: 7,
  weighedOn: null,
  language: 'fr',
};

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  let withoutFrench: World;

  beforeAll(async () => {
    const speaking = { read, word: (_say: unknown, scene: { language: string }) => scene.language };
    world = await openWorld(open, speaking);
    const { protocol } = fakeParts(world.database, {});
    const site = { ...protocol.site, languages: ['en', 'es'] as const };
    withoutFrench = await openWorld(open, { ...speaking, protocol: { ...protocol, site } });
  });
  beforeEach(async () => {
    await world.line.reset(startMs, { families: [] });
    await withoutFrench.line.reset(startMs, { families: [] });
  });
  afterAll(async () => {
    await world.close();
    await withoutFrench.close();
  });

  /** The languages of what the family was sent. */
  async function spoken(body: string, { text }: World = world): Promise<string[]> {
    const sent = (await text(body)).filter((message) => message.startsWith(parent));
    return [...new Set(sent.map((message) => message.split(' ')[2] ?? ''))];
  }

  it('is the one an unknown phone first writes in, and stays', async () => {
    expect(await spoken('hola')).toEqual(['es']);
    expect(await spoken('se le salio la sonda a mi hija')).toEqual(['es']);
    expect(await spoken('7 kg')).toEqual(['es']);
  });

  it.each(['no despierta bien', 'se esta ahogando'])('is the one a danger is said in: "%s"', async (danger) => {
    expect(await spoken(danger)).toEqual(['es']);
  });

  it('is English where nothing is clear', async () => {
    expect(await spoken('tube')).toEqual(['en']);
  });

  it('is the enrolled one whatever is written, until the family asks for another in words', async () => {
    await world.line.enrol(parent, family);
    expect(await spoken('the tube came out of her belly')).toEqual(['fr']);
    expect(await spoken('English please')).toEqual(['en']);
    expect(await spoken('7 kg')).toEqual(['en']);
    await world.line.enrol(parent, family);
    expect(await spoken('7 kg')).toEqual(['fr']);
  });

  it('is English where the site has switched the other off', async () => {
    await withoutFrench.line.enrol(parent, family);
    expect(await spoken('la sonde de ma fille est sortie', withoutFrench)).toEqual(['en']);
    expect(await spoken('en francais svp', withoutFrench)).toEqual(['en']);
    expect(await spoken('en espanol por favor', withoutFrench)).toEqual(['es']);
  });
});
