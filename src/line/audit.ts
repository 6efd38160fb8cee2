/** The audit: what people did to the line itself or to a family's file, who, and when. */
import { type Queryable, statement } from '#src/store/database.ts';

const addAudit = statement('audit.add', 'INSERT INTO audit (at_ms, what, phone_id, by_whom) VALUES ($1, $2, $3, $4)');

/** One line of it; `by` is the person's name, sealed, null where the line or the practice page did it. */
export async function audit(
  client: Queryable,
  atMs: number,
  what: string,
  phoneId: number | null,
  by: Buffer | null = null,
): Promise<void> {
  await client.query(addAudit, [atMs, what, phoneId, by]);
}
