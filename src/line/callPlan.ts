/** What a call to the line hears and whom it rings, settled once when it comes in, so that every webhook of it is answered alike. */
import { z } from 'zod';
import { languageCodes } from '#machines/facts.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';

const planShape = z.object({
  language: z.enum(languageCodes),
  /** Spoken first; it begins with the emergency number. */
  spoken: z.string(),
  /** The people who are rung one after the other until one takes the call, E.164. */
  rings: z.array(z.string()).readonly(),
  /** Spoken to each of them before she takes it. */
  whisper: z.string(),
  /** Spoken when none of them has. */
  unanswered: z.string(),
  /** A nurse who rang is put through to this number, E.164. */
  through: z.string().nullable(),
});
export type CallPlan = z.infer<typeof planShape>;

/** A call as it is kept. */
export interface KeptCall {
  readonly caseId: number | null;
  readonly plan: CallPlan;
  /** A person has taken it. */
  readonly connected: boolean;
}

const keep = statement(
  'call.keep',
  `INSERT INTO incoming_call (id, at_ms, phone_id, case_id, plan) VALUES ($1, $2, $3, $4, $5) ON CONFLICT (id) DO NOTHING`,
);
const find = statement('call.find', 'SELECT case_id, plan, connected FROM incoming_call WHERE id = $1');
const connect = statement('call.connect', 'UPDATE incoming_call SET connected = true WHERE id = $1');

export interface CallOf {
  readonly id: string;
  readonly atMs: number;
  readonly phoneId: number | null;
  readonly caseId: number | null;
}

export async function keepCall(client: Queryable, seal: Seal, call: CallOf, plan: CallPlan): Promise<void> {
  await client.query(keep, [call.id, call.atMs, call.phoneId, call.caseId, seal.seal(JSON.stringify(plan))]);
}

/** The call with the carrier's id, or null where the line never kept it. */
export async function findCall(client: Queryable, seal: Seal, id: string): Promise<KeptCall | null> {
  const [row] = await client.query<{ case_id: number | null; plan: Buffer; connected: boolean }>(find, [id]);
  if (row === undefined) return null;
  const plan = planShape.parse(JSON.parse(seal.open(row.plan)));
  return { caseId: row.case_id, plan, connected: row.connected };
}

export async function markConnected(client: Queryable, id: string): Promise<void> {
  await client.query(connect, [id]);
}
