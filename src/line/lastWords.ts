/** The family's own last words in a case: a page about what the line could not read shows them. */
import type { Effect } from '#machines/effects.ts';
import { statement } from '#src/store/database.ts';
import type { LockedCase } from './cases.ts';
import type { Parts } from './parts.ts';
import type { StepOptions, Turn } from './turn.ts';

const lastText = statement(
  'words.last',
  `SELECT body FROM message WHERE phone_id = ANY ($1) AND direction = 'in' AND kind = 'text'
     AND at_ms >= (SELECT opened_ms FROM "case" WHERE id = $2)
   ORDER BY id DESC LIMIT 1`,
);

/** Null where nobody is told anything, or the family wrote nothing. */
export async function lastWords(
  { seal }: Parts,
  turn: Turn,
  { id, phoneId, joinedIds }: LockedCase,
  effects: readonly Effect[],
  { answering }: Pick<StepOptions, 'answering'>,
): Promise<string | null> {
  if (!effects.some(({ type }) => type === 'callNurse' || type === 'tellNurse')) return null;
  if (answering && turn.heard !== undefined) return turn.heard;
  const [row] = await turn.client.query<{ body: Buffer }>(lastText, [[phoneId, ...joinedIds], id]);
  return row === undefined ? null : seal.open(row.body);
}
