/**
 * The first statement of a text's turn: it makes or locks the phone, keeps the text once for each id on the whole line, and locks
 * the phone's open case, in that order. Phone and case in one statement spare the commonest turn a round trip.
 */
import { createHash } from 'node:crypto';
import { MissingRow } from '#src/errors.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { knownFinder } from '#src/store/knownFinder.ts';
import { type CaseRow, caseOf, type LockedCase, lockOpenCase } from './cases.ts';
import type { HeardText } from './line.ts';
import type { Parts } from './parts.ts';
import { pausedColumn } from './pause.ts';
import { languageShape, type Phone, pendingShape } from './phones.ts';
import { isNursesNumber } from './reach.ts';

/** A phone whose text was kept. */
export interface Heard {
  readonly phone: Phone;
  /** Its open case, locked, its own or the one it joined, or null. Asked for once nobody else's case is to be locked before it. */
  readonly openCase: () => Promise<LockedCase | null>;
}

interface PhoneRow {
  readonly phone_id: number;
  readonly number: Buffer;
  readonly opted_out: boolean;
  readonly asked_about_tube: boolean;
  readonly pending: unknown;
  readonly language: string | null;
  readonly joined_id: number | null;
  readonly message_id: number | null;
  readonly paused: boolean;
}
type HeardRow = PhoneRow & (CaseRow | { readonly id: null });

/** A row that is locked is read as it is then, however long the lock took; a case that was opened meanwhile is not seen here. */
const hear = statement(
  'phone.hear',
  `WITH p AS (
     INSERT INTO phone (finder, number) VALUES ($1, $2)
     ON CONFLICT (finder) DO UPDATE SET texts_heard = phone.texts_heard + 1
     RETURNING id AS phone_id, number, opted_out, asked_about_tube, pending, language, joined_id
   ), heard AS (
     INSERT INTO message (phone_id, direction, kind, body, at_ms, cause, carrier_id, state)
     SELECT phone_id, 'in', $7, $3, COALESCE((SELECT now_ms FROM clock), $4), $5, $6, 'heard' FROM p
     ON CONFLICT (carrier_id) WHERE direction = 'in' DO NOTHING RETURNING id AS message_id
   ), own AS (
     SELECT c.id, c.protocol_id, c.file, c.snapshots, c.parked_ms, c.relay, c.joined_ids, c.rehearsal, c.rehearsal_by, c.last_number, c.last_hash
     FROM p JOIN "case" c ON c.phone_id = p.phone_id WHERE c.closed_ms IS NULL AND $8 FOR UPDATE OF c
   )
   SELECT p.*, heard.message_id, own.*, ${pausedColumn} FROM p LEFT JOIN heard ON true LEFT JOIN own ON true`,
);

/** Hears a text; null where its id was heard before. A nurse's own case waits: those she was called for are locked first. */
export async function hearOnPhone(parts: Parts, client: Queryable, text: HeardText): Promise<Heard | null> {
  const { seal } = parts;
  const [row] = await client.query<HeardRow>(hear, [
    await knownFinder(client, seal, text.from),
    seal.seal(text.from),
    seal.seal(text.body),
    parts.wallMs(),
    text.cause,
    plainId(text.id),
    text.kind ?? 'text',
    !isNursesNumber(parts, text.from),
  ]);
  if (row === undefined) throw new MissingRow('phone');
  if (row.message_id === null) return null;
  const phone = phoneOf(row, text.from, row.message_id);
  const own = row.id === null ? null : caseOf(seal, row);
  return { phone, openCase: async () => own ?? lockOpenCase(client, seal, phone) };
}

function phoneOf(row: PhoneRow, number: string, heardId: number): Phone {
  return {
    id: row.phone_id,
    number,
    optedOut: row.opted_out,
    askedAboutTube: row.asked_about_tube,
    pending: row.pending === null ? null : pendingShape.parse(row.pending),
    language: languageShape.parse(row.language),
    paused: row.paused,
    joinedId: row.joined_id,
    heardId,
  };
}

/** The database refuses NUL and lone surrogates: an id with them is kept as its hash, so that two ids never become one. */
function plainId(id: string): string {
  if (id.isWellFormed() && !id.includes('\0')) return id;
  return `sha256:${createHash('sha256').update(Buffer.from(id, 'utf16le')).digest('hex')}`;
}
