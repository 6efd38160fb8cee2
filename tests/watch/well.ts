/** A line that is well: nothing waits, nothing is late. */
import type { Health } from '#src/watch/health.ts';

export const well: Health = {
  outboxWaitMs: 0,
  timerLateMs: 0,
  openCases: 0,
  parkedCases: 0,
  openPages: 0,
  pageWaitMs: 0,
  pausedMs: null,
};
