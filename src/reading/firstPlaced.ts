/** Reads when the child's first tube was placed: the age of the tract, never the date of a later change. */
import { DateTime } from 'luxon';
import type { DateRange } from '#machines/facts.ts';
import { ageThenIn, birthIn } from './birth.ts';
import { type Dated, type Days, datesIn } from './calendar.ts';
import { roughShare, type Span, spansIn } from './durations.ts';
import type { Lexicon } from './lexicon.ts';
import { clausesOf, type Found, part, type Said } from './said.ts';
import { daysBack, localToday } from './today.ts';
import { tubeKindTold } from './tubeKind.ts';
import { afterCorrection } from './yesNo.ts';

/** No child of a home line carries a tube longer (from memory). */
const mostYears = 25;
/** No text a parent types has more statements about one date; the rest is not read for it. */
const mostClauses = 16;
/** Nor is one statement of it longer: what is, is asked again. */
const mostCharacters = 400;

/** A length of time before today as days; `less-than` may be as young as today. */
function daysOfSpan({ low, high, firmness }: Span, today: DateTime): Days {
  const latest = daysBack(today, low);
  if (firmness === 'at-least' || firmness === 'just-over') return { earliest: null, latest };
  if (firmness === 'less-than') return { earliest: daysBack(today, high), latest: today };
  const earliest = daysBack(today, high);
  if (firmness === 'firm') return { earliest, latest };
  const scaled = (from: DateTime, share: number, round: (n: number) => number) =>
    today.minus({ days: round(Math.round(today.diff(from, 'days').days) * share) });
  const rough = {
    earliest: scaled(earliest, 1 + roughShare, Math.ceil),
    latest: scaled(latest, 1 - roughShare, Math.floor),
  };
  if (firmness === 'rough') return rough;
  // "6 months ago" is off by a month at most.
  return {
    earliest: DateTime.max(rough.earliest, earliest.minus({ months: 1 })),
    latest: DateTime.min(rough.latest, latest.plus({ months: 1 })),
  };
}

type Role = 'placed' | 'change' | 'other' | null;

function roleOf(clause: string, placed: RegExp, { times: words, tube }: Lexicon): Role {
  // A tube through the nose leaves no hole.
  if (clause.search(tube.nose) !== -1 && clause.search(tube.g) === -1 && !words.placedFirmly.test(clause))
    return 'other';
  if (words.changeWords.test(clause) && !words.firstWords.test(clause)) return 'change';
  if (words.outWords.test(clause) && !words.firstWords.test(clause)) return 'other';
  if (words.fedWords.test(clause) && !placed.test(clause)) return 'other';
  return placed.test(clause) ? 'placed' : null;
}

interface Placing {
  readonly days: Days[];
  readonly future: boolean;
}

function daysInClause(clause: string, today: DateTime, words: Lexicon): Placing {
  if (clause.length > mostCharacters) return { days: [], future: false };
  const spans = spansIn(clause, words).slice(0, mostClauses);
  const long = spans.filter(
    ({ low }) => low.minute === undefined && low.hour === undefined && low.second === undefined,
  );
  const rest = spans.reduce((text, { at, end }) => text.slice(0, at) + ' '.repeat(end - at) + text.slice(end), clause);
  const dates: Dated[] = datesIn(long.length > 0 ? rest.replace(words.calendar.todayWords, ' ') : rest, today, words);
  const days = [...long.map((span) => daysOfSpan(span, today)), ...dates.map((dated) => dated.days)];
  const coming = long.some(
    ({ at, end }) => words.calendar.comingSpan.test(clause.slice(0, at)) && !words.times.ago.test(clause.slice(end)),
  );
  const future =
    coming || words.calendar.next.test(clause) || days.some(({ earliest, latest }) => (earliest ?? latest) > today);
  return { days, future };
}

/** Everything that says when a first tube was placed. A clause that names no act goes with the one before it. */
function placings({ plain, words }: Said, today: DateTime, asked: boolean): Placing[] {
  const { times } = words;
  const birth = birthIn(plain, today, words);
  const age = birth && ageThenIn(birth, today, words);
  const kept = (birth?.rest ?? plain)
    .replace(times.newHole, ' ')
    .replace(times.childPlaced, ' ')
    .replace(times.quarterYear, times.quarterMonths)
    .replace(times.byAge, ' ')
    .replace(times.age, ' ')
    .replace(/,? (?=(?:19|20)\d{2}\b)/g, ' ');
  const placed = asked ? times.placedWords : times.placedFirmly;
  let role: Role = asked ? 'placed' : null;
  const found: Placing[] = age ? [age] : [];
  for (const clause of clausesOf(kept, words).slice(0, mostClauses)) {
    role = roleOf(clause, placed, words) ?? role;
    if (role === 'placed') found.push(daysInClause(clause, today, words));
  }
  return found;
}

function union(all: readonly Days[]): Days | null {
  const [one, ...more] = all;
  if (!one) return null;
  return more.reduce<Days>(
    (wide, { earliest, latest }) => ({
      earliest: wide.earliest && earliest ? DateTime.min(wide.earliest, earliest) : null,
      latest: DateTime.max(wide.latest, latest),
    }),
    one,
  );
}

function isoDate(day: DateTime): string {
  return day.toFormat('yyyy-MM-dd');
}

function isWholeYear({ earliest, latest }: Days): boolean {
  return earliest !== null && earliest.ordinal === 1 && latest.equals(earliest.endOf('year').startOf('day'));
}

/** "It's 2026. October 2026" says one date twice, the second time more exactly. */
function exactest(all: readonly Days[]): Days[] {
  const isWithin = (one: Days, year: Days) =>
    one !== year &&
    one.earliest !== null &&
    one.earliest.year === year.latest.year &&
    one.latest.year === year.latest.year;
  return all.filter((days) => !isWholeYear(days) || !all.some((other) => isWithin(other, days)));
}

function settle(found: readonly Placing[], today: DateTime, hedged: boolean): Found<DateRange> {
  const all = found.flatMap((placing) => placing.days);
  const days = union(hedged ? all : exactest(all));
  if (found.some((placing) => placing.future)) return { unclear: 'future' };
  if (!days) return null;
  if (days.latest < today.minus({ years: mostYears })) return { unclear: 'impossible' };
  const latest = DateTime.min(days.latest, today);
  return { value: { earliest: days.earliest && isoDate(days.earliest), latest: isoDate(latest) } };
}

function isHedged({ plain, words }: Said): boolean {
  return words.times.roughAnywhere.test(plain) || plain.search(words.yesNo.unsure) !== -1;
}

/** The answer to "when was the first tube placed?". */
export function firstPlaced(said: Said): Found<DateRange | 'unknown'> {
  const { calendar, times } = said.words;
  const today = localToday(said.open);
  const corrected = afterCorrection(said.plain, said.words);
  const meant = corrected && settle(placings(part(said, corrected.after), today, true), today, isHedged(said));
  const found = meant ?? settle(placings(said, today, true), today, isHedged(said));
  if (found) return found;
  if (calendar.yearsAgo.test(said.plain))
    return { value: { earliest: null, latest: isoDate(today.minus({ years: 1 })) } };
  if (times.unknown.test(said.plain)) return { value: 'unknown' };
  return calendar.longAgo.test(said.plain) ? { unclear: 'unsure' } : null;
}

/** A placing told beside something else: only where the words say that it was placed. */
export function firstPlacedTold(said: Said): DateRange | null {
  const today = localToday(said.open);
  const about = said.open.asking === 'confirm' && said.words.times.aboutPlacing.test(said.plain);
  // "No, they put in a GJ in January" says when the kind changed.
  const asked = about && tubeKindTold(said) === null;
  const placed = part(said, said.plain.replace(said.words.times.illSince, ' '));
  const found = settle(placings(placed, today, asked), today, isHedged(said));
  return found && 'value' in found ? found.value : null;
}
