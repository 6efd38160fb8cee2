/** Spanish for the calendar: months, days, seasons, feasts, and words that place a day by today. */
import { Chrono, casual, createCasualConfiguration } from 'chrono-node/es';
import type { DayWord } from '../calendar.ts';

/** Spanish writes the day first; where the site writes the month first, either order may be meant. */
export const monthFirst = [casual, new Chrono(createCasualConfiguration(false))];
export const dayFirst = [casual];

export const monthName =
  '(?:enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|setiembre|octubre|noviembre|diciembre|ene|feb|mar|abr|may|jun|jul|ago|sept|sep|oct|nov|dic)';
export const weekdayName = '(?:lunes|martes|miercoles|jueves|viernes|sabado|domingo)';

/** What is worth handing to the calendar library at all. */
export const calendarLike = new RegExp(`\\b${monthName}\\b|\\b${weekdayName}\\b|\\d[/.-]\\d`);

/** No month is a verb. */
export const notMonths = /(?!)/g;

/** "La semana pasada" counts to yesterday, because weeks begin on different days for different people. */
export const dayWords: readonly DayWord[] = [
  { pattern: /\b(?:antier|anteayer|antes de ayer|antenoche)\b/g, back: [2, 2] },
  { pattern: /\bayer\b|\banoche\b/g, back: [1, 1] },
  {
    pattern:
      /\b(?:hoy|esta (?:manana|tarde|noche|madrugada)|(?<=^|\b(?:pusieron|pusimos|operaron|hicieron|colocaron|puso|opero)(?: \w+){0,3} )ahora)\b(?! ya no\b)/g,
    back: [0, 0],
  },
  { pattern: /\bel otro dia\b/g, back: [7, 1] },
  { pattern: /\b(?:la )?(?:semana antepasada|antepasada semana)\b/g, back: [20, 7] },
  { pattern: /\b(?:la )?(?:semana pasada|pasada semana|fin de semana pasado|pasado fin de semana)\b/g, back: [13, 1] },
  { pattern: /\best[ae] (?:semana|fin de semana)\b/g, back: [7, 0] },
];

/** Whole months or years by today: how many back. */
export const periodWords: readonly {
  readonly pattern: RegExp;
  readonly unit: 'month' | 'year';
  readonly back: number;
}[] = [
  { pattern: /\b(?:el )?(?:mes antepasado|antepasado mes)\b/g, unit: 'month', back: 2 },
  { pattern: /\b(?:el )?(?:mes pasado|pasado mes)\b/g, unit: 'month', back: 1 },
  { pattern: /\beste mes\b/g, unit: 'month', back: 0 },
  { pattern: /\b(?:el )?(?:ano antepasado|antepasado ano)\b/g, unit: 'year', back: 2 },
  { pattern: /\b(?:el )?(?:ano pasado|pasado ano)\b/g, unit: 'year', back: 1 },
  { pattern: /\beste (?:mismo )?ano\b/g, unit: 'year', back: 0 },
];

const season = (name: string) =>
  new RegExp(
    `\\b(?:en |el |la |este |esta |del? |por )*${name}(?: pasad[oa])?(?: de(?:l ano)?)?(?: ((?:19|20)\\d{2}))?\\b`,
    'g',
  );

/** Seasons of the north by the day they begin, the earliest date of the equinox or solstice; each lasts three months. */
export const seasons: readonly { readonly pattern: RegExp; readonly month: number; readonly day: number }[] = [
  { pattern: season('primavera'), month: 3, day: 19 },
  { pattern: season('verano'), month: 6, day: 20 },
  { pattern: season('otono'), month: 9, day: 21 },
  { pattern: season('invierno'), month: 12, day: 20 },
];

/** Feasts with the days their date can fall on, `[month, day]` first and last. */
export const feasts: readonly {
  readonly pattern: RegExp;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}[] = [
  { pattern: /\b(?:navidad(?:es)?|nochebuena|noche buena)\b/g, from: [12, 24], to: [12, 25] },
  { pattern: /\b(?:ano nuevo|fin de ano|nochevieja)\b/g, from: [12, 31], to: [12, 31] },
  { pattern: /\b(?:dia de )?(?:los )?reyes(?: magos)?\b/g, from: [1, 6], to: [1, 6] },
  { pattern: /\b(?:semana santa|pascua|viernes santo)\b/g, from: [3, 15], to: [4, 25] },
  { pattern: /\b(?:dia de (?:los )?muertos|todos (?:los )?santos)\b/g, from: [11, 1], to: [11, 2] },
  { pattern: /\b(?:accion de gracias|thanksgiving)\b/g, from: [11, 22], to: [11, 28] },
  { pattern: /\b(?:halloween|dia de brujas)\b/g, from: [10, 31], to: [10, 31] },
  { pattern: /\b(?:san valentin|dia del amor(?: y la amistad)?)\b/g, from: [2, 14], to: [2, 14] },
  { pattern: /\bdia de las? madres?\b/g, from: [5, 8], to: [5, 14] },
  { pattern: /\b4 de julio\b/g, from: [7, 4], to: [7, 4] },
];

export const before = /(?<!\b(?:justo|poco|poquito|apenas) )\bantes de(?:l)?(?: la| el| los| las)?\s*$/;
export const rightBefore = /\b(?:justo|poco|poquito|apenas) antes de(?:l)?(?: la| el| los| las)?\s*$/;
export const after = /\b(?:despues de(?:l)?|luego de(?:l)?|pasad[oa]s?|desde(?: antes)? de)(?: la| el| los| las)?\s*$/;
export const around =
  /\b(?:como|cerca de|alrededor de|por|por ahi de|por ahi|mas o menos|masomenos|creo|aproximadamente|hacia|a (?:principios|mediados|finales|fines|inicios) de|quizas?|tal vez|a lo mejor|entre)(?: (?:que|fue|en|por|de|el|la|los|para|era))*\s*$/;
export const next =
  /\b(?:proxim[oa]s?|que viene|pasado manana|(?<!\b(?:cirugia|operacion|cesarea|intervencion|procedimiento) )programad[oa])\b|(?<!\b(?:esta|la|ayer|misma|muy de) )\bmanana\b/;
/** "En 2 semanas" is to come. */
export const comingSpan = /\b(?:en|dentro de)(?: unos| unas| como)?\s*$/;
/** "Hace 2 semanas hoy" says no more than "hace 2 semanas". */
export const todayWords = /\b(?:hoy|esta noche|esta semana|ahora)\b/g;
/** "La semana despues de Navidad": how many days after it that is. */
export const daysAfter: readonly (readonly [RegExp, number])[] = [
  [/\bdia (?:despues|siguiente) (?:de(?:l)?|a)(?: la| el)?\s*$/, 1],
  [/\bsemana (?:despues|siguiente) (?:de(?:l)?|a)(?: la| el)?\s*$/, 13],
  [/\bmes (?:despues|siguiente) (?:de(?:l)?|a)(?: la| el)?\s*$/, 61],
];
/** "El invierno antepasado" was a year before. */
export const beforeLast = /^ antepasad[oa]\b/;
/** A day of the last month: "el 17 del mes pasado". */
export const dayOfLastMonth = /\b(\d{1,2}) del? mes pasado\b/g;
/** A month with its year. */
export const monthOfYear = new RegExp(`\\b(${monthName}),? (?:\\w{1,3} )?(?:19|20)\\d{2}\\b`);
/** A year before its month. */
export const yearFirst = new RegExp(`\\b((?:19|20)\\d{2})( +(?:en |de |por )*)(${monthName})\\b(?! ?\\d)`, 'g');
/** Long ago without a number. */
export const yearsAgo =
  /\b(?:hace (?:ya )?(?:muchos? |bastantes |varios )?anos|(?:desde hace|por|muchos) anos|anos atras)\b/;
export const longAgo =
  /\b(?:hace (?:ya )?(?:mucho|muchisimo|tiempo|un tiempo|rato|poco|meses|semanas|bastante)|mucho tiempo|tiempo|siempre|toda (?:su|la) vida|de toda la vida|un chingo|un chorro|un monton|un buen|recien|recientemente|muchos meses)\b/;

/** A month or feast with "este año" or "el año pasado" beside it. */
const feast =
  '(?:navidad(?:es)?|nochebuena|reyes|semana santa|pascua|muertos|halloween|accion de gracias|san valentin|madres?|primavera|verano|otono|invierno)';
export const monthWithYearWord = new RegExp(
  `\\b(?:${monthName}|${feast})\\b.{0,20}\\b(?:este ano|ano pasado|pasado ano|ano presente)\\b|\\b(?:este ano|ano pasado|pasado ano)\\b.{0,12}\\b${monthName}\\b`,
);
export const yearWord = /\b(?:(?:de|del|en|el) )*(?:este (?:mismo )?ano|ano pasado|pasado ano)\b/g;
export const lastYear = /pasado/;
/** Month names so short that the calendar library wants more beside them. */
export const shortMonths: readonly (readonly [RegExp, number])[] = [
  [/\b(?:ene|enero)\b/g, 1],
  [/\b(?:feb|febrero)\b/g, 2],
  [/\bmarzo\b|\b(?:en|desde|de) mar\b|^mar$/g, 3],
  [/\b(?:abr|abril)\b/g, 4],
  [/\bmayo\b|\b(?:en|desde|de) may\b|^may$/g, 5],
  [/\b(?:jun|junio)\b/g, 6],
  [/\b(?:jul|julio)\b/g, 7],
  [/\bagosto\b|\b(?:en|desde|de) ago\b|^ago$/g, 8],
  [/\b(?:sept?|septiembre|setiembre)\b/g, 9],
  [/\b(?:oct|octubre)\b/g, 10],
  [/\b(?:nov|noviembre)\b/g, 11],
  [/\b(?:dic|diciembre)\b/g, 12],
];
/** A year alone; beside a month it belongs to the month. */
export const bareYear = /(?<![\d/.-])((?:19|20)\d{2})(?![\d/.:-])/g;
