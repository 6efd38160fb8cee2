/** Timers coming true: lock the case, check the token, take the step. Late, twice or stale is harmless. */
import { z } from 'zod';
import { type MachineName, machineNames } from '#machines/effects.ts';
import { statement } from '#src/store/database.ts';
import { type CaseRow, caseColumns, caseOf, type LockedCase } from './cases.ts';
import type { Parts } from './parts.ts';
import { pausedColumn } from './pause.ts';
import { endRehearsal, rehearsalTimer } from './rehearsal.ts';
import { callAgain, parkAfterTimer, parkPaused } from './safeMessage.ts';
import { fireScheduled } from './scheduled.ts';
import { inTransaction, type SignalAt, type Turn, takeStep } from './turn.ts';

const dueShape = z.object({
  case_id: z.number(),
  machine: z.enum(machineNames),
  id: z.string(),
  started_by: z.number(),
  event: z.string(),
  started_ms: z.number(),
  due_ms: z.number(),
  cause: z.string(),
});
export type DueTimer = z.infer<typeof dueShape>;

/** What the statechart library calls a delayed transition coming true. */
const afterShape = z.templateLiteral(['xstate.after.', z.string()]);

const batch = 200;
/** How often a paused line looks whether what follows a tube in place may go on; common practice, no source. */
const pausedAgainMs = 15 * 60_000;
/** Where more is due than one look takes, pages climb first: a person is waited for. */
const findDue = statement(
  'timer.due',
  `SELECT * FROM (
     SELECT case_id, machine, id, started_by, event, started_ms, due_ms, cause FROM timer
     WHERE due_ms <= $1 ORDER BY machine <> 'paging', due_ms, case_id, started_by, machine, id LIMIT ${batch}) AS due
   ORDER BY due_ms, case_id, started_by, machine, id`,
);
const nextDue = statement(
  'timer.next',
  'SELECT LEAST((SELECT min(due_ms) FROM timer), (SELECT min(due_ms) FROM scheduled)) AS due_ms',
);
const putOff = statement(
  'timer.putOff',
  'UPDATE timer SET due_ms = $4 WHERE case_id = $1 AND machine = $2 AND id = $3',
);
const lockDue = statement(
  'timer.lock',
  `SELECT ${caseColumns}, ${pausedColumn} FROM "case" c JOIN phone p ON p.id = c.phone_id JOIN timer t ON t.case_id = c.id
   WHERE c.id = $1 AND c.closed_ms IS NULL AND t.machine = $2 AND t.id = $3 AND t.started_by = $4 AND t.due_ms <= $5
   FOR UPDATE OF c, t`,
);

/** The earliest due time, epoch ms, or null where nothing waits. */
export async function nextDueMs(parts: Parts): Promise<number | null> {
  const [row] = await parts.database.query<{ due_ms: number | null }>(nextDue);
  return row?.due_ms ?? null;
}

/**
 * Fires everything due now, also what that brings due at once: the cases first, then what is scheduled. `queued` is told each
 * time some of it has been done, so that what is to be carried need not wait for all of it.
 */
export async function fireDue(parts: Parts, cause: string, lanes: number, queued = () => {}): Promise<void> {
  await fireTimers(parts, cause, lanes, queued);
  await fireScheduled(parts, cause);
}

/** Cases run side by side, each case in its own order. */
async function fireTimers(parts: Parts, cause: string, lanes: number, queued: () => void): Promise<void> {
  for (;;) {
    const rows = await parts.database.query(findDue, [await parts.clock.now(parts.database)]);
    if (rows.length === 0) return;
    parts.checkpoint('timers found');
    const cases = Map.groupBy(dueShape.array().parse(rows), (timer) => timer.case_id);
    const waiting = [...cases.values()].sort((a, b) => Number(pages(b)) - Number(pages(a)));
    let fired = 0;
    const lane = async () => {
      for (let timers = waiting.shift(); timers !== undefined; timers = waiting.shift()) {
        for (const timer of timers) {
          if (await fire(parts, timer, cause)) fired += 1;
          parts.checkpoint('timer fired');
        }
      }
    };
    await Promise.all(Array.from({ length: lanes }, lane));
    queued();
    if (fired === 0) return; // another process has them; the sweep looks again
  }
}

function pages(timers: readonly DueTimer[]): boolean {
  return timers.some(({ machine }) => machine === 'paging');
}

/** Fires one timer, tried twice; then the case is parked for a person. False where it was stale. */
async function fire(parts: Parts, timer: DueTimer, settling: string): Promise<boolean> {
  // What was due the moment it was started still belongs to the request that started it.
  const cause = timer.due_ms <= timer.started_ms ? timer.cause : settling;
  try {
    return await fireOnce(parts, timer, cause);
  } catch (first) {
    parts.log.warn({ error: first, caseId: timer.case_id }, 'a timer failed and is tried once more');
    try {
      return await fireOnce(parts, timer, cause);
    } catch (second) {
      parts.log.error({ error: second, caseId: timer.case_id }, 'a timer failed twice; the case is parked');
      await parkAfterTimer(parts, timer.case_id, cause);
      return true;
    }
  }
}

async function fireOnce(parts: Parts, timer: DueTimer, cause: string): Promise<boolean> {
  return inTransaction(parts, cause, async (client, begin) => {
    const token = [timer.case_id, timer.machine, timer.id, timer.started_by];
    const [row] = await client.query<CaseRow & { paused: boolean }>(lockDue, [...token, await parts.clock.now(client)]);
    if (row === undefined) return false;
    const turn = await begin(row.paused);
    parts.checkpoint('timer locked');
    const theCase = caseOf(parts.seal, row);
    if (theCase.rehearsal !== null && (turn.paused || timer.id === rehearsalTimer.id))
      await endRehearsal(parts, turn, theCase, turn.paused ? 'paused' : 'quiet');
    else if (theCase.parked) await callAgain(parts, turn, theCase);
    else if (turn.paused && timer.machine !== 'paging') await firePaused(parts, turn, theCase, timer);
    else {
      const fired = { machine: timer.machine, id: timer.id };
      await takeStep(parts, turn, theCase, delayed(timer.machine, timer.event), { answering: false, fired });
    }
    return true;
  });
}

/**
 * Paused, pages go on climbing. Whoever waits for the conversation's next word, a recheck or a nudge, hears that none comes and
 * is given to a person; what only follows a tube in place waits until the line is resumed.
 */
async function firePaused(parts: Parts, turn: Turn, theCase: LockedCase, timer: DueTimer): Promise<void> {
  if (timer.machine === 'conversation') return parkPaused(parts, turn, theCase);
  const dueMs = turn.nowMs + pausedAgainMs;
  await turn.client.query(putOff, [theCase.id, timer.machine, timer.id, dueMs]);
  turn.dueMs.push(dueMs);
}

function delayed(machine: MachineName, event: string): SignalAt {
  const type = afterShape.parse(event);
  return (stamp) => ({ machine, event: { type, ...stamp } });
}
