/** Erases what a closed case tells of a family and leaves what proves that it was: when, how many events, and their hashes. */
import { verifyCase } from '#src/record/verify.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { NotErasable } from './errors.ts';
import { type StoredEvent, tombstoneBody } from './tombstone.ts';

const lock = statement('erase.lock', 'SELECT closed_ms, held_ms, erased_ms FROM "case" WHERE id = $1 FOR UPDATE');
const selectEvents = statement(
  'erase.events',
  'SELECT number, body, hash FROM event WHERE case_id = $1 ORDER BY number',
);
const rewrites = "SET LOCAL nightjar.rewrites_bodies = 'on'";
const entomb = statement(
  'erase.entomb',
  `UPDATE event SET body = u.body FROM unnest($2::int[], $3::bytea[]) AS u (number, body)
   WHERE event.case_id = $1 AND event.number = u.number`,
);
const empty = statement(
  'erase.case',
  `WITH said AS (DELETE FROM message WHERE case_id = $1), rang AS (DELETE FROM incoming_call WHERE case_id = $1),
     sent AS (DELETE FROM media WHERE case_id = $1)
   UPDATE "case" SET file = NULL, snapshots = NULL, relay = NULL, erased_ms = $2 WHERE id = $1`,
);

/**
 * One case, in the caller's transaction. Throws `NotErasable` where it is open, on hold, or its record does not hold: that is looked at
 * before it goes. What its family wrote is erased with the phone's texts.
 */
export async function eraseCase(client: Queryable, seal: Seal, caseId: number, nowMs: number): Promise<void> {
  const [row] = await client.query<{ closed_ms: number | null; held_ms: number | null; erased_ms: number | null }>(
    lock,
    [caseId],
  );
  if (row === undefined || row.erased_ms !== null) return;
  if (row.closed_ms === null) throw new NotErasable(caseId, 'open');
  if (row.held_ms !== null) throw new NotErasable(caseId, 'on hold');
  if (!(await verifyCase(client, seal, caseId)).whole) throw new NotErasable(caseId, 'not as the line wrote it');
  const events = await client.query<StoredEvent>(selectEvents, [caseId]);
  const bodies = events.map(({ hash }, place) => tombstoneBody({ before: events[place - 1]?.hash ?? null, hash }));
  await client.query(rewrites);
  await client.query(entomb, [caseId, events.map(({ number }) => number), bodies.map((body) => seal.seal(body))]);
  await client.query(empty, [caseId, nowMs]);
}
