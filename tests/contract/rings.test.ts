/** Calls and pictures to the practice line, on a real process: what is spoken, who is rung, and what leaves because of it. */
import { describe, expect, it } from 'vitest';
import { backends } from './process.ts';
import { nursesOf, phone, standing, textsOf } from './standing.ts';

const keysOf = (number: string) => `/practice/phones/${encodeURIComponent(number)}/keys`;
const callsOf = (number: string) => `/practice/phones/${encodeURIComponent(number)}/calls`;

describe.each(backends())('on the $name database', (backend) => {
  const { line, url, call } = standing(backend);

  it('speaks the emergency number first, opens the case by text, pages, and tells who is rung in which order', async () => {
    const { sent, spoken, rings } = await line.ring(phone);
    const at = sent[0]?.at;
    expect(spoken.slice(0, 60)).toContain('9 1 1');
    expect(spoken).toContain('nothing through the tube');
    const nurses = await nursesOf(line);
    expect(rings).toEqual(nurses);
    expect(sent.some(({ to, kind, body }) => to === phone && kind === 'text' && body.includes('911'))).toBe(true);
    expect(sent.some(({ to }) => to === nurses[0])).toBe(true);
    expect(await line.newestCase(phone)).toMatchObject({
      asking: 'unwell',
      pages: [{ to: nurses[0], level: 'urgent' }],
    });
    expect((await line.thread(phone))[0]).toEqual({ direction: 'in', body: '', at, kind: 'call' });
  });

  it('with a repeated id changes nothing, sends nothing and says the same', async () => {
    const first = await line.ring(phone, 'one-call');
    const before = await line.thread(phone);
    expect(await line.ring(phone, 'one-call')).toEqual({ ...first, sent: [] });
    expect(await line.thread(phone)).toEqual(before);
  });

  it('of a nurse who has a case puts her through to its family', async () => {
    const [first] = await nursesOf(line);
    expect((await line.ring(first)).rings).toEqual([]);
    await line.ring(phone);
    await line.text(first, 'take');
    const { spoken, rings } = await line.ring(first);
    expect(spoken).toContain('family of Tam');
    expect(rings).toEqual([phone]);
  });

  it('of the line takes its page by the key 1, and by no other', async () => {
    const [first] = await nursesOf(line);
    expect(await line.press(first, '1')).toEqual({ sent: [], rings: [] });
    await line.text(phone, 'she is blue and limp, her g tube is out');
    expect(await line.press(first, '2')).toEqual({ sent: [], rings: [] });
    const { sent, rings } = await line.press(first, '1');
    expect(rings).toEqual([]);
    expect(sent.map(({ to }) => to)).toContain(phone);
    expect(await line.newestCase(phone)).toMatchObject({ pages: [{ to: first, takenAt: expect.any(String) }] });
  });

  it('of the line takes nothing for a family, for a nurse who was not called, or once somebody has it', async () => {
    const [first, second] = await nursesOf(line);
    await line.text(phone, 'she is blue and limp, her g tube is out');
    for (const other of [phone, second]) expect(await line.press(other, '1')).toEqual({ sent: [], rings: [] });
    expect(await line.newestCase(phone)).toMatchObject({ pages: [{ to: first, takenAt: null }] });
    await line.press(first, '1');
    const before = await line.newestCase(phone);
    const { sent, rings } = await line.press(first, '1');
    expect([sent.map(({ to }) => to), rings]).toEqual([[first], []]);
    expect(sent[0]?.body).toContain('You have Tam');
    expect(await line.newestCase(phone)).toEqual(before);
  });

  it('that puts a nurse through rings the family once she has pressed 1', async () => {
    const [first] = await nursesOf(line);
    await line.text(phone, 'she is blue and limp, her g tube is out');
    await line.text(first, 'take');
    await line.text(first, 'call');
    expect((await line.press(first, '1')).rings).toEqual([phone]);
  });

  it('that is malformed is refused and changes nothing', async () => {
    for (const body of [{ id: '' }, { id: 7 }, { body: 'hello' }, []])
      expect(await call('POST', callsOf(phone), body)).toMatchObject({
        status: 400,
        body: { error: { code: 'bad-request' } },
      });
    expect(await call('GET', callsOf(phone))).toMatchObject({ status: 405 });
    expect(await call('POST', callsOf('911'), {})).toMatchObject({
      status: 400,
      body: { error: { code: 'bad-number' } },
    });
    for (const body of [{}, { digit: '12' }, { digit: 1 }, { digit: '1', id: 'x' }])
      expect(await call('POST', keysOf(phone), body)).toMatchObject({
        status: 400,
        body: { error: { code: 'bad-request' } },
      });
    expect(await line.thread(phone)).toEqual([]);
  });

  it('a picture sent with a text reaches the nurse who has the case as a link, and is no reading', async () => {
    const [first] = await nursesOf(line);
    await line.ring(phone);
    await line.text(first, 'take');
    const media = [{ type: 'image/png', base64: Buffer.from('picture').toString('base64') }];
    const answer = await call('POST', textsOf(phone), { body: '', media });
    expect(answer.status).toBe(200);
    const told = (await line.thread(first)).at(-1)?.body ?? '';
    const path = /\/media\/\S+/.exec(told)?.[0] ?? '';
    const opened = await fetch(url() + path);
    expect([opened.status, opened.headers.get('content-type'), await opened.text()]).toEqual([
      200,
      'image/png',
      'picture',
    ]);
    expect((await line.newestCase(phone))?.facts.ph).toBeUndefined();
    for (const bad of [
      [{ type: 'text/html', base64: 'AAAA' }],
      [{ type: 'image/png', base64: '!' }],
      [{ type: 'image/svg+xml', base64: 'AAAA' }],
      'x',
    ])
      expect(await call('POST', textsOf(phone), { body: 'x', media: bad })).toMatchObject({ status: 400 });
  });
});
