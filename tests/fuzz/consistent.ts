/** Whether the rows still make sense after an attack: the record holds, every open case can be seen, nothing runs for a closed one. */
import { viewCase } from '#machines/case.ts';
import { type CaseRow, caseColumns, caseOf } from '#src/line/cases.ts';
import { protocolOf } from '#src/line/protocols.ts';
import { verifyCase } from '#src/record/verify.ts';
import type { Database } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';

export interface Standing {
  readonly cases: number;
  readonly openCases: number;
  readonly parkedCases: number;
  readonly events: number;
  readonly textsHeard: number;
  readonly messagesSent: number;
}

/** Rows that must not be, by what each would mean. */
const mustBeEmpty: Readonly<Record<string, string>> = {
  'a timer of a closed case': 'SELECT FROM timer t JOIN "case" c ON c.id = t.case_id WHERE c.closed_ms IS NOT NULL',
  'a timer started by an event that is not':
    'SELECT FROM timer t JOIN "case" c ON c.id = t.case_id WHERE t.started_by > c.last_number',
  'an open page of a closed case':
    'SELECT FROM page g JOIN "case" c ON c.id = g.case_id WHERE g.open AND c.closed_ms IS NOT NULL',
  'a text heard twice': `SELECT carrier_id FROM message WHERE direction = 'in' GROUP BY carrier_id HAVING count(*) > 1`,
  'a text met with silence': `SELECT FROM message i WHERE i.direction = 'in' AND i.kind = 'text' AND NOT EXISTS (
     SELECT FROM message o WHERE o.direction = 'out' AND o.phone_id = i.phone_id AND o.cause = i.cause)`,
  'an open case with nobody to come back to it': `SELECT FROM "case" c WHERE c.closed_ms IS NULL
     AND NOT EXISTS (SELECT FROM timer WHERE case_id = c.id) AND NOT EXISTS (SELECT FROM page WHERE case_id = c.id)`,
};

/** What is wrong, in words, and how much there is. */
export async function look(database: Database, seal: Seal): Promise<{ faults: string[]; standing: Standing }> {
  const faults: string[] = [];
  for (const [what, sql] of Object.entries(mustBeEmpty)) {
    const rows = await database.query(sql);
    if (rows.length > 0) faults.push(`${what} (${rows.length})`);
  }
  const rows = await database.query<CaseRow & { closed_ms: number | null }>(
    `SELECT ${caseColumns}, c.closed_ms FROM "case" c JOIN phone p ON p.id = c.phone_id`,
  );
  let events = 0;
  for (const row of rows) {
    const record = await verifyCase(database, seal, row.id);
    if (record.whole) events += record.events;
    else faults.push(record.fault);
    const theCase = caseOf(seal, row);
    if (theCase.snapshots === null) continue;
    try {
      viewCase(await protocolOf(database, theCase.protocolId), theCase.snapshots);
    } catch (error) {
      faults.push(`case ${theCase.id} cannot be seen: ${String(error)}`);
    }
  }
  const [counts] = await database.query<{ heard: number; sent: number }>(
    "SELECT count(*) FILTER (WHERE direction = 'in') AS heard, count(*) FILTER (WHERE direction = 'out') AS sent FROM message",
  );
  const open = rows.filter((row) => row.closed_ms === null);
  return {
    faults,
    standing: {
      cases: rows.length,
      openCases: open.length,
      parkedCases: open.filter((row) => row.parked_ms !== null).length,
      events,
      textsHeard: counts?.heard ?? 0,
      messagesSent: counts?.sent ?? 0,
    },
  };
}
