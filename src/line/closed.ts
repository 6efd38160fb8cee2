/** A text soon after a nurse closed its case: unless it tells of something new, it is about that case and opens no other. */
import { leftAs } from '#machines/dislodgement/outcomes.ts';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import type { Left } from '#machines/says.ts';
import { statement } from '#src/store/database.ts';
import { type CaseRow, caseColumns, caseOf } from './cases.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import { protocolOf } from './protocols.ts';
import type { Turn } from './turn.ts';

/** A night; common practice, no source. */
const soonMs = 12 * 60 * 60_000;

const closedSoon = statement(
  'closed.soon',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE (c.phone_id = $1 OR c.id = $2) AND c.closed_ms > $3 AND NOT c.rehearsal AND c.parked_ms IS NULL
   ORDER BY c.closed_ms DESC LIMIT 1`,
);

/** How a nurse left the phone's last case, where she closed it not long ago; else null. */
export async function leftLately(parts: Parts, turn: Turn, phone: Phone): Promise<Left | null> {
  const [row] = await turn.client.query<CaseRow>(closedSoon, [phone.id, phone.joinedId, turn.nowMs - soonMs]);
  if (row === undefined) return null;
  const { protocolId, snapshots } = caseOf(parts.seal, row);
  if (snapshots === null) return null;
  const view = parts.machines.viewCase(await protocolOf(turn.client, protocolId), snapshots);
  return view.states.conversation.includes('dislodgement.closed') ? leftAs(view) : null;
}

/** Whether a text, read as if a tube were in, says what no closed case has heard: a sign, a wish, a tube out, any fact. */
export function tellsNew({ type, told, person }: Unstamped<TextEvent>): boolean {
  return person || Object.keys(told).length > 0 || !nothingNew.has(type);
}

const nothingNew: ReadonlySet<TextEvent['type']> = new Set(['told', 'unclear', 'smallTalk', 'repeat', 'correct']);

/** Whether it wants what only an open case brings: a person. */
export function wantsSomebody({ type, person }: Unstamped<TextEvent>): boolean {
  return person || type === 'person' || type === 'cannotWait';
}
