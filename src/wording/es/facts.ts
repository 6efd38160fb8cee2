/** Spanish phrases for facts: kinds of tube, dates, times, weights, readings, and the child's name. */
import type { TubeKind } from '#machines/facts.ts';
import type { Scene } from '../catalogue.ts';
import { factPhrases } from '../factPhrases.ts';

/** The child inside a sentence that cannot do without; most can, since a Spanish verb needs no subject. */
export function childIn(scene: Scene): string {
  return scene.child ?? 'su niño o niña';
}

/** "If Robin gets worse", or without the name. */
export function ifWorse(scene: Scene): string {
  return scene.child === null ? 'Si empeora' : `Si ${scene.child} empeora`;
}

export const tubeKindNames: Readonly<Record<TubeKind, string>> = {
  g: 'sonda G',
  gj: 'sonda GJ',
  j: 'sonda J',
  'half-out': 'sonda a medias',
  unknown: 'sonda de tipo no conocido',
  nose: 'sonda de la nariz',
};

/**
 * "12 mar 2026 a 3 abr 2026", "la 1:50 am", "las 11:50 pm del vie 5 mar", "6.92 kg", "5 a 5.5". The locale is that of
 * Spanish in the United States: a decimal point, as the strips are printed, and the clock of twelve hours.
 */
export const { dates, time, number, weight, reading, length } = factPhrases({
  locale: 'es-US',
  clock: (at) => `${at.hour % 12 === 1 ? 'la' : 'las'} ${at.toFormat('h:mm')} ${at.hour < 12 ? 'am' : 'pm'}`,
  onDay: (clock, day) => `${clock} del ${day}`,
  dayFormat: 'd LLL yyyy',
  monthFormat: 'LLL yyyy',
  weekdayFormat: 'ccc d LLL',
  orBefore: (day) => `${day} o antes`,
  fromTo: (first, last) => `${first} a ${last}`,
  orLess: (number) => `${number} o menos`,
  orMore: (number) => `${number} o más`,
  weightUnknown: 'peso no conocido',
  under3Kg: 'menos de 3 kg',
  over3Kg: 'más de 3 kg',
  justUnder3Kg: 'poco menos de 3 kg',
  justOver3Kg: 'poco más de 3 kg',
});

/** "1 día", "7 días". */
export function days(count: number): string {
  return count === 1 ? '1 día' : `${count} días`;
}

/** "1 día más", "7 días más". */
export function moreDays(count: number): string {
  return `${days(count)} más`;
}
