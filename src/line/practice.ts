/** The practice line's own: a clock that moves when it is told to, and the way back to the seeds. */
import { ClockBackward, PracticeOnly } from '#src/errors.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { audit } from './audit.ts';
import { enrolOn } from './families.ts';
import type { Seeds } from './line.ts';
import type { Outbox } from './outbox.ts';
import type { Parts } from './parts.ts';
import { keepProtocol } from './protocols.ts';
import { startScheduled } from './scheduled.ts';
import { fireDue, nextDueMs } from './timers.ts';

const startClock = statement('clock.start', 'INSERT INTO clock (now_ms) VALUES ($1) ON CONFLICT DO NOTHING');
const moveClock = statement('clock.move', 'UPDATE clock SET now_ms = GREATEST(now_ms, $1)');
const setClock = statement('clock.set', 'UPDATE clock SET now_ms = $1');
/** Every turn touches the phones before it writes, so whoever has this lock meets no turn half way. */
const lockOut = 'LOCK TABLE phone IN ACCESS EXCLUSIVE MODE';
/** Rows are deleted, not tables truncated: the outbox holds its table while it waits for the phones. Cases are counted from 1 again. */
const empty = [
  'pause',
  'rota_swap',
  'handover',
  'scheduled',
  'incoming_call',
  'media',
  'page',
  'timer',
  'message',
  'family_phone',
  'family',
  'audit',
  '"case"',
  'phone',
].map((table) => `DELETE FROM ${table}`);
const emptyAll = ['TRUNCATE event', ...empty].join('; ');
const countAgain = `SELECT setval(pg_get_serial_sequence('"case"', 'id'), 1, false)`;

/** Starts the clock at real time where it has never run; a restart goes on from where it stood. */
export async function startPracticeClock(parts: Parts): Promise<void> {
  await parts.database.query(startClock, [parts.wallMs()]);
}

/** From due time to due time up to `toMs`: the clock is set, what is due fires and is carried, and so on. */
export async function advanceClock(parts: Parts, outbox: Outbox, toMs: number, cause: string): Promise<void> {
  practiceOnly(parts, 'moving the clock');
  const nowMs = await parts.clock.now(parts.database);
  if (toMs < nowMs) throw new ClockBackward(nowMs, toMs);
  for (let dueMs = await nextDueMs(parts); dueMs !== null && dueMs <= toMs; dueMs = await nextDueMs(parts)) {
    await parts.database.query(moveClock, [dueMs]);
    await fireDue(parts, cause, 1);
    await outbox.carry();
  }
  await parts.database.query(moveClock, [toMs]);
}

/** Everything of this line is gone but its protocols; the families of the seeds are enrolled again. */
export async function resetPractice(parts: Parts, nowMs: number, seeds: Seeds): Promise<void> {
  practiceOnly(parts, 'a reset');
  await parts.database.transaction(async (client) => {
    await client.query(lockOut);
    await client.query(emptyAll);
    await client.query(countAgain);
    await client.query(setClock, [nowMs]);
    await keepProtocol(client, parts.protocol);
    await startScheduled(parts, client, nowMs);
    await audit(client, nowMs, 'reset', null);
    await enrolAll(parts, client, nowMs, seeds);
  });
}

async function enrolAll(parts: Parts, client: Queryable, nowMs: number, seeds: Seeds): Promise<void> {
  for (const { number, ...family } of seeds.families) await enrolOn(parts, client, nowMs, number, family);
}

function practiceOnly(parts: Parts, what: string): void {
  if (parts.kind !== 'practice') throw new PracticeOnly(what);
}
