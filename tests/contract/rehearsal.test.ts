/** Practising over the practice line, on a real process: marked in every text and in the case, calling nobody, ended by what is real. */
import { describe, expect, it } from 'vitest';
import { converse, goesWell } from './phone.ts';
import { backends } from './process.ts';
import { nursesOf, phone, standing, tubeOut } from './standing.ts';

const mark = /^PRACTICE\b/;

describe.each(backends())('on the $name database', (backend) => {
  const { line } = standing(backend);
  const newest = () => line.newestCase(phone);
  const practise = () => line.text(phone, 'we want to practice');

  it('a case that is none says so', async () => {
    await line.text(phone, tubeOut);
    expect(await newest()).toMatchObject({ rehearsal: false });
  });

  it('wanted by a family is marked in the case and in every text, up to the end of the way, and calls nobody; a nurse hears only how it went', async () => {
    const sent = await practise();
    expect(sent.length).toBeGreaterThan(0);
    expect(await newest()).toMatchObject({ rehearsal: true, pages: [] });
    await line.text(phone, tubeOut);
    expect(await converse(line, phone, { ...goesWell, 'tube-in': 'hard' }, ['hold'])).toMatchObject({
      rehearsal: true,
      pages: [],
    });
    const told = (await line.thread(phone)).filter(({ direction }) => direction === 'out');
    expect(told.filter(({ body }) => !mark.test(body))).toEqual([]);
    const nurses = await Promise.all((await nursesOf(line)).map((nurse) => line.thread(nurse)));
    expect(nurses.flat().map(({ kind, body }) => [kind, body.slice(0, 15)])).toEqual([['text', 'PRACTICE RESULT']]);
  });

  it.each([
    ['a danger sign', 'wait she is blue and limp', 'emergency'],
    ['"this is real"', 'this is real', null],
  ])('is ended by %s, and from then on nothing is practice', async (_, body, disposition) => {
    await practise();
    await line.text(phone, tubeOut);
    const practised = (await newest())?.id;
    const sent = await line.text(phone, body);
    const real = await newest();
    expect(real).toMatchObject({ rehearsal: false, disposition });
    expect(real?.id).not.toBe(practised);
    expect(sent.filter(({ to }) => to === phone).at(-1)?.body).not.toMatch(mark);
    expect((real?.pages ?? []).map(({ level }) => level)).toEqual(disposition === null ? [] : ['emergency']);
  });

  it('is ended by 20 minutes of silence, and a tube out after that is real', async () => {
    await practise();
    await line.text(phone, tubeOut);
    await line.clock({ advance: 'PT19M' });
    expect(await newest()).toMatchObject({ rehearsal: true });
    const { sent } = await line.clock({ advance: 'PT1M' });
    expect(sent.map(({ to }) => to)).toContain(phone);
    await line.text(phone, tubeOut);
    expect(await newest()).toMatchObject({ rehearsal: false, asking: 'unwell' });
  });

  it('is ended by a call, which is real: a nurse is called and rung', async () => {
    await practise();
    const nurses = await nursesOf(line);
    const { rings } = await line.ring(phone);
    expect(rings).toEqual(nurses);
    expect(await newest()).toMatchObject({ rehearsal: false, pages: [{ to: nurses[0], level: 'urgent' }] });
  });

  it('sent by a nurse plays on the family’s phone, and she hears how it went', async () => {
    const [nurse] = await nursesOf(line);
    const sent = await line.text(nurse, 'practice Tam');
    expect(sent.find(({ to }) => to === phone)?.body).toMatch(mark);
    expect(await newest()).toMatchObject({ rehearsal: true });
    const over = await line.text(phone, 'practice over');
    expect(over.map(({ to }) => to)).toContain(nurse);
    expect((await newest())?.rehearsal).not.toBe(false);
  });
});
