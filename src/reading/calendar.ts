/** Places calendar words on the calendar: dates, months, seasons, feasts and "last week" become ranges of days. */
import type { Chrono, ParsedResult } from 'chrono-node';
import { DateTime } from 'luxon';
import type { Lexicon } from './lexicon.ts';

type Words = Lexicon['calendar'];

/** A word for days by today: how many back, oldest and youngest. */
export interface DayWord {
  readonly pattern: RegExp;
  readonly back: readonly [number, number];
}

/** Local days, both ends included. `earliest` is null where only "before" is known. */
export interface Days {
  readonly earliest: DateTime | null;
  readonly latest: DateTime;
}

export interface Dated {
  readonly at: number;
  readonly end: number;
  readonly days: Days;
}

/** How far "around Christmas" or "about May" may be off (common practice, no source). */
const aroundDays = 14;

/** North American sites write the month first. */
function monthFirst(today: DateTime): boolean {
  return /^(?:America|US|Pacific\/Honolulu)/.test(today.zoneName ?? '');
}

/** The youngest such day of the year that is not to come; a year earlier if this year's is. */
function lastOnOrBefore(today: DateTime, month: number, day: number): DateTime {
  const thisYear = today.set({ month, day });
  return thisYear <= today ? thisYear : thisYear.minus({ years: 1 });
}

function months(today: DateTime, from: DateTime, count: number): Days {
  const end = from.plus({ months: count }).minus({ days: 1 });
  return { earliest: from, latest: from <= today && end > today ? today : end };
}

/** A month or season without a year: the last one; one that runs now may be this year's or last year's. */
function unnamedYear(today: DateTime, month: number, count: number, day = 1): Days {
  const from = lastOnOrBefore(today, month, day);
  const days = months(today, from, count);
  return days.latest.equals(today) ? { earliest: from.minus({ years: 1 }), latest: today } : days;
}

/** A season begins up to three days after its earliest date, and so does the next one. */
function season(days: Days, today: DateTime): Days {
  return { ...days, latest: DateTime.min(days.latest.plus({ days: 4 }), today) };
}

interface Parts {
  readonly year: number | null;
  readonly month: number | null;
  readonly day: number | null;
  readonly weekday: number | null;
}

/** Only what the text really says; what the library filled in by itself is not used. */
function partsOf(components: ParsedResult['start']): Parts {
  const sure = (name: 'year' | 'month' | 'day' | 'weekday') =>
    components.isCertain(name) ? components.get(name) : null;
  return { year: sure('year'), month: sure('month'), day: sure('day'), weekday: sure('weekday') };
}

function place(today: DateTime, { year, month, day, weekday }: Parts): Days | null {
  if (month === null && year === null) {
    if (weekday === null) return null;
    const back = (today.weekday - (weekday || 7) + 7) % 7 || 7;
    const on = today.minus({ days: back });
    return { earliest: on, latest: on };
  }
  if (month === null) return year === null ? null : months(today, today.set({ year, month: 1, day: 1 }), 12);
  if (day !== null) {
    const on = year === null ? lastOnOrBefore(today, month, day) : today.set({ year, month, day });
    return { earliest: on, latest: on };
  }
  return year === null ? unnamedYear(today, month, 1) : months(today, today.set({ year, month, day: 1 }), 1);
}

function fromLibrary(text: string, today: DateTime, words: Words): Dated[] {
  if (!words.calendarLike.test(text)) return [];
  const orders = monthFirst(today) ? words.monthFirst : words.dayFirst;
  return merged(
    orders.map((library) => parsed(library, text, today, words)),
    today,
  );
}

/** Where two orders of day and month are possible and read the same place, either may be meant; one still to come is not. */
function merged([first = [], ...others]: readonly Dated[][], today: DateTime): Dated[] {
  return first.map((dated) => {
    const same = others.flat().find(({ at, end }) => at === dated.at && end === dated.end);
    return same === undefined ? dated : { ...dated, days: either(dated.days, same.days, today) };
  });
}

function either(one: Days, other: Days, today: DateTime): Days {
  const past = [one, other].filter(({ latest }) => latest <= today);
  const [first = one, second = first] = past;
  const earliest = first.earliest && second.earliest && DateTime.min(first.earliest, second.earliest);
  return { earliest, latest: DateTime.max(first.latest, second.latest) };
}

function parsed(library: Chrono, text: string, today: DateTime, words: Words): Dated[] {
  return library.parse(text, { instant: today.toJSDate(), timezone: today.offset }).flatMap((result) => {
    if (!words.calendarLike.test(result.text)) return [];
    return [result.start, result.end].flatMap((components) => {
      const days = components ? place(today, partsOf(components)) : null;
      return days ? [{ at: result.index, end: result.index + result.text.length, days }] : [];
    });
  });
}

/** "Easter 2024", "Christmas of 2023": a short word may join the year to the feast. */
const feastYear = '(?:,? (?:[a-z]{1,3} )?((?:19|20)\\d{2})\\b)?';

type Rule = readonly [RegExp, (match: RegExpExecArray) => Days];

/** "2024 march, it was spring": a season beside the one year named is that year's. */
function yearOf(text: string): number | null {
  const years = new Set(text.match(/\b(?:19|20)\d{2}\b/g));
  const [year] = years;
  return years.size === 1 ? Number(year) : null;
}

function rules(today: DateTime, words: Words, yearNamed: number | null): Rule[] {
  const feast = (from: readonly [number, number], to: readonly [number, number], year: number | null): Days => {
    if (year !== null) {
      const end = today.set({ year, month: to[0], day: to[1] });
      const start = today.set({ year, month: from[0], day: from[1] });
      return { earliest: start <= end ? start : start.minus({ years: 1 }), latest: end };
    }
    const earliest = lastOnOrBefore(today, ...from);
    const latest = lastOnOrBefore(today, ...to);
    return { earliest: earliest <= latest ? earliest : earliest.minus({ years: 1 }), latest };
  };
  return [
    [
      words.dayOfLastMonth,
      (match) => {
        const on = today.minus({ months: 1 }).set({ day: Number(match[1]) });
        return { earliest: on, latest: on };
      },
    ],
    ...words.dayWords.map(
      ({ pattern, back: [oldest, youngest] }): Rule => [
        pattern,
        () => ({ earliest: today.minus({ days: oldest }), latest: today.minus({ days: youngest }) }),
      ],
    ),
    ...words.periodWords.map(
      ({ pattern, unit, back }): Rule => [
        pattern,
        () => months(today, today.startOf(unit).minus({ [unit]: back }), unit === 'year' ? 12 : 1),
      ],
    ),
    ...words.seasons.map(
      ({ pattern, month, day }): Rule => [
        pattern,
        (match) => {
          const year = Number(match[1] ?? match[2]) || yearNamed;
          const named = year ? months(today, today.set({ year, month, day }), 3) : unnamedYear(today, month, 3, day);
          return year && named.latest > today ? named : season(named, today);
        },
      ],
    ),
    ...words.shortMonths.map(([pattern, month]): Rule => [pattern, () => unnamedYear(today, month, 1)]),
    ...words.feasts.map(
      ({ pattern, from, to }): Rule => [
        new RegExp(`${pattern.source}${feastYear}`, 'g'),
        (match) => feast(from, to, match[1] === undefined ? null : Number(match[1])),
      ],
    ),
    [
      /\b(\d{1,2})[/-]((?:19|20)\d{2})\b(?![/-])/g,
      (m) => months(today, today.set({ year: Number(m[2]), month: Number(m[1]), day: 1 }), 1),
    ],
    [words.bareYear, (m) => months(today, today.set({ year: Number(m[1]), month: 1, day: 1 }), 12)],
  ];
}

/** "Before", "after" and "around" stretch the range on the side they open. */
function stretched(text: string, { at, end, days }: Dated, today: DateTime, words: Words): Dated {
  const lead = text.slice(Math.max(0, at - 32), at);
  if (words.beforeLast.test(text.slice(end)))
    return {
      at,
      end,
      days: { earliest: days.earliest?.minus({ years: 1 }) ?? null, latest: days.latest.minus({ years: 1 }) },
    };
  const daysAfter = words.daysAfter.find(([pattern]) => pattern.test(lead))?.[1];
  if (daysAfter !== undefined && days.latest <= today)
    return {
      at,
      end,
      days: { earliest: days.earliest, latest: DateTime.min(today, days.latest.plus({ days: daysAfter })) },
    };
  if (words.before.test(lead)) return { at, end, days: { earliest: null, latest: days.earliest ?? days.latest } };
  if (words.rightBefore.test(lead))
    return { at, end, days: { earliest: days.earliest?.minus({ days: aroundDays }) ?? null, latest: days.latest } };
  if (words.after.test(lead)) return { at, end, days: { earliest: days.earliest, latest: today } };
  if (!words.around.test(lead) || days.latest > today) return { at, end, days };
  const later = days.latest.plus({ days: aroundDays });
  return {
    at,
    end,
    days: { earliest: days.earliest?.minus({ days: aroundDays }) ?? null, latest: later > today ? today : later },
  };
}

/** "January this year" names its year, and so does "2024 in August"; the length of the text stays, so that places in it do. */
function withYears(text: string, today: DateTime, words: Words): string {
  const named = words.monthWithYearWord.test(text)
    ? text.replace(words.yearWord, (word: string) =>
        String(today.year - (words.lastYear.test(word) ? 1 : 0)).padEnd(word.length),
      )
    : text;
  // Another month that has its own year keeps it.
  if (named === text && words.monthOfYear.test(text)) return text;
  return named.replace(
    words.yearFirst,
    (_, year: string, gap: string, month: string) => month + ' '.repeat(gap.length) + year,
  );
}

/** "March 2025, yes, in March" names one month: without its year it says nothing more. */
function onceNamed(text: string, words: Words): string {
  const month = text.match(words.monthOfYear)?.[1];
  if (month === undefined) return text;
  const again = new RegExp(`\\b${month}\\b(?!,? ?(?:\\w{1,3} )?\\d)(?<!\\d ?(?:\\w{1,3} )?${month})`, 'g');
  return text.replace(again, ' '.repeat(month.length));
}

/** Every calendar expression of a text as days; one that has not come yet is left in the future for the caller to see. */
export function datesIn(text: string, today: DateTime, { calendar: words }: Lexicon): Dated[] {
  const found: Dated[] = [];
  let rest = withYears(
    onceNamed(
      text.replace(words.notMonths, (verb) => ' '.repeat(verb.length)),
      words,
    ),
    today,
    words,
  );
  const blank = (at: number, end: number) => {
    rest = rest.slice(0, at) + ' '.repeat(end - at) + rest.slice(end);
  };
  for (const dated of fromLibrary(rest, today, words)) found.push(dated);
  for (const { at, end } of found) blank(at, end);
  const yearNamed = found.length > 0;
  for (const [pattern, toDays] of rules(today, words, yearOf(text))) {
    if (yearNamed && pattern === words.bareYear) continue;
    for (const match of rest.matchAll(pattern)) {
      const end = match.index + match[0].length;
      found.push({ at: match.index, end, days: toDays(match) });
      blank(match.index, end);
    }
  }
  return found.filter(({ days }) => days.latest.isValid).map((dated) => stretched(text, dated, today, words));
}
