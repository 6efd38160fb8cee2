/** Reads the answers to the plainer questions: kit, strips, contents, looks, feeds, and how the child is. */
import type { Answers, KitAnswer, Told, YesNo, YesNoUnknown } from '#machines/facts.ts';
import { clockTimesIn, momentOf } from './clock.ts';
import { type Firmness, roughShare, spansIn } from './durations.ts';
import { ph } from './ph.ts';
import { type Found, part, type Said } from './said.ts';
import type { SignsHeard } from './signs.ts';
import { isScrambled, wordsOf } from './spell.ts';
import { withoutCorrection, yesNo, yesNoUnknown } from './yesNo.ts';

/** The emergency kit at hand, and someone there who was shown how. Only words that say so are "not shown". */
export function kit(said: Said): Found<KitAnswer> {
  const words = said.words.answers;
  if (words.notShown.test(said.plain) || words.otherShown.test(said.plain)) return { value: 'not-shown' };
  if (words.kitAway.test(said.plain)) return { value: 'no' };
  const found = yesNo(said, words.kit);
  // "I have never done it" does not say that nobody was shown; nor that somebody was.
  const isYes = found !== null && 'value' in found && found.value === 'yes';
  return isYes &&
    (words.forgotHow.test(said.plain) || (words.neverDone.test(said.plain) && !words.shown.test(said.plain)))
    ? { unclear: 'unsure' }
    : found;
}

/** Whether the facts on file are right. "Yes, but" with a change that was not understood is no yes. */
export function confirm(said: Said, told: Told): Found<YesNo> {
  const words = said.words.answers;
  if (told.notOnFile) return { value: 'no' };
  const tells = Object.keys(told).length > 0;
  // "He was 33 pounds last week, the rest is right": one fact is corrected, and the others stand.
  if (tells && words.restIsRight.test(said.plain)) return { value: 'yes' };
  if (words.exceptFact.test(said.plain) && !tells) return { value: 'no' };
  const found = yesNo(said, words.confirm);
  // "No, not a GJ, it's a G."
  if (found === null && words.startsNo.test(said.plain) && tells) return { value: 'no' };
  const isYes = found !== null && 'value' in found && found.value === 'yes';
  return isYes && words.exception.test(said.plain) && !tells ? { unclear: 'two-answers' } : found;
}

/** PH strips at hand. A reading sent at once says that they are; it is asked for in its turn. */
export function strips(said: Said): Found<YesNo> {
  if (said.words.told.otherStrips.test(said.plain))
    return said.plain.includes('?') ? { unclear: 'unsure' } : { value: 'no' };
  const found = yesNo(said, said.words.answers.strips);
  const isReading = wordsOf(said.plain).every((word) => /^\d/.test(word) || said.words.ph.readingWords.has(word));
  const reading = found === null && isReading ? ph(said) : null;
  return reading !== null && 'value' in reading ? { value: 'yes' } : found;
}

/** Whether stomach contents came back; air alone is none. */
export function contents(said: Said): Found<YesNo> {
  const words = said.words.answers;
  const plain = yesNo(said, words.contents);
  if (plain === null || !('unclear' in plain) || plain.unclear !== 'two-answers') return plain;
  return words.startsNo.test(said.plain) || !words.airFirst.test(said.plain) ? plain : { value: 'yes' };
}

/** A longer text that only denies a sign may say much else that was not understood. */
const mostDenialLength = 60;
/** Where nearly all of it denies signs, so much may be left. */
const mostUnreadLength = 32;

/** Whether the contents look like stomach contents. A wrong colour beside a right one is no; a colour may be hedged. */
export function looks(said: Said): Found<YesNoUnknown> {
  const words = said.words.answers;
  const firm = (pattern: RegExp) =>
    [...said.plain.matchAll(pattern)].some(({ index }) => !words.notLooking.test(said.plain.slice(0, index)));
  if (words.looksUnsure.test(said.plain)) return { value: 'unknown' };
  if (firm(words.looksWrong)) return { value: 'no' };
  if (words.looksNo.test(said.plain)) return { value: 'no' };
  if (firm(words.looksRight)) return { value: 'yes' };
  return words.looksOpen.test(said.plain) ? { value: 'unknown' } : yesNoUnknown(said, words.looks);
}

/** A text that only denies signs and adds no more than "nothing". */
function deniesOnly(said: Said, { denied, rest }: SignsHeard): boolean {
  return denied.length > 0 && wordsOf(rest).every((word) => word.search(said.words.yesNo.plainNo) !== -1);
}

/** A warning sign since the tube went in; a tube that may have made its own way is one, and so, as the question says, is doubt. */
export function afterIn(said: Said, heard: SignsHeard): Found<YesNo> {
  const words = said.words.answers;
  return words.wrongWay.test(said.plain) || words.onlyUnsure.test(said.plain) ? { value: 'yes' } : unwell(said, heard);
}

/** How the child is a day later. */
export function nextDay(said: Said, signs: SignsHeard): Found<YesNo> {
  const words = said.words.answers;
  if (words.notYet.test(said.plain)) return { unclear: 'unreadable' };
  return deniesOnly(said, signs) ? { value: 'yes' } : yesNo(part(said, signs.rest), words.nextDay);
}

/** How the first feed went, or that it has not been given yet. */
export function firstFeed(said: Said, signs: SignsHeard): Found<Answers['first-feed']> {
  const words = said.words.answers;
  if (words.fedLater.test(said.plain)) return { value: 'later' };
  if (words.notYet.test(said.plain)) return { unclear: 'unreadable' };
  return deniesOnly(said, signs) ? { value: 'yes' } : yesNo(part(said, signs.rest), words.firstFeed);
}

/** "Water is in" and "it is taped" name a part of what was asked; beside a yes, the last step stands for all of them. */
function namesPart({ plain, words: { answers } }: Said): boolean {
  const { whole, filled, held, yes } = answers.securedParts;
  if (whole.test(plain)) return false;
  return filled.test(plain) ? !held.test(plain) : held.test(plain) && !yes.test(plain);
}

/** Balloon filled, snug and taped; "all but the tape" is not. */
export function secured(said: Said): Found<Answers['secured']> {
  const words = said.words.answers;
  const found = yesNo(said, words.secured);
  const isYes = found !== null && 'value' in found && found.value === 'yes';
  if (isYes && words.notAll.test(said.plain)) return { value: 'no' };
  if (isYes && namesPart(said)) return { value: 'part' };
  // "Balloon filled, no tape": one step that is missing is a no.
  const isBoth = found !== null && 'unclear' in found && found.unclear === 'two-answers';
  if (isBoth && words.secured.no?.test(said.plain)) return { value: 'no' };
  return found ?? (isScrambled(said.plain, words.doneWords) ? { value: 'yes' } : null);
}

/** The hour within which a feed may explain a high reading. */
const feedMinutes = 60;

/** Minutes since a feed, from a length of time or a clock time in the text; null where none is told. */
function minutesSince(said: Said): { readonly minutes: number; readonly firmness: Firmness } | null {
  const [span] = spansIn(said.plain, said.words);
  if (span) {
    const { minute = 0, hour = 0, day = 0 } = span.high;
    return { minutes: minute + hour * 60 + day * 1440, firmness: span.firmness };
  }
  const [time] = clockTimesIn(said.plain, said.words);
  const moment = time && momentOf(time, said.open.nowMs, said.open.timeZone, null);
  if (time === undefined || typeof moment !== 'number') return null;
  const digits = time.at + Math.max(0, said.plain.slice(time.at).search(/\d/));
  const isRough = said.words.times.roughBefore.test(said.plain.slice(0, digits));
  return { minutes: (said.open.nowMs - moment) / 60_000, firmness: isRough ? 'rough' : 'firm' };
}

/** A feed or medicine within the hour. A time told decides; "about an hour" is not known, what is usual or due says nothing. */
export function fedLately(whole: Said): Found<YesNoUnknown> {
  const words = whole.words.answers;
  const given = whole.clauses.filter((clause) => !words.notGiven.test(clause));
  // "Nope, the one at two was due": what is left says nothing, but the no does.
  if (given.length === 0 && words.startsNo.test(whole.plain)) return { value: 'no' };
  const said = given.length === whole.clauses.length ? whole : part(whole, given.join('. '));
  const since = minutesSince(said);
  if (since === null || since.minutes === 0) {
    // "Before bed" is some time ago, nobody knows how long.
    return words.someTimeAgo.test(said.plain) && !words.startsNo.test(said.plain)
      ? { value: 'unknown' }
      : yesNoUnknown(said, words.fedLately);
  }
  const { minutes, firmness } = since;
  const orMore = firmness === 'at-least' || firmness === 'just-over';
  const mostMinutes = firmness === 'rough' ? feedMinutes * (1 + roughShare) : feedMinutes;
  if (minutes > mostMinutes || (orMore && minutes === feedMinutes)) return { value: 'no' };
  if (orMore) return { value: 'unknown' };
  return firmness !== 'rough' || minutes <= feedMinutes * (1 - roughShare) ? { value: 'yes' } : { value: 'unknown' };
}

/** Asked about one sign again: "it has stopped", and nothing else. */
export function saysOver({
  clauses,
  open,
  words: {
    signs,
    yesNo: { bareNo, filler },
  },
}: Said): boolean {
  const isNo = new RegExp(`^(?:${bareNo})$`);
  const bare = (clause: string) => clause.replace(filler, ' ').trim();
  return (
    open.clarifying === 'sign' &&
    clauses.some((clause) => signs.over.test(clause)) &&
    clauses.every((clause) => signs.over.test(clause) || isNo.test(bare(clause)) || bare(clause) === '')
  );
}

/**
 * Any danger sign. Signs themselves are heard before this; here is only yes, no, or signs said not to be there. Of the
 * asked list a caregiver often answers with the one sign that matters: "no fever" counts as no where nothing else is said.
 */
export function unwell(whole: Said, heard: SignsHeard): Found<YesNo> {
  const words = whole.words.answers;
  const said = part(whole, whole.plain.replace(words.noThermometer, ' | '));
  const plainly = saysOver(said) ? yesNo(said) : { value: 'yes' };
  if (heard.sure.length === 0 && (plainly === null || ('value' in plainly && plainly.value === 'no')))
    return { value: 'no' };
  if (words.notWell.test(said.plain.replace(words.notSoBad, ' '))) {
    return words.startsNo.test(said.plain) ? { unclear: 'two-answers' } : { value: 'yes' };
  }
  const rest = part(said, heard.rest.replace(words.noThermometer, ' | '));
  // "She's asleep, should I wake her?" asks; only a plain yes or no beside a question answers.
  const asks = said.plain.endsWith('?') || words.asksToo.test(said.plain);
  if (asks && yesNo(rest, { strictNo: true }) === null) return { unclear: 'unreadable' };
  const denies = heard.denied.length > 0;
  // "I read that wrong, no pain": beside signs denied, words of correction answer nothing.
  const found = yesNo(denies ? part(rest, withoutCorrection(rest)) : rest, words.unwell);
  const isYes = found !== null && 'value' in found && found.value === 'yes';
  // "Yes, I have strips" answers another question.
  if (isYes && (denies || words.otherMatter.test(rest.plain))) return { unclear: 'two-answers' };
  // "None. Well, one."
  const isNo = found !== null && 'value' in found && found.value === 'no';
  const someAfterAll = (clause: string) => said.words.signs.someAfterAll.test(clause);
  if (isNo && said.clauses.slice(1).some(someAfterAll)) return { unclear: 'two-answers' };
  const unread = heard.rest.replace(/[^\p{L}\p{N}]+/gu, ' ').trim();
  if (found || (said.plain.length > mostDenialLength && unread.length > mostUnreadLength)) return found;
  return denies && heard.sure.length + heard.near.length === 0 ? { value: 'no' } : null;
}
