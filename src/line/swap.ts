/** A nurse swaps a time on call by text: she asks, the other person agrees, and from then on each stands in the other's place. */

import type { Nurse } from '#src/rota/rota.ts';
import { askedSwap, askSwap, settleSwap } from '#src/rota/swaps.ts';
import { readSwap, type SwapSpan } from '#src/rota/swapWords.ts';
import { statement } from '#src/store/database.ts';
import type { NurseSay } from '#src/wording/nurseSays.ts';
import { audit } from './audit.ts';
import { opens, readFresh } from './caregiver.ts';
import type { HeardText } from './line.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import { phonesOf } from './reach.ts';
import type { Turn } from './turn.ts';
import { writeMessages } from './write.ts';

interface Desk {
  readonly parts: Parts;
  readonly turn: Turn;
  readonly phone: Phone;
  readonly nurse: Nurse;
}

/** How finely a time is looked through for who is on call. */
const stepMs = 15 * 60_000;

const isParent = statement(
  'swap.isParent',
  `SELECT 1 FROM family WHERE phone_id = $1 UNION ALL SELECT 1 FROM family_phone WHERE phone_id = $1
   UNION ALL SELECT 1 FROM "case" WHERE phone_id = $1 AND closed_ms IS NULL`,
);

/** Answers a text about a swap; false where it says nothing of one. Only people on the rota can. */
export async function answerSwap(parts: Parts, turn: Turn, phone: Phone, text: HeardText): Promise<boolean> {
  const nurse = parts.nurseOf(text.from);
  if (nurse === null) return false;
  const desk: Desk = { parts, turn, phone, nurse };
  const read = readSwap(text.body, parts.nurses, parts.protocol.site, turn.nowMs);
  switch (read?.word) {
    case 'ask':
      return ask(desk, read.other, read);
    case 'yes':
    case 'no':
      return (await settle(desk, read.word)) || tell(desk, nurse.number, { key: 'nothingPending', params: {} });
    case 'unclear':
      return (await couldBeCare(desk, text)) ? false : tell(desk, nurse.number, { key: 'swapForm', params: {} });
    case undefined:
      return settleBare(desk, text);
  }
}

async function ask(desk: Desk, other: Nurse, span: SwapSpan): Promise<true> {
  const { parts, turn, phone, nurse } = desk;
  const { fromMs, toMs } = span;
  if (other.number === nurse.number) return tell(desk, nurse.number, { key: 'swapForm', params: {} });
  if (!hasEither(parts, [nurse, other], span))
    return tell(desk, nurse.number, { key: 'swapNobody', params: { other: other.name } });
  const phones = await phonesOf(turn.client, parts.seal, [other.number], 0);
  const otherId = phones.get(other.number)?.phoneId;
  if (otherId === undefined) return tell(desk, nurse.number, { key: 'swapForm', params: {} });
  await askSwap(turn.client, turn.nowMs, phone.id, otherId, span);
  await tell(desk, other.number, { key: 'swapAsk', params: { asker: nurse.name, fromMs, toMs } });
  return tell(desk, nurse.number, { key: 'swapAsked', params: { other: other.name, fromMs, toMs } });
}

/** A bare yes or no is for the swap only where nothing else waits for one. */
async function settleBare(desk: Desk, text: HeardText): Promise<boolean> {
  if (desk.phone.pending !== null) return false;
  const { word } = desk.parts.readNurse(text.body);
  return word === 'yes' || word === 'no' ? settle(desk, word) : false;
}

/** False where no swap waits for this person. */
async function settle(desk: Desk, word: 'yes' | 'no'): Promise<boolean> {
  const { parts, turn, phone, nurse } = desk;
  const swap = await askedSwap(turn.client, parts.seal, phone.id, turn.nowMs);
  if (swap === null) return false;
  const { fromMs, toMs, askerNumber } = swap;
  const asker = parts.nurseOf(askerNumber)?.name ?? 'The nurse';
  await settleSwap(turn.client, swap, turn.nowMs, word);
  await audit(turn.client, turn.nowMs, word === 'yes' ? 'swap agreed' : 'swap refused', phone.id);
  if (word === 'no') {
    await tell(desk, askerNumber, { key: 'swapRefused', params: { other: nurse.name } });
    return tell(desk, nurse.number, { key: 'swapDeclined', params: { asker } });
  }
  await tell(desk, askerNumber, { key: 'swapAgreed', params: { other: nurse.name, fromMs, toMs } });
  return tell(desk, nurse.number, { key: 'swapAgreed', params: { other: asker, fromMs, toMs } });
}

function hasEither(parts: Parts, people: readonly Nurse[], { fromMs, toMs }: SwapSpan): boolean {
  const numbers = new Set(people.map(({ number }) => number));
  for (let ms = fromMs; ms < toMs; ms += stepMs)
    if (parts.onCall(ms).some((nurse) => nurse !== null && numbers.has(nurse.number))) return true;
  return false;
}

/** A nurse may be a parent too, and anybody's text can tell of a tube. */
async function couldBeCare({ parts, turn, phone }: Desk, text: HeardText): Promise<boolean> {
  if ((await turn.client.query(isParent, [phone.id])).length > 0) return true;
  return opens(readFresh(parts, turn, phone, null, text.body, null));
}

async function tell({ parts, turn }: Desk, number: string, say: NurseSay): Promise<true> {
  const body = parts.wordForNurse(say, { site: parts.protocol.site, nowMs: turn.nowMs });
  const phones = await phonesOf(turn.client, parts.seal, [number], 0);
  const messages = [...phones.values()].map(({ phoneId }) => ({ phoneId, kind: 'text' as const, body, urgent: false }));
  await writeMessages(parts.seal, turn, null, messages);
  return true;
}
