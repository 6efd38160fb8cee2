/** Reads a body temperature: a fever, nearly one, or none. */
import type { Said } from './said.ts';

/** Fever from 38.0 °C or 100.4 °F: common practice (from memory, also NICE NG143); just below it is asked about. */
const celsius = { fever: 38, near: 37.5, least: 33, most: 43 };
const fahrenheit = { fever: 100.4, near: 99.5, least: 92, most: 109 };

/** The questions at which a temperature may be written as a number alone. */
const expectsTemperature = new Set(['unwell', 'after-in', 'next-day', 'first-feed']);

function verdict(degrees: number): 'sure' | 'near' | 'denied' | null {
  for (const scale of [celsius, fahrenheit]) {
    if (degrees < scale.least || degrees > scale.most) continue;
    if (degrees >= scale.fever) return 'sure';
    return degrees >= scale.near ? 'near' : 'denied';
  }
  return null;
}

/** The highest temperature told counts; null where none is. */
export function feverSaid(said: Said): 'sure' | 'near' | 'denied' | null {
  const { named, withUnit, bare } = said.words.fever;
  const patterns =
    said.open.asking !== null && expectsTemperature.has(said.open.asking) ? [named, withUnit, bare] : [named, withUnit];
  const told = patterns.flatMap((pattern) =>
    [...said.plain.matchAll(pattern)].map((match) => verdict(Number(match[1]))),
  );
  return told.includes('sure') ? 'sure' : told.includes('near') ? 'near' : told.includes('denied') ? 'denied' : null;
}
