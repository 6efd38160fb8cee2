import { describe, expect, it } from 'vitest';
import { alwaysOn, nurseOf, onCall, type Rota, type RotaLine } from '#src/rota/rota.ts';
import { loadRota } from '#src/rota/rotaFile.ts';
import { SeedsRefused } from '#src/seedsErrors.ts';
import { imke, solveig, tariq } from './ics.ts';

const text = `
- { name: Ada, number: "+12125550151" }
- { name: Zoë-May, number: "+12125550152" }
- { name: O’Rin, number: "+12125550153" }
`;

describe('a rota without shifts', () => {
  const rota = alwaysOn(loadRota(text).nurses);

  it.each(['2026-01-01T00:00:00Z', '2027-03-06T07:10:00Z', '2035-12-31T23:59:59Z'])(
    'has three on call at %s, in the order of the file',
    (instant) => {
      expect(onCall(rota, Date.parse(instant))).toEqual([
        { name: 'Ada', number: '+12125550151' },
        { name: 'Zoë-May', number: '+12125550152' },
        { name: 'O’Rin', number: '+12125550153' },
      ]);
    },
  );

  it('knows a nurse by her number, and nobody else', () => {
    expect(nurseOf(rota, '+12125550152')?.name).toBe('Zoë-May');
    expect(nurseOf(rota, '+12125550199')).toBeNull();
  });
});

describe('a rota of shifts', () => {
  const line = (...shifts: ReturnType<RotaLine>): RotaLine => {
    return (fromMs, toMs) => shifts.filter(({ startMs, endMs }) => startMs < toMs && endMs > fromMs);
  };
  const rota: Rota = {
    nurses: [imke, tariq, solveig],
    lines: [
      line({ nurse: imke, startMs: 0, endMs: 100 }, { nurse: tariq, startMs: 90, endMs: 200 }),
      line({ nurse: solveig, startMs: 50, endMs: 150 }),
    ],
  };

  it.each([
    [0, [imke, null]],
    [49, [imke, null]],
    [50, [imke, solveig]],
    [90, [tariq, solveig]],
    [150, [tariq, null]],
    [200, [null, null]],
  ])('at %d', (atMs, people) => {
    expect(onCall(rota, atMs)).toEqual(people);
  });
});

describe('a rota file with shifts', () => {
  const shifts = `
people:
  - { name: Ada, number: "+12125550151" }
  - { name: Bo, number: "+12125550152" }
calendars: [first.ics, rota/second.ics, "https://calendar.example.org/third.ics?key=1"]
`;

  it('names its people, and a calendar for each line', () => {
    expect(loadRota(shifts)).toEqual({
      nurses: [
        { name: 'Ada', number: '+12125550151' },
        { name: 'Bo', number: '+12125550152' },
      ],
      calendars: ['first.ics', 'rota/second.ics', 'https://calendar.example.org/third.ics?key=1'],
    });
  });

  it.each([
    ['has one calendar twice', shifts.replace('rota/second.ics', 'first.ics')],
    ['has two calendars', shifts.replace('first.ics, ', '')],
    ['has a calendar in the clear', shifts.replace('https', 'http')],
    ['has a calendar that is no calendar file', shifts.replace('first.ics', 'first.txt')],
    ['has a calendar from anywhere', shifts.replace('first.ics', '/etc/first.ics')],
    ['has one name twice', shifts.replace('Bo', 'ada')],
    ['has one number twice', shifts.replace('0152', '0151')],
    ['has nobody', shifts.replace(/ {2}- .*\n/g, '')],
  ])('is refused when it %s', (_what, wrong) => {
    expect(() => loadRota(wrong)).toThrow(SeedsRefused);
  });
});

describe('a wrong rota file', () => {
  const ada = '{ name: Ada, number: "+12125550151" }';
  it.each([
    ['is empty', ''],
    ['is no list', 'name: Ada'],
    ['is no YAML', '- [1'],
    ['has two', `- ${ada}\n- { name: Bo, number: "+12125550152" }`],
    ['names one number twice', `- ${ada}\n- ${ada}\n- { name: Bo, number: "+12125550152" }`],
    ['has a family name', text.replace('Ada', 'Ada Berg')],
    ['has a number without a plus', text.replace('"+12125550151"', '2125550151')],
    ['has a field it does not know', text.replace('name: Ada', 'name: Ada, pager: 5')],
    ['misses a number', text.replace(', number: "+12125550151"', '')],
  ])('is refused when it %s', (_what, wrong) => {
    expect(() => loadRota(wrong)).toThrow(SeedsRefused);
  });

  it('is refused by field, value and bound', () => {
    expect(() => loadRota(text.replace('Ada', 'Ada Berg'))).toThrow(
      '0.name is "Ada Berg"; it has to be a first name alone',
    );
  });
});
