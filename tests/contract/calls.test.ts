/** The practice interface call by call, on a real process: reset, families, case, clock and nurse of the contract, and bad requests. */
import { describe, expect, it } from 'vitest';
import { converse, goesWell } from './phone.ts';
import { backends } from './process.ts';
import { family, now, nursesOf, phone, standing, textsOf, tubeOut } from './standing.ts';

const other = '+12125550172';

describe.each(backends())('on the $name database', (backend) => {
  const { line, url, call } = standing(backend);

  describe('reset', () => {
    it('puts the practice data back to the seeds and sets the clock', async () => {
      await line.text(phone, tubeOut);
      await line.reset('2027-01-04T12:00:00-05:00');
      expect(Date.parse((await line.state()).now)).toBe(Date.parse('2027-01-04T12:00:00-05:00'));
      expect(await line.thread(phone)).toEqual([]);
      expect(await line.newestCase(phone)).toBeNull();
    });

    it('leaves nothing due', async () => {
      await line.text(phone, 'he is turning blue');
      await line.reset(now);
      expect((await line.clock({ advance: 'P2D' })).sent).toEqual([]);
    });

    it('forgets a family that is not of the seeds', async () => {
      await line.reset(now);
      await line.text(phone, tubeOut);
      await line.text(phone, 'no');
      expect((await line.newestCase(phone))?.asking).not.toBe('confirm');
    });
  });

  describe('families', () => {
    it('enrols: the line knows the tube, the tract and the weight, and asks whether they still hold', async () => {
      await line.text(phone, tubeOut);
      await line.text(phone, 'no');
      const theCase = await line.newestCase(phone);
      expect(theCase?.asking).toBe('confirm');
      expect(theCase?.facts).toMatchObject({
        tubeKind: 'g',
        firstPlaced: { earliest: '2025-01-10', latest: '2025-01-10' },
        weightKg: 11.5,
      });
    });

    it('enrols anew: the later file counts', async () => {
      await line.enrol(phone, { ...family, weightKg: 12.25 });
      await line.text(phone, tubeOut);
      await line.text(phone, 'no');
      expect((await line.newestCase(phone))?.facts.weightKg).toBe(12.25);
    });

    it('refuses a file that cannot be and keeps the one before', async () => {
      const answer = await call('PUT', `/practice/families/${phone}`, { ...family, weightKg: -1 });
      expect(answer).toMatchObject({ status: 400, body: { error: { code: 'bad-request' } } });
    });
  });

  describe('case', () => {
    it('is null for a phone that never wrote', async () => {
      expect(await line.newestCase(other)).toBeNull();
    });

    it('goes all the way to use when all goes well', async () => {
      await line.text(phone, tubeOut);
      const theCase = await converse(line, phone, goesWell, ['use']);
      expect(theCase.facts).toMatchObject({ tubeKind: 'g', ph: 4.5, insertedHow: 'easy' });
      expect(theCase.facts.cameOutAt).toBeDefined();
    });

    it('waits an hour for a high reading and comes back for a new one', async () => {
      await line.text(phone, tubeOut);
      const waiting = await converse(line, phone, { ...goesWell, ph: '6.5' }, ['recheck', 'use']);
      expect(waiting).toMatchObject({ disposition: 'recheck', asking: null });
      const due = waiting.due.find(({ what }) => what === 'recheck');
      expect(due).toBeDefined();
      const { sent } = await line.clock({ advance: 'PT1H' });
      expect(sent.filter(({ to }) => to === phone).length).toBeGreaterThan(0);
      expect(['after-in', 'contents']).toContain((await line.newestCase(phone))?.asking);
      expect(await converse(line, phone, { ...goesWell, ph: '5.0' }, ['use'])).toMatchObject({ disposition: 'use' });
    });
  });

  describe('clock', () => {
    it('stands still between calls', async () => {
      const { now: first } = await line.state();
      await line.text(phone, tubeOut);
      expect((await line.state()).now).toBe(first);
    });

    it('fires every timer on the way at its own due time, in order', async () => {
      await line.text(phone, tubeOut);
      const due = (await line.newestCase(phone))?.due.find(({ what }) => what === 'silence');
      const { sent, now: ended } = await line.clock({ advance: 'PT2H' });
      expect(Date.parse(ended)).toBe(Date.parse(now) + 2 * 60 * 60_000);
      expect(sent.length).toBeGreaterThan(1);
      expect(Date.parse(sent[0]?.at ?? '')).toBe(Date.parse(due?.at ?? ''));
      const times = sent.map(({ at }) => Date.parse(at));
      expect(times).toEqual([...times].sort((a, b) => a - b));
      expect((await line.newestCase(phone))?.pages.length).toBeGreaterThan(0);
    });

    it('counts what is due at the very moment it stops as due', async () => {
      await line.text(phone, tubeOut);
      const due = (await line.newestCase(phone))?.due.find(({ what }) => what === 'silence');
      const at = Date.parse(due?.at ?? '');
      expect((await line.clock({ to: new Date(at - 1).toISOString() })).sent).toEqual([]);
      expect((await line.clock({ to: new Date(at).toISOString() })).sent.length).toBeGreaterThan(0);
    });

    it('gives the same however the way is cut', async () => {
      await line.text(phone, 'he is turning blue');
      const whole = (await line.clock({ advance: 'PT30M' })).sent;
      await line.reset(now);
      await line.enrol(phone, family);
      await line.text(phone, 'he is turning blue');
      const cut = [];
      for (let minute = 0; minute < 30; minute += 1) cut.push(...(await line.clock({ advance: 'PT1M' })).sent);
      expect(cut).toEqual(whole);
    });

    it.each([
      [{ to: '2027-03-06T02:09:59-05:00' }, 'clock-backward'],
      [{ advance: '-PT1M' }, 'clock-backward'],
      [{ advance: 'P46D' }, 'clock-too-far'],
      [{ advance: 'an hour' }, 'bad-request'],
    ])('refuses %j and stays', async (move, code) => {
      expect(await call('POST', '/practice/clock', move)).toMatchObject({ status: 400, body: { error: { code } } });
      expect(Date.parse((await line.state()).now)).toBe(Date.parse(now));
    });
  });

  describe('nurse', () => {
    it('takes a page: noted in the case, said to her and to the caregiver, and the climb ends', async () => {
      await line.text(phone, 'he is turning blue');
      const [nurse, ...others] = await nursesOf(line);
      const sent = await line.text(nurse, 'take');
      expect(sent.map(({ to }) => to)).toEqual(expect.arrayContaining([nurse, phone]));
      const theCase = await line.newestCase(phone);
      expect(theCase?.pages.map(({ to, takenAt }) => [to, Date.parse(takenAt ?? '')])).toEqual([
        [nurse, Date.parse(now)],
      ]);
      const later = (await line.clock({ advance: 'PT30M' })).sent;
      expect(later.filter(({ to }) => [nurse, ...others].includes(to))).toEqual([]);
    });

    it('who takes it hears what was added; one who did not take it hears nothing of it', async () => {
      await line.text(phone, tubeOut);
      await line.text(phone, 'no');
      await line.text(phone, 'i need to talk to a nurse');
      await line.clock({ advance: 'PT12M' });
      const [first, second] = await nursesOf(line);
      const sent = await line.text(second, 'take');
      expect(sent.map(({ to }) => to)).toContain(second);
      expect(sent.map(({ to }) => to)).not.toContain(first);
    });

    it('who does not answer is followed by the next two', async () => {
      await line.text(phone, 'he is turning blue');
      await line.clock({ advance: 'PT10M' });
      const pages = (await line.newestCase(phone))?.pages ?? [];
      expect(new Set(pages.map(({ to }) => to))).toEqual(new Set(await nursesOf(line)));
      expect(pages.every(({ takenAt, level }) => takenAt === null && level === 'emergency')).toBe(true);
    });

    it('clears a hard insertion by clear and yes', async () => {
      await line.text(phone, tubeOut);
      const held = await converse(line, phone, { ...goesWell, 'tube-in': 'hard' }, ['hold', 'use']);
      expect(held.disposition).toBe('hold');
      const [nurse] = await nursesOf(line);
      await line.text(nurse, 'take');
      await line.text(nurse, 'clear');
      expect((await line.newestCase(phone))?.disposition).toBe('hold');
      await line.text(nurse, 'yes');
      expect(await converse(line, phone, goesWell, ['use'])).toMatchObject({ disposition: 'use' });
    });
  });

  describe('a request that cannot be taken', () => {
    it.each([
      ['GET', '/practice/nothing', 404, 'not-found'],
      ['DELETE', textsOf(phone), 405, 'method-not-allowed'],
      ['GET', '/practice/phones/%zz/case', 400, 'bad-escape'],
      ['GET', '/practice/phones/12125550171/case', 400, 'bad-number'],
    ])('%s %s is a coded %i', async (method, path, status, code) => {
      expect(await call(method, path)).toMatchObject({
        status,
        body: { error: { code, message: expect.any(String) } },
      });
    });

    it.each([
      ['application/json', '{"body":', 400, 'bad-json'],
      ['text/plain', 'hello', 415, 'not-json'],
      ['application/json', JSON.stringify({ body: 'a'.repeat(2_000_000) }), 413, 'body-too-large'],
    ])('as %s is a coded answer and changes nothing', async (type, body, status, code) => {
      const response = await fetch(url() + textsOf(other), {
        method: 'POST',
        headers: { 'Content-Type': type },
        body,
      });
      expect([response.status, await response.json()]).toMatchObject([status, { error: { code } }]);
      expect(await line.thread(other)).toEqual([]);
    });
  });
});
