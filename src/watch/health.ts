/** How the line is doing, read from its own rows: what waits too long, and what nobody has taken. Counts only, no person. */
import { type Queryable, statement } from '#src/store/database.ts';

export interface Health {
  /** How long the oldest message has waited to be handed to the carrier; 0 where none waits. */
  readonly outboxWaitMs: number;
  /** How late the earliest timer is; 0 where none is due. */
  readonly timerLateMs: number;
  /** Rehearsals are none. */
  readonly openCases: number;
  /** Cases no machine runs any more: a turn failed twice, a person has them. */
  readonly parkedCases: number;
  readonly openPages: number;
  /** How long the oldest page nobody has taken is open; 0 where none is. */
  readonly pageWaitMs: number;
  /** Since when the line is paused, epoch ms; null where it is not. */
  readonly pausedMs: number | null;
}

const read = statement(
  'watch.health',
  `SELECT
     COALESCE((SELECT $1 - min(at_ms) FROM message WHERE state IN ('waiting', 'carrying')), 0) AS outbox_wait_ms,
     COALESCE((SELECT $1 - min(due_ms) FROM timer), 0) AS timer_late_ms,
     (SELECT count(*) FROM "case" WHERE closed_ms IS NULL AND NOT rehearsal) AS open_cases,
     (SELECT count(*) FROM "case" WHERE closed_ms IS NULL AND parked_ms IS NOT NULL) AS parked_cases,
     (SELECT count(*) FROM page WHERE open) AS open_pages,
     COALESCE((SELECT $1 - min(at_ms) FROM page WHERE open), 0) AS page_wait_ms,
     (SELECT at_ms FROM pause WHERE resumed_ms IS NULL) AS paused_ms`,
);

interface Row {
  readonly outbox_wait_ms: number;
  readonly timer_late_ms: number;
  readonly open_cases: number;
  readonly parked_cases: number;
  readonly open_pages: number;
  readonly page_wait_ms: number;
  readonly paused_ms: number | null;
}

/** Reads it as of `nowMs` of the line's clock. */
export async function readHealth(database: Queryable, nowMs: number): Promise<Health> {
  const [row] = await database.query<Row>(read, [nowMs]);
  if (row === undefined) throw new Error('a select without FROM has one row');
  return {
    outboxWaitMs: Math.max(0, row.outbox_wait_ms),
    timerLateMs: Math.max(0, row.timer_late_ms),
    openCases: row.open_cases,
    parkedCases: row.parked_cases,
    openPages: row.open_pages,
    pageWaitMs: Math.max(0, row.page_wait_ms),
    pausedMs: row.paused_ms,
  };
}

/** Longer and something is wrong with the line itself, not with a case; common practice, no source. */
const mostMs = 2 * 60_000;

/** What ails the line, in words for whoever runs it; empty where it is well. */
export function ailments({ outboxWaitMs, timerLateMs }: Health): string[] {
  const minutes = (ms: number) => `${Math.floor(ms / 60_000)} min`;
  return [
    ...(outboxWaitMs > mostMs ? [`texts wait to be sent, the oldest for ${minutes(outboxWaitMs)}`] : []),
    ...(timerLateMs > mostMs ? [`rechecks and pages are late by ${minutes(timerLateMs)}`] : []),
  ];
}
