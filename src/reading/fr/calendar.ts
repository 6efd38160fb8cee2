/** French for the calendar: months, days, seasons, feasts, and words that place a day by today. The day comes first. */
import { casual } from 'chrono-node/fr';
import type { DayWord } from '../calendar.ts';

const months: readonly (readonly [string, number])[] = [
  ['janvier|janv', 1],
  ['fevrier|fevr|fev', 2],
  ['mars', 3],
  ['avril|avr', 4],
  ['mai', 5],
  ['juin', 6],
  ['juillet|juill|juil', 7],
  ['aout', 8],
  ['septembre|sept', 9],
  ['octobre|oct', 10],
  ['novembre|nov', 11],
  ['decembre|dec', 12],
];
export const monthName = `(?:${months.map(([name]) => name).join('|')})`;
export const weekdayName = '(?:lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche)';

function monthNumber(name: string): number {
  return months.find(([names]) => names.split('|').includes(name))?.[1] ?? 0;
}

/** The library reads a French month only behind its day; this adds "mars 2026" and "en mars". */
const french = casual.clone();
french.parsers.push({
  pattern: () => new RegExp(`\\b(${monthName})\\b\\.?(?: (?:de |en )?((?:19|20)\\d{2})\\b)?`, 'i'),
  extract: (_, match) => {
    const month = monthNumber((match[1] ?? '').toLowerCase());
    return match[2] === undefined ? { month } : { month, year: Number(match[2]) };
  },
});

/** French writes the day first everywhere. */
export const monthFirst = [french];
export const dayFirst = [french];

/** What is worth handing to the calendar library at all. */
export const calendarLike = new RegExp(`\\b${monthName}\\b|\\b${weekdayName}\\b|\\d[/.-]\\d`);

/** "Mai" as a slip of "mais" is no month. */
/** "Un mardi" is some Tuesday. */
export const notMonths =
  /\bun (?:lundi|mardi|mercredi|jeudi|vendredi|samedi|dimanche)\b(?! (?:derniere?|passe|\d|de (?:la )?semaine))|\bmai (?:elle|il|je|on|ca|pas|cest|la|le|jai|y a|oui|non|sais)\b/g;

/** "La semaine dernière" counts to yesterday, because weeks begin on different days for different people. */
export const dayWords: readonly DayWord[] = [
  { pattern: /\bavant[ -]hier(?: (?:soir|matin))?\b/g, back: [2, 2] },
  { pattern: /\bhier(?: (?:soir|matin|apres[ -]midi|midi))?\b|\b(?:la )?nuit (?:derniere|passee)\b/g, back: [1, 1] },
  { pattern: /\b(?:aujourdhui|ce (?:matin|soir|midi)|cette nuit|cet apres[ -]midi|a le instant)\b/g, back: [0, 0] },
  { pattern: /\bl? ?autre jour\b/g, back: [7, 1] },
  { pattern: /\bsemaine avant la (?:derniere|precedente)\b/g, back: [20, 7] },
  {
    pattern:
      /\b(?:la )?semaine (?:derniere|passee|precedente|d avant|de avant)\b|\b(?:fin de semaine|week[ -]?end|we) (?:dernier|derniere|passe|passee)\b/g,
    back: [13, 1],
  },
  { pattern: /\bcette (?:semaine|fin de semaine)\b|\bce week[ -]?end\b/g, back: [7, 0] },
];

/** Whole months or years by today: how many back. */
export const periodWords: readonly {
  readonly pattern: RegExp;
  readonly unit: 'month' | 'year';
  readonly back: number;
}[] = [
  { pattern: /\b(?:le )?mois (?:dernier|passe|precedent|d avant|de avant)\b/g, unit: 'month', back: 1 },
  { pattern: /\b(?:ce|debut du|courant du) mois(?:[ -]ci)?\b/g, unit: 'month', back: 0 },
  {
    pattern: /\b(?:le |l )?(?:an|annee) (?:derniere?|passee?|precedente)\b/g,
    unit: 'year',
    back: 1,
  },
  { pattern: /\bcette annee\b/g, unit: 'year', back: 0 },
];

const seasonLead = '(?:au |en |a la |le |l |cet |cette |ce |de le |depuis le |fin |debut )*';
const seasonTail = '(?: (?:derniere?|passee?|de))?(?: (?:le )?((?:19|20)\\d{2}))?';

/** Seasons of the north by the day they begin, the earliest date of the equinox or solstice; each lasts three months. */
export const seasons: readonly { readonly pattern: RegExp; readonly month: number; readonly day: number }[] = [
  { pattern: new RegExp(`\\b${seasonLead}printemps${seasonTail}\\b`, 'g'), month: 3, day: 19 },
  {
    pattern:
      /\b(?:cet |le |en |depuis le |debut |fin de le )ete(?: derniere?| passe)?(?: ((?:19|20)\d{2}))?(?! (?:posee?|mise?|operee?|faite?|changee?|placee?|dans|a|en|la|le)\b)/g,
    month: 6,
    day: 20,
  },
  { pattern: new RegExp(`\\b${seasonLead}automne${seasonTail}\\b`, 'g'), month: 9, day: 21 },
  { pattern: new RegExp(`\\b${seasonLead}hiver${seasonTail}\\b`, 'g'), month: 12, day: 20 },
];

/** Feasts with the days their date can fall on, `[month, day]` first and last. */
export const feasts: readonly {
  readonly pattern: RegExp;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}[] = [
  { pattern: /\b(?:veille de |reveillon de )?noel\b/g, from: [12, 24], to: [12, 25] },
  { pattern: /\b(?:jour de le an|nouvel an|saint sylvestre|premier de le an)\b/g, from: [12, 31], to: [1, 1] },
  { pattern: /\bpaques\b/g, from: [3, 22], to: [4, 25] },
  { pattern: /\bhalloween\b/g, from: [10, 31], to: [10, 31] },
  { pattern: /\b(?:la )?toussaint\b/g, from: [11, 1], to: [11, 1] },
  { pattern: /\b(?:st|saint)[ -]valentin\b/g, from: [2, 14], to: [2, 14] },
  { pattern: /\b(?:st|saint)[ -]jean\b/g, from: [6, 24], to: [6, 24] },
  { pattern: /\bfete des meres\b/g, from: [5, 8], to: [6, 7] },
  { pattern: /\b(?:la )?rentree(?: scolaire| des classes)\b/g, from: [8, 25], to: [9, 7] },
];

export const before = /\b(?:(?<!juste |un peu )avant|d ici|anterieure? a)(?: (?:le|la|les|l))?\s*$/;
export const rightBefore = /\b(?:juste|un peu|peu) avant(?: (?:le|la|les|l))?\s*$/;
export const after = /\b(?:apres|a partir d[eu]|suite a|passe)(?: (?:le|la|les|l))?\s*$/;
export const around =
  /\b(?:vers|environ|autour d[eu]|aux alentours d[eu]|alentours|courant|genre|peut etre|je crois|je pense|crois|pense|a peu pres|quelque part|probablement|il me semble|me semble|aux environs d[eu]|dans les)(?: (?:cetait|cest|en|au|le|la|les|que|fin|debut|mi))*\s*$/;
export const next = /\b(?:prochaine?|demain|a venir|prevue?|programmee?|qui vient)\b/;
/** "Dans 2 semaines" is to come; "dans les 2 dernières semaines" is not. */
export const comingSpan = /\b(?:dans|d ici)(?: environ)?\s*$/;
/** "Ca fait 2 semaines aujourd'hui" says no more than "2 semaines". */
export const todayWords = /\b(?:aujourdhui|ce soir|ce matin|cette semaine|cette nuit)\b/g;
/** "La semaine après Noël": how many days after it that is. */
export const daysAfter: readonly (readonly [RegExp, number])[] = [
  [/\b(?:lendemain d[eu]|jour apres)(?: le| la| l)?\s*$/, 1],
  [/\bsemaine (?:apres|suivant)(?: le| la| l)?\s*$/, 13],
  [/\bmois (?:apres|suivant)(?: le| la| l)?\s*$/, 61],
];
/** "L'hiver d'avant" was a year before. */
export const beforeLast = /^ (?:de |d )avant\b(?! (?:le|la|les)\b)/;
/** A day of the last month: "le 17 du mois dernier". */
export const dayOfLastMonth = /\b(\d{1,2}) du mois (?:dernier|passe)\b/g;
/** A month with its year. */
export const monthOfYear = new RegExp(`\\b(${monthName}),? (?:\\w{1,3} )?(?:19|20)\\d{2}\\b`);
/** A year before its month. */
export const yearFirst = new RegExp(`\\b((?:19|20)\\d{2})( +(?:en |de )*)(${monthName})\\b(?! ?\\d)`, 'g');
/** Long ago without a number. */
export const yearsAgo = /\b(?:y a|depuis|fait) (?:des|plein de|pas mal de|bien des) annees\b|\bdes annees\b/;
export const longAgo =
  /\b(?:longtemps|lgtps|lontemps|une eternite|un bail|bout de temps|un moment|certain temps|recemment|recent|des mois|des semaines|toujours|toute sa vie|pas tres longtemps)\b/;

/** A month with "cette année" or "l'an dernier" beside it. */
const yearPhrase = '(?:de |en )?(?:cette annee|(?:le |l )?(?:an|annee) (?:derniere?|passee?))';
export const monthWithYearWord = new RegExp(
  `\\b${monthName}\\b.{0,20}\\b${yearPhrase}\\b|\\b${yearPhrase}\\b.{0,12}\\b${monthName}\\b`,
);
export const yearWord = new RegExp(`\\b${yearPhrase}\\b`, 'g');
export const lastYear = /\b(?:derniere?|passee?)\b/;
/** Every month name is read by the library. */
export const shortMonths: readonly (readonly [RegExp, number])[] = [];
/** A year alone; beside a month it belongs to the month. */
export const bareYear = /(?<![\d/.-])((?:19|20)\d{2})(?![\d/.:-])/g;
