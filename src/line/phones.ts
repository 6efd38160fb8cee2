/** Phones: the row that is made on first sight, locked by every text, and remembers what waits for a yes. */
import { z } from 'zod';
import { type LanguageCode, languageCodes } from '#machines/facts.ts';
import { MissingRow } from '#src/errors.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import { knownFinder } from '#src/store/knownFinder.ts';
import type { Parts } from './parts.ts';

export const pendingShape = z.object({
  word: z.enum(['clear', 'close', 'send-in', 'take-over', 'fact', 'tell', 'pause', 'resume']),
  /** Null for a word about the line itself. */
  caseId: z.number().nullable(),
  untilMs: z.number(),
  /** What goes with it, sealed, base64: her words, a fact, or what she was shown. */
  detail: z.string().default(''),
});
export const languageShape = z.enum(languageCodes).nullable();
/** A nurse's word that waits for her yes. */
export type Pending = z.infer<typeof pendingShape>;

export interface Phone {
  readonly id: number;
  readonly number: string;
  readonly optedOut: boolean;
  /** The last thing the line asked it, outside any case, was whether this is about a tube. */
  readonly askedAboutTube: boolean;
  readonly pending: Pending | null;
  /** The line was paused when its text came. */
  readonly paused: boolean;
  /** Asked for in words, or of an unknown phone the one it was first clearly written in. */
  readonly language: LanguageCode | null;
  /** The case of another phone that it joined last. */
  readonly joinedId: number | null;
  /** The row of the text or call that is answered. */
  readonly heardId: number;
}

const lockPhone = statement(
  'phone.lock',
  `INSERT INTO phone (finder, number) VALUES ($1, $2)
   ON CONFLICT (finder) DO UPDATE SET texts_heard = phone.texts_heard RETURNING id`,
);
const findPhone = statement('phone.find', 'SELECT id FROM phone WHERE finder = ANY ($1)');
const setAsked = statement('phone.asked', 'UPDATE phone SET asked_about_tube = $2 WHERE id = $1');
const setPending = statement('phone.pending', 'UPDATE phone SET pending = $2 WHERE id = $1');
const setLanguage = statement('phone.language', 'UPDATE phone SET language = $2 WHERE id = $1');
const setOptedOut = statement('phone.optedOut', 'UPDATE phone SET opted_out = $2 WHERE id = $1');

/** The phone's row, made if need be, and locked. */
export async function lockPhoneOf({ seal }: Pick<Parts, 'seal'>, client: Queryable, number: string): Promise<number> {
  const [row] = await client.query<{ id: number }>(lockPhone, [
    await knownFinder(client, seal, number),
    seal.seal(number),
  ]);
  if (row === undefined) throw new MissingRow('phone');
  return row.id;
}

/** The id of a phone the line has seen, or null. */
export async function phoneIdOf(parts: Parts, client: Queryable, number: string): Promise<number | null> {
  const [row] = await client.query<{ id: number }>(findPhone, [parts.seal.finders(number)]);
  return row?.id ?? null;
}

export async function rememberAsked(client: Queryable, phone: Phone, asked: boolean): Promise<void> {
  if (phone.askedAboutTube !== asked) await client.query(setAsked, [phone.id, asked]);
}

export async function rememberPending(client: Queryable, phone: Phone, pending: Pending | null): Promise<void> {
  if (phone.pending !== null || pending !== null) await client.query(setPending, [phone.id, pending]);
}

export async function rememberLanguage(
  client: Queryable,
  phoneId: number,
  language: LanguageCode | null,
): Promise<void> {
  await client.query(setLanguage, [phoneId, language]);
}

/** STOP, and START after it. */
export async function optOut(client: Queryable, phone: Phone, out: boolean): Promise<void> {
  if (phone.optedOut !== out) await client.query(setOptedOut, [phone.id, out]);
}
