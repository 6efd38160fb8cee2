/** Facts in French: dates, times, weights and readings as a parent reads them, and the child's name. */
import { describe, expect, it } from 'vitest';
import type { SayKey, Says } from '#machines/says.ts';
import { childFirst, dates, number, ofChild, reading, time, weight } from '#src/wording/fr/facts.ts';
import { french } from '#src/wording/fr/french.ts';
import { says, scene } from './samples.ts';

describe('facts in French', () => {
  it.each([
    [{ earliest: '2026-03-12', latest: '2026-03-12' }, '12 mars 2026'],
    [{ earliest: '2026-02-01', latest: '2026-02-28' }, 'février 2026'],
    [{ earliest: null, latest: '2026-08-12' }, '12 août 2026 ou avant'],
  ])('tell dates in words, so that day and month are never taken for each other: %j', (range, said) => {
    expect(dates(range)).toBe(said);
  });

  it.each([
    ['2027-03-06T01:50:00-05:00', '1h50'],
    ['2027-03-06T00:05:00-05:00', '0h05'],
    ['2027-03-06T14:00:00-05:00', '14h'],
    ['2027-03-05T23:50:00-05:00', '23h50 vendredi 5 mars'],
  ])('tell times by the clock of 24 hours: %s', (iso, said) => {
    expect(time(Date.parse(iso), scene)).toBe(said);
  });

  it('write decimals with a comma', () => {
    expect([number(5.5), weight({ kg: 6.917286 }), reading({ low: 5, high: 5.5 })]).toEqual([
      '5,5',
      '6,92 kg',
      '5 à 5,5',
    ]);
  });

  it('never hide by rounding on which side of 3 kg a weight lies', () => {
    expect(weight({ kg: 2.998 })).toBe('un peu moins de 3 kg');
    expect(weight({ kg: 3.002 })).toBe('un peu plus de 3 kg');
  });
});

describe("the child's name in French", () => {
  it.each([
    ['Robin', 'de Robin'],
    ['Alex', "d'Alex"],
    ['Éloi', "d'Éloi"],
    ['Hamid', 'de Hamid'],
    [null, 'de votre enfant'],
  ])('takes the form of "de" that it needs: %s', (child, said) => {
    expect(ofChild({ ...scene, child })).toBe(said);
  });

  it('begins a sentence with a capital where it is not known', () => {
    expect(childFirst(scene)).toBe('Votre enfant');
  });
});

describe('an accent that the alphabet of a text lacks', () => {
  function raw<K extends SayKey>(say: { readonly key: K; readonly params: Says[K] }): string {
    return french.caregiver[say.key](say.params, scene);
  }

  /** Pairs that only a circumflex tells apart: sûr/sur, dû/du, mûr/mur, tâche/tache, pêcher/pécher, jeûne/jeune, côte/cote. */
  it('never carries the meaning of a word', () => {
    const apart = /(?<!\p{L})([sdm]ûe?re?s?|dûe?s?|tâch\p{L}*|pêch\p{L}*|jeûn\p{L}*|côtes?)(?!\p{L})/iu;
    expect(says.map(raw).filter((text) => apart.test(text))).toEqual([]);
    expect(apart.test('Elle est sûre.')).toBe(true);
  });
});
