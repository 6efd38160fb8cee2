/** What the third round of the attack found: permission that outlived an answer in doubt. */
import { describe, expect, it } from 'vitest';
import type { QuestionKey, Told } from '#machines/facts.ts';
import { Night, oldTract, startMs, toContents } from '../night.ts';

const exact = (high: number) => ({ low: high, high });
const takeBack = (night: Night, key: QuestionKey) =>
  night.text({ type: 'correct', key, told: {}, person: false, corrects: true });
const toUse = (night: Night) => night.answer('contents', 'yes').answer('ph', exact(4)).answer('secured', 'yes');
const ownIn = (told: Told = {}) =>
  new Night()
    .tell({ tubeKind: 'g', firstPlaced: oldTract, cameOutAtMs: startMs, ...told })
    .answer('unwell', 'no')
    .answer('own-tube', 'yes')
    .answer('own-tube-in', 'easy')
    .answer('after-in', 'no')
    .answer('strips', 'yes');

describe('an answer in doubt', () => {
  it.each(['ph', 'contents'] as const)('%s taken back while a feed is asked about is drawn and read again', (key) => {
    const night = toContents().answer('contents', 'yes').answer('ph', exact(6.5)).answer('fed-lately', 'yes');
    expect(takeBack(night, key).asking).toBe('contents');
  });

  it('about the own tube that is in, given up on, makes it a holder', () => {
    const night = takeBack(toUse(ownIn()), 'own-tube').unclear().unclear();
    expect(night.view.disposition).toBe('go-in');
    expect(night.said).not.toContain('use');
  });

  it('about a danger sign, given up on, voids the permission', () => {
    const night = toUse(toContents()).near('colour').unclear().unclear();
    expect(night.view.disposition).toBe('go-in');
    expect(night.calls).toMatchObject([{ level: 'emergency', reasons: ['unwell-unread'] }]);
  });
});

describe('a kit known before a latex allergy', () => {
  it('is asked about again, whichever tube was in meanwhile', () => {
    const night = ownIn({ kit: 'yes', weight: { kg: 7 } })
      .tell({ latexAllergy: true })
      .hear('outAgain');
    expect(night.answer('own-tube', 'no').asking).toBe('kit');
  });
});

describe('whoever takes a page', () => {
  it('hears what was added since she was called, also when another was called meanwhile', () => {
    const night = new Night().tell({}).answer('unwell', 'no').answer('tube-kind', 'gj').hear('person').wait(10).take();
    expect(night.effects).toContainEqual({ type: 'tellNurse', level: 'urgent', reason: 'person-wanted' });
  });
});
