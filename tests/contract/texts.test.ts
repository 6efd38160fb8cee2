/** Texts to the practice line, on a real process: answered once, in order, whatever is in them and whoever sends them. */
import { describe, expect, it } from 'vitest';
import { backends } from './process.ts';
import { now, nursesOf, phone, standing, textsOf, tubeOut } from './standing.ts';

const stranger = '+12125550173';

describe.each(backends())('on the $name database', (backend) => {
  const { line, call } = standing(backend);

  it('answers a text about a tube: the emergency number, and the danger signs', async () => {
    const sent = await line.text(phone, tubeOut);
    expect(sent.length).toBeGreaterThan(0);
    expect(sent.every(({ to, kind }) => to === phone && kind === 'text')).toBe(true);
    expect(sent.map(({ body }) => body).join(' ')).toContain('911');
    expect(sent.every(({ at }) => Date.parse(at) === Date.parse(now) && at.endsWith('-05:00'))).toBe(true);
    expect((await line.newestCase(phone))?.asking).toBe('unwell');
  });

  it('keeps both sides of the thread, in order', async () => {
    const [first, ...more] = await line.text(phone, tubeOut);
    expect(await line.thread(phone)).toEqual([
      { direction: 'in', body: tubeOut, at: first?.at, kind: 'text' },
      ...[first, ...more].map((sent) => ({ direction: 'out', body: sent?.body, at: sent?.at, kind: 'text' })),
    ]);
  });

  it('with a repeated id changes nothing and sends nothing, whoever sends it', async () => {
    await line.text(phone, tubeOut, 'same-id');
    const before = await line.thread(phone);
    expect(await line.text(phone, tubeOut, 'same-id')).toEqual([]);
    expect(await line.text(phone, 'other words', 'same-id')).toEqual([]);
    expect(await line.text(stranger, tubeOut, 'same-id')).toEqual([]);
    expect(await line.thread(phone)).toEqual(before);
    expect(await line.newestCase(stranger)).toBeNull();
  });

  it('with one id in ten requests at once is answered once', async () => {
    const all = await Promise.all(Array.from({ length: 10 }, () => line.text(phone, tubeOut, 'once')));
    expect(all.filter((sent) => sent.length > 0)).toHaveLength(1);
    expect((await line.thread(phone)).filter(({ direction }) => direction === 'in')).toHaveLength(1);
  });

  it('of one phone at the same time are both answered, one after the other', async () => {
    const [one, two] = await Promise.all([line.text(phone, tubeOut), line.text(phone, 'no')]);
    expect(one.length).toBeGreaterThan(0);
    expect(two.length).toBeGreaterThan(0);
    const thread = await line.thread(phone);
    expect(thread.filter(({ direction }) => direction === 'in')).toHaveLength(2);
    expect(thread.filter(({ direction }) => direction === 'out')).toHaveLength(one.length + two.length);
  });

  it('of many phones at the same time report each their own', async () => {
    const phones = Array.from({ length: 20 }, (_, index) => `+1212555${String(180 + index).padStart(4, '0')}`);
    const all = await Promise.all(phones.map((from) => line.text(from, tubeOut)));
    all.forEach((sent, index) => {
      expect(sent.length).toBeGreaterThan(0);
      expect(new Set(sent.map(({ to }) => to))).toEqual(new Set([phones[index]]));
    });
  });

  it('from an unknown phone opens a case that asks what no file knows', async () => {
    await line.text(stranger, 'my sons feeding tube came out');
    await line.text(stranger, 'no');
    expect((await line.newestCase(stranger))?.asking).toBe('tube-kind');
  });

  it('about something else opens no case, and is answered', async () => {
    expect((await line.text(stranger, 'what time does the pharmacy open')).length).toBeGreaterThan(0);
    expect(await line.newestCase(stranger)).toBeNull();
  });

  it.each([
    ['empty', ''],
    ['blank', '  \n '],
    ['of 1,600 characters', 'tube '.repeat(320)],
    ['of 1,600 emoji', '🐦'.repeat(1600)],
    ['with what no database keeps', 'tube\0 out \ud800'],
  ])('that is %s is answered, in a case and without one', async (_name, body) => {
    expect((await line.text(stranger, body)).length).toBeGreaterThan(0);
    await line.text(phone, tubeOut);
    expect((await line.text(phone, body)).length).toBeGreaterThan(0);
  });

  it('of 1,601 characters is refused and changes nothing', async () => {
    const answer = await call('POST', textsOf(phone), { body: 'a'.repeat(1601) });
    expect(answer).toMatchObject({ status: 413, body: { error: { code: 'text-too-long' } } });
    expect(await line.thread(phone)).toEqual([]);
  });

  it('of a danger sign sends for help at once: emergency, and a nurse by text and call', async () => {
    await line.text(phone, tubeOut);
    const sent = await line.text(phone, 'he is turning blue and cant breathe');
    const [first] = await nursesOf(line);
    const theCase = await line.newestCase(phone);
    expect(theCase).toMatchObject({ disposition: 'emergency', pages: [{ to: first, level: 'emergency' }] });
    expect(sent.find(({ to }) => to === phone)?.body).toContain('911');
    expect(
      sent
        .filter(({ to }) => to === first)
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['call', 'text']);
  });
});
