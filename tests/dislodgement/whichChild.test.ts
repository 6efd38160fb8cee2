/** A family with several tube-fed children: the danger signs come first, then which child it is; a name later re-opens everything. */
import { describe, expect, it } from 'vitest';
import type { FamilyFile } from '#machines/facts.ts';
import { Night, startMs, wren } from './night.ts';

const leo: FamilyFile = { ...wren, child: 'Leo', tubeKind: 'gj', weightKg: 12.5, latexAllergy: true };
/** In the order of their names: Leo is 0, Wren 1. */
const family: FamilyFile = { ...wren, siblings: [leo] };
const reasons = (night: Night) => night.callsEver.flatMap((call) => call.reasons);
const asked = () => new Night(family).hear('told').answer('unwell', 'no');
const aboutWren = () => asked().tell({ children: [1] });

describe('which child it is', () => {
  it('is asked after the danger signs, in the place of the file', () => {
    const night = new Night(family).hear('told');
    expect(night.said).toEqual(['opening']);
    expect(night.answer('unwell', 'no').asking).toBe('which-child');
    expect(night.view.facts).toEqual({});
    night.tell({ children: [1] });
    expect(night.view).toMatchObject({ asking: 'confirm', child: 1, facts: { tubeKind: 'g', weightKg: 9 } });
  });

  it('is not asked where the first text names one, and a danger is answered before either', () => {
    expect(new Night(family).tell({ children: [0] }).answer('unwell', 'no').view).toMatchObject({
      asking: 'confirm',
      child: 0,
      facts: { tubeKind: 'gj' },
    });
    expect(new Night(family).signs('breathing').said[0]).toBe('emergency');
  });

  it('what was told before stands beside its file, on the careful side', () => {
    const night = new Night(family).tell({ tubeKind: 'gj', weight: { kg: 10 } }).answer('unwell', 'no');
    expect(night.tell({ children: [1] }).view.facts).toMatchObject({ tubeKind: 'gj', weightKg: 10 });
  });

  it('not to be read twice goes on without a file, and the page says so', () => {
    const night = asked().unclear();
    expect(night.asking).toBe('which-child');
    night.unclear();
    expect(night.view).toMatchObject({ asking: 'tube-kind', child: null, facts: {} });
    expect(reasons(night)).toEqual(['which-child']);
  });

  it('none of them goes on without a file, with the allergy of any of them', () => {
    const night = asked().answer('which-child', 'none');
    expect(night.view).toMatchObject({ asking: 'tube-kind', child: null, latexAllergy: true });
    expect(reasons(night)).toContain('which-child');
  });
});

describe('another name later', () => {
  it('with words of correction brings the other file, to be confirmed, and a nurse hears of it', () => {
    const night = aboutWren().answer('confirm', 'yes').answer('own-tube', 'no').answer('kit', 'yes');
    expect(night.asking).toBe('tube-in');
    night.tell({ children: [0] }, true);
    expect(night.view).toMatchObject({ asking: 'confirm', child: 0, latexAllergy: true, facts: { tubeKind: 'gj' } });
    expect(reasons(night)).toContain('child-corrected');
    expect(night.answer('confirm', 'yes').asking).toBe('kit');
  });

  it('takes the permission of a tube in use with it', () => {
    const night = aboutWren().answer('confirm', 'yes').answer('own-tube', 'no').answer('kit', 'yes');
    night
      .answer('tube-in', 'easy')
      .answer('after-in', 'no')
      .answer('came-out', startMs)
      .answer('strips', 'yes')
      .answer('contents', 'yes');
    night.answer('ph', { low: 5, high: 5 }).answer('secured', 'yes');
    expect(night.view.disposition).toBe('use');
    night.tell({ children: [0] }, true);
    expect(night.view).toMatchObject({ asking: 'confirm', disposition: null });
    expect(night.answer('confirm', 'yes').view.disposition).toBe('go-in');
  });

  it('without them is the other child: an urgent page, and the line goes on for the first', () => {
    const night = aboutWren().tell({ children: [0] });
    expect(night.view).toMatchObject({ asking: 'confirm', child: 1, facts: { tubeKind: 'g' } });
    expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['other-child'] }]);
    const prefaces = night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));
    expect(prefaces).toContainEqual({ key: 'oneChild' });
  });

  it('both at once page for the second, and one is asked for', () => {
    const night = new Night(family).tell({ children: [0, 1] });
    expect(reasons(night)).toEqual(['other-child']);
    expect(night.answer('unwell', 'no').asking).toBe('which-child');
  });

  it('means nothing to a family of one', () => {
    const night = new Night(wren).tell({ children: [0] }).answer('unwell', 'no');
    expect(night.asking).toBe('confirm');
  });
});

describe('a phone without a file that speaks of several children', () => {
  it('goes on for one, says so where there is room, and calls a nurse at once, once', () => {
    const night = new Night().tell({ severalChildren: true });
    expect(reasons(night)).toEqual(['other-child']);
    const says = night.all.flatMap((effect) => (effect.type === 'say' ? [effect.say] : []));
    // The danger signs fill their text.
    expect(says.map(({ key, preface }) => [key, preface.map((one) => one.key)])).toEqual([
      ['opening', []],
      ['pageBegan', ['oneChild']],
    ]);
    night.answer('unwell', 'no').tell({ severalChildren: true });
    expect(reasons(night)).toEqual(['other-child']);
  });

  it('also where the second child comes up later', () => {
    const night = new Night().tell({ tubeKind: 'g' }).answer('unwell', 'no');
    expect(reasons(night)).toEqual([]);
    night.text({ type: 'unclear', why: 'unreadable', told: { severalChildren: true }, person: false, corrects: false });
    expect(reasons(night)).toEqual(['other-child']);
    expect(night.asking).toBe('first-placed');
  });
});
