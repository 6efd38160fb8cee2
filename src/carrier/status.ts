/** What the carrier's status words mean to the line. */
import type { Callback } from '#src/line/line.ts';

/** Status values of the carrier's messages and calls. Source: its published API enumerations. */
const fates = new Map<string, Callback>([
  ['accepted', 'accepted'],
  ['scheduled', 'accepted'],
  ['queued', 'accepted'],
  ['sending', 'accepted'],
  ['sent', 'accepted'],
  ['delivered', 'delivered'],
  ['read', 'delivered'],
  ['undelivered', 'refused'],
  ['failed', 'refused'],
  ['canceled', 'refused'],
  ['initiated', 'accepted'],
  ['ringing', 'accepted'],
  ['in-progress', 'accepted'],
  ['completed', 'delivered'],
  // Nobody heard it: as good as not said.
  ['busy', 'refused'],
  ['no-answer', 'refused'],
]);

/** The fate a status word stands for, or null for a word the line does not know: it then changes nothing. */
export function fateOfStatus(status: string | undefined): Callback | null {
  return status === undefined ? null : (fates.get(status) ?? null);
}
