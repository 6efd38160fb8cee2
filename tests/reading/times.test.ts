/** Dates and times: a range keeps its unsafe end, a change is no first placing, and what is to come is no answer. */
import { describe, expect, it } from 'vitest';
import { answerTo, at, eventOf } from './open.ts';

const on = (day: string) => ({ earliest: day, latest: day });

describe('when the first tube was placed', () => {
  it.each([
    ['12 march 2026', on('2026-03-12')],
    ['march 12 2026', on('2026-03-12')],
    ['3/12/26', on('2026-03-12')],
    ['2026-03-12', on('2026-03-12')],
    ['march 2026', { earliest: '2026-03-01', latest: '2026-03-31' }],
    ['6/2025', { earliest: '2025-06-01', latest: '2025-06-30' }],
    ['2025', { earliest: '2025-01-01', latest: '2025-12-31' }],
    ['last year', { earliest: '2026-01-01', latest: '2026-12-31' }],
    ['8 weeks ago', on('2027-01-09')],
    ['eight weeks and one day', on('2027-01-08')],
    ['10 days ago', on('2027-02-24')],
    // Nobody who says it means the day, so it counts some days younger than two months.
    ['2 months ago', { earliest: '2026-12-25', latest: '2027-01-18' }],
    ['6-8 weeks', { earliest: '2027-01-09', latest: '2027-01-23' }],
    ['between 6 and 8 weeks', { earliest: '2027-01-09', latest: '2027-01-23' }],
    ['over a year ago', { earliest: null, latest: '2026-03-06' }],
    ['less than 2 months ago', { earliest: '2027-01-06', latest: '2027-03-06' }],
    ['yesterday', on('2027-03-05')],
    ['november', { earliest: '2026-11-01', latest: '2026-11-30' }],
    ['january this year', { earliest: '2027-01-01', latest: '2027-01-31' }],
    ['changed last week, first one 2 years ago', on('2025-03-06')],
    ['first tube 12 weeks ago, 2nd one yesterday', on('2026-12-12')],
    ['dont know', 'unknown'],
    ['next week', 'unclear: future'],
    ['12/25/27', 'unclear: future'],
    ['in 2 weeks', 'unclear: future'],
    ['40 years ago', 'unclear: impossible'],
    ['when she was 3 months', 'unclear: unreadable'],
    ['when she was born', 'unclear: unreadable'],
    ['it was changed last week', 'unclear: unreadable'],
    ['a long time ago', 'unclear: unsure'],
  ])('%s', (text, value) => {
    expect(answerTo('first-placed', text)).toEqual(value);
  });

  it.each([
    'about 8 weeks ago',
    'almost 8 weeks',
    'maybe 8 weeks',
    'i think 8 weeks',
    '8 weeks or so',
    'around 8 weeks ago',
  ])('%s is some days younger', (text) => {
    expect(answerTo('first-placed', text)).toEqual({ earliest: '2026-12-28', latest: '2027-01-21' });
  });

  it('takes a month that runs now for this one, the younger', () => {
    expect(answerTo('first-placed', 'in march')).toEqual({ earliest: '2026-03-01', latest: '2027-03-06' });
  });

  it('keeps the younger end of two dates', () => {
    expect(answerTo('first-placed', 'december or january')).toEqual({ earliest: '2026-12-01', latest: '2027-01-31' });
  });

  it('writes the day first where the site does', () => {
    expect(answerTo('first-placed', '3/12/26', { timeZone: 'Europe/London' })).toEqual(on('2026-12-03'));
  });

  it('counts days in the zone of the site', () => {
    expect(answerTo('first-placed', 'yesterday', { timeZone: 'Pacific/Auckland' })).toEqual(on('2027-03-05'));
    expect(answerTo('first-placed', 'yesterday', { timeZone: 'America/Los_Angeles' })).toEqual(on('2027-03-04'));
  });

  // The leap day of 2024 (Gregorian calendar): a year before a 29 February is the 28th.
  it('knows the leap day', () => {
    expect(answerTo('first-placed', 'a year ago', { nowMs: Date.parse('2028-02-29T12:00:00-05:00') })).toEqual(
      on('2027-02-28'),
    );
  });
});

describe('when it came out', () => {
  it.each([
    ['20 min ago', at('01:50')],
    ['an hour ago', at('01:10')],
    ['half an hour', at('01:40')],
    ['quarter of an hour', at('01:55')],
    ['1h20', at('00:50')],
    ['just now', at('02:10')],
    ['at 1:50', at('01:50')],
    ['2am', at('02:00')],
    ['around midnight', at('00:00')],
    ['ten to 2', at('01:50')],
    ['i saw it in at 10pm', at('22:00', '2027-03-05')],
    ['last night around 9', at('21:00', '2027-03-05')],
    // That night is a Saturday: a day told is that day, never the last time it was so late (common practice, no source).
    ['thursday night at 8', at('20:00', '2027-03-05') - 86_400_000],
    ['the day before yesterday at noon', at('12:00', '2027-03-05') - 86_400_000],
    ['twenty odd minutes ago', at('01:40')],
    ['umpteen minutes ago', 'unclear: unreadable'],
    ['at 10', at('22:00', '2027-03-05')],
    ['noon', at('12:00', '2027-03-05')],
    ['between 1 and 2', at('01:00')],
    ['20 or 30 min ago', at('01:40')],
    ['an hour or two ago', at('00:10')],
    ['couple hours ago', at('00:10')],
    ['over an hour ago', at('00:40')],
    ['found it 5 min ago, it was in at midnight', at('00:00')],
    ['dont know', 'unknown'],
    ['found it out when i woke up', 'unknown'],
    ['i found it 5 min ago', 'unknown'],
    ['before midnight', 'unknown'],
    ['3am', 'unclear: future'],
    ['in 10 min', 'unclear: future'],
    ['at 2:20', 'unclear: future'],
    ['20', 'unclear: unreadable'],
  ])('%s', (text, value) => {
    expect(answerTo('came-out', text)).toBe(value);
  });

  // In New York 2 o'clock to 3 o'clock did not exist on 14 March 2027: second Sunday in March, 15 U.S.C. 260a.
  it('counts real time over the change of the clocks', () => {
    const nowMs = Date.parse('2027-03-14T03:30:00-04:00');
    expect(answerTo('came-out', 'an hour ago', { nowMs })).toBe(Date.parse('2027-03-14T01:30:00-05:00'));
    expect(answerTo('came-out', 'at 1:30', { nowMs })).toBe(Date.parse('2027-03-14T01:30:00-05:00'));
  });
});

describe('facts told unasked', () => {
  it('are taken from the first text', () => {
    const text = "my 7 kg girl's g tube fell out 20 min ago";
    expect(eventOf(text, { caseOpen: false })).toMatchObject({
      type: 'told',
      told: { tubeKind: 'g', weight: { kg: 7 }, cameOutAtMs: at('01:50') },
    });
  });

  it('keep to what the words say', () => {
    const told = (text: string) => eventOf(text, { caseOpen: false }).told;
    expect(told('her g button popped out an hour ago, placed 8 weeks ago, she is 3 months old')).toEqual({
      tubeKind: 'g',
      cameOutAtMs: at('01:10'),
      firstPlaced: on('2027-01-09'),
      born: { earliest: '2026-11-07', latest: '2026-12-06' },
    });
    expect(told('gj tube out, latex allergy')).toEqual({ tubeKind: 'gj', latexAllergy: true });
    expect(told('g tube out, no latex allergy')).toEqual({ tubeKind: 'g' });
    expect(told('i think its a g tube that came out')).toEqual({});
    expect(told('the feeding tube came out, i fed her an hour ago')).toEqual({});
    expect(told('tube out and the balloon popped')).toEqual({ ownTube: 'burst' });
    expect(told('thank you for your help tonight')).toEqual({});
  });

  it('leave out what the answer says already', () => {
    expect(eventOf('7 kg, it came out at 1:50', { asking: 'weight' })).toMatchObject({
      type: 'answer.weight',
      value: { kg: 7 },
      told: { cameOutAtMs: at('01:50') },
    });
    expect(eventOf('7 kg', { asking: 'weight' }).told).toEqual({});
  });
});
