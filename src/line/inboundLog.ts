/** The carrier's own log of texts to us, read again every minute: one that was lost while the line was down is still answered. */
import type { LoggedText } from '#src/carrier/port.ts';
import { statement } from '#src/store/database.ts';
import type { HeardText } from './line.ts';
import type { Parts } from './parts.ts';

const everyMs = 60_000;
/** Read again this far back each time: the log may show a text later than it came. Common practice, no source. */
const overlapMs = 15 * 60_000;

const readUntil = statement('log.until', 'SELECT read_ms FROM carrier_log');
const begin = statement('log.begin', 'INSERT INTO carrier_log (read_ms) VALUES ($1) ON CONFLICT DO NOTHING');
const setUntil = statement('log.set', 'UPDATE carrier_log SET read_ms = GREATEST(read_ms, $1)');
const findHeard = statement(
  'log.heard',
  "SELECT carrier_id FROM message WHERE direction = 'in' AND carrier_id = ANY ($1)",
);

/** Makes the reader; it does nothing where it was asked less than a minute ago. Rejects if the carrier or the database fails. */
export function createLogReader(parts: Parts, hear: (text: HeardText) => Promise<void>): () => Promise<void> {
  let lastMs = Number.NEGATIVE_INFINITY;
  return async () => {
    const nowMs = parts.wallMs();
    if (Math.abs(nowMs - lastMs) < everyMs) return;
    lastMs = nowMs;
    const [until] = await parts.database.query<{ read_ms: number }>(readUntil);
    if (until === undefined) {
      await parts.database.query(begin, [nowMs]); // what came before a line's first minute is not its own
      return;
    }
    for (const text of await missed(parts, until.read_ms - overlapMs)) {
      parts.log.warn(
        { lateMs: nowMs - text.atMs },
        'a text that never reached the line is heard from the carrier’s log',
      );
      const { id, from, body, media, atMs } = text;
      await hear({ id, from, body, media, saidAtMs: atMs, cause: `log ${id}` });
    }
    await parts.database.query(setUntil, [nowMs]);
  };
}

/** Oldest first. */
async function missed(parts: Parts, sinceMs: number): Promise<readonly LoggedText[]> {
  const texts = await parts.carrier.heardSince(sinceMs);
  if (texts.length === 0) return [];
  const ids = texts.map(({ id }) => id);
  const rows = await parts.database.query<{ carrier_id: string }>(findHeard, [ids]);
  const heard = new Set(rows.map((row) => row.carrier_id));
  return texts.filter(({ id }) => !heard.has(id)).sort((a, b) => a.atMs - b.atMs);
}
