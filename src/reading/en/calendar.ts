/** English for the calendar: months, days, seasons, feasts, and words that place a day by today. */
import { casual, GB } from 'chrono-node/en';
import type { DayWord } from '../calendar.ts';

/** The calendar library, for sites that write the month first and for those that write the day first. */
export const monthFirst = [casual];
export const dayFirst = [GB];

export const monthName =
  '(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept|sep|oct|nov|dec)';
export const weekdayName = '(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)';

/** What is worth handing to the calendar library at all. */
export const calendarLike = new RegExp(`\\b${monthName}\\b|\\b${weekdayName}\\b|\\d[/.-]\\d`);

/** "May" and "march" as plain verbs. */
export const notMonths =
  /\b(?:it|she|he|we|i|that|this|they|there|which) (?:may|march)\b|\bmay (?:have|be|not|need|still|also|or may|i)\b/g;

/** "Last week" counts to yesterday, because weeks begin on different days for different people. */
export const dayWords: readonly DayWord[] = [
  { pattern: /\b(?:the )?day before yesterday\b/g, back: [2, 2] },
  { pattern: /\byesterday\b|\blast night\b/g, back: [1, 1] },
  { pattern: /\b(?:today|tonight|this (?:morning|afternoon|evening)|just now|right now)\b/g, back: [0, 0] },
  { pattern: /\bthe other day\b/g, back: [7, 1] },
  { pattern: /\b(?:the )?week before last\b/g, back: [20, 7] },
  { pattern: /\b(?:last|past|previous) week(?:end)?\b/g, back: [13, 1] },
  { pattern: /\bthis (?:past )?week(?:end)?\b|\bearlier this week\b/g, back: [7, 0] },
];

/** Whole months or years by today: how many back. */
export const periodWords: readonly {
  readonly pattern: RegExp;
  readonly unit: 'month' | 'year';
  readonly back: number;
}[] = [
  { pattern: /\b(?:the )?month before last\b/g, unit: 'month', back: 2 },
  { pattern: /\blast month\b/g, unit: 'month', back: 1 },
  { pattern: /\bthis month\b/g, unit: 'month', back: 0 },
  { pattern: /\b(?:the )?year before last\b/g, unit: 'year', back: 2 },
  { pattern: /\blast year\b/g, unit: 'year', back: 1 },
  { pattern: /\b(?:this|earlier this) year\b/g, unit: 'year', back: 0 },
];

/** Seasons of the north by the day they begin, the earliest date of the equinox or solstice; each lasts three months. */
export const seasons: readonly { readonly pattern: RegExp; readonly month: number; readonly day: number }[] = [
  {
    pattern: /\b(?:in the |last |this |this past |the |in )?spring(?:time)?(?: of)?(?: ((?:19|20)\d{2}))?\b/g,
    month: 3,
    day: 19,
  },
  {
    pattern: /\b(?:in the |last |this |this past |the |in )?summer(?:time)?(?: of)?(?: ((?:19|20)\d{2}))?\b/g,
    month: 6,
    day: 20,
  },
  {
    pattern:
      /\b(?:in the |last |this past |in |the |early |late )(?:fall|autumn)(?: of)?(?: ((?:19|20)\d{2}))?\b|\b(?:fall|autumn) (?:of )?((?:19|20)\d{2})\b|\bautumn\b/g,
    month: 9,
    day: 21,
  },
  {
    pattern: /\b(?:in the |last |this |this past |the |in )?winter(?:time)?(?: of)?(?: ((?:19|20)\d{2}))?\b/g,
    month: 12,
    day: 20,
  },
];

/** Feasts with the days their date can fall on, `[month, day]` first and last. */
export const feasts: readonly {
  readonly pattern: RegExp;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}[] = [
  { pattern: /\b(?:christmas|xmas|x-mas) eve\b/g, from: [12, 24], to: [12, 24] },
  { pattern: /\b(?:christmas|xmas|x-mas)(?: day)?\b/g, from: [12, 24], to: [12, 25] },
  { pattern: /\bboxing day\b/g, from: [12, 26], to: [12, 26] },
  { pattern: /\bnew years? eve\b/g, from: [12, 31], to: [12, 31] },
  { pattern: /\bnew years? day\b/g, from: [1, 1], to: [1, 1] },
  { pattern: /\bnew years?\b/g, from: [12, 31], to: [1, 1] },
  { pattern: /\bthanksgiving\b/g, from: [11, 22], to: [11, 28] },
  { pattern: /\bhalloween\b/g, from: [10, 31], to: [10, 31] },
  { pattern: /\beaster\b/g, from: [3, 22], to: [4, 25] },
  { pattern: /\bvalentines?(?: day)?\b/g, from: [2, 14], to: [2, 14] },
  { pattern: /\b(?:4th|fourth) of july\b/g, from: [7, 4], to: [7, 4] },
  { pattern: /\blabor day\b/g, from: [9, 1], to: [9, 7] },
  { pattern: /\bmemorial day\b/g, from: [5, 25], to: [5, 31] },
  { pattern: /\bmothers day\b/g, from: [5, 8], to: [5, 14] },
];

export const before = /\b(?:(?<!right |just |shortly )before|prior to|by|sometime before)(?: the)?\s*$/;
export const rightBefore = /\b(?:right|just|shortly|a (?:little|bit)) before(?: the)?\s*$/;
export const after = /\b(?:after|sometime after|a little after|right after|following)(?: the)?\s*$/;
export const around =
  /\b(?:around|about|near|like|maybe|sometime around|roughly|close to|i think|probably|somewhere around|circa)(?: (?:it was|in|on|the|its))*\s*$/;
export const next =
  /\b(?:next(?! (?:day|morning|to|thing)\b)|coming(?! (?:up )?(?:on|to|up for)\b)|upcoming|tomorrow|scheduled)\b/;
/** "In two weeks" is to come; "in the last two weeks" is not. */
export const comingSpan = /\bin(?: about)?\s*$/;
/** "Two weeks ago today" says no more than "two weeks ago". */
export const todayWords =
  /\b(?:today|tonight|this week)\b|(?<=\bago,? )(?:yesterday|(?:this |last |come |next )?(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b|\bon (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/g;
/** "The week after Christmas": how many days after it that is. */
export const daysAfter: readonly (readonly [RegExp, number])[] = [
  [/\bday after(?: the)?\s*$/, 1],
  [/\bweek after(?: the)?\s*$/, 13],
  [/\bmonth after(?: the)?\s*$/, 61],
];
/** "Winter before last" was a year before. */
export const beforeLast = /^ before last\b/;
/** A day of the last month: "the 17th of last month". */
export const dayOfLastMonth = /\b(\d{1,2})(?:st|nd|rd|th)? (?:of )?(?:the )?last month\b/g;
/** A month with its year. */
export const monthOfYear = new RegExp(`\\b(${monthName}),? (?:\\w{1,3} )?(?:19|20)\\d{2}\\b`);
/** A year before its month. */
export const yearFirst = new RegExp(`\\b((?:19|20)\\d{2})( +(?:in |the )*)(${monthName})\\b(?! ?\\d)`, 'g');
/** Long ago without a number. */
export const yearsAgo = /\b(?:years (?:ago|now|back)|for years)\b/;
export const longAgo =
  /\b(?:long time|ages|forever|while (?:ago|back|now)|months ago|weeks ago|recently|not long ago|not that long|always|whole life|all (?:her|his) life)\b/;

/** A month or a feast with "this year" or "last year" beside it. */
const monthOrFeast = `(?:${monthName}|christmas|xmas|new years?|thanksgiving|halloween|easter|valentines?|day)`;
export const monthWithYearWord = new RegExp(
  `\\b${monthOrFeast}\\b.{0,20}\\b(?:this|last) year\\b|\\b(?:this|last) year\\b.{0,12}\\b${monthOrFeast}\\b`,
);
export const yearWord = /\b(?:of |in )?(?:this|last) year\b/g;
export const lastYear = /\blast\b/;
/** Month names so short that the calendar library wants more beside them. */
export const shortMonths: readonly (readonly [RegExp, number])[] = [
  [/\bjan\b/g, 1],
  [/\bfeb\b/g, 2],
  [/\b(?:in|since|last|of) mar\b|^mar$/g, 3],
  [/\bapr\b/g, 4],
  [/\bjun\b/g, 6],
  [/\bjul\b/g, 7],
  [/\baug\b/g, 8],
  [/\bsept?\b/g, 9],
  [/\boct\b/g, 10],
  [/\bnov\b/g, 11],
  [/\b(?:in|since|last|of) dec\b|^dec$/g, 12],
];
/** A year alone; beside a month it belongs to the month. */
export const bareYear = /(?<![\d/.-])((?:19|20)\d{2})(?![\d/.:-])/g;
