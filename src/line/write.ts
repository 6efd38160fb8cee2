/** Writing a step down: case, event, messages, timers and pages in one statement, so a turn costs few round trips. */
import { statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { LockedCase } from './cases.ts';
import type { Parts } from './parts.ts';
import type { Plan, PlannedMessage } from './plan.ts';
import type { Link } from './record.ts';
import type { Turn } from './turn.ts';

export interface Written {
  /** The case as it is now, as JSON. */
  readonly snapshots: string;
  readonly plan: Plan;
  readonly link: Link;
  readonly type: string;
  readonly takerPhoneId: number | null;
}

const write = statement(
  'turn.write',
  `WITH stepped AS (
     UPDATE "case" SET snapshots = $2, closed_ms = $3, last_number = $4, last_hash = $5 WHERE id = $1
   ), happened AS (
     INSERT INTO event (case_id, number, at_ms, type, body, hash) VALUES ($1, $4, $6, $7, $8, $5)
   ), said AS (
     INSERT INTO message (phone_id, case_id, direction, kind, body, at_ms, cause, state, urgent)
     SELECT m.phone_id, $1, 'out', m.kind, m.body, $6, $9, 'waiting', m.urgent
     FROM unnest($10::bigint[], $11::text[], $12::bytea[], $13::boolean[])
       WITH ORDINALITY AS m (phone_id, kind, body, urgent, place) ORDER BY m.place
   ), stopped AS (
     DELETE FROM timer WHERE case_id = $1
       AND ($3::bigint IS NOT NULL OR (machine, id) IN (SELECT * FROM unnest($14::text[], $15::text[])))
   ), started AS (
     INSERT INTO timer (case_id, machine, id, started_by, what, event, started_ms, due_ms, cause)
     SELECT $1, t.machine, t.id, $4, t.what, t.event, $6, t.due_ms, $9
     FROM unnest($16::text[], $17::text[], $18::text[], $19::text[], $20::bigint[]) AS t (machine, id, what, event, due_ms)
     ON CONFLICT (case_id, machine, id) DO UPDATE SET started_by = excluded.started_by, what = excluded.what,
       event = excluded.event, started_ms = excluded.started_ms, due_ms = excluded.due_ms, cause = excluded.cause
   ), settled AS (
     UPDATE page SET open = false, taken_ms = CASE WHEN phone_id = $23 THEN $6 ELSE taken_ms END
     WHERE case_id = $1 AND open AND ($23::bigint IS NOT NULL OR $3::bigint IS NOT NULL)
   )
   INSERT INTO page (case_id, phone_id, level, at_ms, open)
   SELECT $1, g.phone_id, g.level, $6, $3::bigint IS NULL
   FROM unnest($21::bigint[], $22::text[]) WITH ORDINALITY AS g (phone_id, level, place) ORDER BY g.place`,
);

const insertMessages = statement(
  'message.write',
  `INSERT INTO message (phone_id, case_id, direction, kind, body, at_ms, cause, state, urgent, bridge_to)
   SELECT m.phone_id, $1, 'out', m.kind, m.body, $2, $3, 'waiting', m.urgent, m.bridge_to
   FROM unnest($4::bigint[], $5::text[], $6::bytea[], $7::boolean[], $8::bytea[])
     WITH ORDINALITY AS m (phone_id, kind, body, urgent, bridge_to, place) ORDER BY m.place`,
);

/** Writes one step. A case that closes keeps no timer, whatever the step started. */
export async function writeStep(parts: Parts, turn: Turn, theCase: LockedCase, written: Written): Promise<void> {
  const { plan, link } = written;
  const stops = plan.timers.filter((timer) => timer.type === 'cancelTimer');
  const starts = plan.closes ? [] : plan.timers.filter((timer) => timer.type === 'startTimer');
  const dueMs = starts.map((timer) => turn.nowMs + Math.round(timer.delayMs));
  await turn.client.query(write, [
    theCase.id,
    parts.seal.seal(written.snapshots),
    plan.closes ? turn.nowMs : null,
    link.number,
    link.hash,
    turn.nowMs,
    written.type,
    parts.seal.seal(link.body),
    turn.cause,
    ...messageColumns(parts.seal, plan.messages),
    stops.map((timer) => timer.machine),
    stops.map((timer) => timer.id),
    starts.map((timer) => timer.machine),
    starts.map((timer) => timer.id),
    starts.map((timer) => timer.what),
    starts.map((timer) => timer.event),
    dueMs,
    plan.pages.map((page) => page.phoneId),
    plan.pages.map((page) => page.level),
    written.takerPhoneId,
  ]);
  turn.dueMs.push(...dueMs);
}

/** Messages outside a step: to a nurse, or to a phone without a case. */
export async function writeMessages(
  seal: Seal,
  turn: Turn,
  caseId: number | null,
  messages: readonly PlannedMessage[],
): Promise<void> {
  await turn.client.query(insertMessages, [
    caseId,
    turn.nowMs,
    turn.cause,
    ...messageColumns(seal, messages),
    messages.map(({ bridgeTo }) => (bridgeTo === undefined ? null : seal.seal(bridgeTo))),
  ]);
}

function messageColumns(seal: Seal, messages: readonly PlannedMessage[]): unknown[][] {
  return [
    messages.map((message) => message.phoneId),
    messages.map((message) => message.kind),
    messages.map((message) => seal.seal(message.body)),
    messages.map((message) => message.urgent),
  ];
}
