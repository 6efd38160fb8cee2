/** The French formula and its count of syllables, against texts counted outside the project. */
import { describe, expect, it } from 'vitest';
import { frenchEase, frenchSyllables, kandelMoles } from './frenchEase.ts';
import { sentences, words } from './grade.ts';

describe('the index of Kandel and Moles', () => {
  /** The French sample in the tests of an open-source text library (seen): 20 words, 5 sentences, 23 syllables. */
  it('counts a sample as an open-source library does', () => {
    const text =
      "Le chat dort. Il fait beau. Les oiseaux chantent dans les arbres. C'est l'été. Il n'y a pas de nuages.";
    const counted = words(text).reduce((sum, token) => sum + frenchSyllables(token), 0);
    expect([words(text).length, sentences(text).length, counted]).toEqual([20, 5, 23]);
    expect(frenchEase(text)).toBeCloseTo(207 - 1.015 * 4 - 73.6 * 1.15, 6);
  });

  it('is lower for longer sentences and longer words', () => {
    expect(kandelMoles(20, 1, 30)).toBeLessThan(kandelMoles(20, 2, 30));
    expect(kandelMoles(20, 2, 40)).toBeLessThan(kandelMoles(20, 2, 30));
  });

  it('says that an official sentence is hard', () => {
    expect(
      frenchEase("Une évaluation médicale immédiate est recommandée en cas d'extériorisation accidentelle."),
    ).toBeLessThan(30);
  });
});

describe('the syllables of a French word', () => {
  /** Counted aloud; the mute e at the end of a word is left out. */
  it.each([
    ['sonde', 1],
    ['les', 1],
    ['de', 1],
    ['eau', 1],
    ['oui', 1],
    ['nuit', 1],
    ['quelque', 1],
    ['trouble', 1],
    ['bouteille', 2],
    ['infirmière', 3],
    ['répondez', 3],
    ['essayez', 3],
    ['mouillez', 2],
    ['bandelettes', 3],
    ['doucement', 3],
    ['médicament', 4],
    ['réussi', 3],
    ['vérifiée', 3],
    ["l'hôpital", 3],
    ["jusqu'à", 2],
    ['est-elle', 2],
    ["aujourd'hui", 3],
    ['6,5', 2],
  ])('are counted: %s', (token, count) => {
    expect(frenchSyllables(token)).toBe(count);
  });
});
