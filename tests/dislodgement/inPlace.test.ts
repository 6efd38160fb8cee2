/**
 * A tube that never came out: nothing is put in, whatever its kind, and a nurse decides. Common practice, no source: a tube that
 * leaks, is blocked or sits in a sore hole is left in its place and not used until a nurse says so.
 */
import { describe, expect, it } from 'vitest';
import { inPlaceTroubles } from '#machines/facts.ts';
import { Night, oldTract, wren } from './night.ts';

const insertion = ['ownTubeSteps', 'ownTubeAsHolderSteps', 'insertLayOut', 'askKit', 'askOwnTube', 'askTubeKind'];

describe('a tube in its place', () => {
  it.each(inPlaceTroubles)('%s in the first text is held, and a nurse is called for it', (inPlace) => {
    const night = new Night().tell({ inPlace });
    expect(night.said).toEqual(['openingTubeIn']);
    night.answer('unwell', 'no');
    expect(night.view).toMatchObject({ disposition: 'hold', inside: 'in-place', asking: null });
    expect(night.raised).toEqual([inPlace]);
  });

  it.each(['own-tube', 'kit', 'weight', 'tube-in'] as const)('told at %s stops the way to an insertion', (place) => {
    const night = new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'yes');
    if (place !== 'own-tube') night.answer('own-tube', 'no');
    if (place === 'tube-in') night.answer('kit', 'yes');
    const known = night.all.length;
    night.tell({ inPlace: 'in-place' });
    expect(night.view).toMatchObject({ disposition: 'hold', inside: 'in-place' });
    const later = night.all.slice(known).flatMap((effect) => (effect.type === 'say' ? [effect.say.key] : []));
    expect(later.filter((key) => insertion.includes(key))).toEqual([]);
  });

  it('is not softened by a J, and one half out goes in', () => {
    expect(new Night().tell({ tubeKind: 'j', inPlace: 'in-leaking' }).answer('unwell', 'no').view.disposition).toBe(
      'hold',
    );
    const half = new Night().tell({ tubeKind: 'half-out', inPlace: 'in-place' }).answer('unwell', 'no');
    expect(half.view).toMatchObject({ disposition: 'go-in', inside: 'half-out' });
  });

  it('goes in with a warning sign, or where the danger signs cannot be read', () => {
    const warned = new Night().tell({ inPlace: 'in-leaking', born: oldTract }).signs('fever');
    expect(warned.view).toMatchObject({ disposition: 'go-in', inside: 'in-place' });
    const unread = new Night().tell({ inPlace: 'in-leaking' }).unclear().unclear();
    expect(unread.view).toMatchObject({ disposition: 'go-in', inside: 'in-place' });
  });

  it('takes the graver of two troubles, and pages it', () => {
    const night = new Night().tell({ inPlace: 'in-place' }).answer('unwell', 'no').tell({ inPlace: 'in-leaking' });
    expect(night.raised).toEqual(['in-leaking']);
    expect(night.tell({ inPlace: 'in-blocked' }).raised).toEqual([]);
    expect(night.said).toEqual(['leaveInStill']);
  });

  it('that comes out after all is a tube out, to be looked at anew', () => {
    const night = new Night(wren).tell({ inPlace: 'in-leaking' }).answer('unwell', 'no').hear('outAgain');
    expect(night.raised).toContain('came-out-again');
    expect(night.view).toMatchObject({ asking: 'confirm', inside: 'nothing' });
    expect(night.answer('confirm', 'yes').asking).toBe('own-tube');
  });

  it('told once the family was sent in takes nothing back', () => {
    const night = new Night().tell({ tubeKind: 'j' }).answer('unwell', 'no').tell({ inPlace: 'in-place' });
    expect(night.view).toMatchObject({ disposition: 'go-in', inside: 'nothing' });
  });

  it('goes in where no nurse answers', () => {
    const night = new Night().tell({ inPlace: 'in-leaking' }).answer('unwell', 'no').wait(240);
    expect(night.view).toMatchObject({ disposition: 'go-in', inside: 'in-place' });
  });

  it('is nothing to a tube that was put in tonight', () => {
    const night = new Night(wren).hear('told').answer('unwell', 'no').answer('confirm', 'yes');
    night.answer('own-tube', 'yes').answer('own-tube-in', 'easy').tell({ inPlace: 'in-leaking' });
    expect(night.view).toMatchObject({ inside: 'own', asking: 'after-in' });
  });
});
