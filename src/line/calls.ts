/**
 * A call comes in: one transaction opens or joins the case, pages, and settles what is spoken and who is rung. If that fails
 * twice, the safe message goes out and the caller hears the static answer. Read `hearOnce` first.
 */

import { type CallPlan, findCall, keepCall } from './callPlan.ts';
import { answerRing } from './caregiver.ts';
import { familyOf, type LockedCase, lockOpenCase } from './cases.ts';
import { type Heard, hearOnPhone } from './heard.ts';
import { joinFamilyCase } from './joined.ts';
import { languageOf } from './language.ts';
import type { Family, HeardText } from './line.ts';
import { nurseRings } from './nurse/rings.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import type { Phone } from './phones.ts';
import { caseName } from './plan.ts';
import { isNursesNumber, lastTaker } from './reach.ts';
import { leaveRehearsal } from './rehearsal.ts';
import { toldEnough } from './restraint.ts';
import { answerParked, answerPaused, answerSafely, numbersOnCall } from './safeMessage.ts';
import { inTransaction, type Turn } from './turn.ts';

/** `id` is the carrier's: a call that is told again changes nothing and is answered the same. */
export interface HeardCall {
  /** E.164; null where the number is withheld. */
  readonly from: string | null;
  readonly id: string;
  readonly cause: string;
}

/** What the caller hears and whom it rings; null where nothing could be settled. Rejects only if nothing could be kept at all. */
export async function hearCall(parts: Parts, call: HeardCall): Promise<CallPlan | null> {
  try {
    return await hearOnce(parts, call);
  } catch (first) {
    parts.log.warn({ error: first }, 'a call failed and is tried once more');
    try {
      return await hearOnce(parts, call);
    } catch (second) {
      parts.log.error({ error: second }, 'a call failed twice; the safe message goes out');
      parts.watch.safeMessageSent();
      if (call.from !== null) await answerSafely(parts, asText(call, call.from));
      return null;
    }
  }
}

async function hearOnce(parts: Parts, call: HeardCall): Promise<CallPlan | null> {
  const { seal } = parts;
  return inTransaction(parts, call.cause, async (client, begin) => {
    const known = await findCall(client, seal, call.id);
    if (known !== null) return known.plan;
    const keep = async (turn: Turn, phone: Phone | null, theCase: LockedCase | null, plan: CallPlan) => {
      const of = { id: call.id, atMs: turn.nowMs, phoneId: phone?.id ?? null, caseId: theCase?.id ?? null };
      await keepCall(client, seal, of, plan);
      return plan;
    };
    if (call.from === null) {
      const turn = await begin(await isPaused(client));
      return keep(turn, null, null, await planFor(parts, turn, null, null, 'ring'));
    }
    const heard = await hearOnPhone(parts, client, asText(call, call.from));
    // Two processes were told at once: the other one has settled it.
    if (heard === null) return (await findCall(client, seal, call.id))?.plan ?? null;
    const { phone } = heard;
    const turn = await begin(phone.paused);
    if (isNursesNumber(parts, call.from)) {
      const rings = await nurseRings(parts, turn, phone);
      if (rings !== null) return keep(turn, phone, rings.theCase, rings.plan);
    }
    const rung = await rungBy(parts, turn, heard, asText(call, call.from));
    const theCase = await lockOpenCase(client, seal, rung.phone);
    return keep(turn, phone, theCase, await planFor(parts, turn, phone, theCase, rung.next));
  });
}

interface Rung {
  /** As it is now: it may have joined a case. */
  readonly phone: Phone;
  readonly next: 'ring' | 'text';
}

/** The family's case hears that it rang. Whoever texts without end and has no case is not put through. */
async function rungBy(parts: Parts, turn: Turn, { phone, openCase }: Heard, call: HeardText): Promise<Rung> {
  const { client } = turn;
  const found = await openCase();
  const open = found?.rehearsal == null ? found : null;
  // Who rings wants a person: that is real, whatever was practised.
  if (found !== null && open === null) await leaveRehearsal(parts, turn, found);
  const joined = open === null ? await joinFamilyCase(client, parts.seal, phone) : null;
  const theCase = open ?? joined;
  const now = { ...phone, joinedId: joined?.id ?? phone.joinedId };
  if (turn.paused) await answerPaused(parts, turn, phone, theCase, call);
  else if (theCase?.parked) await answerParked(parts, turn, theCase, call);
  else if (found === null && theCase === null && (await toldEnough(parts, turn, phone)))
    return { phone: now, next: 'text' };
  else await answerRing(parts, turn, phone, theCase);
  return { phone: now, next: 'ring' };
}

async function planFor(
  parts: Parts,
  turn: Turn,
  phone: Phone | null,
  theCase: LockedCase | null,
  next: 'ring' | 'text',
): Promise<CallPlan> {
  const { site } = parts.protocol;
  const { nowMs, client } = turn;
  const file: Family | null = theCase?.file ?? (phone === null ? null : await familyOf(client, parts.seal, phone.id));
  const scene = { language: languageOf(site, phone?.language ?? null, file), site, nowMs, child: file?.child ?? null };
  const family = theCase === null ? null : caseName(theCase);
  const nobody = turn.paused ? 'paused' : 'callUnanswered';
  return {
    language: scene.language,
    spoken: parts.word({ key: 'callAnswer', params: { next }, preface: [] }, scene),
    rings: next === 'ring' ? await whoIsRung(parts, turn, phone, theCase) : [],
    whisper: parts.wordForNurse({ key: 'familyRings', params: { family } }, { site, nowMs }),
    unanswered: parts.word({ key: nobody, params: {}, preface: [] }, scene),
    through: null,
  };
}

/** Whoever took the case last, then everybody on call by the rota; nobody twice, and never the caller herself. */
async function whoIsRung(
  parts: Parts,
  turn: Turn,
  phone: Phone | null,
  theCase: LockedCase | null,
): Promise<readonly string[]> {
  const taker = theCase === null ? null : await lastTaker(turn.client, parts.seal, theCase.id);
  const numbers = [...(taker === null ? [] : [taker.number]), ...(await numbersOnCall(parts, turn))];
  return [...new Set(numbers)].filter((number) => number !== phone?.number);
}

/** A call is kept among the phone's texts, without words. */
function asText({ id, cause }: HeardCall, from: string): HeardText {
  return { from, body: '', id, cause, kind: 'call' };
}
