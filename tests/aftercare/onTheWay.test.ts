/** Sent to the emergency department: the question an hour later; and how beginning again and ending work. */
import { describe, expect, it } from 'vitest';
import { clinicalWith } from '#tests/machines/simulated.ts';
import {
  answer,
  asking,
  beginGoIn,
  beginOwn,
  beginTemporary,
  day,
  hour,
  later,
  lines,
  takeBack,
  unclear,
} from './later.ts';

describe('on the way', () => {
  const asked = () => {
    const line = later();
    line.send(beginGoIn);
    expect(lines(line.advance(hour))).toEqual(['1h askArrived']);
    return line;
  };

  it('asks nothing for an hour, or for what the site has set', () => {
    const line = later(clinicalWith({ arrivedAfterMinutes: 120 }));
    line.send(beginGoIn);
    expect(line.advance(119)).toEqual([]);
    expect(asking(line)).toBeNull();
    expect(lines(line.advance(1))).toEqual(['2h askArrived']);
    expect(asking(line)).toBe('arrived');
  });

  it.each([
    ['yes', ['1h arrivedYes']],
    ['no', ['1h arrivedNo', '1h page not-arrived']],
  ] as const)('arrived %s: and the next day, what came of it', (value, said) => {
    const line = asked();
    expect(lines(line.send(answer('arrived', value)))).toEqual(said);
    expect(asking(line)).toBeNull();
    expect(lines(line.advance(day))).toEqual(['24h askOutcome', '25h nudge next-day']);
    expect(asking(line)).toBe('next-day');
  });

  it.each([
    ['yes', ['0h arrivedYes']],
    ['no', ['0h arrivedNo', '0h page not-arrived']],
  ] as const)('said before it is asked, %s: it is not asked any more', (value, said) => {
    const line = later();
    line.send(beginGoIn);
    expect(lines(line.send(answer('arrived', value)))).toEqual(said);
    expect(lines(line.advance(day))).toEqual(['24h askOutcome']);
  });

  it.each([
    ['yes', ['1h arrivedYes']],
    ['no', ['1h arrivedNo', '1h page not-arrived']],
  ] as const)('not yet, and then said by itself, %s: answered, and the next day still asked about', (value, said) => {
    const line = asked();
    line.send(answer('arrived', 'no'));
    expect(lines(line.send(answer('arrived', value)))).toEqual(said);
    expect(lines(line.advance(day))).toEqual(['24h askOutcome', '25h nudge next-day']);
    expect(lines(line.send(answer('arrived', 'yes')))).toEqual(['25h arrivedYes']);
    expect(asking(line)).toBe('next-day');
  });

  it('unanswered: nudge, page, and it can be answered until the next day', () => {
    const line = asked();
    expect(lines(line.advance(22.9 * hour))).toEqual(['2h nudge arrived', '3h page not-arrived']);
    expect(asking(line)).toBe('arrived');
    expect(lines(line.advance(0.1 * hour))).toEqual(['24h askOutcome']);
  });

  it('unreadable: asked once more, then a nurse is called and the family told', () => {
    const line = asked();
    expect(lines(line.send(unclear))).toEqual(['1h [notUnderstood unreadable] askArrived']);
    expect(lines(line.send(unclear))).toEqual(['1h page unread', '1h [goesToNurse] goInStill']);
    expect(lines(line.advance(23 * hour))).toEqual(['24h askOutcome']);
  });

  it('taken back: asked again', () => {
    const line = asked();
    expect(line.send(takeBack('arrived'))).toEqual([]);
    line.send(answer('arrived', 'yes'));
    expect(line.send(takeBack('next-day'))).toEqual([]);
    expect(lines(line.send(takeBack('arrived')))).toEqual(['1h askArrived']);
    expect(lines(line.send(answer('arrived', 'no')))).toEqual(['1h arrivedNo', '1h page not-arrived']);
  });
});

describe('what came of it', () => {
  const askedNextDay = () => {
    const line = later();
    line.send(beginGoIn);
    line.advance(hour);
    line.send(answer('arrived', 'yes'));
    expect(lines(line.advance(23 * hour))).toEqual(['24h askOutcome']);
    return line;
  };

  it('is asked when the site has set it', () => {
    const line = later(clinicalWith({ nextDayAfterHours: 36 }));
    line.send(beginGoIn);
    expect(lines(line.advance(36 * hour)).at(-1)).toBe('36h askOutcome');
  });

  it('well: the case closes a day later', () => {
    const line = askedNextDay();
    expect(lines(line.send(answer('next-day', 'yes')))).toEqual(['24h outcomeWell']);
    expect(asking(line)).toBeNull();
    expect(lines(line.advance(2 * day))).toEqual(['48h closeCase']);
  });

  it('not well: a nurse is called, and the case closes a day later', () => {
    const line = askedNextDay();
    expect(lines(line.send(answer('next-day', 'no')))).toEqual(['24h outcomeNotWell', '24h page not-well-after']);
    expect(lines(line.advance(2 * day))).toEqual(['48h closeCase']);
  });

  it('unanswered: nudge, page, and a day to answer before the case closes', () => {
    const line = askedNextDay();
    expect(lines(line.advance(25.9 * hour))).toEqual(['25h nudge next-day', '26h page aftercare-silence']);
    expect(asking(line)).toBe('next-day');
    expect(lines(line.advance(0.1 * hour))).toEqual(['50h closeCase']);
  });

  it('unreadable: asked once more, then a nurse is called and the family told', () => {
    const line = askedNextDay();
    expect(lines(line.send(unclear))).toEqual(['24h [notUnderstood unreadable] askOutcome']);
    expect(lines(line.send(unclear))).toEqual(['24h page unread', '24h [goesToNurse] goInStill']);
    expect(lines(line.advance(2 * day))).toEqual(['48h closeCase']);
  });

  it('taken back: asked again', () => {
    const line = askedNextDay();
    expect(line.send(takeBack('next-day'))).toEqual([]);
    line.send(answer('next-day', 'yes'));
    expect(line.send(takeBack('arrived'))).toEqual([]);
    expect(lines(line.send(takeBack('next-day')))).toEqual(['24h askOutcome']);
  });
});

describe('ending and beginning again', () => {
  it.each([
    [beginOwn, 0],
    [beginTemporary, 3],
    [beginTemporary, 50],
    [beginTemporary, 30 * 24],
    [beginGoIn, 1],
  ])('end stops all of %o after %i hours, and a later begin starts afresh', (begin, hours) => {
    const line = later();
    line.send(begin);
    line.advance(hours * hour);
    expect(line.send({ type: 'end' })).toEqual([]);
    expect(line.due).toEqual([]);
    expect(asking(line)).toBeNull();
    expect(line.advance(40 * day)).toEqual([]);
    line.send(beginGoIn);
    expect(line.due).toEqual([60]);
  });

  it('begin restarts a running use from its new beginning', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(2 * hour);
    line.send(beginTemporary);
    expect(line.due).toEqual([180, 23 * day]);
    expect(lines(line.advance(3 * hour))).toEqual(['5h askFirstFeed']);
  });

  it('begin turns a temporary tube into the own one, without a limit', () => {
    const line = later();
    line.send(beginTemporary);
    line.send(beginOwn);
    expect(line.due).toEqual([180]);
  });

  it('going in replaces the use', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(3 * hour);
    line.send(beginGoIn);
    expect(asking(line)).toBeNull();
    expect(line.due).toEqual([60]);
  });

  it('an answer before anything has begun does nothing', () => {
    expect(later().send(answer('arrived', 'no'))).toEqual([]);
  });
});
