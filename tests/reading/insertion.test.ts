/** What a parent with busy hands writes while a tube goes in: still at it, latex in it, or another kind than was told. */
import { describe, expect, it } from 'vitest';
import type { LanguageCode } from '#machines/facts.ts';
import { answerTo, eventOf } from './open.ts';

const says = (language: LanguageCode, text: string) => eventOf(text, { asking: 'tube-in', language });

describe('a tube that may hold latex', () => {
  it.each<[LanguageCode, string]>([
    ['en', "it doesn't say latex free"],
    ['en', 'not marked latex-free'],
    ['en', 'the tube isnt latex free'],
    ['es', 'el tubo no dice sin látex'],
    ['es', 'no dice nada de latex'],
    ['fr', "ce n'est pas marqué sans latex"],
    ['fr', 'pas garantie sans latex'],
  ])('%s: "%s" is no failed try, but a reason to stop', (language, text) => {
    expect(says(language, text)).toMatchObject({ type: 'told', told: { latexAllergy: true } });
  });

  it.each<[LanguageCode, string]>([
    ['en', 'easy, no problem, it is latex free'],
    ['es', 'facil, es sin latex'],
    ['fr', 'facile, elle est sans latex'],
    ['en', 'no it wont go in'],
  ])('%s: "%s" doubts nothing', (language, text) => {
    expect(says(language, text).told.latexAllergy).toBeUndefined();
  });
});

describe('still at it', () => {
  it.each<[LanguageCode, string]>([
    ['en', 'not yet'],
    ['en', "I'm trying, she won't hold still"],
    ['en', 'hang on'],
    ['en', 'ok i read them'],
    ['es', 'todavía no'],
    ['es', 'estoy intentando'],
    ['fr', 'pas encore'],
    ['fr', "j'essaie"],
  ])('%s: "%s" is no answer and no failed try', (language, text) => {
    expect(says(language, text).type).toBe('smallTalk');
  });

  it('a try that failed is one', () => {
    for (const text of ["i tried but it won't go in", 'no', "im trying but it won't go in"])
      expect(answerTo('tube-in', text), text).toBe('no');
  });
});

describe('another kind than was told', () => {
  it.each<[LanguageCode, string]>([
    ['en', 'i think it was a gj actually'],
    ['en', 'wait it had 2 ports, one says jejunal. its a gj i think'],
    ['es', 'creo que era gj'],
    ['fr', "je crois que c'est une gj"],
  ])('%s: "%s" leaves no certain G', (language, text) => {
    // Heard through the doubt as the kind that may not go back in at home.
    expect(says(language, text).told.tubeKind).toBe('gj');
  });

  it('a hedged G doubts nothing, and a first text is asked about', () => {
    expect(eventOf('i think its a g tube', { asking: 'kit' }).told.tubeKind).toBeUndefined();
    expect(eventOf('i think her gj tube came out', { caseOpen: false }).told.tubeKind).toBeUndefined();
  });
});
