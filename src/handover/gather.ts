/** Gathers what is handed over from the line's database: open cases, tubes in place, pages, gaps, clearances, files to look at. */
import { daysLeft } from '#machines/aftercare/stayLimit.ts';
import type { CaseView, viewCase } from '#machines/case.ts';
import type { PageLevel } from '#machines/facts.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { childName, childrenOf } from '#src/families/children.ts';
import { openFile } from '#src/families/file.ts';
import { reviewOf } from '#src/families/review.ts';
import { type CaseRow, caseCode, caseColumns, caseOf, type LockedCase } from '#src/line/cases.ts';
import { enrolledFamilies } from '#src/line/families.ts';
import type { Parts } from '#src/line/parts.ts';
import { protocolOf } from '#src/line/protocols.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { type HandedCase, type HandedTube, type Handover, severities, severityOf } from './handover.ts';

const dayMs = 86_400_000;
/** Longer than any stay may be set to, so no tube in place is overlooked. */
const longestStayMs = 60 * dayMs;

const newestCases = statement(
  'handover.cases',
  `SELECT DISTINCT ON (c.phone_id) ${caseColumns}, c.opened_ms, c.closed_ms FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE (c.closed_ms IS NULL OR c.opened_ms > $1) AND NOT c.rehearsal ORDER BY c.phone_id, c.id DESC`,
);
const openPages = statement(
  'handover.pages',
  `SELECT g.case_id, (array_agg(g.level ORDER BY g.id DESC))[1] AS level, min(g.at_ms) AS since_ms, count(*) AS calls
   FROM page g JOIN "case" c ON c.id = g.case_id WHERE g.open AND c.closed_ms IS NULL GROUP BY g.case_id`,
);
const dueTimers = statement('handover.due', `SELECT case_id, what, due_ms FROM timer ORDER BY due_ms, case_id`);
const clearedLately = statement(
  'handover.cleared',
  `SELECT e.case_id, e.at_ms, c.file FROM event e JOIN "case" c ON c.id = e.case_id
   WHERE e.type = 'nurse.clear' AND e.at_ms > $1 ORDER BY e.at_ms`,
);
const undelivered = statement(
  'handover.undelivered',
  `SELECT m.case_id, count(*) AS texts FROM message m JOIN "case" c ON c.id = m.case_id AND c.phone_id = m.phone_id
   WHERE m.direction = 'out' AND m.state IN ('refused', 'unknown') AND m.at_ms > $1 GROUP BY m.case_id`,
);

/** What is needed beside the database. */
export interface Sources {
  readonly seal: Seal;
  readonly rotaGaps: Parts['rotaGaps'];
  readonly viewCase: typeof viewCase;
}

interface Found {
  readonly theCase: LockedCase;
  readonly openedMs: number;
  readonly isOpen: boolean;
  readonly view: CaseView | null;
  readonly protocol: Protocol;
}

/** Everything there is to hand over at `nowMs` (epoch ms). Reads only. */
export async function gather(parts: Sources, client: Queryable, nowMs: number): Promise<Handover> {
  const found = await findCases(parts, client, nowMs);
  const pages = await client.query<{ case_id: number; level: PageLevel; since_ms: number; calls: number }>(openPages);
  const timers = await client.query<{ case_id: number; what: string; due_ms: number }>(dueTimers);
  const failed = await client.query<{ case_id: number; texts: number }>(undelivered, [nowMs - dayMs]);
  const handed = (one: Found): HandedCase => {
    const page = pages.find((row) => row.case_id === one.theCase.id);
    const unanswered = page ? { level: page.level, sinceMs: page.since_ms, calls: page.calls } : null;
    return {
      ...nameOf(one.theCase),
      severity: severityOf(one.view, unanswered),
      openedMs: one.openedMs,
      number: one.theCase.number,
      view: one.view,
      unanswered,
      due: timers
        .filter((timer) => timer.case_id === one.theCase.id)
        .map((timer) => ({ what: timer.what, atMs: timer.due_ms })),
      undelivered: failed.find((row) => row.case_id === one.theCase.id)?.texts ?? 0,
    };
  };
  return {
    atMs: nowMs,
    cases: found
      .filter((one) => one.isOpen)
      .map(handed)
      .sort((a, b) => rank(a) - rank(b)),
    tubes: found.flatMap((one) => tubeOf(one, nowMs)).sort((a, b) => (a.daysLeft ?? -1) - (b.daysLeft ?? -1)),
    gaps: parts.rotaGaps(nowMs, nowMs + dayMs),
    clearances: await clearances(parts, client, nowMs),
    reviews: await reviews(parts, client, nowMs),
  };
}

/** The most pressing first; among those, a case that nobody has in hand. */
function rank({ severity, view, unanswered }: HandedCase): number {
  return 2 * severities.indexOf(severity) + (view === null || unanswered !== null ? 0 : 1);
}

async function findCases(parts: Sources, client: Queryable, nowMs: number): Promise<readonly Found[]> {
  type Row = CaseRow & { readonly opened_ms: number; readonly closed_ms: number | null };
  const rows = await client.query<Row>(newestCases, [nowMs - longestStayMs]);
  const found: Found[] = [];
  for (const row of rows) {
    const theCase = caseOf(parts.seal, row);
    const protocol = await protocolOf(client, theCase.protocolId);
    const { snapshots } = theCase;
    const view = snapshots === null || theCase.parked ? null : parts.viewCase(protocol, snapshots);
    found.push({ theCase, openedMs: row.opened_ms, isOpen: row.closed_ms === null, view, protocol });
  }
  return found;
}

/** A closed case says nothing of its tube once its stay is over: then it was seen to, or the clinic was paged. */
function tubeOf({ theCase, view, isOpen, protocol }: Found, nowMs: number): readonly HandedTube[] {
  if (view?.tubeIn !== 'temporary') return [];
  const sinceMs = view.temporarySinceMs;
  const left = sinceMs === null ? null : daysLeft(sinceMs, protocol.clinical, nowMs);
  if (!isOpen && left !== null && left < 0) return [];
  return [{ ...nameOf(theCase), number: theCase.number, daysLeft: left, caseOpen: isOpen }];
}

async function clearances(parts: Sources, client: Queryable, nowMs: number): Promise<Handover['clearances']> {
  const rows = await client.query<{ case_id: number; at_ms: number; file: Buffer | null }>(clearedLately, [
    nowMs - dayMs,
  ]);
  return rows.map((row) => ({
    child: row.file === null ? null : childName(openFile(parts.seal, row.file)),
    code: caseCode(row.case_id),
    atMs: row.at_ms,
  }));
}

async function reviews(parts: Sources, client: Queryable, nowMs: number): Promise<Handover['reviews']> {
  return (await enrolledFamilies(parts, client)).flatMap(({ number, file }) =>
    childrenOf(file).flatMap((child) => {
      const why = reviewOf(child, nowMs);
      return why.length === 0 ? [] : [{ child: child.child, number, why }];
    }),
  );
}

function nameOf(theCase: LockedCase) {
  return { child: childName(theCase.file), code: caseCode(theCase.id) };
}
