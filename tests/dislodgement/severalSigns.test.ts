/** Several signs in one text, and a sign beside an answer: each is asked about or acted on, and the answer is kept. */
import { describe, expect, it } from 'vitest';
import { type Night, toContents, toInsertion } from './night.ts';

const plain = { told: {}, person: false, corrects: false } as const;
const ph = { low: 5, high: 5 };
const inUse = () => toContents().answer('contents', 'yes').answer('ph', ph).answer('secured', 'yes');
const asked = (night: Night) =>
  night.effects.flatMap((effect) =>
    effect.type === 'say' && effect.say.key === 'clarifySign' ? [effect.say.params.sign] : [],
  );

describe('two doubtful signs of a tube in use', () => {
  it('are asked about one after the other', () => {
    const night = inUse().near('fresh-blood', 'leak');
    expect(asked(night)).toEqual(['fresh-blood']);
    expect(asked(night.answer('unwell', 'no'))).toEqual(['leak']);
    const leaks = night.branch().answer('unwell', 'yes');
    expect(leaks.view.disposition).toBe('go-in');
    expect(leaks.raised).toContain('warning-sign');
    expect(night.answer('unwell', 'no').view.disposition).toBe('use');
  });

  it('the gravest first, and after a yes to a warning no other warning', () => {
    const night = inUse().near('leak', 'breathing', 'pain');
    expect(asked(night)).toEqual(['breathing']);
    expect(asked(night.answer('unwell', 'no'))).toEqual(['leak']);
    expect(night.answer('unwell', 'yes').view).toMatchObject({ asking: null, disposition: 'go-in' });
  });

  it('a doubtful danger beside a plain warning is asked about before they go', () => {
    const night = inUse().text({ ...plain, type: 'signs', sure: ['leak'], near: ['breathing', 'pain'] });
    expect(asked(night)).toEqual(['breathing']);
    expect(night.raised).toContain('warning-sign');
    expect(night.branch().answer('unwell', 'yes').view.disposition).toBe('emergency');
    expect(night.answer('unwell', 'no').view).toMatchObject({ asking: null, disposition: 'go-in' });
  });

  it('what nobody could read leaves none of them waiting', () => {
    const night = inUse().near('fresh-blood', 'leak').unclear().unclear();
    expect(night.view.asking).toBe(null);
    expect(night.view.disposition).toBe('go-in');
  });
});

describe('an answer beside a sign', () => {
  const beside = (value: 'no' | 'easy') => ({ ...plain, type: 'answer.tube-in', value }) as const;

  it('a failed try is counted, and its question not asked again', () => {
    const night = toInsertion().text({
      ...plain,
      type: 'signs',
      sure: [],
      near: ['fresh-blood'],
      answer: beside('no'),
    });
    expect(asked(night)).toEqual(['fresh-blood']);
    expect(night.view.failedTries).toBe(1);
    expect(night.answer('unwell', 'no').said).toEqual(['secondTry']);
    const last = { ...plain, type: 'signs', sure: [], near: ['fresh-blood'], answer: beside('no') } as const;
    expect(night.text(last).answer('unwell', 'no').view).toMatchObject({ asking: null, disposition: 'go-in' });
  });

  it('the sign is graded as of a tube that is in', () => {
    const night = toInsertion().text({ ...plain, type: 'signs', sure: ['leak'], near: [], answer: beside('easy') });
    expect(night.view).toMatchObject({ tubeIn: 'temporary', disposition: 'go-in' });
    expect(night.raised).toContain('warning-sign');
  });

  it('beside a danger it is known to the nurse', () => {
    const night = toInsertion().text({ ...plain, type: 'signs', sure: ['limp'], near: [], answer: beside('easy') });
    expect(night.view).toMatchObject({ inside: 'temporary', disposition: 'emergency' });
  });
});
