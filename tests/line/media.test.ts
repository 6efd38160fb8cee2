/** Pictures and voice notes: fetched after the turn, kept sealed and once, shown to whoever has the case by a link that ends. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fetchMedia } from '#src/line/media.ts';
import { mediaLink, mediaOf } from '#src/line/mediaLink.ts';
import { eraseCase } from '#src/retention/eraseCase.ts';
import { exportFamily } from '#src/retention/family.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { databases } from '#tests/store/databases.ts';
import { fakeCarrier, minuteMs, nurses, parent, startMs } from './fakes.ts';
import { openWorld, type World } from './world.ts';

const seal = createSeal(practiceKey);
const bytes = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 255, 254]);
const picture = { fate: 'fetched', type: 'image/png', bytes } as const;
const address = 'https://carrier.example/ME1';
const [ada] = nurses.map(({ number }) => number);

describe.each(databases())('on the $name database', ({ open }) => {
  let world: World;
  let carrier = fakeCarrier();
  let wallMs = startMs;
  beforeEach(async () => {
    carrier = fakeCarrier();
    wallMs = startMs;
    world = await openWorld(open, {
      carrier,
      wallMs: () => wallMs,
      wordForNurse: (said) => (said.key === 'mediaCame' ? `mediaCame ${said.params.link ?? 'none'}` : said.key),
    });
    await world.line.reset(startMs, { families: [] });
  });
  afterEach(() => world.close());

  const send = async (id: string, body = '', from = parent, media = [address]) => {
    await world.line.hear({ from, body, id, cause: id, media });
    await world.line.settle(id);
    return world.sent(id);
  };
  const taken = async () => {
    await world.text('tube');
    await world.text('person');
    await world.text('take', ada);
  };
  const rows = () =>
    world.database.query<{ state: string; tries: number }>('SELECT state, tries FROM media ORDER BY id');
  const tokenIn = (sent: readonly string[]) => sent.join().match(/\/media\/(\S+)/)?.[1] ?? 'none';

  it('goes to the nurse who has the case, by a link that opens it', async () => {
    await taken();
    carrier.media.push(picture);
    const sent = await send('one');
    expect(sent).toContainEqual(
      expect.stringMatching(new RegExp(`^\\${ada} text mediaCame https://line.example/media/`)),
    );
    expect(await world.line.openMedia(tokenIn(sent))).toEqual({ type: 'image/png', bytes });
    expect(await rows()).toEqual([{ state: 'kept', tries: 1 }]);
    expect(await world.database.query("SELECT FROM audit WHERE what LIKE 'a picture%opened'")).toHaveLength(1);
  });

  it('waits for whoever takes the case, and comes again with MORE', async () => {
    await world.text('tube');
    await world.text('person');
    carrier.media.push(picture, { ...picture, type: 'audio/amr' });
    expect((await send('one', '', parent, [address, address])).join()).not.toContain('mediaCame');
    expect((await world.text('take', ada)).filter((line) => line.includes('mediaCame'))).toHaveLength(2);
    expect((await world.text('more', ada)).filter((line) => line.includes('mediaCame'))).toHaveLength(2);
  });

  it('sent before there was a case belongs to the one its phone opens', async () => {
    carrier.media.push(picture);
    await send('one', 'hello');
    await world.text('tube');
    await world.text('person');
    expect((await world.text('take', ada)).join()).toContain('mediaCame https');
  });

  it('is kept though the step of its text fails', async () => {
    carrier.media.push(picture);
    await world.text('tube');
    await send('one', 'boom');
    expect(await rows()).toEqual([{ state: 'kept', tries: 1 }]);
    expect((await world.text('take', ada)).join()).toContain('mediaCame https');
  });

  it('is tried again while the carrier does not have it, a few times, and then the nurse hears that it is not kept', async () => {
    await taken();
    await send('one');
    expect(await rows()).toEqual([{ state: 'waiting', tries: 1 }]);
    await world.line.settle('at once');
    expect(await rows()).toEqual([{ state: 'waiting', tries: 1 }]);
    for (let tries = 2; tries <= 8; tries += 1) {
      wallMs += 60 * minuteMs;
      await world.line.settle(`try ${tries}`);
    }
    expect(await rows()).toEqual([{ state: 'refused', tries: 8 }]);
    expect(await world.sent('try 8')).toEqual([`${ada} text mediaCame none`]);
  });

  it('that a process died over is fetched later, and kept and told once', async () => {
    await taken();
    const gone = Promise.withResolvers<never>();
    carrier.fetchMedia = () => gone.promise;
    const dying = send('one');
    await expect.poll(rows).toEqual([{ state: 'waiting', tries: 1 }]);
    wallMs += 2 * minuteMs;
    carrier.fetchMedia = async () => picture;
    await Promise.all([fetchMedia(world.parts, 'a'), fetchMedia(world.parts, 'b')]);
    expect(await rows()).toEqual([{ state: 'kept', tries: 2 }]);
    gone.reject(new Error('dead'));
    await dying;
    expect(await rows()).toEqual([{ state: 'kept', tries: 2 }]);
    const told = await world.database.query("SELECT FROM message WHERE cause IN ('a', 'b')");
    expect(told).toHaveLength(1);
  });

  it('is refused for good where it is none, and a repeated text brings no second one', async () => {
    await world.text('tube');
    carrier.media.push({ fate: 'refused', why: 'neither picture nor sound' });
    await send('one');
    await send('one');
    expect(await rows()).toEqual([{ state: 'refused', tries: 1 }]);
  });

  it('opens for an hour by its very link, and by no other', async () => {
    await taken();
    carrier.media.push(picture);
    const token = tokenIn(await send('one'));
    const last = token.at(-1) === 'A' ? 'Q' : 'A';
    const [id, until, mac] = token.split('.');
    for (const other of [
      '',
      token.slice(0, -1),
      token.slice(0, -1) + last,
      `2.${until}.${mac}`,
      `${id}.zzzzzz.${mac}`,
      '%00',
      '../x',
    ])
      expect(await world.line.openMedia(other)).toBeNull();
    await world.line.advance(startMs + 60 * minuteMs, 'an hour');
    expect(await world.line.openMedia(token)).not.toBeNull();
    await world.line.advance(startMs + 61 * minuteMs, 'later');
    expect(await world.line.openMedia(token)).toBeNull();
  });

  it('is sealed, copied out with its family, and erased with its case', async () => {
    await world.text('tube');
    carrier.media.push(picture);
    await send('one');
    const [kept] = await world.database.query<{ body: Buffer; source: Buffer | null }>(
      'SELECT body, source FROM media',
    );
    expect(kept?.body.includes(bytes)).toBe(false);
    expect(kept?.source).toBeNull();
    expect(await exportFamily(world.database, seal, parent)).toMatchObject({
      media: [{ type: 'image/png', base64: bytes.toString('base64') }],
    });
    const [row] = await world.database.query<{ id: number }>('SELECT id FROM "case"');
    await world.text('person');
    await world.text('take', ada);
    await world.text('close', ada);
    await world.text('yes', ada);
    await world.database.transaction((client) => eraseCase(client, seal, row?.id ?? 0, startMs));
    expect(await rows()).toEqual([]);
  });

  it('of a nurse is not a family’s and is not kept', async () => {
    await world.text('person');
    await send('one', 'take', ada);
    expect(await rows()).toEqual([]);
  });
});

describe('a link', () => {
  it('opens under the key before while they change, and under no other key', () => {
    const [old, fresh] = [Buffer.alloc(32, 1), Buffer.alloc(32, 2)];
    const token = mediaLink(createSeal(old), 'https://line.example', 7, startMs).split('/').at(-1) ?? '';
    expect(mediaOf(createSeal(fresh, old), token, startMs)).toBe(7);
    expect(mediaOf(createSeal(fresh), token, startMs)).toBeNull();
  });
});
