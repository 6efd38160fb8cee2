/** A weight that hardly fits the child's age is repeated and asked once more, never refused, and no length is told before. */
import { describe, expect, it } from 'vitest';
import type { WeightTold } from '#machines/facts.ts';
import { daysBefore, Night, oldTract } from './night.ts';

const born = daysBefore(500);
const atWeight = () =>
  new Night()
    .tell({ born, tubeKind: 'g', firstPlaced: daysBefore(300) })
    .answer('unwell', 'no')
    .answer('own-tube', 'no')
    .answer('kit', 'yes');
const inDoubt = (weight: WeightTold = { kg: 60 }) => atWeight().answer('weight', weight);
const reasons = (night: Night) => night.callsEver.flatMap((call) => call.reasons);

describe('a weight that hardly fits the age', () => {
  it.each([{ kg: 60 }, { kg: 2.5 }, { bare: 100 }] as const)('%o is repeated before any length is told', (weight) => {
    const night = inDoubt(weight);
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'doubt' });
    expect(night.saidEver).not.toContain('insertMeasure');
    expect(night.effects.flatMap((effect) => (effect.type === 'say' ? [effect.say.params] : []))).toEqual([
      { told: weight },
    ]);
  });

  it.each(['as-told', { kg: 60 }, { bare: 60 }] as const)(
    'told again as %o it is believed, and a nurse knows',
    (again) => {
      const night = inDoubt().answer('weight', again);
      expect(night.asking).toBe('tube-in');
      expect(night.view.facts.weightKg).toBe(60);
      expect(night.calls).toMatchObject([{ level: 'urgent', reasons: ['weight-doubtful'] }]);
    },
  );

  it('a bare number told again with its unit is believed with it', () => {
    expect(inDoubt({ bare: 100 }).answer('weight', { kg: 100 }).view).toMatchObject({
      asking: 'tube-in',
      facts: { weightKg: 100 },
    });
  });

  it('another number that fits takes its place, and nobody is called', () => {
    const night = inDoubt({ kg: 2.9 }).answer('weight', { kg: 9 });
    expect(night.view).toMatchObject({ asking: 'tube-in', facts: { weightKg: 9, weightBand: 'over-3' } });
    expect(reasons(night)).not.toContain('weight-doubtful');
  });

  it('another number that hardly fits is asked about in its turn', () => {
    const night = inDoubt().answer('weight', { kg: 2.5 });
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'doubt', facts: { weightKg: 2.5 } });
    night.answer('weight', { kg: 60 });
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'doubt', facts: { weightKg: 60 } });
  });

  it('not known after all it is unknown, and unreadable twice too', () => {
    expect(reasons(inDoubt().answer('weight', 'unknown'))).toContain('weight-unknown');
    const night = inDoubt().unclear();
    expect(night.asking).toBe('weight');
    expect(reasons(night.unclear())).toEqual(['unread']);
    expect(night.view).toMatchObject({ asking: 'tube-in', facts: {} });
    expect(night.view.facts.weightKg).toBeUndefined();
  });

  it('from the file is asked about too: a file grows old', () => {
    const night = new Night({
      child: 'Wren',
      born: born.latest,
      tubeKind: 'g',
      firstPlaced: daysBefore(400).latest,
      weightKg: 3.6,
      weighedOn: daysBefore(480).latest,
    });
    night.hear('told').answer('unwell', 'no').answer('confirm', 'yes').answer('own-tube', 'no').answer('kit', 'yes');
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'doubt' });
  });

  it('under 3 kg beside a tract of unknown age nothing goes in, doubt or not', () => {
    const night = new Night().tell({ born, tubeKind: 'g', firstPlaced: 'unknown' }).answer('unwell', 'no');
    night.answer('kit', 'yes').answer('weight', { kg: 2.5 });
    expect(night.view.disposition).toBe('go-in');
  });

  it('told by the nurse is asked of the family before new steps', () => {
    const night = atWeight()
      .answer('weight', { kg: 9 })
      .corrects({ weight: { kg: 2.5 } });
    expect(night.view).toMatchObject({ asking: 'weight', clarifying: 'doubt' });
  });

  it('told of a child whose age nobody knows is believed at once', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract }).answer('unwell', 'no');
    night.answer('own-tube', 'no').answer('kit', 'yes').answer('weight', { kg: 60 });
    expect(night.asking).toBe('tube-in');
  });
});
