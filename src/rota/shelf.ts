/** The shelf in the database: the last good text of each calendar, sealed, so that a line that starts while its server is down knows who is on call. */
import { type Database, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { CalendarShelf } from './keeper.ts';

const find = statement('rota.find', 'SELECT finder, text, etag FROM rota_calendar WHERE finder = ANY ($1)');
const keep = statement(
  'rota.keep',
  `INSERT INTO rota_calendar (finder, text, etag) VALUES ($1, $2, $3)
   ON CONFLICT (finder) DO UPDATE SET text = excluded.text, etag = excluded.etag`,
);

export function shelfIn(database: Database, seal: Seal): CalendarShelf {
  const shelf: CalendarShelf = {
    find: async (calendar) => {
      const rows = await database.query<Row>(find, [seal.finders(calendar)]);
      const current = rows.find((row) => row.finder.equals(seal.finder(calendar)));
      const row = current ?? rows[0];
      if (row === undefined) return null;
      const kept = { text: seal.open(row.text), etag: row.etag };
      // Found by the key before: nothing else can put it under the new one, as its address is kept nowhere.
      if (current === undefined) await shelf.keep(calendar, kept);
      return kept;
    },
    keep: async (calendar, { text, etag }) => {
      await database.query(keep, [seal.finder(calendar), seal.seal(text), etag]);
    },
  };
  return shelf;
}

interface Row {
  readonly finder: Buffer;
  readonly text: Buffer;
  readonly etag: string | null;
}
