/** The way up: whom each level calls, when and how, and what goes on when nobody takes it. */
import { describe, expect, it } from 'vitest';
import type { PageReason } from '#machines/facts.ts';
import { clinicalWith } from '#tests/machines/simulated.ts';
import { lines, page, raise } from './calls.ts';

describe('the way up', () => {
  it('calls an emergency by text and telephone at 0, 3, 6 and 10 minutes', () => {
    // The first wait of 3 min: median answer to a page, Moss et al, Chest 1999;116:1019; the others common practice, no source.
    const line = page();
    expect(lines([...line.send(raise('warning-sign')), ...line.advance(13)])).toEqual([
      '0 began 13',
      '0 emergency 0 text+call warning-sign',
      '3 emergency 0 text+call warning-sign',
      '6 emergency 1 text+call warning-sign',
      '10 emergency 2 text+call warning-sign',
      '13 unanswered',
    ]);
  });

  it('texts an urgent page at 0, 5, 10 and 15 minutes and rings on the repeat; the second and third person get a first page', () => {
    const line = page();
    expect(lines([...line.send(raise('silence')), ...line.advance(20)])).toEqual([
      '0 began 20',
      '0 urgent 0 text silence',
      '5 urgent 0 text+call silence',
      '10 urgent 1 text silence',
      '15 urgent 2 text silence',
      '20 unanswered',
    ]);
  });

  it('only ever texts a routine page, and is with the third person within 30 minutes', () => {
    // Call-backs within 30 min on average: URAC Health Call Center Accreditation.
    const line = page();
    expect(lines([...line.send(raise('weight-unknown')), ...line.advance(40)])).toEqual([
      '0 routine 0 text weight-unknown',
      '10 routine 0 text weight-unknown',
      '20 routine 1 text weight-unknown',
      '30 routine 2 text weight-unknown',
      '40 unanswered',
    ]);
  });
});

describe('after the third person', () => {
  const untaken = (reason: PageReason) => {
    const line = page();
    line.send(raise(reason));
    line.advance(15); // an urgent climb stands at its third person
    return line;
  };

  it('calls all three every 15 minutes for 6 hours, then every hour, for days if need be', () => {
    const line = untaken('silence');
    const rounds = line.advance(2 * 24 * 60).filter(({ type }) => type === 'callNurse');
    const minutes = [...new Set(rounds.map(({ minute }) => minute))];
    const quarterHours = Array.from({ length: 24 }, (_, round) => 15 + (round + 1) * 15);
    const hours = Array.from({ length: 42 }, (_, round) => 15 + 6 * 60 + (round + 1) * 60);
    expect(minutes).toEqual([...quarterHours, ...hours]);
    expect(rounds).toHaveLength(3 * minutes.length);
    expect(line.due).toEqual([60]);
  });

  it('repeats to each by text and telephone in a round', () => {
    const line = untaken('silence');
    expect(lines(line.advance(15))).toEqual([
      '20 unanswered',
      '30 urgent 0 text+call silence',
      '30 urgent 1 text+call silence',
      '30 urgent 2 text+call silence',
    ]);
  });

  it('tells the family once a climb, however many rounds follow', () => {
    const line = untaken('silence');
    expect(line.advance(24 * 60).filter(({ type }) => type === 'unanswered')).toHaveLength(1);
  });

  it('follows the settings of the rounds', () => {
    const line = page(clinicalWith({ pageAgainMinutes: 30, pageAgainHours: 1 }));
    line.send(raise('silence'));
    const rounds = line.advance(15 + 3 * 60).filter(({ type, minute }) => type === 'callNurse' && minute > 15);
    expect([...new Set(rounds.map(({ minute }) => minute))]).toEqual([45, 75, 135, 195]);
  });
});

describe('when timers fire late', () => {
  it('makes up for the way up at once, and gives the third person their turn from the call', () => {
    const line = page();
    line.send(raise('warning-sign'));
    expect(lines(line.advanceAsleep(60))).toEqual([
      '60 emergency 0 text+call warning-sign',
      '60 emergency 1 text+call warning-sign',
      '60 emergency 2 text+call warning-sign',
    ]);
    expect(lines(line.advance(3))).toEqual(['63 unanswered']);
  });

  it('does not make up for missed rounds: one, and then on', () => {
    const line = page();
    line.send(raise('warning-sign'));
    line.advance(14);
    expect(line.advanceAsleep(5 * 60)).toHaveLength(3);
    expect(line.due).toEqual([15]);
  });

  it('gives the second person the rest of their time only', () => {
    const line = page();
    line.send(raise('warning-sign'));
    line.advanceAsleep(4);
    expect(lines(line.advance(6))).toEqual([
      '6 emergency 1 text+call warning-sign',
      '10 emergency 2 text+call warning-sign',
    ]);
  });
});
