/** French phrases for facts: kinds of tube, dates, times, weights, readings, and the child's name. */
import type { TubeKind } from '#machines/facts.ts';
import type { Scene } from '../catalogue.ts';
import { factPhrases } from '../factPhrases.ts';

/** The child inside a sentence. */
export function childIn(scene: Scene): string {
  return scene.child ?? 'votre enfant';
}

/** The child at the head of a sentence. */
export function childFirst(scene: Scene): string {
  return scene.child ?? 'Votre enfant';
}

/** "de Robin", "d'Alex", "de votre enfant". An h may be mute or not, so it keeps "de", which both allow. */
export function ofChild(scene: Scene): string {
  const child = childIn(scene);
  return /^[aeiouyàéèùìò]/i.test(child) ? `d'${child}` : `de ${child}`;
}

export const tubeKindNames: Readonly<Record<TubeKind, string>> = {
  g: 'sonde G',
  gj: 'sonde GJ',
  j: 'sonde J',
  'half-out': 'sonde à moitié sortie',
  unknown: 'sonde de type inconnu',
  nose: 'sonde du nez',
};

/** "12 mars 2026 à 3 avril 2026", "1h50", "23h50 vendredi 5 mars", "6,92 kg", "5 à 5,5". */
export const { dates, time, number, weight, reading, length } = factPhrases({
  locale: 'fr',
  clock: (at) => at.toFormat(at.minute === 0 ? "H'h'" : "H'h'mm"),
  onDay: (clock, day) => `${clock} ${day}`,
  dayFormat: 'd LLLL yyyy',
  monthFormat: 'LLLL yyyy',
  weekdayFormat: 'cccc d LLLL',
  orBefore: (day) => `${day} ou avant`,
  fromTo: (first, last) => `${first} à ${last}`,
  orLess: (number) => `${number} ou moins`,
  orMore: (number) => `${number} ou plus`,
  weightUnknown: 'poids inconnu',
  under3Kg: 'moins de 3 kg',
  over3Kg: 'plus de 3 kg',
  justUnder3Kg: 'un peu moins de 3 kg',
  justOver3Kg: 'un peu plus de 3 kg',
});

/** "1 jour", "7 jours". */
export function days(count: number): string {
  return count === 1 ? '1 jour' : `${count} jours`;
}
