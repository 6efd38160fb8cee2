/** Reads when the tube came out, or was last seen in, as a moment; of a stretch of time the earlier end. */
import { DateTime } from 'luxon';
import { zoneOf } from '#machines/rules/zone.ts';
import { clockTimesIn, momentOf } from './clock.ts';
import { type Amount, type Span, spansIn } from './durations.ts';
import { type Lexicon, onceEach } from './lexicon.ts';
import { clausesOf, type Found, type Open, part, type Said } from './said.ts';
import { afterCorrection } from './yesNo.ts';

/** "Over an hour" is open-ended; it is taken for half as long again (common practice, no source). */
const atLeastShare = 1.5;
/** "A bit over an hour" is taken for a quarter more (common practice, no source). */
const justOverShare = 1.25;
/** One statement names few times; the rest of a longer list is not read. */
const mostTimes = 12;
/** Nor does a text a parent types have more statements about it. */
const mostClauses = 16;
const unitMs = { second: 1_000, minute: 60_000, hour: 3_600_000, day: 86_400_000, week: 604_800_000 };
/** Longer ago than this is no time a tube came out of a child who is texted about now. */
const mostMs = 31 * unitMs.day;

function lengthMs({ second = 0, minute = 0, hour = 0, day = 0, week = 0, month, year }: Amount): number {
  if (month !== undefined || year !== undefined) return Number.POSITIVE_INFINITY;
  return second * unitMs.second + minute * unitMs.minute + hour * unitMs.hour + day * unitMs.day + week * unitMs.week;
}

function agoMs({ high, firmness }: Span): number {
  const share = firmness === 'at-least' ? atLeastShare : firmness === 'just-over' ? justOverShare : 1;
  return lengthMs(high) * share;
}

/** The days of the week by name, Monday first. */
const weekdays = onceEach(({ calendar: { weekdayName } }) =>
  weekdayName
    .replace(/[(?:)]/g, '')
    .split('|')
    .map((name) => new RegExp(`\\b${name}\\b`)),
);

/** "Thursday night at 8" was then, not the last time it was eight. */
function weekdayBack(clause: string, { nowMs, timeZone }: Open, words: Lexicon): number | null {
  const named = weekdays(words).findIndex((day) => day.test(clause)) + 1;
  const today = DateTime.fromMillis(nowMs, { zone: zoneOf(timeZone) }).weekday;
  return named === 0 ? null : (today - named + 7) % 7;
}

function daysAgoIn(clause: string, hour: number, bare: boolean, open: Open, words: Lexicon): number | null {
  const { clock: clockWords } = words;
  if (clockWords.beforeYesterday.test(clause)) return 2;
  if (clockWords.lastNight.test(clause)) return bare || hour >= 12 ? (bare && (hour === 12 || hour < 5) ? null : 1) : 0;
  return clockWords.yesterday.test(clause) ? 1 : weekdayBack(clause, open, words);
}

function clockMoments(clause: string, open: Open, words: Lexicon): (number | 'future')[] {
  return clockTimesIn(clause, words)
    .slice(0, mostTimes)
    .map((time) => {
      const lateNight = words.clock.lastNight.test(clause) && time.bare && time.hour >= 5 && time.hour < 12;
      const known = lateNight ? { ...time, hour: time.hour + 12, bare: false } : time;
      return momentOf(known, open.nowMs, open.timeZone, daysAgoIn(clause, time.hour, time.bare, open, words));
    });
}

function partOfDay(clause: string, open: Open, { clock }: Lexicon): number | null {
  const now = DateTime.fromMillis(open.nowMs, { zone: zoneOf(open.timeZone) });
  const part = clock.dayParts.find(({ pattern }) => pattern.test(clause));
  if (!part) return null;
  const from = now.startOf('day').minus({ days: part.daysAgo }).set({ hour: part.hour }).toMillis();
  return from <= open.nowMs ? from : null;
}

function momentIn(clause: string, { open, words }: Said, justNow: RegExp): Found<number> {
  const spans = spansIn(clause, words);
  const rest = spans.reduce((text, { at, end }) => text.slice(0, at) + ' '.repeat(end - at) + text.slice(end), clause);
  const clocks = clockMoments(rest, open, words);
  if (spans.some(({ at }) => words.times.coming.test(clause.slice(0, at)))) return { unclear: 'future' };
  const moments = [...spans.map((span) => open.nowMs - agoMs(span)), ...clocks.filter((moment) => moment !== 'future')];
  if (moments.length > 0) {
    const earliest = Math.round(Math.min(...moments));
    return earliest < open.nowMs - mostMs ? { unclear: 'impossible' } : { value: earliest };
  }
  if (clocks.length > 0) return { unclear: 'future' };
  const part = partOfDay(clause, open, words);
  if (part !== null) return { value: part };
  if (!justNow.test(clause)) return null;
  return words.clock.aWhile.test(clause) ? { unclear: 'unsure' } : { value: open.nowMs };
}

type Role = 'seen' | 'out' | 'found' | 'other' | null;

function roleOf(clause: string, asked: boolean, { times: words }: Lexicon): Role {
  const [seen, out] = asked ? [words.seenWords, words.outWords] : [words.toldSeenWords, words.toldOutWords];
  if (seen.test(clause)) return 'seen';
  if (words.foundWords.test(clause)) return 'found';
  if (out.test(clause)) return 'out';
  if (words.placedFirmly.test(clause) || words.changeWords.test(clause) || words.fedWords.test(clause)) return 'other';
  return null;
}

/** Moments by what they belong to; a clause that names no act goes with the one before it. */
function momentsByRole(said: Said, plain: string, first: Role): { role: Role; named: Role; found: Found<number> }[] {
  const { clock, times } = said.words;
  let role = first;
  const justNow = first === null ? clock.justNowFirm : clock.justNow;
  const clauses = clausesOf(plain.replace(times.age, ' '), said.words).slice(0, mostClauses);
  return clauses.map((clause) => {
    const named = roleOf(clause, first !== null, said.words);
    role = named ?? (role === 'other' ? first : role);
    const counts = role === 'seen' || role === 'out';
    return { role, named, found: counts ? momentIn(clause, said, justNow) : null };
  });
}

function earliestOf(found: readonly Found<number>[]): Found<number> {
  const values = found.flatMap((one) => (one && 'value' in one ? [one.value] : []));
  if (values.length > 0) return { value: Math.min(...values) };
  return found.find((one) => one !== null) ?? null;
}

/** The answer to "when did it come out?" or "when was it last seen in?": a time after words of correction, or any. */
export function cameOut(said: Said): Found<number | 'unknown'> {
  const corrected = afterCorrection(said.plain, said.words);
  const meant = corrected && !corrected.soft ? plainCameOut(part(said, corrected.after)) : null;
  // A time said instead and not understood: the one taken back is not the answer.
  if (corrected && !corrected.soft && meant === null && corrected.before !== '' && /\d/.test(corrected.after))
    return { unclear: 'unsure' };
  const found = meant && 'value' in meant && meant.value !== 'unknown' ? meant : plainCameOut(said);
  return mayBeMinutes(said, found) ? { unclear: 'unsure' } : found;
}

/** Before this, "about 5" is more likely five minutes than five o'clock (common practice, no source). */
const likelyHourMs = 6 * unitMs.hour;

function mayBeMinutes({ plain, open, words }: Said, found: Found<number | 'unknown'>): boolean {
  const at = found && 'value' in found && typeof found.value === 'number' ? found.value : open.nowMs;
  return open.nowMs - at > likelyHourMs && words.clock.hourOrMinutes.test(plain.replace(/[.!?,]+$/, ''));
}

/** A time it was only found out is not known. */
function plainCameOut(said: Said): Found<number | 'unknown'> {
  const all = momentsByRole(said, said.plain.replace(said.words.times.besideFeed, ' '), 'out');
  if (said.words.clock.beforeTime.test(said.plain)) return { value: 'unknown' };
  const at = (role: Role) => earliestOf(all.filter((one) => one.role === role).map(({ found }) => found));
  const seen = at('seen');
  // "It fell at ten, I saw it at half past": said outright that it came out, the earlier one counts.
  const outright = all.filter(({ named }) => named === 'out').map(({ found }) => found);
  // "About midnight I got up, it was still there, and at two it was not": the time of it stands in another statement.
  const seenAt = all.some(({ named, found }) => named === 'seen' && found === null) ? at('out') : null;
  if (seen) return earliestOf([seen, seenAt, ...outright]);
  if (all.some(({ role }) => role === 'found'))
    return at('out') && all[0]?.role === 'out' ? at('out') : { value: 'unknown' };
  return at('out') ?? (said.words.times.unknown.test(said.plain) ? { value: 'unknown' } : bareTime(said));
}

/** "12" at a quarter past one: an hour that was lately, where so many minutes would be later and nobody means so many hours. */
function bareTime({ clauses, open, words }: Said): Found<number> {
  const [only, ...others] = clauses.flatMap((clause) => clause.match(words.clock.bareTime)?.[1] ?? []);
  const hour = Number(only);
  if (only === undefined || others.length > 0 || hour <= likelyHourMs / unitMs.hour || hour > 12) return null;
  const time = { at: 0, end: 0, hour, minute: 0, bare: true };
  const moment = momentOf(time, open.nowMs, open.timeZone, null);
  return moment !== 'future' && open.nowMs - moment <= likelyHourMs ? { value: moment } : null;
}

/** A time further back, told beside other dates, is more likely another date than when it came out tonight. */
const mostToldMs = 2 * 86_400_000;

/** "Out for an hour last year" is not this time. */
function longAgo(piece: string, { calendar }: Lexicon): boolean {
  return calendar.periodWords.some(({ pattern }) => piece.search(pattern) !== -1);
}

/** A time told beside something else: only in words that say it came out or was last seen in. */
export function cameOutTold(said: Said): number | null {
  // "Her medicine is due at 6" is no time of the tube.
  const plain = said.plain
    .replace(said.words.times.illSince, ' ')
    .split(said.words.times.dueEnd)
    .filter((piece) => !said.words.times.dueTime.test(piece) && !longAgo(piece, said.words))
    .join(', ');
  const all = momentsByRole(said, plain, null);
  const told = all.filter(({ role }) => role === 'seen' || role === 'out').map(({ found }) => found);
  const found = all.some(({ role }) => role === 'found') ? null : earliestOf(told);
  if (!found || !('value' in found)) return null;
  // With a tube in, "checked at 11" is another check.
  if (said.open.tubeIn && !said.words.times.outWords.test(plain)) return null;
  return said.open.nowMs - found.value > mostToldMs ? null : found.value;
}
