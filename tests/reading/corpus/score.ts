/** What became of one corpus text: read exactly, asked again, or read wrongly. */
import type { Sign } from '#machines/facts.ts';
import type { Open, Reading } from '#src/reading/read.ts';
import type { CorpusFile, Entry, Expectation } from './entries.ts';
import { compareTold, factsOf, matches } from './match.ts';

export type Outcome = 'exact' | 're-asked' | 'wrong';
type Event = Reading['event'];
type Signs = NonNullable<Expectation['signs']>;

const stronger: Partial<Record<Sign, Sign>> = {
  'fresh-blood': 'bleeding',
  pain: 'severe-pain',
  'tight-belly': 'hard-belly',
};

/** After these the open question still stands, and nothing was decided. */
const reasking: readonly string[] = ['unclear', 'told', 'smallTalk', 'unknownDevice', 'repeat', 'correct', 'person'];

/** What the reader knows while it reads this entry. */
export function openOf(file: CorpusFile, entry: Entry): Open {
  return {
    asking: entry.asking === undefined ? file.asking : entry.asking,
    clarifying: entry.clarifying ?? null,
    bareWeight: entry.bareWeight ?? null,
    answered: null,
    caseOpen: file.caseOpen,
    tubeIn: entry.tubeIn ?? file.tubeIn,
    children: file.children,
    nowMs: Date.parse(file.now),
    timeZone: file.zone,
    language: file.language,
  };
}

/** The outcome of one reading, the worst of all that the entry expects. */
export function score(entry: Entry, open: Open, reading: Reading): Outcome {
  const { event } = reading;
  if (entry.label === 'must-reask') return scoreReask(event, open);
  const expected = entry.expect ?? {};
  const parts: Outcome[] = [scoreTold(expected, event, open), scoreUnasked(expected, event)];
  parts.push(scorePerson(expected, event));
  if (expected.rehearsal !== undefined && expected.rehearsal !== reading.rehearsal) parts.push('wrong');
  if (expected.saysWho !== undefined && expected.saysWho !== reading.saysWho) parts.push('re-asked');
  if (expected.why !== undefined && !('why' in event && event.why === expected.why)) parts.push('re-asked');
  if (expected.about) parts.push(scoreAbout(expected.about, reading.about));
  if (expected.signs) parts.push(scoreSigns(expected, expected.signs, event, open));
  if (expected.noSure && event.type === 'signs') parts.push('re-asked');
  if (expected.value || expected.event) parts.push(scoreMeaning(expected, event, open));
  return worst(parts);
}

/** A wish for a person that goes unheard is wrong; one that nobody had wakes a nurse for nothing. */
function scorePerson(expected: Expectation, event: Event): Outcome {
  const wished = expected.person === true || expected.event?.includes('person') === true;
  const heard = event.person || event.type === 'person';
  if (wished === heard) return 'exact';
  return heard || expected.person !== true ? 're-asked' : 'wrong';
}

function worst(parts: readonly Outcome[]): Outcome {
  if (parts.includes('wrong')) return 'wrong';
  return parts.includes('re-asked') ? 're-asked' : 'exact';
}

function asksAgain(event: Event): boolean {
  return reasking.includes(event.type) || (event.type === 'signs' && event.sure.length === 0);
}

function scoreReask(event: Event, open: Open): Outcome {
  const told = compareTold({}, {}, event.told, null).wrong;
  const ownFactTold = factsOf(open.asking).some((name) => told.includes(name));
  return asksAgain(event) && !ownFactTold ? 're-asked' : 'wrong';
}

function scoreTold(expected: Expectation, event: Event, open: Open): Outcome {
  const { wrong, missed } = compareTold(expected.told ?? {}, expected.mayTell ?? {}, event.told, open.asking);
  if (wrong.length > 0) return 'wrong';
  return missed.length > 0 ? 're-asked' : 'exact';
}

/** A sure sign, a stop or a help request that the text does not contain. */
function scoreUnasked(expected: Expectation, event: Event): Outcome {
  if (event.type === 'stop' || event.type === 'help') return expected.event?.includes(event.type) ? 'exact' : 'wrong';
  if (event.type !== 'signs') return 'exact';
  const allowed: Sign[] = [...(expected.signs?.sure ?? []), ...(expected.alsoSure ?? [])];
  return event.sure.every((sign) => allowed.includes(sign)) ? 'exact' : 'wrong';
}

/** Missed altogether is wrong, but where the signs are the very question and it is asked again or answered yes. */
function scoreSigns(all: Expectation, expected: Signs, event: Event, open: Open): Outcome {
  const signsAsked = open.asking === 'unwell' || open.asking === 'after-in';
  const wanted = [...expected.sure, ...expected.near, ...(all.alsoSure ?? [])];
  if (event.type !== 'signs') {
    const safe = asksAgain(event) || (expected.sure.length > 0 && 'value' in event && event.value === 'yes');
    return signsAsked && safe ? 're-asked' : expected.sure.length === 0 && asksAgain(event) ? 're-asked' : 'wrong';
  }
  // A stronger sign that the corpus allows says the weaker one too.
  const heard = (sign: Sign) =>
    [sign, stronger[sign]].some((one) => one !== undefined && wanted.includes(one) && event.sure.includes(one));
  if (expected.sure.length > 0 && expected.sure.every(heard)) return 'exact';
  if (expected.sure.length === 0 && expected.near.some((sign) => event.near.includes(sign))) return 'exact';
  return wanted.some((sign) => event.sure.includes(sign) || event.near.includes(sign)) ? 're-asked' : 'wrong';
}

/** Taking a thank-you or another matter for a tube, or a tube for a thank-you, is wrong; asking which it is, is not. */
function scoreAbout(expected: Reading['about'], read: Reading['about']): Outcome {
  if (expected === read) return 'exact';
  if (read === 'thanks' || expected === 'thanks') return read === 'other' ? 're-asked' : 'wrong';
  return 're-asked';
}

/** `in` has the line ask how it went. */
function scoreMeaning(expected: Expectation, event: Event, open: Open): Outcome {
  const step = event.type === 'repeat' ? event.step : null;
  if (expected.event?.includes(event.type)) return step === (expected.step ?? null) ? 'exact' : 're-asked';
  if (event.type === `answer.${open.asking}` && 'value' in event) {
    if (expected.value?.some((accepted) => matches(accepted, event.value))) return 'exact';
    return event.value === 'in' ? 're-asked' : 'wrong';
  }
  if (event.type === 'signs' && expected.alsoSure) return 're-asked';
  return asksAgain(event) ? 're-asked' : 'wrong';
}
