/** When a family is asked about the clinic: two hours before it closes, on the first working day it opens on. */
import { describe, expect, it } from 'vitest';
import { clinicAskAtMs } from '#machines/rules/clinicDay.ts';
import { site } from '#tests/dislodgement/night.ts';

const asked = (from: string, changes: Partial<typeof site> = {}) =>
  new Date(clinicAskAtMs(Date.parse(from), { ...site, ...changes })).toISOString();

describe('the clinic is asked about', () => {
  it.each([
    ['in the night before a working day: on that day', '2027-03-09T02:10:00-05:00', '2027-03-09T20:00:00.000Z'],
    ['as it opens: on that day', '2027-03-09T08:00:00-05:00', '2027-03-09T20:00:00.000Z'],
    ['in its hours: on the next day', '2027-03-09T08:01:00-05:00', '2027-03-10T20:00:00.000Z'],
    ['on Friday evening: on Monday, by the summer clock', '2027-03-12T20:00:00-05:00', '2027-03-15T19:00:00.000Z'],
    ['on Sunday: on Monday', '2027-03-07T12:00:00-05:00', '2027-03-08T20:00:00.000Z'],
  ])('after a permission %s', (_, from, at) => {
    expect(asked(from)).toBe(at);
  });

  it('a week later where it works on one day and has opened on it', () => {
    expect(asked('2027-03-09T09:00:00-05:00', { clinicDays: [2] })).toBe('2027-03-16T19:00:00.000Z');
  });

  it('as it opens where its day is shorter than two hours', () => {
    expect(asked('2027-03-09T02:10:00-05:00', { clinicOpens: '09:00', clinicCloses: '10:30' })).toBe(
      '2027-03-09T14:00:00.000Z',
    );
  });

  it('never of a clinic without a working day', () => {
    expect(() => asked('2027-03-09T02:10:00-05:00', { clinicDays: [] })).toThrow('without a working day');
  });
});
