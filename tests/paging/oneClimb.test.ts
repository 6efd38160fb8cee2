/** One climb a case: what a further reason does to it, and what taking or closing it does. */
import { describe, expect, it } from 'vitest';
import { lines, page, raise } from './calls.ts';

describe('a further reason while climbing', () => {
  it('starts again from the first person at a higher level, and keeps the reasons', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(11);
    expect(lines(line.send(raise('warning-sign')))).toEqual(['11 emergency 0 text+call silence,warning-sign']);
    expect(line.due).toEqual([3]);
    expect(lines(line.advance(13))).toEqual([
      '14 emergency 0 text+call silence,warning-sign',
      '17 emergency 1 text+call silence,warning-sign',
      '21 emergency 2 text+call silence,warning-sign',
      '24 unanswered',
    ]);
  });

  it('starts again from the rounds too, and may go unanswered a second time', () => {
    const line = page();
    line.send(raise('weight-unknown'));
    line.advance(100);
    expect(lines(line.send(raise('danger-sign')))).toEqual([
      '100 began 13',
      '100 emergency 0 text+call weight-unknown,danger-sign',
    ]);
    expect(lines(line.advance(13)).at(-1)).toBe('113 unanswered');
  });

  it('counts its rounds anew when it starts again', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(24 * 60); // by now every hour
    line.send(raise('warning-sign'));
    line.advance(10 + 15); // the third person, and the first round
    expect(line.due).toEqual([15]);
  });

  it.each(['no-strips', 'weight-unknown'] as const)('adds an equal or lower reason without a call: %s', (reason) => {
    const line = page();
    line.send(raise('silence'));
    line.advance(4);
    expect(line.send(raise(reason))).toEqual([]);
    expect(lines(line.advance(1))).toEqual([`5 urgent 0 text+call silence,${reason}`]);
  });

  it('names a reason once, however often it is raised', () => {
    const line = page();
    line.send(raise('silence'));
    line.send(raise('silence'));
    expect(line.snapshot.context.reasons).toEqual(['silence']);
  });

  it.each([
    [0, 0],
    [4, 0],
    [7, 1],
    [11, 2],
  ])('calls for a danger sign at once at minute %i, person %i, and the climb goes on', (minute, place) => {
    const line = page();
    line.send(raise('warning-sign'));
    line.advance(minute);
    const due = line.due;
    expect(lines(line.send(raise('danger-sign')))).toEqual([
      `${minute} emergency ${place} text+call warning-sign,danger-sign`,
    ]);
    expect(line.due).toEqual(due);
  });

  it('calls again for a danger sign said again', () => {
    const line = page();
    line.send(raise('danger-sign'));
    expect(lines(line.send(raise('danger-sign')))).toEqual(['0 emergency 0 text+call danger-sign']);
  });

  it.each([14, 30])('calls everybody for a danger sign once everybody was called: minute %i', (minute) => {
    const line = page();
    line.send(raise('warning-sign'));
    line.advance(minute);
    const due = line.due;
    const calls = lines(line.send(raise('danger-sign')));
    expect(calls).toEqual([0, 1, 2].map((place) => `${minute} emergency ${place} text+call warning-sign,danger-sign`));
    expect(line.due).toEqual(due);
  });
});

describe('take', () => {
  it('stops the climb and names the taker', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(7);
    expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual(['7 taken Wren']);
    expect(line.snapshot.context).toMatchObject({ level: 'urgent', reasons: ['silence'], takenBy: 'Wren' });
    expect(line.due).toEqual([]);
  });

  it('stops the rounds as well', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(300);
    expect(lines(line.send({ type: 'take', nurse: 'Wren' }))).toEqual(['300 taken Wren']);
    expect(line.advance(24 * 60)).toEqual([]);
  });

  it('does nothing where nothing is open: before, after another took it, after the close', () => {
    const line = page();
    expect(line.send({ type: 'take', nurse: 'Wren' })).toEqual([]);
    line.send(raise('silence'));
    line.send({ type: 'take', nurse: 'Wren' });
    expect(line.send({ type: 'take', nurse: 'Finch' })).toEqual([]);
    expect(line.snapshot.context.takenBy).toBe('Wren');
    line.send({ type: 'page.close' });
    expect(line.send({ type: 'take', nurse: 'Finch' })).toEqual([]);
    expect(line.snapshot.context.takenBy).toBeNull();
  });
});

describe('a further reason after it was taken', () => {
  const taken = (reason: 'warning-sign' | 'silence' | 'weight-unknown') => {
    const line = page();
    line.send(raise(reason));
    line.send({ type: 'take', nurse: 'Wren' });
    line.advance(20);
    return line;
  };

  it.each([
    ['silence', 'danger-sign'], // higher
    ['warning-sign', 'danger-sign'], // equal
  ] as const)('after %s, the emergency %s starts a new climb that names it alone', (before, reason) => {
    const line = taken(before);
    expect(lines(line.send(raise(reason)))).toEqual(['20 began 13', `20 emergency 0 text+call ${reason}`]);
    expect(line.snapshot.context.takenBy).toBeNull();
    expect(lines(line.advance(40))).toContain('33 unanswered');
  });

  it.each([
    ['silence', 'no-strips'], // equal
    ['silence', 'silence'], // the same again
    ['weight-unknown', 'no-strips'], // higher, but no emergency
  ] as const)('after %s, %s is hers alone, until she stays silent', (before, reason) => {
    const line = taken(before);
    expect(lines(line.send(raise(reason)))).toEqual([`20 urgent 0 text ${reason}`]);
    expect(line.snapshot.context.takenBy).toBe('Wren');
    const after = lines(line.advance(40)).map((words) => words.split(' ').slice(0, 4).join(' '));
    expect(after).toEqual([
      '25 urgent 0 text+call',
      '30 began 20',
      '30 urgent 1 text',
      '35 urgent 2 text',
      '40 unanswered',
      ...after.slice(5),
    ]);
  });

  it.each(['warning-sign', 'silence', 'weight-unknown'] as const)(
    'after %s, a routine one is news for the taker',
    (before) => {
      const line = taken(before);
      expect(lines(line.send(raise('after-feed-reading')))).toEqual(['20 tellNurse routine after-feed-reading']);
      expect(line.snapshot.context).toMatchObject({ reasons: [before, 'after-feed-reading'], takenBy: 'Wren' });
      expect(line.due).toEqual([]);
    },
  );
});

describe('close', () => {
  it.each([0, 7, 14, 500])('stops everything at minute %i; a later page starts anew', (minute) => {
    const line = page();
    line.send(raise('warning-sign'));
    line.advance(minute);
    expect(line.send({ type: 'page.close' })).toEqual([]);
    expect(line.due).toEqual([]);
    expect(line.snapshot.context).toMatchObject({ level: 'routine', reasons: [], place: 0, rounds: 0, takenBy: null });
    expect(lines(line.send(raise('weight-unknown')))).toEqual([`${minute} routine 0 text weight-unknown`]);
  });

  it('forgets who took it', () => {
    const line = page();
    line.send(raise('silence'));
    line.send({ type: 'take', nurse: 'Wren' });
    line.send({ type: 'page.close' });
    expect(lines(line.send(raise('weight-unknown')))).toEqual(['0 routine 0 text weight-unknown']);
  });
});
