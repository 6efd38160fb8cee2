/**
 * Restraint towards a phone without a case that texts without end: all it writes is kept and read, a tube or a danger in it opens a
 * case as always, and it is answered; but no more than once in ten minutes. An open case is never held back.
 */
import { statement } from '#src/store/database.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import type { Turn } from './turn.ts';

/** More texts than this within an hour are no conversation; common practice, no source. */
export const textsMost = 30;
const withinMs = 3_600_000;
/** How often it is answered from then on; common practice, no source. */
export const answerEveryMs = 10 * 60_000;

const look = statement(
  'restraint.look',
  `SELECT COALESCE((SELECT at_ms FROM message WHERE phone_id = $1 AND direction = 'in'
       ORDER BY id DESC OFFSET ${textsMost} LIMIT 1) > $2, false)
     AND COALESCE((SELECT at_ms FROM message WHERE phone_id = $1 AND direction = 'out'
       ORDER BY id DESC LIMIT 1) > $3, false) AS enough`,
);

/** Whether it has been told enough for now. On a practice line never: its clock stands still, and its answers cost nothing. */
export async function toldEnough(parts: Parts, turn: Turn, phone: Phone): Promise<boolean> {
  if (parts.kind === 'practice') return false;
  const [row] = await turn.client.query<{ enough: boolean }>(look, [
    phone.id,
    turn.nowMs - withinMs,
    turn.nowMs - answerEveryMs,
  ]);
  const enough = row?.enough === true;
  if (enough)
    parts.log.warn({ phoneId: phone.id }, 'a phone without a case texts without end and is not answered each time');
  return enough;
}
