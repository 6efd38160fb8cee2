/** Answers that cannot be read: asked once more saying why, then a nurse is called, each question by its own reason. */
import { describe, expect, it } from 'vitest';
import type { Unclear } from '#machines/events.ts';
import { Night, oldTract, toContents } from './night.ts';

const beside = { told: {}, person: false, corrects: false };
const prefaces = (night: Night) => night.effects.flatMap((effect) => (effect.type === 'say' ? effect.say.preface : []));

describe('an answer that cannot be read', () => {
  it.each<Unclear>(['unreadable', 'unsure', 'future', 'impossible', 'two-answers', 'no-number', 'no-match'])(
    'is asked again, saying why: %s',
    (why) => {
      const night = new Night()
        .tell({ tubeKind: 'g' })
        .answer('unwell', 'no')
        .text({ ...beside, type: 'unclear', why });
      expect(night.asking).toBe('first-placed');
      expect(prefaces(night)).toEqual([{ key: 'notUnderstood', why }]);
    },
  );

  it('though it was read, as a weight no child has, is asked again as unreadable', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, ownTube: 'no', kit: 'yes' });
    night.answer('unwell', 'no').answer('weight', { kg: 900 });
    expect(night.asking).toBe('weight');
    expect(prefaces(night)).toEqual([{ key: 'notUnderstood', why: 'unreadable' }]);
  });

  it('counts by its question: the next one is asked again, too', () => {
    const night = new Night().hear('told').answer('unwell', 'no').unclear().answer('tube-kind', 'g').unclear();
    expect(night.asking).toBe('first-placed');
    expect(night.raised).toEqual([]);
  });
});

describe('a device the line does not know', () => {
  const named = (night: Night) => night.text({ ...beside, type: 'unknownDevice' });

  it('is asked about by looking; a word that says nothing there is unreadable, and a second one calls a nurse', () => {
    const night = named(new Night().hear('told').answer('unwell', 'no'));
    expect(night.said).toEqual(['askTubeKindByLook']);
    expect(night.view).toMatchObject({ asking: 'tube-kind', clarifying: 'look' });
    expect(prefaces(night)).toEqual([]);
    expect(named(night).raised).toEqual([]);
    expect(prefaces(night)).toEqual([{ key: 'notUnderstood', why: 'unreadable' }]);
    expect(named(night).said).toEqual(['askTubeKindByLook']);
    expect(named(night).raised).toEqual(['unread', 'restricted-kind']);
    expect(night.view.facts.tubeKind).toBe('unknown');
  });
});

describe('unread twice', () => {
  it('in the steps of a tube that is in, holds it', () => {
    const night = toContents().unclear().unclear();
    expect(night.raised).toEqual(['unread']);
    expect(night.view.disposition).toBe('hold');
  });
});
