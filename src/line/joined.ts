/**
 * Several phones in one case: another phone of the same family joins the open case, and what is said goes to every phone of it.
 * Locks are taken in one order: the phone that texts, its family, the case.
 */
import type { Site } from '#machines/protocol/settings.ts';
import type { Say } from '#machines/says.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import { namesOf } from '#src/families/children.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { markedTexts } from '#src/wording/rehearsal.ts';
import { type CaseRow, caseColumns, caseOf, type LockedCase } from './cases.ts';
import { languageOf } from './language.ts';
import type { Parts } from './parts.ts';
import { languageShape, type Phone } from './phones.ts';
import type { PlannedMessage } from './plan.ts';
import type { Turn } from './turn.ts';

/** A phone that is told what the case says. */
export type Listener = Pick<LockedCase, 'phoneId' | 'optedOut' | 'language'>;

const readListeners = statement(
  'joined.listeners',
  'SELECT id, opted_out, language FROM phone WHERE id = ANY ($1) ORDER BY id',
);
/** Whoever holds the row of a family with several phones opens or joins for all of them. */
const lockFamily = statement(
  'joined.family',
  `SELECT f.phone_id FROM family f
   WHERE f.phone_id = COALESCE((SELECT family_id FROM family_phone WHERE phone_id = $1), $1)
     AND EXISTS (SELECT FROM family_phone WHERE family_id = f.phone_id) FOR UPDATE`,
);
const lockOfFamily = statement(
  'joined.case',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.closed_ms IS NULL AND NOT c.rehearsal AND c.phone_id IN (SELECT $1::bigint UNION ALL SELECT phone_id FROM family_phone WHERE family_id = $1)
   ORDER BY c.id DESC LIMIT 1 FOR UPDATE OF c`,
);
const join = statement(
  'joined.join',
  `WITH joins AS (UPDATE phone SET joined_id = $1 WHERE id = $2)
   UPDATE "case" SET joined_ids = array_append(array_remove(joined_ids, $2::bigint), $2::bigint) WHERE id = $1`,
);

/** The newest open case of the locked phone's family, joined and locked; null where there is none. Nobody joins a rehearsal. */
export async function joinFamilyCase(client: Queryable, seal: Seal, phone: Phone): Promise<LockedCase | null> {
  const [family] = await client.query<{ phone_id: number }>(lockFamily, [phone.id]);
  if (family === undefined) return null;
  const [row] = await client.query<CaseRow>(lockOfFamily, [family.phone_id]);
  return row === undefined ? null : joinCase(client, caseOf(seal, row), phone);
}

/** The locked case with this phone in it, from now on. */
export async function joinCase(client: Queryable, theCase: LockedCase, phone: Phone): Promise<LockedCase> {
  await client.query(join, [theCase.id, phone.id]);
  return { ...theCase, joinedIds: [...theCase.joinedIds.filter((id) => id !== phone.id), phone.id] };
}

/** Every phone of a locked case, the one that opened it first. */
export async function listenersOf(client: Queryable, theCase: LockedCase): Promise<readonly Listener[]> {
  if (theCase.joinedIds.length === 0) return [theCase];
  const rows = await client.query<{ id: number; opted_out: boolean; language: string | null }>(readListeners, [
    theCase.joinedIds,
  ]);
  return [
    theCase,
    ...rows.map((row) => ({
      phoneId: row.id,
      optedOut: row.opted_out,
      language: languageShape.parse(row.language),
    })),
  ];
}

export interface Saying {
  readonly say: Say;
  readonly kind: MessageKind;
  readonly urgent: boolean;
}

/** One say as a message to each of these phones, in the language of each. */
export function toListeners(
  parts: Parts,
  turn: Turn,
  site: Site,
  { file, rehearsal }: Pick<LockedCase, 'file' | 'rehearsal'>,
  listeners: readonly Pick<Listener, 'phoneId' | 'language'>[],
  { say, kind, urgent }: Saying,
): PlannedMessage[] {
  return listeners.flatMap(({ phoneId, language: spoken }) => {
    const language = languageOf(site, spoken, file);
    const scene = { language, site, nowMs: turn.nowMs, child: file?.child ?? null, children: namesOf(file) };
    const bodies =
      rehearsal === null ? [parts.word(say, scene)] : markedTexts(parts.word(say, { ...scene, rehearsal: true }));
    return bodies.map((body) => ({ phoneId, kind, body, urgent }));
  });
}
