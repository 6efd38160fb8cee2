/** Reads a birth: how old the child is, and how old it was when the tube was placed. */
import type { DateTime } from 'luxon';
import type { DateRange } from '#machines/facts.ts';
import { type Days, datesIn } from './calendar.ts';
import { type Span, spansIn, timeUnitNames } from './durations.ts';
import type { Lexicon } from './lexicon.ts';
import type { Said } from './said.ts';
import { daysBack, localToday } from './today.ts';

/** The days of a birth told by its date, and the text without it. */
interface Birth {
  readonly days: Days;
  readonly rest: string;
}

/** The child's birth from an age ("3 months old") or a birth date. An age of n means less than n plus one. */
export function bornTold(said: Said): DateRange | null {
  const toldWords = said.words.told;
  const today = localToday(said.open);
  for (const match of said.plain.matchAll(toldWords.age)) {
    const unit = toldWords.ageUnits.find(({ form }) => form.test(match[2] ?? ''))?.unit;
    const count = Number(match[1]);
    if (unit === undefined || toldWords.notAge.test(said.plain.slice(0, match.index))) continue;
    const latest = daysBack(today, { [unit]: count });
    const earliest = daysBack(today, { [unit]: count + 1 }).plus({ days: 1 });
    if (latest < today.minus({ years: 26 })) continue;
    return { earliest: isoDate(earliest), latest: isoDate(latest) };
  }
  const days = birthDate(said.plain, today, said.words)?.days;
  return days === undefined
    ? null
    : { earliest: days.earliest && isoDate(days.earliest), latest: isoDate(days.latest) };
}

function isoDate(day: DateTime): string {
  return day.toFormat('yyyy-MM-dd');
}

function birthDate(plain: string, today: DateTime, words: Lexicon): (Birth & { readonly at: number }) | null {
  const born = plain.match(words.told.born);
  if (born === null) return null;
  const after = born[1] ?? '';
  const [dated] = datesIn(after, today, words);
  if (!dated || dated.days.latest > today) return null;
  const at = born.index ?? 0;
  const end = at + born[0].length - after.length + dated.end;
  return { days: dated.days, at, rest: `${plain.slice(0, at)} ${plain.slice(end)}` };
}

/** A birth told by its date; "when she was born, in June" tells when the tube was placed. */
export function birthIn(plain: string, today: DateTime, words: Lexicon): Birth | null {
  const birth = birthDate(plain, today, words);
  return birth === null || words.times.whenBorn.test(plain.slice(0, birth.at)) ? null : birth;
}

/** The days on which the child was as old as the text says it was then; no tube is placed on a day to come. */
export function ageThenIn(
  { days, rest }: Birth,
  today: DateTime,
  words: Lexicon,
): { readonly days: Days[]; readonly future: boolean } | null {
  const { ageThen, ago } = words.times;
  const span = spansIn(rest, words).find(
    ({ at, end }) => ageThen.test(rest.slice(0, at)) && !ago.test(rest.slice(end)),
  );
  if (span === undefined) return null;
  const { earliest } = days;
  const from = earliest?.plus({ ...span.low }) ?? null;
  const latest = days.latest.plus(grown(span));
  return from !== null && from > today
    ? { days: [], future: true }
    : { days: [{ earliest: from, latest }], future: false };
}

/** An age said loosely may be half as much again (common practice, no source). */
const looseShare = 1.5;

/** An age of n means less than n plus one. */
function grown({ high, firmness }: Span): Span['high'] {
  const smallest = timeUnitNames.find((name) => high[name] !== undefined) ?? 'month';
  const count = high[smallest] ?? 0;
  const most = firmness === 'firm' || firmness === 'coarse' ? count : count * looseShare;
  return { ...high, [smallest]: Math.floor(most) + 1 };
}
