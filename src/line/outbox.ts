/**
 * The outbox: carries what is queued, one message in flight for each recipient, in the order of our own sequence. A message
 * whose fate is unknown holds the later ones ten seconds at most; an emergency never waits, but for a call to the same phone.
 */
import { statement } from '#src/store/database.ts';
import { type Chain, carryChain, claimChains } from './chain.ts';
import { type Mark, noteFate, writeMarks } from './fates.ts';
import type { Callback } from './line.ts';
import type { Parts } from './parts.ts';

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
  /** How often somebody has asked, and whether anything may be there that no claim has seen. */
  let asked = 0;
  let wanted = false;
  let nudge = Promise.withResolvers<void>();
  let stopping = false;

  const begin = (chain: Chain): void => {
    const askedBefore = asked;
    const work = carryChain(parts, chain, () => !stopping, addMark).then((accepted) => {
      // What was queued meanwhile stood behind it, and so does what was put back; a refusal queues another way to go.
      if (chain.cut || !accepted || chain.urgent || asked !== askedBefore) wanted = true;
    });
    const done = work.finally(() => inFlight.delete(done));
    done.catch(() => undefined); // the round that waits for it reports it
    inFlight.add(done);
  };

  /**
   * Claims follow each other until nothing is left, nothing is in flight and nobody has asked again. A send that hangs keeps
   * nobody else waiting: a nudge begins the next claim beside it.
   */
  const run = async (): Promise<void> => {
    try {
      while (!stopping && (wanted || inFlight.size > 0)) {
        if (wanted) {
          wanted = false;
          nudge = Promise.withResolvers();
          wanted = (await claimAll(parts, begin)) || wanted;
        } else await Promise.race([...inFlight, nudge.promise]);
      }
    } finally {
      round = null; // in the same breath as the last look: whoever asks from now on begins a round
    }
  };

  const carry = (): Promise<void> => {
    asked += 1;
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

/** Begins what can be carried now, and says whether there may be more than one claim takes. */
async function claimAll(parts: Parts, begin: (chain: Chain) => void): Promise<boolean> {
  parts.checkpoint('outbox asked');
  const { chains, more } = await claimChains(parts);
  if (chains.length > 0) parts.checkpoint('message claimed');
  for (const chain of chains) begin(chain);
  return more;
}
