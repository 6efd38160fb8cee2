/** A text comes in: one transaction answers it for good; if that fails twice, the safe message does. Read `hearOnce` first. */
import { acknowledges } from '#src/handover/acknowledge.ts';
import { answerInCase, answerWithoutCase } from './caregiver.ts';
import type { LockedCase } from './cases.ts';
import { hearOnPhone } from './heard.ts';
import { answerInRehearsal } from './inRehearsal.ts';
import { joinFamilyCase } from './joined.ts';
import type { HeardText } from './line.ts';
import { noteMedia } from './media.ts';
import { answerNurse } from './nurse.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import { isNursesNumber } from './reach.ts';
import { endRehearsal } from './rehearsal.ts';
import { answerParked, answerPaused, answerSafely } from './safeMessage.ts';
import { answerSwap } from './swap.ts';
import { inTransaction, type Turn } from './turn.ts';

/** Answers a text. Rejects only if not even the safe message could be kept: the carrier then uses its fallback. */
export async function hearText(parts: Parts, heard: HeardText): Promise<void> {
  const beganMs = performance.now();
  try {
    await answerForGood(parts, heard);
  } finally {
    parts.watch.turnTaken((performance.now() - beganMs) / 1000);
  }
}

async function answerForGood(parts: Parts, heard: HeardText): Promise<void> {
  const text = { ...heard, body: keepable(heard.body) };
  parts.checkpoint('text received');
  try {
    await hearOnce(parts, text);
  } catch (first) {
    parts.log.warn({ error: first }, 'a turn failed and is tried once more');
    try {
      await hearOnce(parts, text);
    } catch (second) {
      parts.log.error({ error: second }, 'a turn failed twice; the safe message goes out');
      parts.watch.safeMessageSent();
      await answerSafely(parts, text);
    }
  }
}

async function hearOnce(parts: Parts, text: HeardText): Promise<void> {
  await inTransaction(parts, text.cause, async (client, begin) => {
    const heard = await hearOnPhone(parts, client, text);
    if (heard === null) return;
    const { phone, openCase } = heard;
    parts.checkpoint('phone locked');
    const turn = { ...(await begin(phone.paused)), heard: text.body };
    if (await acknowledges(parts, turn, phone, text)) return;
    if (await answerSwap(parts, turn, phone, text)) return;
    if (isNursesNumber(parts, text.from) && (await answerNurse(parts, turn, phone, text))) return;
    const open = await openCase();
    const joined = open === null ? await joinFamilyCase(client, parts.seal, phone) : null;
    const theCase = open ?? joined;
    parts.checkpoint('case locked');
    if (theCase !== null && theCase.rehearsal !== null) await hearInRehearsal(parts, turn, phone, theCase, text);
    else if (turn.paused) await answerPaused(parts, turn, phone, theCase, text);
    else if (theCase === null) await answerWithoutCase(parts, turn, phone, text);
    else if (theCase.parked) await answerParked(parts, turn, theCase, text);
    else await answerInCase(parts, turn, phone, theCase, text, { joins: joined !== null });
    await noteMedia(parts, turn, phone, text);
  });
}

/** Paused, nobody practises: the text gets what any text gets then. */
async function hearInRehearsal(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  theCase: LockedCase,
  text: HeardText,
): Promise<void> {
  if (!turn.paused) return answerInRehearsal(parts, turn, phone, theCase, text);
  await endRehearsal(parts, turn, theCase, 'paused');
  await answerPaused(parts, turn, phone, null, text);
}

/** Half a character cannot be kept or sent; it becomes the sign for one that is missing. */
function keepable(body: string): string {
  return body.toWellFormed().replaceAll('\0', '');
}
