/** What is said of the answer before, after the next question was asked. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode, QuestionKey } from '#machines/facts.ts';
import { answerTo, at, eventOf } from './open.ts';

/** As the same words are read at the question itself. */
const threeWeeks = { told: { firstPlaced: answerTo('first-placed', '3 weeks ago') } };

describe('"I meant" corrects the answer before', () => {
  it.each<[LanguageCode, string, QuestionKey, QuestionKey, object]>([
    ['en', 'sorry i meant 3 weeks ago', 'first-placed', 'own-tube', threeWeeks],
    ['en', 'I meant 3 weeks not months', 'first-placed', 'kit', threeWeeks],
    ['en', 'sorry, 3 weeks ago', 'first-placed', 'own-tube', threeWeeks],
    ['es', 'perdón quise decir hace 3 semanas', 'first-placed', 'own-tube', threeWeeks],
    ['fr', 'pardon je voulais dire il y a 3 semaines', 'first-placed', 'own-tube', threeWeeks],
    ['en', 'oh i meant gj', 'tube-kind', 'first-placed', { told: { tubeKind: 'gj' } }],
    ['en', 'i meant burst', 'own-tube', 'kit', { told: { ownTube: 'burst' } }],
    ['en', 'sorry i meant no', 'kit', 'weight', { told: { kit: 'no' } }],
    ['en', 'sorry i meant 2.8 kg', 'weight', 'tube-in', { told: { weight: { kg: 2.8 } } }],
    ['en', 'i meant hard', 'tube-in', 'after-in', { told: { insertedHow: 'hard' } }],
    ['en', 'sorry i meant 11pm', 'came-out', 'after-in', { told: { cameOutAtMs: at('23:00', '2027-03-05') } }],
    ['en', 'i meant no', 'strips', 'contents', { told: { strips: 'no' } }],
    ['en', 'sorry i meant 6.5', 'ph', 'secured', { told: { ph: { low: 6.5, high: 6.5 } } }],
  ])('%s: "%s" after %s, at %s', (language, text, answered, asking, event) => {
    expect(eventOf(text, { language, answered, asking })).toMatchObject({ type: 'told', corrects: true, ...event });
  });

  it.each<[string, QuestionKey, QuestionKey | null]>([
    ['sorry i meant yes', 'unwell', 'confirm'],
    ['sorry I meant no', 'contents', 'ph'],
    ['oops i meant no', 'secured', null],
    ['i meant not in', 'tube-in', 'came-out'],
  ])('"%s" takes back %s, whose question is asked again', (text, answered, asking) => {
    expect(eventOf(text, { answered, asking })).toMatchObject({ type: 'correct', key: answered });
  });

  it.each<[string, QuestionKey, QuestionKey, unknown]>([
    // An answer that was not read is what is corrected.
    ['sorry i meant yes', 'confirm', 'own-tube', 'yes'],
    ['sorry yes we have it', 'own-tube', 'kit', 'yes'],
    ['actually no', 'strips', 'contents', 'no'],
    ['sorry, 20 min ago', 'tube-kind', 'came-out', at('01:50')],
  ])('"%s" after %s answers %s', (text, before, asking, value) => {
    const answered = text.includes('meant') ? null : before;
    expect(answerTo(asking, text, { answered })).toBe(value);
  });

  it('a question, and what nothing can be read in, corrects nothing', () => {
    for (const text of ['did i mean 3 weeks?', 'sorry', 'sorry my hands shake', 'i meant it']) {
      expect(eventOf(text, { answered: 'first-placed', asking: 'own-tube' }).type, text).not.toBe('told');
      expect(eventOf(text, { answered: 'first-placed', asking: 'own-tube' }).type, text).not.toBe('correct');
    }
  });

  it('a danger beside it is heard first', () => {
    expect(eventOf("i meant 3 weeks and she can't breathe", { answered: 'first-placed', asking: 'kit' }).type).toBe(
      'signs',
    );
  });
});
