/** When each question of a tube in use comes: by the family's own calendar, one at a time, and none of them twice. */
import { describe, expect, it } from 'vitest';
import { nothingBegun } from '#machines/aftercare/kit.ts';
import { dueAtMs, followUps } from '#machines/aftercare/schedule.ts';
import { site } from '#tests/dislodgement/night.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { answer, asking, awake, beginOwn, beginTemporary, hour, later, lines } from './later.ts';

const asks = (words: readonly string[]) => words.filter((one) => one.includes('ask'));

describe('the clinic is asked about by the next working day, and on day 3', () => {
  it.each([
    // Of March 2027 in New York, where the clinic closes at 17:00: a Monday night, a Sunday evening that is Monday by
    // universal time, and a Friday whose third day is the next working day.
    ['2027-03-08T03:00:00-05:00', '2027-03-08T15:00:00-05:00', '2027-03-11T15:00:00-05:00'],
    ['2027-03-07T21:00:00-05:00', '2027-03-08T15:00:00-05:00', '2027-03-10T15:00:00-05:00'],
    ['2027-03-05T10:00:00-05:00', '2027-03-08T15:00:00-05:00', '2027-03-09T15:00:00-05:00'],
  ])('permitted at %s: %s and %s', (began, first, again) => {
    const asked = { ...nothingBegun, clinical: clinicalWith(), site, beganAtMs: Date.parse(began) };
    expect(dueAtMs('clinic', asked)).toBe(Date.parse(first));
    expect(dueAtMs('clinic-again', asked)).toBe(Date.parse(again));
  });

  it('never twice on one day, also where that day is so short that it is asked about as it opens', () => {
    const short = { ...site, clinicOpens: '10:00', clinicCloses: '11:00' };
    const asked = {
      ...nothingBegun,
      clinical: clinicalWith(),
      site: short,
      beganAtMs: Date.parse('2027-03-05T12:00:00-05:00'),
    };
    expect(dueAtMs('clinic', asked)).toBe(Date.parse('2027-03-08T10:00:00-05:00'));
    expect(dueAtMs('clinic-again', asked)).toBe(Date.parse('2027-03-09T10:00:00-05:00'));
  });

  it('also where nothing else is asked between the two', () => {
    const line = later(clinicalWith({ laterSignsAfterHours: 48 }));
    line.send(beginTemporary);
    line.advance(55 * hour);
    expect(lines(line.advance(30 * hour))).toEqual([
      '56h askClinic',
      '57h nudge clinic',
      '80h askClinic',
      '81h nudge clinic',
      '82h page clinic-not-called',
    ]);
  });

  it('and no more after a no on day 3', () => {
    const line = later(clinicalWith({ laterSignsAfterHours: 48 }));
    line.send(beginTemporary);
    line.advance(80 * hour);
    line.send(answer('clinic', 'no'));
    expect(asking(line)).toBeNull();
  });

  it('and unanswered for a day it is no longer open, though the tube stays', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(103.9 * hour);
    expect(asking(line)).toBe('clinic');
    line.advance(0.1 * hour);
    expect(asking(line)).toBeNull();
  });
});

describe('one question at a time', () => {
  it('two that the quiet hours put on one moment are asked once', () => {
    const clinical = clinicalWith({ nextDayAfterHours: 36, laterSignsAfterHours: 48 });
    const line = later(clinical, { ...awake, quietFrom: '19:00', quietUntil: '09:00' });
    line.send(beginOwn);
    // Sunday 19:10 and Monday 07:10, both held until Monday at 09:00.
    const asked = asks(lines(line.advance(60 * hour))).map((words) => words.replace(/^([\d]+)[\d.]*h/, '$1h'));
    expect(asked).toEqual(['3h askFirstFeed', '49h askNextDay', '56h askClinic']);
  });

  it('one that has to wait for another into the quiet hours is held until they end', () => {
    const clinical = clinicalWith({ laterSignsAfterHours: 59 });
    const line = later(clinical, { ...awake, clinicCloses: '20:10', quietFrom: '19:00', quietUntil: '07:10' });
    line.send(beginOwn);
    line.advance(58 * hour);
    // The signs on Monday at 18:10; the clinic, due then too, three hours later at 21:10, so on Tuesday at 07:10.
    expect(asks(lines(line.advance(20 * hour)))).toEqual(['59h askNextDay', '72h askClinic']);
  });

  it('each is settled by its answer or by the one that takes its place, and nothing else is', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(24 * hour);
    expect(line.snapshot.context).toMatchObject({ open: 'first-signs', settled: ['first-feed'] });
    line.send(answer('next-day', 'yes'));
    line.advance(100 * hour);
    expect([...line.snapshot.context.settled].sort()).toEqual(followUps.filter((one) => one !== 'clinic-again').sort());
  });
});

describe('a new permission', () => {
  it('asks again what was answered for the one before', () => {
    const line = later();
    line.send(beginTemporary);
    line.advance(3 * hour);
    line.send(answer('first-feed', 'yes'));
    line.advance(hour);
    line.send(beginTemporary);
    expect(lines(line.advance(3 * hour))).toEqual(['7h askFirstFeed']);
  });
});
