/** The steps that are sent to busy hands: once, heard again on request, and others where a fact told means others. */
import { describe, expect, it } from 'vitest';
import type { FamilyFile } from '#machines/facts.ts';
import { Night, oldTract, startMs, toInsertion } from './night.ts';

const paramsOf = (night: Night, key: string) =>
  night.effects.flatMap((effect) => (effect.type === 'say' && effect.say.key === key ? [effect.say.params] : []));

describe('a burst own tube that holds the stoma open', () => {
  const sent = () =>
    new Night()
      .tell({ tubeKind: 'g', firstPlaced: oldTract, ownTube: 'burst', kit: 'no', cameOutAtMs: startMs })
      .answer('unwell', 'no');

  it('gets its steps once; an "ok" or a picture is asked only how it went in', () => {
    const night = sent();
    expect(night.said).toEqual(['ownTubeAsHolderSteps']);
    for (const type of ['smallTalk', 'media'] as const) {
      expect(night.hear(type).said).toEqual(['askHowIn']);
      expect(night.view.failedTries).toBe(0);
    }
  });

  it('is put in by busy hands: the nudge waits for them', () => {
    const night = sent();
    expect(night.wait(14).said).toEqual([]);
    expect(night.wait(1).said).toEqual(['nudge']);
  });
});

describe('the kit', () => {
  const file: FamilyFile = {
    child: null,
    born: null,
    tubeKind: 'g',
    firstPlaced: '2025-03-01',
    weightKg: 9,
    weighedOn: null,
    latexAllergy: true,
  };

  it('is asked of an unknown phone together with whether somebody was shown how', () => {
    const night = new Night().tell({ tubeKind: 'g', firstPlaced: oldTract, ownTube: 'no' }).answer('unwell', 'no');
    expect(paramsOf(night, 'askKit')).toEqual([{ stranger: true, latexAllergy: false }]);
  });

  it('is asked of a family on file by itself, and with a latex allergy whether it is latex-free', () => {
    const night = new Night(file).hear('told').answer('unwell', 'no').answer('confirm', 'yes').answer('own-tube', 'no');
    expect(paramsOf(night, 'askKit')).toEqual([{ stranger: false, latexAllergy: true }]);
  });
});

describe('a step to be heard again', () => {
  it('with a fact that means others is answered by those', () => {
    const repeat = { type: 'repeat', step: 2, person: false, corrects: false } as const;
    const night = toInsertion().text({ ...repeat, told: { weight: { kg: 2.5 } } });
    expect(night.said).toEqual(['insertLayOut', 'insertMeasure', 'insertPutIn']);
    expect(paramsOf(night, 'insertMeasure')).toEqual([{ lowCm: 3, highCm: 4 }]);
    expect(toInsertion().text({ ...repeat, told: { tubeKind: 'j' } }).view.disposition).toBe('go-in');
  });
});
