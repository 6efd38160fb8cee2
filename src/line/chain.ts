/**
 * Chains: of each phone its next message and those that may follow it at once. Claiming them together spares each a round trip of
 * its own; they still go out one after the other, and only as long as the fate of each is known.
 */
import { statement } from '#src/store/database.ts';
import { type Claimed, holdMs, type Mark, send } from './fates.ts';
import type { Parts } from './parts.ts';

/** The most phones of one claim, and the most messages that follow the first ones. */
const batch = 100;
/** A send may take as long as the carrier may be silent; begun later than this after its claim it could outlast its hold. */
const chainMs = 1000;

/** What is queued or in hand for the same phone, from the queue's own index. */
const ofThisPhone = `SELECT FROM message e WHERE e.phone_id = h.phone_id AND e.state IN ('waiting', 'carrying', 'unknown') AND`;
const behindAnother = `EXISTS (${ofThisPhone} e.id < h.id AND (e.state = 'waiting' OR e.hold_until_ms > $1))`;
/** Two calls at once find the phone busy, and the carrier's list does not tell which of them was made. */
const behindCall = `h.kind = 'call' AND EXISTS (${ofThisPhone} e.kind = 'call' AND CASE e.state
  WHEN 'waiting' THEN e.urgent AND e.id < h.id AND e.hold_until_ms <= $1 ELSE e.hold_until_ms > $1 END)`;
const follows = (message: string) =>
  `${message}.state = 'waiting' AND NOT ${message}.urgent AND ${message}.hold_until_ms <= $1`;

/**
 * Whoever has the row of a phone's next message has those that follow it: to anybody else they stand behind it. The pause between
 * tries is real time, so that a carrier that is down is not hammered.
 */
const claim = statement(
  'outbox.claim',
  `WITH head AS (
     SELECT h.id, h.phone_id, h.urgent FROM message h
     WHERE h.state = 'waiting' AND h.hold_until_ms <= $1
       AND NOT CASE WHEN h.urgent THEN ${behindCall} ELSE ${behindAnother} END
     ORDER BY h.urgent DESC, h.id LIMIT ${batch} FOR UPDATE SKIP LOCKED
   ), follower AS (
     SELECT f.id FROM head h JOIN message f ON f.phone_id = h.phone_id AND f.id > h.id
     WHERE NOT h.urgent AND ${follows('f')} AND NOT EXISTS (${ofThisPhone} e.id > h.id AND e.id < f.id AND NOT (${follows('e')}))
     ORDER BY f.id LIMIT ${batch}
   )
   UPDATE message m SET state = 'carrying', hold_until_ms = $2, look_ms = $2, tries = m.tries + 1
   FROM phone p WHERE p.id = m.phone_id AND m.id IN (SELECT id FROM head UNION ALL SELECT id FROM follower)
   RETURNING m.id, m.phone_id, m.urgent, p.number, m.body, m.kind, m.tries, m.at_ms, m.bridge_to`,
);

/** What goes out one after the other; an urgent message is a chain of its own. */
export interface Chain {
  readonly messages: readonly Claimed[];
  readonly urgent: boolean;
}

export interface ClaimedChains {
  readonly chains: readonly Chain[];
  /** There may be more than one claim takes. */
  readonly more: boolean;
}

/** Claims what can be carried now, in the order of our own sequence. */
export async function claimChains(parts: Parts): Promise<ClaimedChains> {
  const nowMs = parts.wallMs();
  const values = [nowMs, nowMs + holdMs];
  const fresh = await parts.database.query<Claimed & { phone_id: number; urgent: boolean }>(claim, values);
  const inOrder = fresh.sort((a, b) => a.id - b.id);
  const byPhone = Map.groupBy(inOrder, ({ id, phone_id, urgent }) => (urgent ? `message ${id}` : phone_id));
  const chains = [...byPhone.values()].map((messages) => ({ messages, urgent: messages[0]?.urgent === true }));
  return { chains, more: chains.length >= batch || fresh.length - chains.length >= batch };
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

function putBack({ id, tries }: Claimed): Mark {
  return { id, state: 'waiting', tries: tries - 1, carrierId: null, holdUntilMs: 0, lookMs: 0, why: null };
}
