/** A page passed on: the next person is called at once, and what the family hears of it. */
import { describe, expect, it } from 'vitest';
import { lines, page, raise } from './calls.ts';

const pass = (from: 0 | 1 | 2) => ({ type: 'pass', nurse: 'Wren', from }) as const;

describe('a page passed on', () => {
  it('before anybody took it calls the next person at once, and the third in her own time', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(2);
    expect(lines(line.send(pass(0)))).toEqual(['2 urgent 1 text silence']);
    expect(lines(line.advance(5))).toEqual(['7 urgent 2 text silence']);
    expect(lines(line.advance(5))).toEqual(['12 unanswered']);
  });

  it('by somebody it has gone on from changes nothing', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(11);
    expect(line.send(pass(0))).toEqual([]);
    expect(line.send(pass(2))).toEqual([]);
    expect(lines(line.send(pass(1)))).toEqual(['11 urgent 2 text silence']);
  });

  it('after it was taken says so to the family and climbs on with all its reasons', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren' });
    line.send(raise('after-feed-reading'));
    line.advance(60);
    expect(lines(line.send(pass(0)))).toEqual(['60 passed Wren', '60 urgent 1 text no-strips,after-feed-reading']);
    expect(line.snapshot.context.takenBy).toBeNull();
    expect(lines(line.advance(5))).toEqual(['65 urgent 2 text no-strips,after-feed-reading']);
  });

  it('by the second, who took it, goes on to the third', () => {
    const line = page();
    line.send(raise('silence'));
    line.send({ type: 'take', nurse: 'Wren', from: 1 });
    expect(lines(line.send(pass(1)))).toEqual(['0 passed Wren', '0 urgent 2 text silence']);
  });

  it('by the third begins again with the first', () => {
    const line = page();
    line.send(raise('silence'));
    line.advance(16);
    line.send({ type: 'take', nurse: 'Wren' });
    expect(lines(line.send(pass(2)))).toEqual(['16 passed Wren', '16 urgent 0 text silence']);
    expect(lines(line.advance(5))).toEqual(['21 urgent 0 text+call silence']);
  });

  it('changes nothing where nothing was raised', () => {
    expect(page().send(pass(0))).toEqual([]);
  });
});

describe('a family hears that a nurse is called', () => {
  it('once a climb, and not for what can wait until it becomes urgent', () => {
    const line = page();
    expect(lines(line.send(raise('weight-unknown')))).toEqual(['0 routine 0 text weight-unknown']);
    expect(lines(line.send(raise('silence')))).toEqual(['0 began 20', '0 urgent 0 text weight-unknown,silence']);
    expect(lines(line.send(raise('danger-sign')))[0]).toMatch(/^0 emergency 0/);
  });
});

describe('a case passed on by one who has swapped since she took it', () => {
  it.each([1, 2] as const)('from place %i goes to the first on call, who was not asked', (from) => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from: 0 });
    line.advance(30);
    expect(lines(line.send(pass(from)))).toEqual(['30 passed Wren', '30 urgent 0 text no-strips']);
    expect(lines(line.advance(10))).toEqual(['35 urgent 0 text+call no-strips', '40 urgent 1 text no-strips']);
  });

  it('as the first by now goes to the second', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from: 1 });
    expect(lines(line.send(pass(0)))).toEqual(['0 passed Wren', '0 urgent 1 text no-strips']);
  });
});

describe('a case taken over', () => {
  const steps = (place: 0 | 1 | 2) => ({ type: 'stepsIn', place }) as const;

  it('from whoever has it is noted as a page to her, and goes on from her own place', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from: 0 });
    expect(lines(line.send(steps(2)))).toEqual(['0 urgent 2  no-strips']);
    expect(line.snapshot.context.takenBy).toBe('Wren');
    expect(lines(line.send({ type: 'take', nurse: 'Bo', from: 2, over: true }))).toEqual(['0 taken Bo']);
    expect(line.snapshot.context).toMatchObject({ takenBy: 'Bo', place: 2 });
    expect(line.due).toEqual([]);
  });

  it('starts the wait for her own word again', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from: 0 });
    line.send({ type: 'case.stands', waitsForNurse: true, touched: true });
    line.advance(29);
    line.send(steps(1));
    line.send({ type: 'take', nurse: 'Bo', from: 1, over: true });
    line.send({ type: 'case.stands', waitsForNurse: true, touched: true });
    expect(lines(line.advance(29))).toEqual([]);
    expect(lines(line.advance(1))).toEqual(['59 tellNurse urgent untouched']);
  });

  it('is no further "I take it": who has it keeps it', () => {
    const line = page();
    line.send(raise('no-strips'));
    line.send({ type: 'take', nurse: 'Wren', from: 0 });
    expect(line.send({ type: 'take', nurse: 'Bo', from: 1 })).toEqual([]);
    expect(line.snapshot.context).toMatchObject({ takenBy: 'Wren', place: 0 });
  });

  it('is nothing while nobody has it', () => {
    const line = page();
    line.send(raise('no-strips'));
    expect(line.send(steps(1))).toEqual([]);
  });
});
