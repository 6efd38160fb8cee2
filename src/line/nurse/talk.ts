/** She and the family: her words relayed and signed, its replies to her, and a telephone call that shows neither's number. */
import type { Say } from '#machines/says.ts';
import type { NurseSay } from '#src/wording/nurseSays.ts';
import { type LockedCase, rememberRelay } from '../cases.ts';
import { listenersOf, toListeners } from '../joined.ts';
import { languageOf } from '../language.ts';
import { caseName, hearsNothing } from '../plan.ts';
import { writeMessages } from '../write.ts';
import { remember } from './confirmed.ts';
import { type Desk, isSay, look, meant, otherTaker, takenByHer, tellPhone, touch } from './desk.ts';

/** How long the family's texts go to her as well; common practice, no source. */
export const relayMs = 60 * 60_000;
/** With the signature it fits two segments. */
const mostCharacters = 200;

/** A case that is hers to talk in: taken by her, or by nobody, and then by her from now on. */
async function hers(desk: Desk, named: LockedCase | null, word: string): Promise<LockedCase | NurseSay> {
  const theCase = meant(desk, named, word);
  if (isSay(theCase)) return theCase;
  const [found] = await look(desk, [theCase]);
  if (found === undefined) return theCase;
  const other = await otherTaker(desk, found);
  if (other !== null) return { key: 'notYours', params: { ...caseName(theCase), nurse: other.nurse } };
  return takenByHer(desk, found);
}

/** Sends her words to the family; in another language only after her yes, as nobody here translates. */
export async function tellFamily(desk: Desk, named: LockedCase | null, words: string): Promise<NurseSay> {
  if ([...words].length > mostCharacters) return { key: 'tellTooLong', params: { most: mostCharacters } };
  const theCase = await hers(desk, named, 'TELL');
  if (isSay(theCase)) return theCase;
  if (hearsNothing(await listenersOf(desk.turn.client, theCase))) return { key: 'notSent', params: caseName(theCase) };
  const language = languageOf(desk.parts.protocol.site, theCase.language, theCase.file);
  if (language !== 'en') {
    await remember(desk, 'tell', theCase, words);
    return { key: 'tellConfirm', params: { ...caseName(theCase), language } };
  }
  return sendAnyway(desk, theCase, words);
}

export async function sendAnyway(desk: Desk, theCase: LockedCase, words: string): Promise<NurseSay> {
  const { turn, phone, name } = desk;
  await sayToFamily(desk, theCase, { key: 'relay', params: { nurse: name, words }, preface: [] });
  await rememberRelay(turn.client, theCase.id, {
    phoneId: phone.id,
    nurse: name,
    untilMs: turn.nowMs + relayMs,
    asked: true,
  });
  await touch(desk, theCase);
  return { key: 'told', params: caseName(theCase) };
}

/** The line rings her, then the family; each sees the line's number, and the family is told so first. */
export async function putThrough(desk: Desk, named: LockedCase | null): Promise<NurseSay> {
  const theCase = await hers(desk, named, 'CALL');
  if (isSay(theCase)) return theCase;
  await announceCall(desk, theCase);
  const call = { key: 'bridgeCall', params: caseName(theCase) } as const;
  await tellPhone(desk, desk.phone.id, call, { kind: 'call', urgent: true, bridgeTo: theCase.number });
  return { key: 'calling', params: caseName(theCase) };
}

/** The family hears which number will ring. */
export async function announceCall(desk: Desk, theCase: LockedCase): Promise<void> {
  const params = { nurse: desk.name, number: desk.parts.lineNumber };
  await sayToFamily(desk, theCase, { key: 'ringSoon', params, preface: [] });
  await touch(desk, theCase);
}

async function sayToFamily({ parts, turn }: Desk, theCase: LockedCase, say: Say): Promise<void> {
  const listeners = await listenersOf(turn.client, theCase);
  const saying = { say, kind: 'text', urgent: false } as const;
  const messages = toListeners(parts, turn, parts.protocol.site, theCase, listeners, saying);
  await writeMessages(parts.seal, turn, theCase.id, messages);
}
