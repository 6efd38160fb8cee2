/**
 * The outbox: carries what is queued, one message in flight for each recipient, in the order of our own sequence. A message
 * whose fate is unknown holds the later ones ten seconds at most; an emergency never waits, but for a call to the same phone.
 */
import { statement } from '#src/store/database.ts';
import { type Claimed, holdMs, type Mark, noteFate, send, writeMarks } from './fates.ts';
import type { Callback } from './line.ts';
import type { Parts } from './parts.ts';

const batch = 100;

/** What is queued or in hand for the same phone, from the queue's own index. */
const ofThisPhone = `SELECT FROM message e WHERE e.phone_id = h.phone_id AND e.state IN ('waiting', 'carrying', 'unknown') AND`;
const behindAnother = `EXISTS (${ofThisPhone} e.id < h.id AND (e.state = 'waiting' OR e.hold_until_ms > $1))`;
/** Two calls at once find the phone busy, and the carrier's list does not tell which of them was made. */
const behindCall = `h.kind = 'call' AND EXISTS (${ofThisPhone} e.kind = 'call' AND CASE e.state
  WHEN 'waiting' THEN e.urgent AND e.id < h.id AND e.hold_until_ms <= $1 ELSE e.hold_until_ms > $1 END)`;

/** Its pause between tries is real time, so that a carrier that is down is not hammered. */
const claim = statement(
  'outbox.claim',
  `UPDATE message m SET state = 'carrying', hold_until_ms = $2, look_ms = $2, tries = m.tries + 1
   FROM phone p WHERE p.id = m.phone_id AND m.id IN (
     SELECT h.id FROM message h WHERE h.state = 'waiting' AND h.hold_until_ms <= $1
       AND NOT CASE WHEN h.urgent THEN ${behindCall} ELSE ${behindAnother} END
     ORDER BY h.urgent DESC, h.id LIMIT ${batch} FOR UPDATE SKIP LOCKED)
   RETURNING m.id, p.number, m.body, m.kind, m.tries, m.at_ms, m.bridge_to`,
);
const release = statement(
  'outbox.release',
  "UPDATE message SET state = 'waiting', hold_until_ms = 0 WHERE state IN ('carrying', 'unknown') AND hold_until_ms > 0",
);

export interface Outbox {
  /** Carries in the background. */
  kick(): void;
  /** Carries until nothing more can be carried now. Rejects if the database fails. */
  carry(): Promise<void>;
  /** A carrier's status callback. */
  note(messageId: number, fate: Callback, carrierId: string | null): Promise<void>;
  /** Puts back what a dead process had in hand. Only where sending twice is harmless: the practice carrier. */
  releaseAll(): Promise<void>;
  /** Waits for what is in flight; nothing new is begun. */
  stop(): Promise<void>;
}

export function createOutbox(parts: Parts): Outbox {
  const inFlight = new Set<Promise<void>>();
  let marks: Mark[] = [];
  let flushing: Promise<void> | null = null;
  let round: Promise<void> | null = null;
  let wanted = false;
  let nudge = Promise.withResolvers<void>();
  let stopping = false;

  const track = (work: Promise<Mark>): void => {
    const done = work.then(addMark).finally(() => {
      inFlight.delete(done);
      wanted = true; // the next message of this recipient may go now
    });
    done.catch(() => undefined); // the round that waits for it reports it
    inFlight.add(done);
  };

  /**
   * Rounds follow each other until nothing is claimed, nothing is in flight and nobody has asked again. A send that hangs
   * keeps nobody else waiting: a nudge begins the next round beside it.
   */
  const run = async (): Promise<void> => {
    try {
      do {
        wanted = false;
        nudge = Promise.withResolvers();
        const sends = await claimAll(parts, track);
        if (sends === 0 && inFlight.size > 0) await Promise.race([...inFlight, nudge.promise]);
      } while (!stopping && (wanted || inFlight.size > 0));
    } finally {
      round = null; // in the same breath as the last look: whoever asks from now on begins a round
    }
  };

  const carry = (): Promise<void> => {
    wanted = true;
    nudge.resolve();
    round ??= run();
    return round;
  };

  /** Marks of the same moment are written together: a commit for each would cost more than the sends. */
  const addMark = (one: Mark): Promise<void> => {
    marks.push(one);
    flushing ??= new Promise<void>((resolve) => setImmediate(resolve)).then(() => {
      const writing = marks;
      marks = [];
      flushing = null;
      return writeMarks(parts, writing).then(() => parts.checkpoint('message marked'));
    });
    return flushing;
  };

  const kick = (): void => {
    if (stopping) return;
    carry().catch((error: unknown) => parts.log.error({ error }, 'carrying failed; the next sweep tries again'));
  };

  return {
    kick,
    carry,
    note: async (messageId, fate, carrierId) => {
      await noteFate(parts, messageId, fate, carrierId);
      kick();
    },
    releaseAll: async () => {
      await parts.database.query(release);
    },
    stop: async () => {
      stopping = true;
      // A round that was claiming still begins its sends: they are waited for too.
      while (round !== null || inFlight.size > 0) await Promise.allSettled([round, ...inFlight]);
    },
  };
}

async function claimAll(parts: Parts, begin: (work: Promise<Mark>) => void): Promise<number> {
  const nowMs = parts.wallMs();
  parts.checkpoint('outbox asked');
  const fresh = await parts.database.query<Claimed>(claim, [nowMs, nowMs + holdMs]);
  if (fresh.length > 0) parts.checkpoint('message claimed');
  for (const message of fresh.sort((a, b) => a.id - b.id)) begin(send(parts, message));
  return fresh.length;
}
