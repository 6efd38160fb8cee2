/**
 * Ten thousand rechecks beside normal traffic: spread over a minute, and all due in one instant with pages among them. What
 * counts is when the carrier is given what is said.
 */
import { setTimeout as pause } from 'node:timers/promises';
import type { Carrier } from '#src/carrier/port.ts';
import { practiceCarrier } from '#src/carrier/practice.ts';
import { bossAlarm } from '#src/line/bossAlarm.ts';
import type { Line } from '#src/line/line.ts';
import { createLog } from '#src/log.ts';
import type { Database } from '#src/store/database.ts';
import { texts } from './conversation.ts';
import { type Pace, paceOf, paceWords, percentile, print, under } from './figures.ts';
import { type Ground, onMigrated } from './ground.ts';
import { benchLine, freshNumber } from './line.ts';

const rechecks = 10_000;
const pages = 100;
const textsPerSecond = 20;
const spreadMs = 60_000;
/** The line settles in before the first is due. */
const headStartMs = 5_000;
const mostLateMs = 1_000;
const mostOutS = 60;
const mostAnswerMs = 1_000;

export async function rechecksDue({ serverUrl }: Ground): Promise<void> {
  if (serverUrl === null) return;
  await onMigrated(serverUrl, async (database) => {
    const late = await run(database, spreadMs);
    const most = percentile(late.rechecks, 1);
    const words = `p50 ${percentile(late.rechecks, 0.5).toFixed(0)} ms   most ${most.toFixed(0)} ms late`;
    print('postgresql', `${rechecks} rechecks spread over a minute`, words, under(mostLateMs, most, 'ms'));
    print('postgresql', 'texts beside them, to the answer at the carrier', paceWords(late.texts));
  });
  await onMigrated(serverUrl, async (database) => {
    const late = await run(database, 0);
    const out = percentile(late.rechecks, 1) / 1000;
    print(
      'postgresql',
      `${rechecks} rechecks due in one instant`,
      `all out in ${out.toFixed(1)} s`,
      under(mostOutS, out, 's'),
    );
    const paged = percentile(late.pages, 1);
    const before = late.rechecks.filter((ms) => ms < paged).length;
    const first = { words: 'before all but a hundredth of the rechecks', met: before <= rechecks / 100 };
    print('postgresql', `${pages} pages due with them`, `all out in ${(paged / 1000).toFixed(1)} s`, first);
    const answer = { words: `under ${mostAnswerMs} ms p99`, met: late.texts.p99Ms < mostAnswerMs };
    print('postgresql', 'texts beside them, to the answer at the carrier', paceWords(late.texts), answer);
  });
}

/** How late each was at the carrier, ms. */
interface Late {
  readonly rechecks: readonly number[];
  readonly pages: readonly number[];
  readonly texts: Pace;
}

async function run(database: Database, overMs: number): Promise<Late> {
  const carriedMs = new Map<string, number>();
  const alarm = bossAlarm({ database, backend: 'postgres', log: createLog({ write: () => {} }), wallMs: Date.now });
  const line = benchLine(database, 'whole', { carrier: noting(carriedMs), alarm });
  await line.start();
  const waiting = await caseAfter(line, database, texts);
  const calling = await caseAfter(line, database, ['her g tube fell out', 'no', 'can i talk to a nurse']);
  await database.query(dueTable);
  const firstMs = Date.now() + headStartMs;
  await database.query(copies, [waiting, 'conversation', rechecks, firstMs, overMs]);
  await database.query(copies, [calling, 'paging', pages, firstMs, 0]);
  await database.query('DELETE FROM timer WHERE case_id = ANY ($1)', [[waiting, calling]]);
  await database.query('ANALYZE');
  const textedMs = await textUntil(line, async () => (await database.query(left)).length === 0);
  await line.settle('bench');
  await line.stop();
  return lateness(database, carriedMs, textedMs);
}

/** Takes everything at once and notes when. */
function noting(carriedMs: Map<string, number>): Carrier {
  return {
    ...practiceCarrier,
    send: (message) => {
      carriedMs.set(message.id, Date.now());
      return practiceCarrier.send(message);
    },
  };
}

/** A case that has heard these texts; the others are copies of it. */
async function caseAfter(line: Line, database: Database, said: readonly string[]): Promise<number> {
  const from = freshNumber();
  for (const [index, body] of said.entries())
    await line.hear({ from, body, id: `${from}-${index}`, cause: `${from}-${index}` });
  await line.settle('bench');
  const [row] = await database.query<{ id: number }>('SELECT max(id) AS id FROM "case"');
  if (row === undefined) throw new Error('no case was opened');
  return row.id;
}

const dueTable = 'CREATE TABLE bench_due (case_id bigint PRIMARY KEY, machine text, id text, due_ms bigint)';
/** Copies of case $1, each of a phone of its own, with its timer of machine $2; $3 of them, due from $4 on over $5 ms. */
const copies = `WITH original AS (SELECT * FROM "case" WHERE id = $1), phones AS (
    INSERT INTO phone (finder, number)
    SELECT sha256(($2 || n)::text::bytea), p.number FROM generate_series(1, $3::int) AS n, original o JOIN phone p ON p.id = o.phone_id
    RETURNING id
  ), cases AS (
    INSERT INTO "case" (phone_id, protocol_id, file, snapshots, opened_ms, last_number, last_hash)
    SELECT p.id, o.protocol_id, o.file, o.snapshots, o.opened_ms, o.last_number, o.last_hash FROM phones p, original o RETURNING id
  ), timers AS (
    INSERT INTO timer (case_id, machine, id, started_by, what, event, started_ms, due_ms, cause)
    SELECT c.id, t.machine, t.id, t.started_by, t.what, t.event, t.started_ms, $4::bigint + c.place * $5::bigint / $3::int, t.cause
    FROM (SELECT id, row_number() OVER (ORDER BY id) - 1 AS place FROM cases) c, timer t WHERE t.case_id = $1 AND t.machine = $2
    RETURNING case_id, machine, id, due_ms
  )
  INSERT INTO bench_due SELECT case_id, machine, id, due_ms FROM timers ON CONFLICT DO NOTHING`;
const left = 'SELECT 1 FROM bench_due d JOIN timer t USING (case_id, machine, id) WHERE t.due_ms = d.due_ms LIMIT 1';
/** The first thing the carrier was given of each copy since it came due. */
const firstOut = `SELECT DISTINCT ON (d.case_id) d.machine, d.due_ms, m.id FROM bench_due d
  JOIN message m ON m.case_id = d.case_id AND m.direction = 'out' ORDER BY d.case_id, m.id`;
const answers = `SELECT cause, min(id) AS id FROM message WHERE direction = 'out' AND cause = ANY ($1) GROUP BY cause`;

/** Normal traffic at a steady pace until it is `over`; when each text came, epoch ms, by its cause. */
async function textUntil(line: Line, over: () => Promise<boolean>): Promise<ReadonlyMap<string, number>> {
  const textedMs = new Map<string, number>();
  const heard: Promise<void>[] = [];
  const phones = Array.from({ length: textsPerSecond }, () => ({ from: freshNumber(), next: 0 }));
  const beganMs = Date.now();
  for (let count = 0; count % textsPerSecond !== 0 || !(await over()); count += 1) {
    await pause(Math.max(0, beganMs + (count * 1000) / textsPerSecond - Date.now()));
    const place = count % phones.length;
    const { from, next } = phones[place] ?? { from: freshNumber(), next: 0 };
    const cause = `${from}-${next}`;
    textedMs.set(cause, Date.now());
    heard.push(line.hear({ from, body: texts[next] ?? '', id: cause, cause }));
    phones[place] = next + 1 < texts.length ? { from, next: next + 1 } : { from: freshNumber(), next: 0 };
  }
  await Promise.all(heard);
  return textedMs;
}

async function lateness(
  database: Database,
  carriedMs: ReadonlyMap<string, number>,
  textedMs: ReadonlyMap<string, number>,
): Promise<Late> {
  const since = (id: number, ms: number) => (carriedMs.get(String(id)) ?? Number.POSITIVE_INFINITY) - ms;
  const due = await database.query<{ machine: string; due_ms: number; id: number }>(firstOut);
  const of = (machine: string) =>
    due.filter((row) => row.machine === machine).map(({ id, due_ms }) => since(id, due_ms));
  const answered = await database.query<{ cause: string; id: number }>(answers, [[...textedMs.keys()]]);
  const tookMs = answered.map(({ cause, id }) => since(id, textedMs.get(cause) ?? Number.NaN));
  const seconds = textedMs.size / textsPerSecond;
  const late = { rechecks: of('conversation'), pages: of('paging'), texts: paceOf(tookMs, seconds) };
  if (late.rechecks.length !== rechecks || late.pages.length !== pages)
    throw new Error('a recheck or a page did not go out');
  return late;
}
