/**
 * Chains: of each phone its next message and those that may follow it at once. Claiming them together spares each a round trip of
 * its own; they still go out one after the other, and only as long as the fate of each is known.
 */
import { statement } from '#src/store/database.ts';
import { alarmCause } from './alarm.ts';
import { type Claimed, holdMs, type Mark, putBack, send } from './fates.ts';
import type { Parts } from './parts.ts';

/** The most phones of one claim, and the most messages that follow the first ones. */
const batch = 100;
/** A send may take as long as the carrier may be silent; begun later than this after its claim it could outlast its hold. */
const chainMs = 1000;

/**
 * What is queued or in hand, phone by phone, and what of it could go now. A text leads where nothing before it waits or is held; an
 * emergency always does, but for a call behind another call: two at once find the phone busy, and the carrier's list does not tell
 * which of them was made. What is in the run that begins with a phone's first message may follow that.
 */
const queue = `SELECT id, phone_id, urgent, cause, queued,
    free AND NOT CASE WHEN urgent THEN is_call AND (calls_in_hand OR calls_before) ELSE stands_before END AS leads,
    bool_and(free AND NOT urgent) OVER (PARTITION BY phone_id ORDER BY id) AS follows,
    min(id) OVER (PARTITION BY phone_id) AS first
  FROM (
    SELECT id, phone_id, urgent, cause, free, is_call, count(*) FILTER (WHERE waits) OVER (PARTITION BY phone_id) AS queued,
      bool_or(stands) OVER before IS TRUE AS stands_before,
      bool_or(is_call AND urgent AND free) OVER before IS TRUE AS calls_before,
      bool_or(is_call AND in_hand) OVER (PARTITION BY phone_id) AS calls_in_hand
    FROM (
      SELECT id, phone_id, urgent, cause, kind = 'call' AS is_call, state = 'waiting' AS waits,
        state = 'waiting' AND hold_until_ms <= $1 AS free,
        state = 'waiting' OR hold_until_ms > $1 AS stands, state <> 'waiting' AND hold_until_ms > $1 AS in_hand
      FROM message WHERE state IN ('waiting', 'carrying', 'unknown')
    ) AS active WINDOW before AS (PARTITION BY phone_id ORDER BY id ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING)
  ) AS seen`;

/**
 * Whoever has the row of a phone's next message has those that follow it: to anybody else they stand behind it. The pause between
 * tries is real time, so that a carrier that is down is not hammered. One pass over the queue, whatever the database believes of
 * its size: a plan made while it was empty has to serve a night when it is not.
 */
const claim = statement(
  'outbox.claim',
  `WITH queue AS MATERIALIZED (${queue}), next AS (
     SELECT id FROM queue WHERE leads ORDER BY urgent DESC, cause = '${alarmCause}', id LIMIT ${batch}
   ), head AS (
     SELECT id, urgent FROM message
     WHERE id = ANY (ARRAY(SELECT id FROM next)) AND state = 'waiting' AND hold_until_ms <= $1
     FOR UPDATE SKIP LOCKED
   ), claimed AS (
     SELECT id, queued FROM queue WHERE id = ANY (ARRAY(SELECT id FROM head))
     UNION ALL (
       SELECT id, queued FROM queue WHERE follows AND id <> first AND first = ANY (ARRAY(SELECT id FROM head WHERE NOT urgent))
       ORDER BY id LIMIT ${batch})
   )
   UPDATE message m SET state = 'carrying', hold_until_ms = $2, look_ms = $2, tries = m.tries + 1
   FROM phone p, claimed c WHERE p.id = m.phone_id AND c.id = m.id AND m.id = ANY (ARRAY(SELECT id FROM claimed))
   RETURNING m.id, m.phone_id, m.urgent, c.queued, p.number, m.body, m.kind, m.tries, m.at_ms, m.bridge_to`,
);

/** What goes out one after the other; an urgent message is a chain of its own. */
export interface Chain {
  readonly messages: readonly Claimed[];
  readonly urgent: boolean;
  /** More than this waits for its phone. */
  readonly cut: boolean;
}

export interface ClaimedChains {
  readonly chains: readonly Chain[];
  /** There may be more than one claim takes. */
  readonly more: boolean;
}

/** Claims what can be carried now: answers before what only came due, each in the order of our own sequence. */
export async function claimChains(parts: Parts): Promise<ClaimedChains> {
  const nowMs = parts.wallMs();
  const values = [nowMs, nowMs + holdMs];
  const fresh = await parts.database.query<Claimed & { phone_id: number; urgent: boolean; queued: number }>(
    claim,
    values,
  );
  const inOrder = fresh.sort((a, b) => a.id - b.id);
  const byPhone = Map.groupBy(inOrder, ({ id, phone_id, urgent }) => (urgent ? `message ${id}` : phone_id));
  const chains = [...byPhone.values()].map((messages) => ({
    messages,
    urgent: messages.some(({ urgent }) => urgent),
    cut: messages.some(({ queued }) => queued > messages.length),
  }));
  return { chains, more: chains.length >= batch };
}

/**
 * Carries a chain and notes what became of each; behind a fate that is not known the rest goes back into the queue untried.
 * Whether all of it was accepted.
 */
export async function carryChain(
  parts: Parts,
  { messages }: Chain,
  goesOn: () => boolean,
  note: (mark: Mark) => Promise<void>,
): Promise<boolean> {
  const untilMs = parts.wallMs() + chainMs;
  const noted: Promise<void>[] = [];
  const states: Mark['state'][] = [];
  let known = true;
  for (const [place, message] of messages.entries()) {
    const goes: boolean = place === 0 || (known && goesOn() && parts.wallMs() < untilMs);
    const mark: Mark = goes ? await send(parts, message) : putBack(message);
    known = goes && (mark.state === 'accepted' || mark.state === 'refused');
    states.push(mark.state);
    const noting = note(mark);
    noting.catch(() => undefined); // told at the end, when the chain has gone on
    noted.push(noting);
  }
  await Promise.all(noted);
  return states.every((state) => state === 'accepted');
}
