/**
 * The child's own tube put back before the line asked for it: it is in, and is checked as any other. Common practice, no source:
 * nothing goes through it before its place was checked.
 */
import { describe, expect, it } from 'vitest';
import { daysBefore, Night, oldTract, wren } from './night.ts';

describe('an own tube back in before it was asked for', () => {
  it('is in: the first answer leaves it in, and no step to put one in is sent', () => {
    const night = new Night(wren).tell({ backIn: 'easy' });
    expect(night.said).toEqual(['openingTubeIn']);
    night.answer('unwell', 'no').answer('confirm', 'yes');
    expect(night.view).toMatchObject({ inside: 'own', facts: { insertedHow: 'easy' } });
    expect(night.said).toEqual(['askOwnTubeIn']);
    expect(night.answer('own-tube', 'yes').asking).toBe('after-in');
  });

  it('told at the question for it, says that nothing goes through it, and asks how it went in', () => {
    const night = new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'yes').tell({ backIn: 'in' });
    expect([night.asking, night.said]).toEqual(['own-tube-in', ['askHowIn']]);
    const say = night.effects.find((effect) => effect.type === 'say');
    expect(say?.type === 'say' && say.say.preface).toEqual([{ key: 'noted', facts: { backIn: true } }]);
  });

  it.each([
    ['gj', oldTract],
    ['unknown', oldTract],
    ['g', daysBefore(30)],
    ['g', 'unknown'],
  ] as const)('of kind %s in a tract of %j only holds the stoma open', (tubeKind, firstPlaced) => {
    const night = new Night().tell({ tubeKind, firstPlaced, backIn: 'easy', cameOutAtMs: 0 }).answer('unwell', 'no');
    expect(night.view).toMatchObject({ disposition: 'go-in', inside: 'own' });
  });

  it('is never used where it was not known to be whole, after a failed try, or after the order to go in', () => {
    const asked = () => new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'yes');
    const burst = asked().answer('own-tube', 'burst').tell({ backIn: 'easy', cameOutAtMs: 0 });
    const tried = asked()
      .answer('own-tube', 'yes')
      .answer('own-tube-in', 'no')
      .tell({ backIn: 'easy', cameOutAtMs: 0 });
    const sent = asked().answer('own-tube', 'no').answer('kit', 'no').tell({ backIn: 'easy', cameOutAtMs: 0 });
    for (const night of [burst, tried, sent]) expect(night.view).toMatchObject({ disposition: 'go-in', inside: 'own' });
  });

  it('is no half-out tube, and none through the nose', () => {
    const half = new Night().tell({ tubeKind: 'half-out', backIn: 'easy' }).answer('unwell', 'no');
    expect(half.view).toMatchObject({ disposition: 'go-in', inside: 'half-out' });
    expect(new Night().tell({ tubeKind: 'nose', backIn: 'easy' }).answer('unwell', 'no').view.inside).toBe('nose');
  });
});
