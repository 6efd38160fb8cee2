/** The practice world over HTTP: families, the clock, the reset. */
import { describe, expect, it } from 'vitest';
import { phone, practiceWeb, refused } from './practiceWeb.ts';

const { line, call } = practiceWeb();

const family = {
  child: 'Wren',
  born: null,
  tubeKind: 'g',
  firstPlaced: '2026-05-01',
  weightKg: 7.2,
  weighedOn: '2027-02-20',
  language: 'en',
};

describe('a family', () => {
  const path = `/practice/families/${encodeURIComponent(phone)}`;

  it('is enrolled and listed', async () => {
    const { born: _, ...withoutBirth } = family;
    expect((await call('PUT', path, withoutBirth)).status).toBe(200);
    expect(line().enrolled.get(phone)).toMatchObject({ ...family, latexAllergy: false, cannotWait: null, phones: [] });
    expect((await call('GET', '/practice/state')).body).toEqual({
      now: '2027-03-06T02:10:00.000-05:00',
      zone: 'America/New_York',
      families: [{ number: phone, child: 'Wren' }],
      nurses: [{ name: 'Ada', number: '+12025550101' }],
      protocol: 'unsigned',
      paused: null,
    });
  });

  it('may have more phones and more children, and facts beside', async () => {
    const { language: _, ...other } = { ...family, child: 'Ode', stemLengthCm: 1.7 };
    const body = { ...family, consentOn: '2027-01-05', phones: ['+12125550151'], children: [other] };
    expect((await call('PUT', path, body)).status).toBe(200);
    expect(line().enrolled.get(phone)).toMatchObject({ phones: ['+12125550151'], siblings: [other] });
    expect(await call('PUT', path, { ...body, phones: ['555'] })).toMatchObject({ status: 400 });
  });

  it.each([
    ['child', ''],
    ['child', null],
    ['born', '2027-02-30'],
    ['tubeKind', 'peg'],
    ['firstPlaced', '05/01/2026'],
    ['firstPlaced', undefined],
    ['weightKg', '7'],
    ['weightKg', 0],
    ['weightKg', 201],
    ['weighedOn', 20270220],
    ['language', 'xx'],
    ['nickname', 'W'],
  ])('with %s %j is refused', async (field, value) => {
    const answer = await call('PUT', path, { ...family, [field]: value });
    expect(answer).toMatchObject({
      status: 400,
      body: { error: { code: 'bad-request', message: expect.stringContaining(field) } },
    });
    expect(line().enrolled.size).toBe(0);
  });
});

describe('the clock', () => {
  it.each([
    [{ advance: 'PT1H' }, '2027-03-06T03:10:00.000-05:00'],
    [{ advance: 'PT0S' }, '2027-03-06T02:10:00.000-05:00'],
    [{ advance: 'P1DT30M' }, '2027-03-07T02:40:00.000-05:00'],
    // Clocks went forward on 2027-03-14 in New York: 45 days of 24 hours end an hour later on the wall.
    [{ advance: 'P45D' }, '2027-04-20T03:10:00.000-04:00'],
    [{ to: '2027-03-06T08:10:00Z' }, '2027-03-06T03:10:00.000-05:00'],
    [{ to: '2027-03-06T02:10:00-05:00' }, '2027-03-06T02:10:00.000-05:00'],
  ])('moves by %j', async (move, now) => {
    expect((await call('POST', '/practice/clock', move)).body).toEqual({ now, sent: [] });
  });

  it.each([
    [{ to: '2027-03-06T02:09:59-05:00' }, 'clock-backward'],
    [{ advance: '-PT1H' }, 'clock-backward'],
    [{ advance: 'P45DT1S' }, 'clock-too-far'],
    [{ advance: 'P99999999999D' }, 'clock-too-far'],
    [{ advance: `PT${'9'.repeat(400)}H` }, 'bad-request'],
    [{ to: '2027-05-01T00:00:00Z' }, 'clock-too-far'],
    [{ advance: 'P1M' }, 'bad-request'],
    [{ advance: '1h' }, 'bad-request'],
    [{ advance: 3600 }, 'bad-request'],
    [{ to: '2027-03-06T03:10:00' }, 'bad-request'],
    [{ to: '2027-03-07' }, 'bad-request'],
    [{ to: '2027-02-30T03:10:00Z' }, 'bad-request'],
    [{ to: 'tomorrow' }, 'bad-request'],
    [{ advance: 'PT1H', to: '2027-03-06T08:10:00Z' }, 'bad-request'],
    [{}, 'bad-request'],
  ])('refuses %j', async (move, code) => {
    const answer = await call('POST', '/practice/clock', move);
    expect([answer.status, answer.body]).toEqual([400, refused(code)]);
    expect(await line().now()).toBe(Date.parse('2027-03-06T07:10:00Z'));
  });

  it('takes moves one after the other: two hours asked at once are two hours', async () => {
    await Promise.all([1, 2].map(() => call('POST', '/practice/clock', { advance: 'PT1H' })));
    expect(await line().now()).toBe(Date.parse('2027-03-06T09:10:00Z'));
  });
});

describe('a reset', () => {
  it('sets the clock, also back', async () => {
    const answer = await call('POST', '/practice/reset', { now: '2027-01-02T03:04:05+01:00' });
    expect(answer.body).toEqual({ now: '2027-01-01T21:04:05.000-05:00' });
    expect(line().asked).toEqual(['reset to 0 families']);
  });

  it.each([{}, { now: 'noon' }, { now: '1980-01-01T00:00:00Z' }, { now: 5 }, { until: 'x' }])(
    'refuses %j',
    async (body) => {
      expect((await call('POST', '/practice/reset', body)).body).toEqual(refused('bad-request'));
      expect(line().asked).toEqual([]);
    },
  );
});
