/** The day team says that it has the handover. A nurse on call has to name it: her "got it" takes a page. */
import type { HeardText } from '#src/line/line.ts';
import type { Parts } from '#src/line/parts.ts';
import type { Phone } from '#src/line/phones.ts';
import { isNursesNumber } from '#src/line/reach.ts';
import type { Turn } from '#src/line/turn.ts';
import { writeMessages } from '#src/line/write.ts';
import { plainNurse } from '#src/reading/plainNurse.ts';
import { statement } from '#src/store/database.ts';

const plain = /^(?:(?:ok|okay|yes) )?(?:got it|got this|i have it|ive got it|we have it|received)$|^(?:ok|okay)$/;
const named = /^(?:(?:ok|okay|got|have|received)(?: the)? handover|(?:the )?handover (?:ok|okay|taken|received))$/;

const acknowledge = statement(
  'handover.acknowledge',
  `UPDATE handover SET acknowledged_ms = $1, acknowledged_by = $2
   WHERE acknowledged_ms IS NULL AND id = (SELECT max(id) FROM handover) RETURNING id`,
);
const hasCase = statement('handover.hasCase', 'SELECT 1 FROM "case" WHERE phone_id = $1 AND closed_ms IS NULL');

/** Takes a text as the acknowledgement of the newest handover; false where it is something else. */
export async function acknowledges(parts: Parts, turn: Turn, phone: Phone, text: HeardText): Promise<boolean> {
  if (!(await isAcknowledgement(parts, turn, phone, text))) return false;
  const taken = await turn.client.query(acknowledge, [turn.nowMs, phone.id]);
  const key = taken.length > 0 ? 'handoverTaken' : 'nothingHandedOver';
  const body = parts.wordForNurse({ key, params: {} }, { site: parts.protocol.site, nowMs: turn.nowMs });
  await writeMessages(parts.seal, turn, null, [{ phoneId: phone.id, kind: 'text', body, urgent: false }]);
  return true;
}

/** On the day team's own phone the bare words do, unless a case of that phone asks something. */
async function isAcknowledgement(parts: Parts, turn: Turn, phone: Phone, { from, body }: HeardText): Promise<boolean> {
  const isDayTeam = from === parts.protocol.site.handoverNumber;
  const isNurse = isNursesNumber(parts, from);
  if (!isDayTeam && !isNurse) return false;
  const words = plainNurse(body);
  if (named.test(words)) return true;
  if (isNurse || !plain.test(words)) return false;
  return (await turn.client.query(hasCase, [phone.id])).length === 0;
}
