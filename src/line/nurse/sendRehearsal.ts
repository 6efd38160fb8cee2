/** A nurse sends a family a rehearsal: by the first name of an enrolled child, or by a number of the family. */
import { childrenOf } from '#src/families/children.ts';
import { plainNurse } from '#src/reading/plainNurse.ts';
import { statement } from '#src/store/database.ts';
import type { NurseSay, RehearsalRefusal } from '#src/wording/nurseSays.ts';
import { type Enrolled, enrolledFamilies } from '../families.ts';
import { languageShape, phoneIdOf } from '../phones.ts';
import { beginRehearsal } from '../rehearsal.ts';
import type { Desk } from './desk.ts';
import { noAdvice } from './pausing.ts';

/** A family that is texting holds its phone's row: it is not waited for, so that the two never wait for each other. */
const lockPhone = statement(
  'sendRehearsal.phone',
  'SELECT id, opted_out, language FROM phone WHERE id = $1 FOR UPDATE SKIP LOCKED',
);
const anyOpen = statement(
  'sendRehearsal.open',
  `SELECT 1 FROM "case" WHERE closed_ms IS NULL
   AND phone_id IN (SELECT $1::bigint UNION ALL SELECT phone_id FROM family_phone WHERE family_id = $1)`,
);

/** Starts it at once: nothing of it is lasting, and the family sees that it is practice. */
export async function sendRehearsal(desk: Desk, words: string): Promise<NurseSay> {
  const { parts, turn, phone, name } = desk;
  if (turn.paused) return noAdvice(desk);
  if (words === '') return not('nobody-named');
  const named = (await enrolledFamilies(parts, turn.client)).filter((family) => isMeant(family, words));
  const [family] = named;
  if (family === undefined) return not('not-found');
  if (named.length > 1) return not('several');
  const id = await phoneIdOf(parts, turn.client, family.number);
  const [row] = await turn.client.query<{ id: number; opted_out: boolean; language: string | null }>(lockPhone, [id]);
  if (row === undefined) return not('busy');
  if (row.opted_out) return not('opted-out');
  if ((await turn.client.query(anyOpen, [row.id])).length > 0) return not('open');
  const theirs = { id: row.id, number: family.number, optedOut: false, language: languageShape.parse(row.language) };
  await beginRehearsal(parts, turn, theirs, family.file, { phoneId: phone.id, name });
  return { key: 'rehearsalSent', params: { child: family.file.child, number: family.number } };
}

function isMeant({ number, morePhones, file }: Enrolled, words: string): boolean {
  const digits = words.replace(/\D/g, '');
  if (digits !== '') return digits.length >= 7 && [number, ...morePhones].some((one) => one.endsWith(digits));
  const wanted = plainNurse(words);
  return childrenOf(file).some(({ child }) => child !== null && plainNurse(child) === wanted);
}

const not = (why: RehearsalRefusal): NurseSay => ({ key: 'rehearsalNot', params: { why } });
