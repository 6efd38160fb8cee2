/** A tube in use: the questions that follow, what their answers do, and what silence does. */
import { describe, expect, it } from 'vitest';
import { clinicalSettings } from '#machines/protocol/settings.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { answer, asking, beginOwn, beginTemporary, day, hour, later, lines, takeBack, unclear } from './later.ts';

const begun = (begin: typeof beginOwn | typeof beginTemporary, hours: number, clinical = clinicalWith()) => {
  const line = later(clinical);
  expect(line.send(begin)).toEqual([]);
  line.advance(hours * hour);
  return line;
};

/** Everything answered up to the clinic's question on Monday afternoon, hour 56 of a permission on Saturday morning. */
const askedForClinic = (begin: typeof beginOwn | typeof beginTemporary = beginTemporary) => {
  const line = begun(begin, 3);
  line.send(answer('first-feed', 'yes'));
  line.advance(21 * hour);
  line.send(answer('next-day', 'yes'));
  expect(lines(line.advance(32 * hour))).toEqual(['56h askClinic']);
  return line;
};

describe('what is asked', () => {
  it.each([
    ['own', beginOwn],
    ['temporary', beginTemporary],
  ] as const)(
    'of a well child with its %s tube: the feed, the signs at 24 and 72 hours, the clinic by the next working day',
    (_, begin) => {
      const line = begun(begin, 0);
      const asked = [3, 21, 32, 16].flatMap((wait) => {
        const said = lines(line.advance(wait * hour));
        line.send(answer(asking(line) as Parameters<typeof answer>[0], 'yes'));
        return said;
      });
      expect(asked).toEqual(['3h askFirstFeed', '24h askNextDay', '56h askClinic', '72h askNextDay']);
      expect(line.advance(23 * hour)).toEqual([]);
      expect(asking(line)).toBeNull();
    },
  );

  it('is asked one thing at a time: a question leaves the one before it three hours', () => {
    const line = begun(beginOwn, 0, clinicalWith({ laterSignsAfterHours: 54.5 }));
    line.advance(54.4 * hour);
    expect(lines(line.advance(10 * hour))).toEqual([
      '54.5h askNextDay',
      '55.5h nudge next-day',
      '56.5h page aftercare-silence',
      '57.5h askClinic',
      '58.5h nudge clinic',
    ]);
  });

  it('the warning signs are asked about within the first 72 hours at any setting, and once more after them', () => {
    // NPSA/2010/RRR010: warning signs after a gastrostomy are watched for in the first 72 hours.
    expect(clinicalSettings.nextDayAfterHours.most).toBeLessThan(72);
    expect(clinicalSettings.laterSignsAfterHours.default).toBe(72);
  });

  it('at the hours the site has set', () => {
    const line = begun(beginOwn, 0, clinicalWith({ nextDayAfterHours: 12, laterSignsAfterHours: 60 }));
    const asked = lines(line.advance(61 * hour)).filter((words) => words.includes('ask'));
    expect(asked).toEqual(['3h askFirstFeed', '12h askNextDay', '56h askClinic', '60h askNextDay']);
  });
});

describe('the first feed', () => {
  it('is asked about three hours after the permission, and not before', () => {
    const line = begun(beginOwn, 2.99);
    expect(asking(line)).toBeNull();
    expect(lines(line.advance(0.01 * hour))).toEqual(['3h askFirstFeed']);
    expect(asking(line)).toBe('first-feed');
  });

  it('went well: said so, and the next day is asked about on time', () => {
    const line = begun(beginOwn, 3.5);
    expect(lines(line.send(answer('first-feed', 'yes')))).toEqual(['3.5h firstFeedWell']);
    expect(asking(line)).toBeNull();
    expect(lines(line.advance(21 * hour))).toEqual(['24h askNextDay']);
  });

  it('unanswered: one nudge after an hour, a routine page after another, and it can still be answered', () => {
    const line = begun(beginOwn, 3);
    expect(lines(line.advance(20.9 * hour))).toEqual(['4h nudge first-feed', '5h page aftercare-silence']);
    expect(asking(line)).toBe('first-feed');
    expect(lines(line.send(answer('first-feed', 'no')))).toEqual(['23.9h notWell']);
  });

  it('unanswered until the next day: the next day is asked instead', () => {
    const line = begun(beginOwn, 23.9);
    expect(lines(line.advance(0.2 * hour))).toEqual(['24h askNextDay']);
    expect(asking(line)).toBe('next-day');
  });
});

describe('the next day', () => {
  it('unanswered: nudge, page, and it can be answered until the next question', () => {
    const line = begun(beginOwn, 24);
    expect(lines(line.advance(31.9 * hour))).toEqual(['25h nudge next-day', '26h page aftercare-silence']);
    expect(asking(line)).toBe('next-day');
    expect(lines(line.advance(0.2 * hour))).toEqual(['56h askClinic']);
  });

  it('unanswered at 72 hours with the own tube: a day to answer before the case closes', () => {
    const line = askedForClinic(beginOwn);
    line.send(answer('clinic', 'yes'));
    expect(lines(line.advance(10 * day))).toEqual([
      '72h askNextDay',
      '73h nudge next-day',
      '74h page aftercare-silence',
      '96h closeCase',
    ]);
  });

  it('all answered with the own tube: the case closes a day later', () => {
    const line = askedForClinic(beginOwn);
    line.send(answer('clinic', 'yes'));
    line.advance(16 * hour);
    expect(lines(line.send(answer('next-day', 'yes')))).toEqual(['72h nextDayWell']);
    expect(lines(line.advance(10 * day))).toEqual(['96h closeCase']);
    expect(line.due).toEqual([]);
  });
});

describe.each(['first-feed', 'next-day'] as const)('not well at %s', (key) => {
  it.each([beginOwn, beginTemporary])('hands over to the conversation and stops everything: $tube', (begin) => {
    const line = begun(begin, key === 'first-feed' ? 3 : 24);
    expect(lines(line.send(answer(key, 'no'))).map((words) => words.split(' ')[1])).toEqual(['notWell']);
    expect(line.due).toEqual([]);
    expect(asking(line)).toBeNull();
    expect(line.send(answer(key, 'yes'))).toEqual([]);
    expect(line.send(unclear)).toEqual([]);
  });
});

describe('an unreadable answer', () => {
  it.each([
    ['first-feed', 'askFirstFeed', 3],
    ['next-day', 'askNextDay', 24],
    ['clinic', 'askClinic', 56],
  ] as const)('%s: asked once more, then a nurse is called and the family told', (key, ask, hours) => {
    const line = begun(beginTemporary, hours);
    expect(lines(line.send(unclear))).toEqual([`${hours}h [notUnderstood unreadable] ${ask}`]);
    expect(asking(line)).toBe(key);
    expect(lines(line.send(unclear))).toEqual([
      `${hours}h page unread-in-use`,
      `${hours}h [goesToNurse] useStill temporary`,
    ]);
    expect(asking(line)).toBeNull();
  });

  it('is counted for each question alone', () => {
    const line = begun(beginTemporary, 3);
    line.send(unclear);
    line.send(answer('first-feed', 'yes'));
    line.advance(21 * hour);
    expect(lines(line.send(unclear))).toEqual(['24h [notUnderstood unreadable] askNextDay']);
    line.send(answer('next-day', 'yes'));
    line.advance(32 * hour);
    expect(lines(line.send(unclear))).toEqual(['56h [notUnderstood unreadable] askClinic']);
    line.send(unclear);
    line.advance(24 * hour);
    expect(lines(line.send(unclear))).toEqual(['80h [notUnderstood unreadable] askClinic']);
  });

  it('starts the wait for an answer again', () => {
    const line = begun(beginOwn, 3.5);
    line.send(unclear);
    expect(lines(line.advance(hour))).toEqual(['4.5h nudge first-feed']);
  });

  it('at the first feed: goes on to the next day', () => {
    const line = begun(beginOwn, 3);
    line.send(unclear);
    line.send(unclear);
    expect(lines(line.advance(day))).toContain('24h askNextDay');
  });

  it('twice at the last question with the own tube: closes a day later, not on top of the page', () => {
    const line = askedForClinic(beginOwn);
    line.send(answer('clinic', 'yes'));
    line.advance(16 * hour);
    line.send(unclear);
    expect(lines(line.send(unclear))).toEqual(['72h page unread-in-use', '72h [goesToNurse] useStill own']);
    expect(lines(line.advance(2 * day))).toEqual(['96h closeCase']);
  });

  it('while nothing is asked does nothing', () => {
    expect(begun(beginOwn, 1).send(unclear)).toEqual([]);
  });
});

describe('the clinic', () => {
  it('called: said so, and never asked about again', () => {
    const line = askedForClinic();
    expect(lines(line.send(answer('clinic', 'yes')))).toEqual(['56h clinicDone']);
    line.advance(16 * hour);
    line.send(answer('next-day', 'yes'));
    expect(line.advance(15 * day)).toEqual([]);
  });

  it.each([
    ['own', beginOwn],
    ['temporary', beginTemporary],
  ] as const)('not called: asked again on day 3, and then a nurse is told, once', (tube, begin) => {
    const line = askedForClinic(begin);
    expect(lines(line.send(answer('clinic', 'no')))).toEqual([`56h clinicNotYet ${tube}`]);
    expect(asking(line)).toBeNull();
    line.advance(16 * hour);
    line.send(answer('next-day', 'yes'));
    expect(lines(line.advance(8 * hour))).toEqual(['80h askClinic']);
    expect(lines(line.send(answer('clinic', 'no')))).toEqual(['80h clinicStillNot', '80h page clinic-not-called']);
    expect(lines(line.advance(10 * day)).join()).not.toMatch(/ask|page/);
  });

  it('unanswered: one nudge each time, and a page after the second', () => {
    expect(lines(askedForClinic().advance(10 * day))).toEqual([
      '57h nudge clinic',
      '72h askNextDay',
      '73h nudge next-day',
      '74h page aftercare-silence',
      '80h askClinic',
      '81h nudge clinic',
      '82h page clinic-not-called',
    ]);
  });

  it('unanswered can still be answered until the next question', () => {
    const line = askedForClinic();
    line.advance(15 * hour);
    expect(lines(line.send(answer('clinic', 'yes')))).toEqual(['71h clinicDone']);
  });
});

describe('an answer taken back', () => {
  it.each([
    ['first-feed', 'askFirstFeed', 3],
    ['next-day', 'askNextDay', 24],
    ['clinic', 'askClinic', 56],
  ] as const)('%s: is asked again, with its nudge and its page', (key, ask, hours) => {
    const line = begun(beginTemporary, hours);
    line.send(answer(key, 'yes'));
    expect(lines(line.send(takeBack(key)))).toEqual([`${hours}h ${ask}`]);
    expect(asking(line)).toBe(key);
    expect(lines(line.advance(hour))).toEqual([`${hours + 1}h nudge ${key}`]);
    expect(line.send(answer(key, 'yes'))).not.toEqual([]);
    expect(asking(line)).toBeNull();
  });

  it('while another question is open: that one comes again later', () => {
    const line = begun(beginOwn, 3);
    line.send(answer('first-feed', 'yes'));
    line.advance(21 * hour);
    expect(asking(line)).toBe('next-day');
    expect(lines(line.send(takeBack('first-feed')))).toEqual(['24h askFirstFeed']);
    line.send(answer('first-feed', 'yes'));
    expect(lines(line.advance(3 * hour))).toEqual(['27h askNextDay']);
  });

  it('of a feed that went well after all not: the child is not well', () => {
    const line = begun(beginOwn, 3);
    line.send(answer('first-feed', 'yes'));
    line.send(takeBack('first-feed'));
    expect(lines(line.send(answer('first-feed', 'no')))).toEqual(['3h notWell']);
  });

  it('that was never given asks nothing', () => {
    const line = begun(beginOwn, 1);
    expect(line.send(takeBack('first-feed'))).toEqual([]);
    expect(line.send(takeBack('weight'))).toEqual([]);
  });
});

describe('a permission that stands again', () => {
  const again = { ...beginTemporary, sinceMs: Date.parse('2027-03-06T02:10:00-05:00') };

  it('asks nothing that was answered', () => {
    const line = begun(beginTemporary, 3);
    line.send(answer('first-feed', 'yes'));
    line.advance(7 * hour);
    line.send({ type: 'end' });
    line.send(again);
    expect(lines(line.advance(20 * hour))).toEqual([
      '24h askNextDay',
      '25h nudge next-day',
      '26h page aftercare-silence',
    ]);
  });

  it('asks once more what was open', () => {
    const line = begun(beginTemporary, 3);
    line.send({ type: 'end' });
    line.send(again);
    expect(lines(line.advance(3 * hour))).toEqual(['6h askFirstFeed']);
  });

  it('asks once, and the latest, of what it is late for', () => {
    const line = later();
    line.send({ ...again, sinceMs: again.sinceMs - 5 * day * 60_000 });
    expect(lines(line.advance(24 * hour)).filter((words) => words.includes('ask'))).toEqual([
      '0h askNextDay',
      '3h askClinic',
    ]);
  });
});

describe('when the line was down', () => {
  it('asks once, and the latest, of what it missed', () => {
    const line = begun(beginOwn, 1);
    expect(lines(line.advanceAsleep(99 * hour))).toEqual(['100h askNextDay']);
    expect(lines(line.advance(4 * hour))).toEqual([
      '101h nudge next-day',
      '102h page aftercare-silence',
      '103h askClinic',
      '104h nudge clinic',
    ]);
  });
});
