/** What the line can tell of itself: what left because of a request, a phone's texts, its newest case. */
import { DateTime } from 'luxon';
import { z } from 'zod';
import type { CaseView } from '#machines/case.ts';
import { dueWhats } from '#machines/effects.ts';
import { pageLevels } from '#machines/facts.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import { statement } from '#src/store/database.ts';
import { type CaseRow, caseColumns, caseOf, type LockedCase } from './cases.ts';
import type { CaseReport, Sent, ThreadEntry } from './line.ts';
import type { Parts } from './parts.ts';
import { phoneIdOf } from './phones.ts';
import { protocolOf } from './protocols.ts';

const selectSent = statement(
  'report.sent',
  `SELECT p.number, m.body, m.at_ms, m.kind FROM message m JOIN phone p ON p.id = m.phone_id
   WHERE m.cause = $1 AND m.direction = 'out' AND m.state <> 'refused' ORDER BY m.id`,
);
const selectThread = statement(
  'report.thread',
  `SELECT direction, body, at_ms, kind FROM message
   WHERE phone_id = $1 AND state NOT IN ('waiting', 'refused') ORDER BY id`,
);
const selectCase = statement(
  'report.case',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id 
   WHERE c.id = (SELECT id FROM "case" WHERE phone_id = $1 OR id = (SELECT joined_id FROM phone WHERE id = $1)
     ORDER BY closed_ms IS NULL DESC, id DESC LIMIT 1)`,
);
const selectPages = statement(
  'report.pages',
  `SELECT p.number, g.level, g.at_ms, g.taken_ms FROM page g JOIN phone p ON p.id = g.phone_id WHERE g.case_id = $1 ORDER BY g.id`,
);
const selectDue = statement(
  'report.due',
  'SELECT what, due_ms FROM timer WHERE case_id = $1 ORDER BY due_ms, machine, id',
);

interface MessageRow {
  readonly body: Buffer;
  readonly at_ms: number;
  readonly kind: MessageKind;
}

const levelShape = z.enum(pageLevels);
const whatShape = z.enum(dueWhats);

export async function sentBecauseOf(parts: Parts, cause: string): Promise<Sent[]> {
  const rows = await parts.database.query<MessageRow & { number: Buffer }>(selectSent, [cause]);
  return rows.map((row) => ({
    to: parts.seal.open(row.number),
    body: parts.seal.open(row.body),
    at: iso(parts, row.at_ms),
    kind: row.kind,
  }));
}

export async function thread(parts: Parts, number: string): Promise<ThreadEntry[]> {
  const phoneId = await phoneIdOf(parts, parts.database, number);
  if (phoneId === null) return [];
  const rows = await parts.database.query<MessageRow & { direction: 'in' | 'out' }>(selectThread, [phoneId]);
  return rows.map((row) => ({
    direction: row.direction,
    body: parts.seal.open(row.body),
    at: iso(parts, row.at_ms),
    kind: row.kind,
  }));
}

export async function newestCase(parts: Parts, number: string): Promise<CaseReport | null> {
  const { database, seal } = parts;
  const phoneId = await phoneIdOf(parts, database, number);
  if (phoneId === null) return null;
  const [row] = await database.query<CaseRow>(selectCase, [phoneId]);
  if (row === undefined) return null;
  const theCase = caseOf(seal, row);
  const pages = await database.query<{ number: Buffer; level: string; at_ms: number; taken_ms: number | null }>(
    selectPages,
    [theCase.id],
  );
  const due = await database.query<{ what: string; due_ms: number }>(selectDue, [theCase.id]);
  return {
    id: String(theCase.id),
    ...(await known(parts, theCase)),
    pages: pages.map((page) => ({
      to: seal.open(page.number),
      level: levelShape.parse(page.level),
      at: iso(parts, page.at_ms),
      takenAt: page.taken_ms === null ? null : iso(parts, page.taken_ms),
    })),
    due: due.map((timer) => ({ what: whatShape.parse(timer.what), at: iso(parts, timer.due_ms) })),
    rehearsal: theCase.rehearsal !== null,
    protocol: theCase.protocolId,
  };
}

type Known = Pick<CaseReport, 'asking' | 'disposition' | 'facts' | 'states'>;

const nothingKnown: Known = {
  asking: null,
  disposition: null,
  facts: {},
  states: { conversation: [], paging: [], aftercare: [] },
};

/** A parked case is a person's: no question is open, whatever the machines last asked. */
async function known(parts: Parts, theCase: LockedCase): Promise<Known> {
  const { asking, disposition, facts, states } = (await viewOf(parts, theCase)) ?? nothingKnown;
  return theCase.parked
    ? { asking: null, disposition: 'nurse', facts, states }
    : { asking, disposition, facts, states };
}

async function viewOf(parts: Parts, theCase: LockedCase): Promise<CaseView | null> {
  if (theCase.snapshots === null) return null;
  const protocol = await protocolOf(parts.database, theCase.protocolId);
  return parts.machines.viewCase(protocol, theCase.snapshots);
}

/** ISO 8601 with the site's offset. */
function iso(parts: Parts, atMs: number): string {
  const text = DateTime.fromMillis(atMs, { zone: parts.protocol.site.timeZone }).toISO();
  if (text === null) throw new RangeError(`no time at ${atMs}`);
  return text;
}
