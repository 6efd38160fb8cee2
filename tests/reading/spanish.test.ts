/** Spanish: what is never a yes or a no, danger in a case of another language, and the numbers and dates of its own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { QuestionKey } from '#machines/facts.ts';
import { answerTo, eventOf } from './open.ts';

const es = { language: 'es' } as const;

describe('doubt', () => {
  const doubts = [
    'no estoy segura',
    'no se',
    'nose',
    'creo que si',
    'tal vez',
    'a lo mejor no',
    'quien sabe',
    'si y no',
  ];
  const gates: readonly QuestionKey[] = ['unwell', 'kit', 'strips', 'contents', 'secured', 'confirm'];
  const wrapping = fc.constantFrom<(text: string) => string>(
    (text) => text,
    (text) => text.toUpperCase(),
    (text) => `ay ${text} la verdad`,
    (text) => `${text}!! 😭`,
    (text) => `pues ${text} perdon`,
  );

  it('is never a yes or a no', () => {
    fc.assert(
      fc.property(fc.constantFrom(...doubts), wrapping, fc.constantFrom(...gates), (text, wrap, asking) => {
        expect(['yes', 'no']).not.toContain(answerTo(asking, wrap(text), { ...es, tubeIn: true }));
      }),
    );
  });
});

describe('danger', () => {
  const dangers = [
    ['no respira', 'breathing'],
    ['no puede respirar bien', 'breathing'],
    ['tiene los labios morados', 'colour'],
    ['esta inconsciente', 'limp'],
    ['ya no responde', 'limp'],
    ['le sale mucha sangre', 'bleeding'],
    ['vomito verde', 'vomit'],
    ['tiene la barriga dura e hinchada', 'hard-belly'],
  ] as const;

  it.each(dangers)('%s is heard in a case of any language', (text, sign) => {
    for (const language of ['es', 'en', 'fr'] as const) {
      expect(eventOf(text, { language, asking: 'kit' })).toMatchObject({ type: 'signs', sure: [sign] });
    }
  });

  it('in English is heard in a Spanish case', () => {
    expect(eventOf('she is not breathing', { ...es, asking: 'kit' })).toMatchObject({ sure: ['breathing'] });
  });

  it('in Spanish is not heard where the site has it off', () => {
    expect(eventOf('se desmayo', { asking: 'kit', languages: ['en'] }).type).not.toBe('signs');
  });

  it.each(['no sangra', 'no tiene fiebre', 'sin fiebre ni vomito', 'respira bien'])('is none: %s', (text) => {
    expect(eventOf(text, { ...es, asking: 'unwell' }).type).not.toBe('signs');
  });
});

describe('numbers and dates', () => {
  it.each([
    ['7 kilos y medio', { kg: 7.5 }],
    ['7,5 kg', { kg: 7.5 }],
    ['3.200 gramos', { kg: 3.2 }],
    ['dos kilos ochocientos', { kg: 2.8 }],
  ])('%s', (text, value) => {
    expect(answerTo('weight', text, es)).toEqual(value);
  });

  it('a decimal comma and a range keep both ends of a reading', () => {
    expect(answerTo('ph', 'entre 5 y 5,5', { ...es, tubeIn: true })).toEqual({ low: 5, high: 5.5 });
  });

  it.each([
    ['marzo del año pasado', { earliest: '2026-03-01', latest: '2026-03-31' }],
    // Day first in Spanish, month first on this site's forms: either is possible, so the tract is as young as the younger.
    ['5/3/2026', { earliest: '2026-03-05', latest: '2026-05-03' }],
  ])('%s', (text, value) => {
    expect(answerTo('first-placed', text, es)).toEqual(value);
  });
});
