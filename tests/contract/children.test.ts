/** Two tube-fed children of one phone, on a real process: which of them is asked, named and corrected, and how texts name them. */
import { describe, expect, it } from 'vitest';
import { backends } from './process.ts';
import { family, nursesOf, phone, standing, tubeOut } from './standing.ts';

const { language: _, ...tam } = family;
const other = { ...tam, child: 'Ivo', tubeKind: 'gj', weightKg: 14.25 };

describe.each(backends())('on the $name database', (backend) => {
  const { line, call } = standing(backend);
  const enrol = () => line.enrol(phone, { ...family, children: [other] });
  const newest = () => line.newestCase(phone);
  const last = async () => (await line.thread(phone)).at(-1)?.body ?? '';

  it('asks for danger first, then which child, then whether that file still holds', async () => {
    await enrol();
    await line.text(phone, tubeOut);
    expect((await newest())?.asking).toBe('unwell');
    await line.text(phone, 'no');
    expect(await newest()).toMatchObject({ asking: 'which-child', facts: {} });
    expect(await last()).toContain('Ivo, Tam or NONE');
    await line.text(phone, 'Tam');
    expect(await newest()).toMatchObject({ asking: 'confirm', facts: { tubeKind: 'g', weightKg: 11.5 } });
    expect(await last()).toContain('On file for Tam');
  });

  it('asks nothing where the first text names one', async () => {
    await enrol();
    await line.text(phone, "ivo's tube fell out");
    await line.text(phone, 'no');
    expect(await newest()).toMatchObject({ asking: 'confirm', facts: { tubeKind: 'gj', weightKg: 14.25 } });
  });

  it('a name taken back brings the other file, and pages name the right child', async () => {
    await enrol();
    await line.text(phone, "tam's tube fell out");
    await line.text(phone, 'no');
    const sent = await line.text(phone, "no it's Ivo, not Tam");
    expect(await newest()).toMatchObject({ asking: 'confirm', facts: { tubeKind: 'gj', weightKg: 14.25 } });
    const nurses = await nursesOf(line);
    const pages = sent.filter(({ to }) => nurses.includes(to));
    expect(pages[0]?.body).toContain('Ivo');
    expect(pages[0]?.body).not.toContain('Tam');
  });

  it('the other child named beside calls a nurse at once, urgently', async () => {
    await enrol();
    await line.text(phone, "tam's tube fell out");
    await line.text(phone, "ivo's is out too");
    const theCase = await newest();
    expect(theCase?.pages).toMatchObject([{ level: 'urgent' }]);
    expect(theCase?.asking).toBe('unwell');
  });

  it('enrolled anew with one child the family has one', async () => {
    await enrol();
    await line.enrol(phone, family);
    await line.text(phone, tubeOut);
    await line.text(phone, 'no');
    expect((await newest())?.asking).toBe('confirm');
  });

  it('children of one name are refused', async () => {
    const answer = await call('PUT', `/practice/families/${phone}`, {
      ...family,
      children: [{ ...other, child: 'TAM' }],
    });
    expect(answer).toMatchObject({ status: 400, body: { error: { code: 'bad-request' } } });
  });
});
