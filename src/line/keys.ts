/** A key pressed in a call of ours: on a page's call it takes that page, on a call that puts through it gives the number to ring. */
import { PracticeOnly } from '#src/errors.ts';
import { statement } from '#src/store/database.ts';
import { caseCode } from './cases.ts';
import { hearText } from './inbound.ts';
import type { Parts } from './parts.ts';
import { isNursesNumber } from './reach.ts';

/** `id` is the carrier's own of the call: a repeated key changes nothing. */
export interface PressedKey {
  readonly messageId: string;
  /** Who was called, E.164. */
  readonly number: string;
  readonly digit: string;
  readonly id: string;
  readonly cause: string;
}

/** What the call goes on with. */
export type KeyAnswer = { readonly go: 'taken' | 'nothing' } | { readonly go: 'ring'; readonly number: string };

const findCall = statement(
  'key.call',
  `SELECT m.case_id, m.bridge_to, p.number FROM message m JOIN phone p ON p.id = m.phone_id
   WHERE m.id = $1 AND m.direction = 'out' AND m.kind = 'call'`,
);

const newestCall = statement(
  'key.newest',
  `SELECT m.id FROM message m JOIN phone p ON p.id = m.phone_id
   WHERE p.finder = ANY ($1) AND m.direction = 'out' AND m.kind = 'call' ORDER BY m.id DESC LIMIT 1`,
);

interface CallRow {
  readonly case_id: number | null;
  readonly bridge_to: Buffer | null;
  readonly number: Buffer;
}

/** A key pressed in the newest call to a practice phone; `number` is E.164. A phone that was never called hears nothing of it. */
export async function pressInNewestCall(
  parts: Parts,
  { number, digit, cause }: Omit<PressedKey, 'messageId' | 'id'>,
): Promise<KeyAnswer> {
  if (parts.kind !== 'practice') throw new PracticeOnly('pressing a key');
  const [call] = await parts.database.query<{ id: number }>(newestCall, [parts.seal.finders(number)]);
  if (call === undefined) return { go: 'nothing' };
  return pressKey(parts, { messageId: String(call.id), number, digit, id: cause, cause });
}

/** Only 1 is a word, only from a nurse's number, only in the very call that was made to it. */
export async function pressKey(parts: Parts, key: PressedKey): Promise<KeyAnswer> {
  const nothing = { go: 'nothing' } as const;
  if (key.digit !== '1' || !/^[0-9]{1,15}$/.test(key.messageId) || !isNursesNumber(parts, key.number)) return nothing;
  const [call] = await parts.database.query<CallRow>(findCall, [Number(key.messageId)]);
  if (call === undefined || parts.seal.open(call.number) !== key.number) return nothing;
  if (call.bridge_to !== null) return { go: 'ring', number: parts.seal.open(call.bridge_to) };
  if (call.case_id === null) return nothing;
  const body = `take ${caseCode(call.case_id)}`;
  await hearText(parts, { from: key.number, body, id: `key ${key.id}`, cause: key.cause });
  return { go: 'taken' };
}
