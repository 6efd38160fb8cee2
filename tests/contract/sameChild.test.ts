/** A grandmother's phone, on no file, on a real process: asked `who` once, in the family's case where the answer fits, else on its own. */
import { describe, expect, it } from 'vitest';
import { backends } from './process.ts';
import { phone, standing, tubeOut } from './standing.ts';

const grandmother = '+12125550177';

describe.each(backends())('on the $name database', (backend) => {
  const { line, restart } = standing(backend);
  const asking = async () => (await line.newestCase(grandmother))?.asking;
  const bodies = (sent: readonly { readonly to: string; readonly body: string }[], to: string) =>
    sent.filter((one) => one.to === to).map(({ body }) => body);

  it('asks for danger first, then who, and the name with four digits shares the case, also after a crash', async () => {
    await line.text(phone, tubeOut);
    expect(bodies(await line.text(grandmother, 'this is tams grandma, the tube fell out'), grandmother)[0]).toContain(
      '911',
    );
    expect(await asking()).toBe('unwell');
    await line.text(grandmother, 'no');
    expect(await asking()).toBe('who');
    await restart('SIGKILL');
    const joined = await line.text(grandmother, 'Tam 0171');
    expect(bodies(joined, phone).join()).toContain('0177');
    expect((await line.newestCase(grandmother))?.id).toBe((await line.newestCase(phone))?.id);
    const answered = await line.text(phone, 'no');
    expect(bodies(answered, grandmother)).toEqual(bodies(answered, phone));
    expect(await asking()).toBe('confirm');
  });

  it('goes on by itself at once where the answer is no, and after two that do not fit', async () => {
    await line.text(phone, tubeOut);
    await line.text(grandmother, 'im the babysitter, the tube fell out');
    await line.text(grandmother, 'no');
    await line.text(grandmother, 'no');
    expect(await asking()).toBe('tube-kind');
    const sitter = '+12125550178';
    await line.text(sitter, 'im the babysitter, the tube fell out');
    for (const body of ['no', 'Tam 0178', 'Tam 0178']) await line.text(sitter, body);
    expect(await line.newestCase(sitter)).toMatchObject({ asking: 'tube-kind', pages: [{ level: 'urgent' }] });
  });

  it('asks no phone that says nothing of itself, and none where no family has a case open', async () => {
    await line.text(grandmother, 'this is tams grandma, the tube fell out');
    await line.text(grandmother, 'no');
    expect(await asking()).toBe('tube-kind');
  });
});
