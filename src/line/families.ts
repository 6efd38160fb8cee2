/** Enrolment: the file of a family, found by any of its phones, and a line in the audit for every change. */
import { FamilyPhoneTaken } from '#src/families/errors.ts';
import { openFile } from '#src/families/file.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { audit } from './audit.ts';
import { sealJson } from './cases.ts';
import type { Enrolment, Family } from './line.ts';
import type { Parts } from './parts.ts';
import { lockPhoneOf, rememberLanguage } from './phones.ts';

type Sealed = Pick<Parts, 'seal'>;

/** A family as it stands, with the numbers of its phones, E.164, the one it is enrolled by first. */
export interface Enrolled {
  readonly number: string;
  readonly morePhones: readonly string[];
  readonly file: Family;
}

const putFamily = statement(
  'family.put',
  `INSERT INTO family (phone_id, file, enrolled_ms) VALUES ($1, $2, $3)
   ON CONFLICT (phone_id) DO UPDATE SET file = excluded.file, enrolled_ms = excluded.enrolled_ms`,
);
const dropFamily = statement('family.drop', 'DELETE FROM family WHERE phone_id = $1');
const dropPhones = statement('family.dropPhones', 'DELETE FROM family_phone WHERE family_id = $1');
const addPhones = statement(
  'family.addPhones',
  'INSERT INTO family_phone (phone_id, family_id) SELECT phone_id, $1 FROM unnest($2::bigint[]) AS phone_id',
);
/** Phones that another family has, as its first or as a further one. */
const taken = statement(
  'family.taken',
  `SELECT 1 FROM family WHERE phone_id = ANY ($2) AND phone_id <> $1
   UNION ALL SELECT 1 FROM family_phone WHERE phone_id = ANY ($2) AND family_id <> $1`,
);
const listFamilies = statement(
  'family.list',
  `SELECT p.number, f.file,
     ARRAY(SELECT q.number FROM family_phone o JOIN phone q ON q.id = o.phone_id WHERE o.family_id = f.phone_id) AS more
   FROM family f JOIN phone p ON p.id = f.phone_id`,
);

/** Who is enrolled, in the order of their numbers. */
export async function enrolledFamilies({ seal }: Sealed, client: Queryable): Promise<Enrolled[]> {
  const rows = await client.query<{ number: Buffer; file: Buffer; more: Buffer[] }>(listFamilies);
  return rows
    .map((row) => ({
      number: seal.open(row.number),
      morePhones: row.more.map((number) => seal.open(number)).sort(),
      file: openFile(seal, row.file),
    }))
    .sort((a, b) => (a.number < b.number ? -1 : 1));
}

/**
 * Enrols or changes a family, its phones and its language too. A running case keeps the file it began with.
 * Throws `FamilyPhoneTaken` where another family has one of the phones.
 */
export async function enrolOn(
  parts: Sealed,
  client: Queryable,
  nowMs: number,
  number: string,
  { phones = [], ...file }: Enrolment,
  record: { readonly what: string; readonly by: string | null } = { what: 'enrolled', by: null },
): Promise<void> {
  // Locked in the order of their numbers, so that two enrolments never wait for each other.
  const ids = new Map<string, number>();
  for (const each of [...new Set([number, ...phones])].sort()) ids.set(each, await lockPhoneOf(parts, client, each));
  const phoneId = ids.get(number) ?? Number.NaN;
  const all = [...ids.values()];
  if ((await client.query(taken, [phoneId, all])).length > 0) throw new FamilyPhoneTaken();
  await client.query(putFamily, [phoneId, sealJson(parts.seal, file), nowMs]);
  await client.query(dropPhones, [phoneId]);
  await client.query(addPhones, [phoneId, all.filter((id) => id !== phoneId)]);
  for (const id of all) await rememberLanguage(client, id, null);
  await audit(client, nowMs, record.what, phoneId, sealedBy(parts, record.by));
}

/**
 * Takes a family off the line: its phones are unknown from now on. What it texted and its cases stay; erasing them is another
 * matter, with holds of its own.
 */
export async function removeFamily(
  parts: Sealed,
  client: Queryable,
  nowMs: number,
  number: string,
  by: string,
): Promise<void> {
  const phoneId = await lockPhoneOf(parts, client, number);
  await client.query(dropPhones, [phoneId]);
  await client.query(dropFamily, [phoneId]);
  await audit(client, nowMs, 'removed', phoneId, sealedBy(parts, by));
}

function sealedBy({ seal }: Sealed, by: string | null): Buffer | null {
  return by === null ? null : seal.seal(by);
}
