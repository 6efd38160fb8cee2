/** The schema as a database has it, as text: the same on the embedded database and on a server. */
import type { Database } from '#src/store/database.ts';

/** Tables with columns, constraints, indexes and triggers, in order. */
export async function schemaOf(database: Database): Promise<string> {
  const lines = await database.query<{ line: string }>(`
    SELECT line FROM (
      SELECT c.relname AS relation, 1 AS part, a.attnum::int AS place,
        format('%s.%s %s%s%s%s', c.relname, a.attname, format_type(a.atttypid, a.atttypmod),
          CASE WHEN a.attnotnull THEN ' NOT NULL' ELSE '' END,
          CASE WHEN a.attidentity = 'a' THEN ' IDENTITY' ELSE '' END,
          COALESCE(' DEFAULT ' || pg_get_expr(d.adbin, d.adrelid), '')) AS line
      FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
        LEFT JOIN pg_attrdef d ON d.adrelid = c.oid AND d.adnum = a.attnum
      WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
      UNION ALL
      SELECT c.relname, 2, 0, format('%s: %s %s', c.relname, k.conname, pg_get_constraintdef(k.oid))
      FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
      WHERE c.relnamespace = 'public'::regnamespace AND k.contype <> 'n' -- newer servers list NOT NULL here as well
      UNION ALL
      SELECT c.relname, 3, 0, pg_get_indexdef(i.indexrelid)
      FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid WHERE c.relnamespace = 'public'::regnamespace
      UNION ALL
      SELECT c.relname, 4, 0, pg_get_triggerdef(t.oid)
      FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
      WHERE c.relnamespace = 'public'::regnamespace AND NOT t.tgisinternal
    ) AS parts ORDER BY relation COLLATE "C", part, place, line COLLATE "C"`);
  return `${lines.map(({ line }) => line).join(';\n')};\n`;
}
