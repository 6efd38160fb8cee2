/** What the line does by the clock that is no case's. A row says when, so that a practice clock meets it on its way like any timer. */
import { z } from 'zod';
import { giveHandover, remindOfHandover, tellOfFailure } from '#src/handover/give.ts';
import { acknowledgeMs, nextHandoverMs } from '#src/handover/when.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import { inTransaction, type Turn } from './turn.ts';

const whatShape = z.enum(['handover', 'handover-again']);
type What = z.infer<typeof whatShape>;

const findDue = statement('scheduled.due', 'SELECT 1 FROM scheduled WHERE due_ms <= $1 LIMIT 1');
const lockDue = statement(
  'scheduled.lock',
  'SELECT what FROM scheduled WHERE due_ms <= $1 ORDER BY due_ms, what LIMIT 1 FOR UPDATE SKIP LOCKED',
);
const put = statement(
  'scheduled.put',
  'INSERT INTO scheduled (what, due_ms) VALUES ($1, $2) ON CONFLICT (what) DO UPDATE SET due_ms = excluded.due_ms',
);
const drop = statement('scheduled.drop', 'DELETE FROM scheduled WHERE what = $1');
/** One that came due while no process ran is still given. */
const dropLater = statement('scheduled.dropLater', "DELETE FROM scheduled WHERE what = 'handover' AND due_ms > $1");
const putFirst = statement(
  'scheduled.putFirst',
  "INSERT INTO scheduled (what, due_ms) VALUES ('handover', $1) ON CONFLICT (what) DO NOTHING",
);

/** Sets when the next handover is due, by the protocol in force. Called at every start. */
export async function startScheduled(parts: Parts, client: Queryable, nowMs: number): Promise<void> {
  const nextMs = nextHandoverMs(parts.protocol.site, nowMs);
  await client.query(dropLater, [nextMs === null ? Number.MIN_SAFE_INTEGER : nowMs]);
  if (nextMs !== null) await client.query(putFirst, [nextMs]);
}

/** Does everything scheduled that is due now. What fails twice is put off, and the people concerned are told. */
export async function fireScheduled(parts: Parts, cause: string): Promise<void> {
  while ((await isDue(parts)) && (await fireOne(parts, cause)));
}

/** One look, so that a second without anything due costs no transaction. */
async function isDue({ database, clock }: Parts): Promise<boolean> {
  return (await database.query(findDue, [await clock.now(database)])).length > 0;
}

async function fireOne(parts: Parts, cause: string): Promise<boolean> {
  try {
    return await fireOnce(parts, cause, doIt);
  } catch (first) {
    parts.log.warn({ error: first }, 'what is scheduled failed and is tried once more');
    try {
      return await fireOnce(parts, cause, doIt);
    } catch (second) {
      parts.log.error({ error: second }, 'what is scheduled failed twice and is put off');
      return fireOnce(parts, cause, giveUp);
    }
  }
}

type Work = (parts: Parts, turn: Turn, what: What) => Promise<boolean>;

/** `work` says whether what was handed over waits to be acknowledged. */
async function fireOnce(parts: Parts, cause: string, work: Work): Promise<boolean> {
  return inTransaction(parts, cause, async (client, begin) => {
    const turn = await begin(await isPaused(client));
    const [row] = await client.query(lockDue, [turn.nowMs]);
    if (row === undefined) return false;
    const what = whatShape.parse(row.what);
    const waits = await work(parts, turn, what);
    await schedule(turn, what, what === 'handover' ? nextHandoverMs(parts.protocol.site, turn.nowMs) : null);
    if (waits) await schedule(turn, 'handover-again', turn.nowMs + acknowledgeMs);
    return true;
  });
}

async function doIt(parts: Parts, turn: Turn, what: What): Promise<boolean> {
  if (what === 'handover') return giveHandover(parts, turn);
  await remindOfHandover(parts, turn);
  return false;
}

async function giveUp(parts: Parts, turn: Turn): Promise<boolean> {
  await tellOfFailure(parts, turn);
  return false;
}

async function schedule(turn: Turn, what: What, dueMs: number | null): Promise<void> {
  if (dueMs === null) return void (await turn.client.query(drop, [what]));
  await turn.client.query(put, [what, dueMs]);
  turn.dueMs.push(dueMs);
}
