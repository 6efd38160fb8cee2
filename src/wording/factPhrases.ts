/** Facts to phrases, the same way in every language: a language brings its locale and its few words. */
import { DateTime } from 'luxon';
import type { DateRange, PhReading, Weight } from '#machines/facts.ts';
import { zoneOf } from '#machines/rules/zone.ts';
import type { Scene } from './catalogue.ts';

/** What a language says of facts; dates, times and numbers come to it written in its locale. */
export interface FactWords {
  /** BCP 47, for the names of months and days and for the decimal sign. */
  readonly locale: string;
  /** A time of day as a parent reads it, such as "1:50 am". */
  readonly clock: (at: DateTime) => string;
  /** A time on another day than now. */
  readonly onDay: (clock: string, day: string) => string;
  /** A date and a weekday as luxon's tokens, such as "d LLL yyyy". */
  readonly dayFormat: string;
  readonly monthFormat: string;
  readonly weekdayFormat: string;
  readonly orBefore: (day: string) => string;
  readonly fromTo: (first: string, last: string) => string;
  readonly orLess: (number: string) => string;
  readonly orMore: (number: string) => string;
  readonly weightUnknown: string;
  readonly under3Kg: string;
  readonly over3Kg: string;
  /** Weights that only rounding would put on 3 kg. */
  readonly justUnder3Kg: string;
  readonly justOver3Kg: string;
}

export interface FactPhrases {
  readonly dates: (range: DateRange) => string;
  readonly time: (atMs: number, scene: Pick<Scene, 'site' | 'nowMs'>) => string;
  readonly number: (value: number) => string;
  readonly weight: (value: Weight) => string;
  readonly reading: (ph: PhReading) => string;
  readonly length: (lowCm: number, highCm: number) => string;
}

/** The phrases of one language. */
export function factPhrases(words: FactWords): FactPhrases {
  const { locale } = words;
  const decimal = new Intl.NumberFormat(locale, { maximumFractionDigits: 2, useGrouping: false });
  /** A number as it is read, at most two decimals. */
  const number = (value: number) => decimal.format(value);
  const on = (date: string) => DateTime.fromISO(date, { zone: 'utc', locale });
  const day = (date: string) => on(date).toFormat(words.dayFormat);

  /** One day, a whole month, two days, or "or before". */
  function dates({ earliest, latest }: DateRange): string {
    if (earliest === null) return words.orBefore(day(latest));
    if (earliest === latest) return day(latest);
    if (isWholeMonth(on(earliest), on(latest))) return on(earliest).toFormat(words.monthFormat);
    return words.fromTo(day(earliest), day(latest));
  }

  /** A time on the site's clock; another day than now is named. */
  function time(atMs: number, scene: Pick<Scene, 'site' | 'nowMs'>): string {
    const zone = zoneOf(scene.site.timeZone);
    const at = DateTime.fromMillis(atMs, { zone, locale });
    const now = DateTime.fromMillis(scene.nowMs, { zone });
    const clock = words.clock(at);
    return at.hasSame(now, 'day') ? clock : words.onDay(clock, at.toFormat(words.weekdayFormat));
  }

  const bands = { 'under-3': words.under3Kg, '3': '3 kg', 'over-3': words.over3Kg } as const;

  /** A weight that only rounding would put on 3 kg, where the length changes, says which side it is on. */
  function weight(value: Weight): string {
    if (value === 'unknown') return words.weightUnknown;
    if ('band' in value) return bands[value.band];
    const shown = number(value.kg);
    if (shown !== '3' || value.kg === 3) return `${shown} kg`;
    return value.kg < 3 ? words.justUnder3Kg : words.justOver3Kg;
  }

  function reading(ph: PhReading): string {
    if (ph.low === ph.high) return number(ph.high);
    if (ph.low <= 0) return words.orLess(number(ph.high));
    if (ph.high >= 14) return words.orMore(number(ph.low));
    return words.fromTo(number(ph.low), number(ph.high));
  }

  return { dates, time, number, weight, reading, length };
}

function isWholeMonth(earliest: DateTime, latest: DateTime): boolean {
  return earliest.day === 1 && latest.hasSame(earliest, 'month') && latest.day === latest.daysInMonth;
}

/** "4-6 cm", or "4 cm" where both ends are one. */
function length(lowCm: number, highCm: number): string {
  return lowCm === highCm ? `${lowCm} cm` : `${lowCm}-${highCm} cm`;
}
