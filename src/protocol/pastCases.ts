/** Reads every past case of a line's database, to play it again. Writes nothing. */
import { z } from 'zod';
import type { CaseSignal } from '#machines/case.ts';
import { machineNames } from '#machines/effects.ts';
import { openFile } from '#src/families/file.ts';
import { protocolOf } from '#src/line/protocols.ts';
import { type Database, type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { PastCase } from './compare.ts';

const selectCases = statement(
  'past.cases',
  'SELECT id, protocol_id, file, opened_ms FROM "case" WHERE snapshots IS NOT NULL AND NOT rehearsal ORDER BY id',
);
/** The texts the case's machines answered, in order: each request has one text in and its answers out. */
const selectTexts = statement(
  'past.texts',
  `SELECT heard.body FROM message heard WHERE heard.direction = 'in' AND heard.kind = 'text'
     AND heard.phone_id IN (SELECT unnest(phone_id || joined_ids) FROM "case" WHERE id = $1)
   AND EXISTS (SELECT FROM message said WHERE said.cause = heard.cause AND said.case_id = $1 AND said.phone_id = heard.phone_id
     AND said.direction = 'out') ORDER BY heard.id`,
);
const selectEvents = statement('past.events', 'SELECT at_ms, type, body FROM event WHERE case_id = $1 ORDER BY number');

interface CaseRow {
  readonly id: number;
  readonly protocol_id: string;
  readonly file: Buffer | null;
  readonly opened_ms: number;
}

interface EventRow {
  readonly at_ms: number;
  readonly type: string;
  readonly body: Buffer;
}

const signalShape = z.object({
  machine: z.enum(machineNames),
  event: z.looseObject({ type: z.string(), at: z.number(), clinicOpen: z.boolean() }),
});
/** The line wrote and sealed it after parsing what it was made from; here only that it is one. */
const signal = z.custom<CaseSignal>((value) => signalShape.safeParse(value).success);

/** Hands over every case that the machines ran, with the caregiver's texts they heard, one after the other, oldest first. */
export async function eachPastCase(
  database: Database,
  seal: Seal,
  visit: (past: PastCase, texts: readonly string[]) => void,
): Promise<void> {
  await database.transaction(async (client) => {
    await client.query('SET TRANSACTION READ ONLY');
    for (const row of await client.query<CaseRow>(selectCases)) {
      const texts = await client.query<{ body: Buffer }>(selectTexts, [row.id]);
      const past = await pastCase(client, seal, row);
      visit(
        past,
        texts.map(({ body }) => seal.open(body)),
      );
    }
  });
}

async function pastCase(client: Queryable, seal: Seal, row: CaseRow): Promise<PastCase> {
  const events = await client.query<EventRow>(selectEvents, [row.id]);
  const byPeople = events.filter(({ type }) => type !== 'parked' && !type.startsWith('xstate.after.'));
  return {
    id: row.id,
    protocol: await protocolOf(client, row.protocol_id),
    file: row.file === null ? null : openFile(seal, row.file),
    openedMs: row.opened_ms,
    signals: byPeople.map(({ body }) => signalOf(seal.open(body))),
    untilMs: events.at(-1)?.at_ms ?? row.opened_ms,
  };
}

function signalOf(body: string): CaseSignal {
  const { machine, event } = z.looseObject({ machine: z.unknown(), event: z.unknown() }).parse(JSON.parse(body));
  return signal.parse({ machine, event });
}
