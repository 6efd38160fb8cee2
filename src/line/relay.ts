/** A family's text while a nurse writes with it: it goes to her as well, and what answers her answers no question of the line. */
import type { TextEvent, Unstamped } from '#machines/events.ts';
import { type LockedCase, rememberRelay } from './cases.ts';
import type { Parts } from './parts.ts';
import { caseName } from './plan.ts';
import type { Turn } from './turn.ts';
import { writeMessages } from './write.ts';

/** What stays what it is, whoever was asked: signs, wishes, and what happened to the tube. Everything else may be for her. */
const forTheLine: ReadonlySet<TextEvent['type']> = new Set([
  'signs',
  'outAgain',
  'tubeProblem',
  'cannotWait',
  'person',
  'correct',
  'stop',
  'help',
]);

/** Passes the text on where a nurse writes with the family, and gives back what the machines are to hear. */
export async function passOn(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  body: string,
  event: Unstamped<TextEvent>,
): Promise<Unstamped<TextEvent>> {
  const { relay } = theCase;
  if (relay === null || relay.untilMs < turn.nowMs) return event;
  const { site } = parts.protocol;
  const words = parts.wordForNurse(
    { key: 'reply', params: { ...caseName(theCase), words: body } },
    { site, nowMs: turn.nowMs },
  );
  await writeMessages(parts.seal, turn, theCase.id, [
    { phoneId: relay.phoneId, kind: 'text', body: words, urgent: false },
  ]);
  if (!relay.asked || forTheLine.has(event.type)) return event;
  await rememberRelay(turn.client, theCase.id, { ...relay, asked: false });
  const { told, person, corrects } = event;
  return { type: 'relayed', nurse: relay.nurse, told, person, corrects };
}
