/** An emergency and the question that may become one: whatever is said beside an answer is heard, and told of the tube is kept. */
import { describe, expect, it } from 'vitest';
import { Night, toContents, toInsertion } from './night.ts';

const beside = { told: { latexAllergy: true }, person: true, corrects: false } as const;
const prefaces = (night: Night) => night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));

describe('a doubtful sign being made clear', () => {
  const asked = () => toContents().near('fresh-blood');

  it('a yes to what would be a warning is one: the child goes in, and all of the text is heard', () => {
    const night = asked().answer('unwell', 'yes', beside);
    expect(night.view).toMatchObject({ disposition: 'go-in', latexAllergy: true });
    expect(new Set(night.raised)).toEqual(new Set(['warning-sign', 'person-wanted']));
    expect(prefaces(night)).toContainEqual({ key: 'feverOrWarning' });
  });

  it('a no goes on where it was; with a fact told beside it that is heard, and a person is called', () => {
    expect(asked().answer('unwell', 'no').asking).toBe('contents');
    const night = asked().answer('unwell', 'no', beside);
    expect(night.view.latexAllergy).toBe(true);
    expect(night.raised).toContain('person-wanted');
  });

  it.each(['smallTalk', 'told'] as const)('%s twice is no answer: a nurse is called about the danger signs', (type) => {
    expect(asked().hear(type).raised).toEqual([]);
    expect(asked().hear(type).hear(type).raised).toEqual(['unwell-unread']);
  });

  it('a child who feels hot, said once more, has a fever', () => {
    const warned = toContents().near('fever').near('fever');
    expect(warned.view.disposition).toBe('go-in');
    expect(warned.raised).toContain('warning-sign');
    const hot = new Night().tell({ weight: { kg: 4 } }).near('fever');
    expect(hot.said).toEqual(['clarifySign']);
    expect(hot.near('fever').view.disposition).toBe('emergency');
    expect(hot.effects).toContainEqual(
      expect.objectContaining({ say: expect.objectContaining({ key: 'emergency', params: { signs: ['fever'] } }) }),
    );
  });

  it('another one said instead is made clear in its turn', () => {
    const night = new Night()
      .tell({ weight: { kg: 4 } })
      .near('fever')
      .near('bleeding');
    expect(night.view.disposition).not.toBe('emergency');
    expect(night.view).toMatchObject({ asking: 'unwell', clarifying: 'sign' });
  });

  it('a fever nobody is sure of is no emergency in a child past the age for it', () => {
    const unsure = (kg: number) => new Night().tell({ weight: { kg } }).near('fever').unclear().unclear();
    expect(unsure(19).raised).toEqual(['unread']);
    expect(unsure(19).view).toMatchObject({ asking: 'unwell', clarifying: null });
    expect(unsure(4).raised).toEqual(['unwell-unread']);
  });

  it('silence is nudged about that question', () => {
    expect(asked().wait(5).effects).toContainEqual(
      expect.objectContaining({ say: { key: 'nudge', params: { asking: 'unwell' }, preface: [] } }),
    );
  });
});

describe('in an emergency', () => {
  const plainYes = () => new Night().hear('told').answer('unwell', 'yes');

  it('what is told while the yes is taken back is heard', () => {
    const night = plainYes().text({ type: 'correct', key: 'unwell', ...beside });
    expect(night.view).toMatchObject({ asking: 'unwell', latexAllergy: true });
    expect(night.raised).toEqual(['person-wanted']);
  });

  it('a tube that comes out is paged; one that was never in is not, and what is told is heard', () => {
    const cameOut = toContents().signs('breathing').hear('outAgain', beside);
    expect(cameOut.raised).toEqual(['came-out-again', 'person-wanted']);
    expect(cameOut.view).toMatchObject({ disposition: 'emergency', tubeIn: null, latexAllergy: true });
    const wasOut = toInsertion().signs('breathing').hear('outAgain', beside);
    expect(wasOut.raised).toEqual(['person-wanted']);
    expect(wasOut.view.latexAllergy).toBe(true);
    expect(wasOut.said).toEqual(['emergencyStill']);
  });

  it('what cannot wait is paged once, and what is told beside it is heard', () => {
    const tell = (night: Night) =>
      night.text({ type: 'cannotWait', what: 'seizure medicine', ...beside, person: false });
    const night = tell(toContents().signs('breathing'));
    expect(night.raised).toEqual(['cannot-wait']);
    expect(night.view).toMatchObject({ cannotWait: 'seizure medicine', latexAllergy: true });
    expect(night.said).toEqual(['emergencyStill']);
    expect(tell(night).raised).toEqual([]);
  });
});
