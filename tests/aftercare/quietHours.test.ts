/** The quiet hours of the family's own clock: what they hold, and what they never hold. */
import { describe, expect, it } from 'vitest';
import { quietHoursSetting } from '#machines/rules/quietHours.ts';
import { site } from '#tests/dislodgement/night.ts';
import { answer, beginGoIn, beginOwn, beginTemporary, day, hour, later, lines } from './later.ts';

/** In New York the simulation starts on Saturday 6 March 2027 at 02:10; the clocks change on 14 March. */
const asleep = () => later(undefined, site);
const at = (words: readonly string[], startsWith: string) =>
  words.filter((one) => one.split(' ').slice(1).join(' ').startsWith(startsWith));

describe('held until the quiet hours end at 07:00, 4 h 50 min after the time of the permission', () => {
  const night = (begin: typeof beginOwn | typeof beginTemporary | typeof beginGoIn) => {
    const line = asleep();
    line.send(begin);
    return lines(line.advance(31 * day)).map((words) => words.replace(/^[\d.]+/, (hours) => Number(hours).toFixed(2)));
  };

  it('the warning signs, at both times', () => {
    expect(at(night(beginOwn), 'askNextDay')).toEqual(['28.83h askNextDay', '76.83h askNextDay']);
  });

  it('the outcome of the emergency department', () => {
    expect(at(night(beginGoIn), 'askOutcome')).toEqual(['28.83h askOutcome']);
  });

  it('the warnings before the stay limit and the word that it is over, an hour earlier by the summer clock', () => {
    expect(at(night(beginTemporary), 'stay')).toEqual([
      `${(23 * 24 + 3.83).toFixed(2)}h stayWarning 7`,
      `${(28 * 24 + 3.83).toFixed(2)}h stayWarning 2`,
      `${(30 * 24 + 3.83).toFixed(2)}h stayOver`,
    ]);
  });

  it('never a first feed, an arrival, a nudge or a page', () => {
    const own = night(beginOwn);
    expect(at(own, 'askFirstFeed')).toEqual(['3.00h askFirstFeed']);
    expect(at(own, 'nudge first-feed')).toEqual(['4.00h nudge first-feed']);
    expect(at(night(beginTemporary), 'page stay-limit')).toEqual(['720.00h page stay-limit']);
    expect(at(night(beginGoIn), 'askArrived')).toEqual(['1.00h askArrived']);
  });
});

describe('the clinic', () => {
  it('is asked about on Monday at 15:00, two hours before it closes', () => {
    const line = asleep();
    line.send(beginOwn);
    expect(at(lines(line.advance(4 * day)), 'askClinic').map((words) => Number.parseFloat(words).toFixed(2))).toEqual([
      (2 * 24 + 12.833).toFixed(2),
      (3 * 24 + 12.833).toFixed(2),
    ]);
  });
});

describe('the hours themselves', () => {
  const signsAt = (quietFrom: string, quietUntil: string, startsAfterHours: number) => {
    const line = later(undefined, { ...site, quietFrom, quietUntil });
    line.advance(startsAfterHours * hour);
    line.send(beginOwn);
    line.advance(3 * hour);
    line.send(answer('first-feed', 'yes'));
    const [asked = ''] = lines(line.advance(40 * hour));
    return Number.parseFloat(asked) - startsAfterHours;
  };

  it.each([
    ['21:00', '07:00', 18 + 49 / 60, 24], // 20:59
    ['21:00', '07:00', 18 + 50 / 60, 34], // 21:00
    ['21:00', '07:00', 4 + 49 / 60, 24 + 1 / 60], // 06:59
    ['21:00', '07:00', 4 + 50 / 60, 24], // 07:00
    ['23:00', '05:00', 20 + 49 / 60, 24], // 22:59
    ['23:00', '05:00', 20 + 50 / 60, 30], // 23:00
  ])('from %s until %s, begun %f hours in: asked %f hours later', (from, until, begins, waits) => {
    expect(signsAt(from, until, begins)).toBeCloseTo(waits, 6);
  });

  it('hold for 14 hours at most, so that a day after stays within two days', () => {
    expect(quietHoursSetting).toEqual({
      from: { default: '21:00', least: '19:00', most: '23:00' },
      until: { default: '07:00', least: '05:00', most: '09:00' },
    });
  });
});
