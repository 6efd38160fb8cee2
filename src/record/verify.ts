/**
 * Finds what was altered, left out or moved in a record. Each event's hash follows from the one before it, and what is kept
 * elsewhere (the case's own row, texts, pages, timers) has to agree with the events. Names the first place that does not.
 */
import { MissingRow, SealBroken } from '#src/errors.ts';
import { caseCode } from '#src/line/cases.ts';
import { canonicalJson, chain, digest } from '#src/line/record.ts';
import { tombstoneFault } from '#src/retention/tombstone.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { callsOf, type EventBody, parseEvent } from './event.ts';
import { type TextRow, textRows } from './texts.ts';

/** A record that is whole, or the first thing that is not as the line wrote it. */
export type Verdict =
  | { readonly whole: true; readonly events: number }
  | { readonly whole: false; readonly fault: string };

interface CaseRow {
  readonly id: number;
  readonly snapshots: Buffer | null;
  readonly closed_ms: number | null;
  readonly parked_ms: number | null;
  readonly erased_ms: number | null;
  readonly last_number: number;
  readonly last_hash: Buffer | null;
}
interface EventRow {
  readonly number: number;
  readonly at_ms: number;
  readonly type: string;
  readonly body: Buffer;
  readonly hash: Buffer;
}
interface PageRow {
  readonly id: number;
  readonly at_ms: number;
  readonly level: string;
  readonly taken_ms: number | null;
}

interface Opened {
  readonly number: number;
  readonly body: EventBody;
}

const selectCase = statement(
  'verify.case',
  'SELECT id, snapshots, closed_ms, parked_ms, erased_ms, last_number, last_hash FROM "case" WHERE id = $1',
);
const selectEvents = statement(
  'verify.events',
  'SELECT number, at_ms, type, body, hash FROM event WHERE case_id = $1 ORDER BY number',
);
const selectPages = statement(
  'verify.pages',
  'SELECT id, at_ms, level, taken_ms FROM page WHERE case_id = $1 ORDER BY id',
);
const newestTimer = statement('verify.timer', 'SELECT max(started_by) AS number FROM timer WHERE case_id = $1');

/** Looks at one case. Names no person and quotes no text. */
export async function verifyCase(client: Queryable, seal: Seal, caseId: number): Promise<Verdict> {
  const [row] = await client.query<CaseRow>(selectCase, [caseId]);
  if (row === undefined) throw new MissingRow('case');
  const events = await client.query<EventRow>(selectEvents, [caseId]);
  const fault =
    row.erased_ms === null
      ? await checkWords(client, seal, row, events)
      : tombstoneFault((body) => openOr(seal, body), row, events);
  return fault === null
    ? { whole: true, events: events.length }
    : { whole: false, fault: `case ${caseCode(caseId)} (number ${caseId}): ${fault}` };
}

async function checkWords(
  client: Queryable,
  seal: Seal,
  row: CaseRow,
  events: readonly EventRow[],
): Promise<string | null> {
  const chained = checkChain(seal, row, events);
  return 'fault' in chained ? chained.fault : checkBeside(client, seal, row, chained.opened);
}

type Chain = { readonly fault: string } | { readonly opened: readonly Opened[] };

function checkChain(seal: Seal, row: CaseRow, events: readonly EventRow[]): Chain {
  const opened: Opened[] = [];
  let lastHash: Buffer | null = null;
  for (const [index, event] of events.entries()) {
    const number = index + 1;
    const where = `event ${number} of ${Math.max(row.last_number, events.length)}`;
    if (event.number !== number) return { fault: `${where} is missing` };
    const json = openOr(seal, event.body);
    if (json === null) return { fault: `${where} was altered: it does not open` };
    const link = chainText(lastHash, number, json);
    if (link === null || !link.equals(event.hash))
      return { fault: `${where} ${whyBroken(seal, lastHash, events, index)}` };
    const body = parseEvent(json);
    if (body.at !== event.at_ms || (body.event?.type ?? 'parked') !== event.type)
      return { fault: `${where} was altered: its time or type is not the one it was written with` };
    opened.push({ number, body });
    lastHash = event.hash;
  }
  if (row.last_number !== events.length)
    return row.last_number > events.length
      ? { fault: `event ${events.length + 1} of ${row.last_number} is missing` }
      : { fault: `event ${row.last_number + 1} is more than the case has` };
  const lastsAgree = row.last_hash === null ? lastHash === null : lastHash?.equals(row.last_hash);
  return lastsAgree ? { opened } : { fault: `the case's own last hash is not that of event ${events.length}` };
}

/** The hash an event must have; null where its text is not even canonical JSON. */
function chainText(lastHash: Buffer | null, number: number, json: string): Buffer | null {
  const value: unknown = JSON.parse(json);
  if (typeof value !== 'object' || value === null || canonicalJson(value) !== json) return null;
  return chain({ lastNumber: number - 1, lastHash }, value).hash;
}

/** An event that another one stands in the place of was moved; else it, or one before it that was taken out, is at fault. */
function whyBroken(seal: Seal, lastHash: Buffer | null, events: readonly EventRow[], index: number): string {
  const belongs = events.find((other, place) => {
    const json = place > index ? openOr(seal, other.body) : null;
    return json !== null && chainText(lastHash, index + 1, json)?.equals(other.hash);
  });
  return belongs === undefined
    ? 'was altered, or one before it was taken out: it does not follow from the event before it'
    : `was moved: the event stored as number ${belongs.number} belongs there`;
}

/** What is kept beside the events: snapshots, the closing, timers, pages and texts. */
async function checkBeside(
  client: Queryable,
  seal: Seal,
  row: CaseRow,
  opened: readonly Opened[],
): Promise<string | null> {
  const [timer] = await client.query<{ number: number | null }>(newestTimer, [row.id]);
  if ((timer?.number ?? 0) > row.last_number) return `event ${timer?.number} is missing: a timer was started by it`;
  return (
    checkPages(row, await client.query<PageRow>(selectPages, [row.id]), opened) ??
    checkMessages(seal, await textRows(client, row.id), opened) ??
    checkStanding(seal, row, opened)
  );
}

/** A parked case is a person's: it calls and closes without events. */
function checkStanding(seal: Seal, row: CaseRow, opened: readonly Opened[]): string | null {
  const last = opened.findLast(({ body }) => body.snapshots !== undefined);
  const snapshots = row.snapshots === null ? null : openOr(seal, row.snapshots);
  if (last !== undefined && (snapshots === null || digest(snapshots) !== last.body.snapshots))
    return `the case's state is not the one event ${last.number} left: it was altered, or events after it were taken out`;
  if (row.parked_ms !== null) return null;
  const closing = opened.find(({ body }) => body.effects.some(({ type }) => type === 'closeCase'));
  return (closing?.body.at ?? null) === row.closed_ms ? null : 'the time it was closed is not the one its events say';
}

function checkPages(row: CaseRow, pages: readonly PageRow[], opened: readonly Opened[]): string | null {
  const wanted = opened.flatMap(({ number, body }) =>
    callsOf(body).map(({ level }) => ({ number, atMs: body.at, level })),
  );
  const left = [...pages];
  for (const { number, atMs, level } of wanted) {
    const index = left.findIndex((page) => page.at_ms === atMs && page.level === level);
    if (index === -1) return `a page of event ${number} is missing or was altered`;
    left.splice(index, 1);
  }
  const odd = left.find(({ at_ms }) => row.parked_ms === null || at_ms < row.parked_ms);
  if (odd !== undefined) return `page ${odd.id} belongs to no event: it was added, or its event was taken out`;
  const takes = new Set(opened.filter(({ body }) => body.event?.type === 'take').map(({ body }) => body.at));
  const untaken = pages.find(({ taken_ms }) => taken_ms !== null && row.parked_ms === null && !takes.has(taken_ms));
  return untaken === undefined ? null : `page ${untaken.id} was taken at a time no event says`;
}

function checkMessages(seal: Seal, messages: readonly TextRow[], opened: readonly Opened[]): string | null {
  const kept = new Map<string, TextRow[]>();
  for (const message of messages) {
    const text = openOr(seal, message.body);
    if (text === null) return `message ${message.id} was altered: it does not open`;
    const name = `${message.direction} ${digest(text)}`;
    kept.set(name, [...(kept.get(name) ?? []), message]);
  }
  const used = new Set<number>();
  for (const { number, body } of opened) {
    if (body.heard !== undefined && !kept.has(`in ${body.heard}`))
      return `the text that event ${number} heard is missing or was altered`;
    let before = 0;
    for (const said of body.said) {
      const message = kept
        .get(`out ${said}`)
        ?.find(({ at_ms, id }) => at_ms === body.at && id > before && !used.has(id));
      if (message === undefined) return `a message of event ${number} is missing, was altered or moved`;
      used.add(message.id);
      before = message.id;
    }
  }
  return null;
}

function openOr(seal: Seal, sealed: Buffer): string | null {
  try {
    return seal.open(sealed);
  } catch (error) {
    if (error instanceof SealBroken) return null;
    throw error;
  }
}
