/** What a message costs when a million cases are stored, against a thousand: two databases, measured in turns. */

import { protocolId } from '#src/line/protocols.ts';
import type { Database } from '#src/store/database.ts';
import { median, medianPace, type Pace, paceWords, print } from './figures.ts';
import { type Ground, onMigrated } from './ground.ts';
import { benchLine, converseAll, protocol } from './line.ts';

const few = 1_000;
const many = 1_000_000;
const rounds = 7;
const phones = 16;
const mostTimes = 1.1;
const dayMs = 86_400_000;

export async function stored({ serverUrl }: Ground): Promise<void> {
  if (serverUrl === null) return;
  await onMigrated(serverUrl, (small) =>
    onMigrated(serverUrl, async (large) => {
      const paces = await measure(small, large);
      const costs = paces.small.map(
        ({ perSecond }, round) => perSecond / (paces.large[round]?.perSecond ?? Number.NaN),
      );
      print('postgresql', `with ${few} cases stored`, paceWords(medianPace(paces.small)));
      print('postgresql', `with ${many} cases stored`, paceWords(medianPace(paces.large)));
      const cost = median(costs);
      const goal = { words: `at most ${mostTimes}`, met: cost <= mostTimes };
      print('postgresql', 'cost of a message, times', cost.toFixed(2), goal);
    }),
  );
}

async function measure(small: Database, large: Database): Promise<{ small: Pace[]; large: Pace[] }> {
  const lines = { small: benchLine(small, 'whole'), large: benchLine(large, 'whole') };
  for (const [size, database, cases] of [
    ['small', small, few],
    ['large', large, many],
  ] as const) {
    await lines[size].start();
    await store(database, cases);
  }
  const paces: { small: Pace[]; large: Pace[] } = { small: [], large: [] };
  for (let round = -2; round < rounds; round += 1) {
    for (const size of ['small', 'large'] as const) {
      const pace = await converseAll(lines[size], phones);
      if (round >= 0) paces[size].push(pace);
    }
  }
  await lines.small.stop();
  await lines.large.stop();
  return paces;
}

/** Closed cases of the last years, each of a phone of its own, with a text, its answer, an event and a page that was taken. */
async function store(database: Database, cases: number): Promise<void> {
  await database.transaction(async (client) => {
    await client.query('SET LOCAL session_replication_role = replica'); // no foreign key is looked up a million times
    await client.query(phonesSql, [cases]);
    await client.query(casesSql, [protocolId(protocol), Date.now() - 1000 * dayMs]);
    for (const sql of belongings) await client.query(sql);
  });
  await database.query('VACUUM ANALYZE');
}

/** As long as a sealed number, a sealed text and the snapshots of a case. */
const sealed = { number: 44, text: 200, snapshots: 3000 };
const bytes = (length: number) => `decode(repeat('5a', ${length}), 'hex')`;

const phonesSql = `INSERT INTO phone (finder, number)
  SELECT sha256(n::text::bytea), ${bytes(sealed.number)} FROM generate_series(1, $1::int) AS n`;
const casesSql = `INSERT INTO "case" (phone_id, protocol_id, snapshots, opened_ms, closed_ms, last_number, last_hash)
  SELECT id, $1, ${bytes(sealed.snapshots)}, $2::bigint + id, $2::bigint + id + 3600000, 1, finder FROM phone`;
const belongings = [
  `INSERT INTO message (phone_id, case_id, direction, kind, body, at_ms, cause, carrier_id, state)
   SELECT phone_id, id, d.direction, 'text', ${bytes(sealed.text)}, opened_ms, 'stored ' || id, 'stored ' || d.direction || id, d.state
   FROM "case", (VALUES ('in', 'heard'), ('out', 'delivered')) AS d (direction, state)`,
  `INSERT INTO event (case_id, number, at_ms, type, body, hash)
   SELECT id, 1, opened_ms, 'told', ${bytes(sealed.text)}, last_hash FROM "case"`,
  `INSERT INTO page (case_id, phone_id, level, at_ms, taken_ms, open)
   SELECT id, 1 + id % 3, 'urgent', opened_ms, opened_ms + 60000, false FROM "case"`,
];
