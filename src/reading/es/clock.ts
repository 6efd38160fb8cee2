/** Spanish for clock times and for parts of the day. */
import type { ClockForm, DayPart } from '../clock.ts';

const halfSaid =
  '(?: ?([ap])\\.? ?m\\.?(?![a-z])| (?:de|en|por) la (manana|madrugada|tarde|noche)| (?:hoy )?(?:esta|ayer en la|ayer por la) (manana|madrugada|tarde|noche))';
const half = `${halfSaid}?`;

function halfOf(match: RegExpMatchArray, from: number): string | undefined {
  const named = match[from + 1] ?? match[from + 2];
  if (match[from]) return match[from];
  if (named === undefined) return undefined;
  const hour = Number(match[1]);
  if (named === 'noche') return hour === 12 || hour < 5 ? 'a' : 'p';
  return named === 'tarde' ? 'p' : 'a';
}

/** "Entre 11 y 1 de la tarde": the first hour of a stretch that goes over twelve lies in the other half. */
function halfBefore(match: RegExpMatchArray): string | undefined {
  const half = halfOf(match, 4);
  const named = match[5] ?? match[6];
  const isOver = Number(match[1]) % 12 > Number(match[3]) % 12;
  if (!isOver || named === 'noche' || (named === 'manana' && match[3] === '12')) return half;
  return half?.startsWith('p') ? 'a' : 'p';
}

const units =
  '-?(?:min|hora|hr|hs\\b|dia|sem|mes|ano|seg|kg|kilo|libra|lb|ml|cc|veces|vez|intento|x\\b|%|pulgada|tira|(?:nin|nen|hij|sobrin|niet|gemel|melliz|herman|muchach|criatur)\\w*|chic[oa]s|bebes|sondas?|tubos|botones|de (?:enero|feb|mar|abr|may|jun|jul|ago|sep|oct|nov|dic)|o \\d+ (?:min|hora)|a \\d+ (?:min|hora))';

/** Longest forms first; what one has read the next no longer sees. */
export const clockForms: readonly ClockForm[] = [
  // "Doce y media" alone: the half and the quarter are in digits by now.
  {
    pattern: new RegExp(`^(?:(?:como|fue|eran|tipo|alrededor de) )*(1[0-2]|[1-9])\\.(5|25)${half}$`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: m[2] === '5' ? 30 : 15, half: halfOf(m, 3) }),
  },
  { pattern: /\b(?:las 12 de la )?(?:medianoche|media noche)\b/g, read: () => ({ hour: 0, minute: 0 }) },
  {
    pattern: /\b(?:las 12 del )?(?:mediodia|medio dia)\b|\b12 del dia\b/g,
    read: () => ({ hour: 12, minute: 0, half: 'p' }),
  },
  // "Entre 10 y 11 de la noche": what is said of the later end goes for the earlier one.
  {
    pattern: new RegExp(
      `\\b(?:entre|de|desde|a|como a)(?: las?)? (1[0-2]|[1-9])(?::([0-5]\\d))? (?:y|a|o|u)(?: a)?(?: las?)? (1[0-2]|[1-9])(?::[0-5]\\d)?${halfSaid}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2] ?? 0), half: halfBefore(m) }),
  },
  {
    pattern: new RegExp(
      `\\b(\\d{1,2})[:.]([0-5]\\d)(?!\\d)(?! ?(?:kg|kilos?|libras?|lbs?|ph|horas? (?!de)|hrs? (?!de)|min))${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]), half: halfOf(m, 3) }),
  },
  {
    pattern: /\b(\d{1,2}) ?([ap])\.? ?m\b\.?/g,
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: m[2] }),
  },
  {
    pattern: /\b(\d{1,2})( en punto)?() de la (manana|madrugada|tarde|noche)\b/g,
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 3) }),
  },
  {
    pattern: /^(?:(?:como|fue|eran|tipo) )*(1[0-2]|[1-9]) (?:y|con) (5|10|20|25|35|40|50|55)$/g,
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }),
  },
  {
    pattern: new RegExp(`^(?:(?:como|fue|creo|seria|ahi|por) )*entre (1[0-2]|[1-9]) y (?:1[0-2]|[1-9])${half}$`, 'g'),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
  { pattern: /^([01]?\d|2[0-3])([0-5]\d)$/g, read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }) },
  {
    pattern: /\b(?:a )?las ([01]?\d|2[0-3])([0-5]\d)\b(?! ?(?:g|gramos?|ml))/g,
    read: (m) => ({ hour: Number(m[1]), minute: Number(m[2]) }),
  },
  {
    pattern: new RegExp(
      `\\b(?:a las?|las|a eso de(?: las?)?|como a las?|tipo|sobre las?|desde las?|hasta las?|entre las?|y las?|o las?|eran las?|anoche a las?)(?: como)? (\\d{1,2})(?![\\d.:/])(?! ?${units})(?: en punto| y algo| y pico)?${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
  {
    pattern: new RegExp(
      `(?<=\\blas? \\d{1,2}(?::\\d\\d)? +(?:o|y|u) )(\\d{1,2})(?![\\d.:/])(?! ?${units})${half}`,
      'g',
    ),
    read: (m) => ({ hour: Number(m[1]), minute: 0, half: halfOf(m, 2) }),
  },
];

/** Parts of the day with the hour they begin (common usage); the earlier end counts. `daysAgo` is by today. */
export const dayParts: readonly DayPart[] = [
  { pattern: /\b(?:antier|anteayer|antes de ayer|antenoche)\b/, hour: 0, daysAgo: 2 },
  { pattern: /\bayer (?:en|por|a) la manana\b|\bayer temprano\b/, hour: 6, daysAgo: 1 },
  { pattern: /\bayer (?:en|por|a) la tarde\b/, hour: 12, daysAgo: 1 },
  { pattern: /\banoche\b|\bayer (?:en|por|a) la noche\b/, hour: 18, daysAgo: 1 },
  { pattern: /\bayer\b/, hour: 0, daysAgo: 1 },
  { pattern: /\b(?:esta|hoy (?:en|por) la) tarde\b/, hour: 12, daysAgo: 0 },
  { pattern: /\b(?:esta|hoy (?:en|por) la) noche\b/, hour: 17, daysAgo: 0 },
  {
    pattern: /\b(?:esta (?:manana|madrugada)|(?:hoy )?(?:en|por) la (?:manana|madrugada)|hoy|de madrugada)\b/,
    hour: 0,
    daysAgo: 0,
  },
];

export const lastNight = /\banoche\b|\bayer (?:en|por|a) la noche\b/;
export const yesterday = /\bayer\b/;
export const beforeYesterday = /\b(?:antier|anteayer|antes de ayer|antenoche|anteanoche)\b/;
export const justNowFirm =
  /^apenas(?: ahora)?$|\b(?:justo ahora|ahora ahora|recien(?:cito|tito)?(?! nacid)|acab[ao]s? de (?:salir|caer|arrancar|jalar|sacar|zafar|pasar|quitar|soltar|desprender)\w*|hace (?:un |unos )?(?:momento|momentito|instante|segunditos?|segundos?|nada|minutito)|en este (?:momento|instante)|ahora)\b(?! (?:la|el|las|es|tiene|tenemos|usa|usamos|con|una|un|trae|ya) )/;
export const justNow =
  /^apenas(?: ahora)?$|\b(?:justo ahora|recien(?:cito|tito)?(?! nacid)|acab[ao]s? de (?!llegar|levant|despert|entrar|enter|regres|volver|encontr|ver\b)\w+|hace (?:un |unos )?(?:momento|momentito|instante|segunditos?|segundos?|nada|minutito)|en este (?:momento|instante)|ahora)\b(?! (?:la|el|las|es|tiene|tenemos|usa|usamos|con|una|un|trae|ya) )/;
/** Some time ago, nobody knows how long. */
export const aWhile = /\brat(?:o|it[oa]s?|otes?|icos?)\b/;
/** An hour is said with its article: "a las cinco". */
export const hourOrMinutes = /(?!)/;
/** "Antes de medianoche" has no earlier end. */
export const beforeTime =
  /\bantes de (?:como )?(?:las? |la )?(?:medianoche|media noche|mediodia|\d{1,2}(?!\d| ?(?:m|hora|hr|seg|dia)))/;
/** A number alone. */
export const bareTime = /^(?:(?:como|tipo|eso|de|las|la|a|unas|unos|fue|eran|creo|casi) )*(\d{1,2})$/;
