/** A caregiver's text: read against the open question and given to the case, or, without a case, the way to one. */
import type { Heard, TextEvent, Unstamped } from '#machines/events.ts';
import type { Say } from '#machines/says.ts';
import { MissingRow } from '#src/errors.ts';
import { namesOf } from '#src/families/children.ts';
import type { Reading } from '#src/reading/read.ts';
import { statement } from '#src/store/database.ts';
import { familyOf, insertNewCase, type LockedCase } from './cases.ts';
import { leftLately, tellsNew, wantsSomebody } from './closed.ts';
import { afterReading, languageOf, languagesOf } from './language.ts';
import type { Family, HeardText } from './line.ts';
import { adoptMedia } from './media.ts';
import type { Parts } from './parts.ts';
import { optOut, type Phone, rememberAsked } from './phones.ts';
import { protocolOf } from './protocols.ts';
import { beginRehearsal, endFamilyRehearsals } from './rehearsal.ts';
import { passOn } from './relay.ts';
import { toldEnough } from './restraint.ts';
import { fittingCase, goOnThere, noteWhoWrites } from './sameChild.ts';
import { type SignalAt, type StepOptions, type Turn, takeStep } from './turn.ts';
import { writeMessages } from './write.ts';

const saidSince = statement(
  'caregiver.saidSince',
  "SELECT EXISTS (SELECT FROM message WHERE phone_id = $1 AND direction = 'out' AND at_ms > $2) AS overtaken",
);

const textBefore = statement(
  'caregiver.textBefore',
  "SELECT body FROM message WHERE phone_id = $1 AND id < $2 AND direction = 'in' ORDER BY id DESC LIMIT 1",
);

/** Gives the text to the open case. */
export async function answerInCase(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  theCase: LockedCase,
  text: HeardText,
  { joins }: { readonly joins: boolean },
): Promise<void> {
  const { reading, event: said } = await readInCase(parts, turn, phone, theCase, text);
  const fitting = answersWho(said) ? await fittingCase(turn.client, parts.seal, text.body) : null;
  if (fitting !== null) return goOnThere(parts, turn, phone, theCase, fitting, said);
  if (reading.event.type === 'unclear') parts.watch.textUnread();
  const known = await noteWhoWrites(turn.client, phone, theCase.file, reading, said);
  const heard = await passOn(parts, turn, theCase, text.body, known);
  const { language } = await afterReading(turn.client, phone.id, phone, theCase.file, reading);
  const { event, catchesUp } = joins ? whatJoinerMeans(heard) : { event: heard, catchesUp: false };
  const own = phone.id === theCase.phoneId;
  await stepWith(parts, turn, own ? { ...theCase, language } : theCase, event, {
    answering: true,
    speakerId: phone.id,
    ...(catchesUp && { onlyTo: phone.id }),
  });
  if (event.type === 'stop') await optOut(turn.client, phone, true);
  if (reading.about === 'start') await optOut(turn.client, phone, false);
}

/** A name and digits, given to whose child it is. */
function answersWho(event: Unstamped<TextEvent>): boolean {
  return event.type === 'unclear' && event.why === 'no-match';
}

/** A text as it is read against what its case asks, and what it means there. */
export async function readInCase(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  theCase: LockedCase,
  text: HeardText,
): Promise<{ readonly reading: Reading; readonly event: Unstamped<TextEvent> }> {
  const protocol = await protocolOf(turn.client, theCase.protocolId);
  if (theCase.snapshots === null) throw new MissingRow('snapshots');
  const view = parts.machines.viewCase(protocol, theCase.snapshots);
  const { saidMs, overtaken } = await whenSaid(turn, phone, text);
  const open = overtaken ? { asking: null, clarifying: null, bareWeight: null, answered: null } : view;
  const reading = parts.read(text.body, {
    asking: open.asking,
    clarifying: open.clarifying,
    bareWeight: open.bareWeight,
    answered: open.answered,
    caseOpen: true,
    children: namesOf(theCase.file),
    onlyChild: theCase.file?.child ?? null,
    // A tube half out, or in its place, can still come all the way out.
    tubeIn: view.tubeIn !== null || view.inside === 'half-out' || view.inside === 'in-place',
    halfOut: view.inside === 'half-out',
    readingKnown: view.facts.ph !== undefined,
    inUse: view.disposition === 'use' || view.disposition === 'own-tube',
    onTheWay: view.asking === null && (view.disposition === 'go-in' || view.disposition === 'emergency'),
    rechecking: view.asking === null && view.disposition === 'recheck',
    nowMs: saidMs,
    timeZone: protocol.site.timeZone,
    language: languageOf(protocol.site, phone.language, theCase.file),
    languages: languagesOf(protocol.site),
    siteWords: protocol.site.words,
  });
  return { reading, event: withMedia(reading.event, text) };
}

/**
 * A text that comes late is read as of when it was said; where the line has said something since, it is no answer to what is
 * asked now.
 */
async function whenSaid(turn: Turn, phone: Phone, { saidAtMs }: HeardText) {
  if (saidAtMs === undefined) return { saidMs: turn.nowMs, overtaken: false };
  const [row] = await turn.client.query<{ overtaken: boolean }>(saidSince, [phone.id, saidAtMs]);
  return { saidMs: Math.min(saidAtMs, turn.nowMs), overtaken: row?.overtaken ?? false };
}

/** Opens a case where the text is about a tube or tells a danger; else one short answer, and one question. */
export async function answerWithoutCase(parts: Parts, turn: Turn, before: Phone, text: HeardText): Promise<void> {
  const family = await familyOf(turn.client, parts.seal, before.id);
  const said: Turn = { ...turn, nowMs: Math.min(text.saidAtMs ?? turn.nowMs, turn.nowMs) };
  const reading = readFresh(parts, said, before, family, text.body, null);
  const phone = await afterReading(turn.client, before.id, before, family, reading);
  if (reading.event.type === 'stop') {
    await optOut(turn.client, phone, true);
    return sayPlain(parts, turn, phone, family, { key: 'stopped', params: {}, preface: [] });
  }
  if (reading.about === 'start') await optOut(turn.client, phone, false);
  if (reading.event.type === 'help' || reading.about === 'start')
    return sayPlain(parts, turn, phone, family, { key: 'help', params: {}, preface: [] });
  if (reading.rehearsal === 'wish' && reading.event.type !== 'signs' && !phone.optedOut) {
    await rememberAsked(turn.client, phone, false);
    return beginRehearsal(parts, turn, phone, family, null);
  }
  const open = async (event: Unstamped<TextEvent>, says: Pick<Reading, 'saysWho'>) => {
    const known = await noteWhoWrites(turn.client, phone, family, says, event);
    await openWith(parts, turn, phone, family, known);
  };
  const answer = phone.askedAboutTube ? readFresh(parts, said, phone, family, text.body, 'confirm').event : null;
  if (reading.about !== 'thanks' && !saysYes(answer)) {
    const left = await leftLately(parts, turn, phone);
    if (left !== null) {
      const after = readFresh(parts, said, phone, family, text.body, null, { tubeIn: true }).event;
      if (wantsSomebody(after) && !opens(reading)) return open(after, reading);
      if (!tellsNew(after)) {
        const asks = answer?.type !== 'answer.confirm';
        await rememberAsked(turn.client, phone, asks);
        return sayPlain(parts, turn, phone, family, { key: 'closedByNurse', params: { left, asks }, preface: [] });
      }
    }
  }
  const says = async () => ({
    saysWho: reading.saysWho || (phone.askedAboutTube && (await saidWhoBefore(parts, turn, phone, family))),
  });
  if (opens(reading)) return open(withMedia(reading.event, text), await says());
  if (answer !== null) {
    if (saysYes(answer)) return open({ type: 'told', ...heardIn(answer) }, await says());
    if (answer.type === 'answer.confirm') {
      await rememberAsked(turn.client, phone, false);
      return sayPlain(parts, turn, phone, family, { key: 'notAboutTube', params: {}, preface: [] });
    }
  }
  if (reading.about === 'thanks')
    return sayPlain(parts, turn, phone, family, { key: 'thanks', params: {}, preface: [] });
  await rememberAsked(turn.client, phone, true);
  return sayPlain(parts, turn, phone, family, { key: 'askAboutTube', params: {}, preface: [] });
}

function saysYes(event: Unstamped<TextEvent> | null): boolean {
  return event?.type === 'answer.confirm' && event.value === 'yes';
}

/** Whether the text before, which was asked whether it is about a tube, said who is writing. */
async function saidWhoBefore(parts: Parts, turn: Turn, phone: Phone, family: Family | null): Promise<boolean> {
  const [row] = await turn.client.query<{ body: Buffer }>(textBefore, [phone.id, phone.heardId]);
  return row !== undefined && readFresh(parts, turn, phone, family, parts.seal.open(row.body), null).saysWho;
}

/** Whether the text of a phone without a case opens one: about a tube, or a danger. */
export function opens(reading: Reading): boolean {
  return reading.about === 'tube' || (reading.event.type === 'signs' && reading.event.sure.length > 0);
}

/** Opens a real case with this text; what the family practised is over. */
export async function openWith(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  family: Family | null,
  event: Unstamped<TextEvent>,
  options?: StepOptions,
): Promise<LockedCase> {
  const snapshots = parts.machines.openCase(parts.protocol, family, turn.nowMs);
  const theCase = await insertNewCase(parts, turn, phone, { file: family, snapshots });
  if (phone.askedAboutTube) await adoptMedia(turn, theCase);
  await endFamilyRehearsals(parts, turn, phone);
  await stepWith(parts, turn, theCase, event, options);
  await rememberAsked(turn.client, phone, false);
  return theCase;
}

/** The family rang: it wants a person, whatever is asked now, and it gets texts as well, unless it opted out of them. */
export async function answerRing(parts: Parts, turn: Turn, phone: Phone, theCase: LockedCase | null): Promise<void> {
  const event = { type: 'person', rang: true, told: {}, person: false, corrects: false } as const;
  const options = { answering: false, speakerId: phone.id };
  if (theCase !== null) return stepWith(parts, turn, theCase, event, options);
  await openWith(parts, turn, phone, await familyOf(turn.client, parts.seal, phone.id), event, options);
}

async function stepWith(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  event: Unstamped<TextEvent>,
  options: StepOptions = { answering: true },
): Promise<void> {
  const signalAt: SignalAt = (stamp) => ({ machine: 'conversation', event: { ...event, ...stamp } });
  await takeStep(parts, turn, theCase, signalAt, options);
}

/** Reads a text of a phone without a case, or its answer to whether it is about a tube; `tubeIn`: as if it had one with a tube in. */
export function readFresh(
  parts: Parts,
  turn: Turn,
  phone: Pick<Phone, 'language'>,
  family: Family | null,
  body: string,
  asking: 'confirm' | null,
  { tubeIn } = { tubeIn: false },
): Reading {
  return parts.read(body, {
    asking,
    clarifying: null,
    bareWeight: null,
    answered: null,
    caseOpen: asking !== null || tubeIn, // its answer is read as one to an open question
    tubeIn,
    children: namesOf(family),
    onlyChild: family?.child ?? null,
    nowMs: turn.nowMs,
    timeZone: parts.protocol.site.timeZone,
    language: languageOf(parts.protocol.site, phone.language, family),
    languages: languagesOf(parts.protocol.site),
    siteWords: parts.protocol.site.words,
  });
}

/** A picture without words that can be read is kept for the nurse; it is never a reading. */
function withMedia(event: Unstamped<TextEvent>, text: HeardText): Unstamped<TextEvent> {
  const wordless = event.type === 'unclear' || event.type === 'smallTalk';
  return wordless && (text.media?.length ?? 0) > 0 ? { type: 'media', ...heardIn(event) } : event;
}

/** Whoever joins has not seen the question: a text that answers nothing hears it, and, where it told nothing, hears it alone. */
function whatJoinerMeans(event: Unstamped<TextEvent>): {
  readonly event: Unstamped<TextEvent>;
  readonly catchesUp: boolean;
} {
  if (!answersNothing.has(event.type)) return { event, catchesUp: false };
  const { told, person } = event;
  return {
    event: { type: 'repeat', step: null, ...heardIn(event) },
    catchesUp: Object.keys(told).length === 0 && !person,
  };
}

const answersNothing: ReadonlySet<TextEvent['type']> = new Set(['told', 'unclear', 'unknownDevice', 'smallTalk']);

/** What any text carries beside its main meaning. */
function heardIn({ told, person, corrects }: Unstamped<TextEvent>): Unstamped<Heard> {
  return { told, person, corrects };
}

async function sayPlain(parts: Parts, turn: Turn, phone: Phone, family: Family | null, say: Say): Promise<void> {
  if (await toldEnough(parts, turn, phone)) return;
  const { site } = parts.protocol;
  const language = languageOf(site, phone.language, family);
  const body = parts.word(say, { language, site, nowMs: turn.nowMs, child: family?.child ?? null });
  await writeMessages(parts.seal, turn, null, [{ phoneId: phone.id, kind: 'text', body, urgent: false }]);
}
