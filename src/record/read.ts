/** Reads one case's whole record from the database: its events, texts and pages. Writes nothing. */
import type { PageLevel, PageReason } from '#machines/facts.ts';
import type { Clinical, Site } from '#machines/protocol/settings.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import { NoSuchCase } from '#src/errors.ts';
import { openFile } from '#src/families/file.ts';
import { caseCode } from '#src/line/cases.ts';
import type { Family } from '#src/line/line.ts';
import { protocolOf } from '#src/line/protocols.ts';
import { digest } from '#src/line/record.ts';
import { CaseErased } from '#src/retention/errors.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { callsOf, type EventBody, parseEvent } from './event.ts';
import { mediaByText, type RecordedMedia } from './media.ts';
import { type TextRow, textRows } from './texts.ts';

export interface RecordedEvent {
  readonly number: number;
  readonly atMs: number;
  readonly body: EventBody;
}

/** A text or call. `nurse` is null where it is the family's. */
export interface RecordedMessage {
  readonly id: number;
  readonly atMs: number;
  readonly direction: 'in' | 'out';
  readonly kind: MessageKind;
  readonly body: string;
  readonly state: TextRow['state'];
  readonly nurse: Person | null;
  /** Pictures and voice notes that came with it. */
  readonly media: readonly RecordedMedia[];
}

/** Somebody on call; `name` as the record has it since she took a page, else null. */
export interface Person {
  readonly phoneId: number;
  readonly name: string | null;
  /** Place in the climb she was first called at: 0 is first on call; null where she was never called. */
  readonly place: number | null;
}

export interface RecordedPage {
  readonly id: number;
  readonly atMs: number;
  readonly takenMs: number | null;
  readonly open: boolean;
  readonly level: PageLevel;
  readonly person: Person;
  readonly reasons: readonly PageReason[];
  /** Number of the event that called her; null where a parked case did. */
  readonly event: number | null;
}

export interface CaseRecord {
  readonly id: number;
  readonly code: string;
  /** As the case began; null for an unknown phone. */
  readonly file: Family | null;
  /** The caregiver's, E.164. */
  readonly number: string;
  readonly openedMs: number;
  readonly closedMs: number | null;
  readonly parkedMs: number | null;
  /** Played for practice. */
  readonly rehearsal: boolean;
  readonly site: Site;
  readonly clinical: Clinical;
  readonly protocolId: string;
  readonly lastHash: Buffer | null;
  readonly events: readonly RecordedEvent[];
  readonly messages: readonly RecordedMessage[];
  readonly pages: readonly RecordedPage[];
}

interface CaseRow {
  readonly id: number;
  readonly phone_id: number;
  readonly joined_ids: number[];
  readonly number: Buffer;
  readonly file: Buffer | null;
  readonly opened_ms: number;
  readonly closed_ms: number | null;
  readonly parked_ms: number | null;
  readonly rehearsal: boolean;
  readonly erased_ms: number | null;
  readonly protocol_id: string;
  readonly last_hash: Buffer | null;
}
interface PageRow extends Pick<RecordedPage, 'id' | 'open' | 'level'> {
  readonly phone_id: number;
  readonly at_ms: number;
  readonly taken_ms: number | null;
}

const selectCases = statement('record.cases', 'SELECT id FROM "case" ORDER BY id');
const selectCase = statement(
  'record.case',
  `SELECT c.id, c.phone_id, c.joined_ids, p.number, c.file, c.opened_ms, c.closed_ms, c.parked_ms, c.rehearsal, c.erased_ms, c.protocol_id, c.last_hash
   FROM "case" c JOIN phone p ON p.id = c.phone_id WHERE c.id = $1`,
);
const selectEvents = statement(
  'record.events',
  'SELECT number, at_ms, body FROM event WHERE case_id = $1 ORDER BY number',
);
const selectPages = statement(
  'record.pages',
  'SELECT id, phone_id, level, at_ms, taken_ms, open FROM page WHERE case_id = $1 ORDER BY id',
);

/** The number of the case somebody means: the newest one with this code, or the one with this number. Throws `NoSuchCase`. */
export async function findCase(client: Queryable, named: string): Promise<number> {
  const rows = await client.query<{ id: number }>(selectCases);
  const wanted = named.trim().toUpperCase();
  const found = rows.findLast(({ id }) => String(id) === wanted || caseCode(id) === wanted);
  if (found === undefined) throw new NoSuchCase(rows.length);
  return found.id;
}

/** Every case there is, oldest first. */
export async function allCases(client: Queryable): Promise<readonly number[]> {
  return (await client.query<{ id: number }>(selectCases)).map(({ id }) => id);
}

/** The record of one case, as it is; whether it is whole is `verify`'s to say. Throws `NoSuchCase`, `CaseErased`. */
export async function readRecord(client: Queryable, seal: Seal, caseId: number): Promise<CaseRecord> {
  const [row] = await client.query<CaseRow>(selectCase, [caseId]);
  if (row === undefined) throw new NoSuchCase(0);
  if (row.erased_ms !== null) throw new CaseErased(caseId);
  const { site, clinical } = await protocolOf(client, row.protocol_id);
  const events = await readEvents(client, seal, caseId);
  const rows = await client.query<PageRow>(selectPages, [caseId]);
  const people = peopleOf(rows, events);
  const texts = await textRows(client, caseId);
  const media = await mediaByText(client, caseId);
  return {
    id: row.id,
    code: caseCode(row.id),
    file: row.file === null ? null : openFile(seal, row.file),
    number: seal.open(row.number),
    openedMs: row.opened_ms,
    closedMs: row.closed_ms,
    parkedMs: row.parked_ms,
    rehearsal: row.rehearsal,
    site,
    clinical,
    protocolId: row.protocol_id,
    lastHash: row.last_hash,
    events,
    messages: ofTheCase(seal, texts, events).map(({ at_ms, phone_id, body, id, direction, kind, state }) => ({
      ...{ id, direction, kind, state, body },
      atMs: at_ms,
      nurse: phone_id === row.phone_id || row.joined_ids.includes(phone_id) ? null : personAt(people, phone_id),
      media: media.get(id) ?? [],
    })),
    pages: rows.map(({ phone_id, at_ms, taken_ms, ...page }, index) => ({
      ...page,
      atMs: at_ms,
      takenMs: taken_ms,
      person: personAt(people, phone_id),
      reasons: callFor(rows, events, index)?.reasons ?? [],
      event: callFor(rows, events, index)?.event ?? null,
    })),
  };
}

async function readEvents(client: Queryable, seal: Seal, caseId: number): Promise<readonly RecordedEvent[]> {
  const rows = await client.query<{ number: number; at_ms: number; body: Buffer }>(selectEvents, [caseId]);
  return rows.map(({ number, at_ms, body }) => ({ number, atMs: at_ms, body: parseEvent(seal.open(body)) }));
}

/** A text that brought nothing to be said is the case's where an event heard these very words then. */
function ofTheCase(seal: Seal, rows: readonly TextRow[], events: readonly RecordedEvent[]) {
  const opened = rows.map((row) => ({ ...row, body: seal.open(row.body) }));
  const heard = new Set(
    events.flatMap(({ atMs, body }) => {
      const same = opened.filter(
        (row) => row.direction === 'in' && row.at_ms <= atMs && digest(row.body) === body.heard,
      );
      return same.at(-1)?.id ?? [];
    }),
  );
  return opened.filter(({ id, linked }) => linked || heard.has(id));
}

/** The call a page was made by: pages and calls of one moment stand in the same order. */
function callFor(rows: readonly PageRow[], events: readonly RecordedEvent[], index: number) {
  const atMs = rows[index]?.at_ms;
  const before = rows.slice(0, index).filter((row) => row.at_ms === atMs).length;
  return events
    .filter((event) => event.atMs === atMs)
    .flatMap(({ number, body }) => callsOf(body).map((call) => ({ ...call, event: number })))[before];
}

/** Who was called, with the name under which she took a page and the place she was first called at. */
function peopleOf(rows: readonly PageRow[], events: readonly RecordedEvent[]): ReadonlyMap<number, Person> {
  const people = new Map<number, Person>();
  for (const [index, { phone_id, taken_ms }] of rows.entries()) {
    const before = people.get(phone_id);
    people.set(phone_id, {
      phoneId: phone_id,
      name: before?.name ?? takerAt(events, taken_ms),
      place: before === undefined ? (callFor(rows, events, index)?.place ?? null) : before.place,
    });
  }
  return people;
}

function takerAt(events: readonly RecordedEvent[], takenMs: number | null): string | null {
  const take = events.find(({ atMs, body }) => atMs === takenMs && body.event?.type === 'take');
  return take?.body.event?.nurse ?? null;
}

function personAt(people: ReadonlyMap<number, Person>, phoneId: number): Person {
  return people.get(phoneId) ?? { phoneId, name: null, place: null };
}

const places = ['first on call', 'second on call', 'third on call'] as const;

/** How the record names somebody on call. */
export function nameOf({ name, place }: Person): string {
  const where = place === null ? 'nurse' : (places[place] ?? 'on call');
  return name === null ? where : `${name} (${where})`;
}
