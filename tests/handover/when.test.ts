/** When a handover is due, also on the days the clocks change. */
import { describe, expect, it } from 'vitest';
import { handoverAt, nextHandoverMs } from '#src/handover/when.ts';
import { protocol } from '#tests/line/fakes.ts';

const site = { ...protocol.site, handoverNumber: '+12025550142' };
const next = (now: string, at?: string) => {
  const ms = nextHandoverMs(at === undefined ? site : { ...site, handoverAt: at }, Date.parse(now));
  return ms === null ? null : new Date(ms).toISOString();
};

describe('the next handover', () => {
  it.each([
    ['2027-03-06T02:10:00-05:00', undefined, '2027-03-06T12:30:00.000Z'],
    ['2027-03-06T07:30:00-05:00', undefined, '2027-03-07T12:30:00.000Z'],
    ['2027-03-06T22:00:00-05:00', '06:45', '2027-03-07T11:45:00.000Z'],
    // The clocks go forward at 02:00 on 14 March 2027 and back on 7 November (Energy Policy Act of 2005, section 110).
    ['2027-03-13T12:00:00-05:00', undefined, '2027-03-14T11:30:00.000Z'],
    ['2027-11-06T12:00:00-04:00', undefined, '2027-11-07T12:30:00.000Z'],
    // RFC 5545, 3.3.5: a missing time counts by the offset before, a doubled one is the first.
    ['2027-03-14T00:00:00-05:00', '02:30', '2027-03-14T07:30:00.000Z'],
    ['2027-11-07T00:00:00-04:00', '01:30', '2027-11-07T05:30:00.000Z'],
  ])('after %s at %s is %s', (now, at, expected) => {
    expect(next(now, at)).toBe(expected);
  });

  it('is at half past seven unless the site says otherwise, and never without a number', () => {
    expect(handoverAt(site)).toBe('07:30');
    expect(nextHandoverMs(protocol.site, 0)).toBeNull();
  });
});
