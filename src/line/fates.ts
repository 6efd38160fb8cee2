/**
 * What became of a message: accepted, refused and unknown are three different things. An unknown fate is settled by a callback
 * or by looking it up, never by sending again unseen; what was refused goes another way in the same transaction.
 */
import type { Fate, Found, MessageKind, Outgoing } from '#src/carrier/port.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Callback } from './line.ts';
import { goAnotherWay, type Refusal } from './otherWay.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import { inTransaction } from './turn.ts';

/** How long a carrier may be silent before the fate is unknown, and how long an unknown fate holds later messages. */
const answerMs = 9_000;
export const holdMs = 10_000;
/** An unknown fate is looked up this often, until it is this old; then it counts as refused. Common practice, no source. */
const lookAgainMs = 30_000;
const lookMostMs = 30 * 60_000;
/** After "later" the wait doubles from here; after this many tries the message counts as refused. */
const laterMs = 1_000;
const triesMost = 8;
const batch = 100;

/** A fate that stayed unknown for as long as it may hold others, or a process that died with a message in hand. */
const claimUnsure = statement(
  'fate.claimUnsure',
  `UPDATE message m SET look_ms = $2
   FROM phone p WHERE p.id = m.phone_id AND m.id IN (
     SELECT h.id FROM message h WHERE h.state IN ('carrying', 'unknown') AND GREATEST(h.look_ms, h.hold_until_ms) <= $1
     ORDER BY h.id LIMIT ${batch} FOR UPDATE SKIP LOCKED)
   RETURNING m.id, p.number, m.body, m.kind, m.tries, m.at_ms, m.bridge_to`,
);
/** A status callback may have come first; it knows better. */
const mark = statement(
  'fate.mark',
  `UPDATE message m SET state = u.state, carrier_id = COALESCE(u.carrier_id, m.carrier_id),
     hold_until_ms = u.hold_until_ms, look_ms = u.look_ms, tries = u.tries
   FROM unnest($1::bigint[], $2::text[], $3::text[], $4::bigint[], $5::bigint[], $6::integer[])
     AS u (id, state, carrier_id, hold_until_ms, look_ms, tries)
   WHERE m.id = u.id AND m.state IN ('carrying', 'unknown') RETURNING m.id, m.state`,
);
/**
 * Callbacks come in any order: what was delivered stays so, and what was refused is not taken back but by a delivery. One names
 * our message: another that a look-up took the same record for is of unknown fate again.
 */
const note = statement(
  'fate.note',
  `WITH mistaken AS (
     UPDATE message SET state = 'unknown', carrier_id = NULL, hold_until_ms = 0, look_ms = 0
     WHERE direction = 'out' AND carrier_id = $3 AND id <> $1)
   UPDATE message SET state = $2, carrier_id = COALESCE($3, carrier_id)
   WHERE id = $1 AND direction = 'out' AND state NOT IN ('delivered', $2) AND NOT (state = 'refused' AND $2 = 'accepted')
   RETURNING id`,
);
const knownIds = statement(
  'fate.knownIds',
  "SELECT carrier_id FROM message WHERE direction = 'out' AND carrier_id = ANY ($1) AND id <> ALL ($2)",
);
/**
 * What is in hand just now for the phones of these messages, or was sent before them and is of unknown fate as well: the carrier
 * may have it already, and we not its number.
 */
const inHand = statement(
  'fate.inHand',
  `SELECT mine.id, other.body FROM message mine JOIN message other ON other.phone_id = mine.phone_id AND other.kind = mine.kind
   WHERE mine.id = ANY ($1) AND other.id <> ALL ($1)
     AND (other.state = 'carrying' OR (other.state = 'unknown' AND other.id < mine.id))`,
);

/** A message this process has in hand. */
export interface Claimed {
  readonly id: number;
  readonly number: Buffer;
  readonly body: Buffer;
  readonly kind: MessageKind;
  readonly tries: number;
  readonly at_ms: number;
  readonly bridge_to: Buffer | null;
}

export interface Mark {
  readonly id: number;
  readonly state: 'accepted' | 'delivered' | 'refused' | 'waiting' | 'unknown';
  /** How often it was handed to the carrier. */
  readonly tries: number;
  readonly carrierId: string | null;
  readonly holdUntilMs: number;
  readonly lookMs: number;
  /** Of a refusal: the carrier's code. */
  readonly why: string | null;
}

/** Gives a message to the carrier. Never rejects: silence and a throw are an unknown fate. */
export async function send(parts: Parts, message: Claimed): Promise<Mark> {
  const sending = within<Fate>(answerMs, () => parts.carrier.send(outgoing(parts, message)), { fate: 'unknown' });
  parts.checkpoint('message handed over');
  const fate = await sending;
  parts.checkpoint('carrier answered');
  return markOf(parts, message, fate);
}

/** Looks up what became of messages nobody heard of again. Called by the sweep. */
export async function settleUnsure(parts: Parts): Promise<void> {
  const nowMs = parts.wallMs();
  const claimed = await parts.database.query<Claimed>(claimUnsure, [nowMs, nowMs + lookAgainMs]);
  // Of two with the same words the earlier takes what the carrier made first.
  const unsure = claimed.sort((one, other) => one.id - other.id);
  if (unsure.length === 0) return;
  parts.checkpoint('unsure claimed');
  const found = await Promise.all(unsure.map((message) => lookUp(parts, message)));
  parts.checkpoint('unsure looked up');
  const candidates = found.flatMap((one) => (one.fate === 'found' ? one.made.map(({ carrierId }) => carrierId) : []));
  const ids = unsure.map(({ id }) => id);
  // First who is in hand: whoever is marked meanwhile is no longer, and then has its number.
  const taken = await takenForAnother(parts, unsure);
  const rows = await parts.database.query<{ carrier_id: string }>(knownIds, [candidates, ids]);
  const known = new Set(rows.map((row) => row.carrier_id));
  const marks = unsure.map((message, place) => {
    const one = found[place];
    if (one?.fate !== 'found') return stillUnknown(parts, message, lookAgainMs);
    const unclear = one.made.length > 0 && taken.has(message.id);
    return unclear ? stillUnknown(parts, message, laterMs) : settled(parts, message, one.made, known);
  });
  await writeMarks(parts, marks);
  parts.checkpoint('unsure marked');
}

/** The messages which what the carrier has may be another one for: the same words, or any call, in hand or not settled. */
async function takenForAnother({ database, seal }: Parts, unsure: readonly Claimed[]): Promise<ReadonlySet<number>> {
  const others = await database.query<{ id: number; body: Buffer }>(inHand, [unsure.map(({ id }) => id)]);
  const alike = unsure.filter((mine) =>
    others.some(({ id, body }) => id === mine.id && (mine.kind === 'call' || seal.open(body) === seal.open(mine.body))),
  );
  return new Set(alike.map(({ id }) => id));
}

/** Writes down what became of messages; those refused go another way in the same transaction. */
export async function writeMarks(parts: Parts, marks: readonly Mark[]): Promise<void> {
  if (marks.length === 0) return;
  if (!marks.some(({ state }) => state === 'refused')) {
    await writeOn(parts.database, marks);
    return;
  }
  await inTransaction(parts, 'refused', async (client, begin) => {
    const rows = await writeOn(client, marks);
    const refused = new Set(rows.filter(({ state }) => state === 'refused').map(({ id }) => id));
    const refusals = marks.filter(({ id }) => refused.has(id)).map(({ id, why }): Refusal => ({ id, why }));
    await goAnotherWay(parts, await begin(await isPaused(client)), refusals);
  });
}

/** A carrier's status callback. */
export async function noteFate(parts: Parts, id: number, fate: Callback, carrierId: string | null): Promise<void> {
  parts.checkpoint('callback received');
  if (fate === 'refused') {
    await inTransaction(parts, 'refused', async (client, begin) => {
      const changed = await client.query(note, [id, fate, carrierId]);
      if (changed.length > 0) await goAnotherWay(parts, await begin(await isPaused(client)), [{ id, why: null }]);
    });
  } else await parts.database.query(note, [id, fate, carrierId]);
  parts.checkpoint('callback noted');
}

function writeOn(client: Queryable, marks: readonly Mark[]): Promise<{ id: number; state: string }[]> {
  return client.query<{ id: number; state: string }>(mark, [
    marks.map((one) => one.id),
    marks.map((one) => one.state),
    marks.map((one) => one.carrierId),
    marks.map((one) => one.holdUntilMs),
    marks.map((one) => one.lookMs),
    marks.map((one) => one.tries),
  ]);
}

async function lookUp(parts: Parts, message: Claimed) {
  return within(answerMs, () => parts.carrier.find(outgoing(parts, message)), { fate: 'unknown' } as const);
}

/** The first the carrier has that is no other message of ours; none, and it surely was never sent. */
function settled(parts: Parts, message: Claimed, made: readonly Found[], known: Set<string>): Mark {
  const mine = made.find(({ carrierId }) => !known.has(carrierId));
  if (mine === undefined) return markOf(parts, message, { fate: 'later' });
  known.add(mine.carrierId);
  return { ...plain(message), state: mine.fate, carrierId: mine.carrierId };
}

function stillUnknown(parts: Parts, message: Claimed, againMs: number): Mark {
  if (parts.wallMs() - message.at_ms >= lookMostMs) return refused(parts, message, 'unknown');
  parts.log.warn({ messageId: message.id }, 'the fate of a message stays unknown and is looked up again');
  return { ...plain(message), state: 'unknown', lookMs: parts.wallMs() + againMs };
}

function markOf(parts: Parts, message: Claimed, fate: Fate): Mark {
  const nowMs = parts.wallMs();
  switch (fate.fate) {
    case 'accepted':
      return { ...plain(message), state: 'accepted', carrierId: fate.carrierId };
    case 'refused':
      return refused(parts, message, fate.why);
    case 'unknown':
      parts.log.warn({ messageId: message.id }, 'the fate of a message is unknown');
      return { ...plain(message), state: 'unknown', holdUntilMs: nowMs + holdMs, lookMs: nowMs + holdMs };
    case 'later':
      if (message.tries >= triesMost) return refused(parts, message, 'tried often enough');
      return { ...plain(message), state: 'waiting', holdUntilMs: nowMs + laterMs * 2 ** (message.tries - 1) };
  }
}

function refused(parts: Parts, message: Claimed, why: string): Mark {
  parts.log.error({ messageId: message.id, why }, 'a message does not arrive');
  return { ...plain(message), state: 'refused', why };
}

/** A message that was claimed and not handed over after all. */
export function putBack(message: Claimed): Mark {
  return { ...plain(message), state: 'waiting', tries: message.tries - 1 };
}

function plain({ id, tries }: Claimed) {
  return { id, tries, carrierId: null, holdUntilMs: 0, lookMs: 0, why: null };
}

function outgoing({ seal }: Parts, { id, number, body, kind, at_ms, bridge_to }: Claimed): Outgoing {
  const bridge = bridge_to === null ? {} : { bridgeTo: seal.open(bridge_to) };
  return { id: String(id), to: seal.open(number), body: seal.open(body), kind, saidAtMs: at_ms, ...bridge };
}

/** The answer, or `silence` if it throws or does not come in time. */
async function within<T>(ms: number, ask: () => Promise<T>, silence: T): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const silent = new Promise<T>((resolve) => {
    timer = setTimeout(resolve, ms, silence);
  });
  try {
    return await Promise.race([ask(), silent]);
  } catch {
    return silence;
  } finally {
    clearTimeout(timer);
  }
}
