/** The rows of a case's texts and calls: what was said for it, and what its family and the people called for it wrote. */
import { type Queryable, statement } from '#src/store/database.ts';

export interface TextRow {
  readonly id: number;
  readonly phone_id: number;
  readonly direction: 'in' | 'out';
  readonly kind: 'text' | 'call';
  readonly body: Buffer;
  readonly at_ms: number;
  readonly state: 'heard' | 'waiting' | 'carrying' | 'accepted' | 'refused' | 'unknown' | 'delivered';
  /** Something was said for the case because of it, or a picture of the case came with it. Else only an event's hash tells whether it was for this case. */
  readonly linked: boolean;
}

const select = statement(
  'record.texts',
  `SELECT m.id, m.phone_id, m.direction, m.kind, m.body, m.at_ms, m.state,
     m.direction = 'out' OR EXISTS (SELECT FROM message s WHERE s.cause = m.cause AND s.case_id = $1)
       OR EXISTS (SELECT FROM media d WHERE d.message_id = m.id AND d.case_id = $1) AS linked
   FROM message m WHERE m.case_id = $1 OR (m.direction = 'in' AND (
     m.phone_id IN (SELECT unnest(phone_id || joined_ids) FROM "case" WHERE id = $1) OR m.phone_id IN (SELECT phone_id FROM page WHERE case_id = $1)))
   ORDER BY m.id`,
);

/** In the order they were kept. */
export function textRows(client: Queryable, caseId: number): Promise<TextRow[]> {
  return client.query<TextRow>(select, [caseId]);
}
