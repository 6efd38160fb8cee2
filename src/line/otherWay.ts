/**
 * The other way round: a text that does not arrive (opted out, a landline, a handset out of reach) is read out by telephone
 * instead, and a nurse is called for a family that cannot be reached. A nurse's page that climbs goes on by itself.
 */
import { levelOf } from '#machines/paging/levels.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import { statement } from '#src/store/database.ts';
import { type LockedCase, lockCase } from './cases.ts';
import type { Parts } from './parts.ts';
import { type Turn, takeStep } from './turn.ts';
import { writeMessages } from './write.ts';

/** A message the carrier will never deliver; `why` is its code, where it told one. */
export interface Refusal {
  readonly id: number;
  readonly why: string | null;
}

/** The recipient opted out at the carrier. Source: the carrier's published error codes. */
const optedOutCode = '21610';

interface RefusedRow {
  readonly id: number;
  readonly phone_id: number;
  readonly case_id: number | null;
  readonly kind: MessageKind;
  readonly body: Buffer;
  readonly urgent: boolean;
  /** The page was made by telephone too. */
  readonly rung: boolean;
  /** An earlier message of this case to this phone was refused too. */
  readonly before: boolean;
}

const readRefused = statement(
  'otherWay.read',
  `SELECT m.id, m.phone_id, m.case_id, m.kind, m.body, m.urgent,
     EXISTS (SELECT FROM message o WHERE o.phone_id = m.phone_id AND o.case_id = m.case_id AND o.kind = 'call'
       AND o.at_ms = m.at_ms) AS rung,
     EXISTS (SELECT FROM message o WHERE o.phone_id = m.phone_id AND o.case_id = m.case_id AND o.state = 'refused'
       AND o.id < m.id) AS before
   FROM message m WHERE m.id = ANY ($1) ORDER BY m.id`,
);
const optOut = statement(
  'otherWay.optOut',
  'UPDATE phone SET opted_out = true FROM message m WHERE m.phone_id = phone.id AND m.id = ANY ($1)',
);

/** Sends what was refused another way, within the transaction that writes the refusals down. */
export async function goAnotherWay(parts: Parts, turn: Turn, refusals: readonly Refusal[]): Promise<void> {
  const optedOut = refusals.filter(({ why }) => why === optedOutCode).map(({ id }) => id);
  if (optedOut.length > 0) await turn.client.query(optOut, [optedOut]);
  const rows = await turn.client.query<RefusedRow>(readRefused, [refusals.map(({ id }) => id)]);
  for (const row of rows) {
    if (row.case_id === null) continue; // said to nobody's case: the log has it
    const theCase = await lockCase(turn.client, parts.seal, row.case_id);
    if (theCase === null) continue;
    if (theCase.rehearsal !== null) continue; // nobody is rung for practice; its silence ends it
    const toFamily = row.phone_id === theCase.phoneId;
    const toJoined = theCase.joinedIds.includes(row.phone_id);
    if (row.kind === 'text' && (toFamily || toJoined || !row.rung)) await readOut(parts, turn, theCase, row);
    if (toFamily && !row.before) await callNurse(parts, turn, theCase);
  }
}

async function readOut(parts: Parts, turn: Turn, theCase: LockedCase, row: RefusedRow): Promise<void> {
  const body = parts.seal.open(row.body);
  await writeMessages(parts.seal, turn, theCase.id, [
    { phoneId: row.phone_id, kind: 'call', body, urgent: row.urgent },
  ]);
}

/** Once a case: whoever takes it knows that this family has to be rung. A parked case has everybody's attention already. */
async function callNurse(parts: Parts, turn: Turn, theCase: LockedCase): Promise<void> {
  if (theCase.parked || theCase.snapshots === null) return;
  const reason = 'not-reached';
  const event = { type: 'page.raise', reason, level: levelOf[reason] } as const;
  await takeStep(parts, turn, theCase, (stamp) => ({ machine: 'paging', event: { ...event, ...stamp } }), {
    answering: false,
  });
}
