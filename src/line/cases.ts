/** Finding, locking and opening cases. A row is locked before it is read, so what is read is the newest. */
import { z } from 'zod';
import type { CaseSnapshots } from '#machines/case.ts';
import type { LanguageCode } from '#machines/facts.ts';
import { MissingRow } from '#src/errors.ts';
import { fileOfCase } from '#src/families/children.ts';
import { openFile } from '#src/families/file.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import type { Family } from './line.ts';
import type { Parts } from './parts.ts';
import { languageShape, type Phone } from './phones.ts';
import { protocolId } from './protocols.ts';
import type { Turn } from './turn.ts';

/** A case as a turn holds it. */
export interface LockedCase {
  readonly id: number;
  readonly phoneId: number;
  /** The caregiver's, E.164. */
  readonly number: string;
  readonly optedOut: boolean;
  /** What the phone asked for or was written in; null where its family's file says it. */
  readonly language: LanguageCode | null;
  readonly protocolId: string;
  /** As the case began, the child it is about first (`fileOfCase`); null for an unknown phone. */
  readonly file: Family | null;
  /** Null where the case was born parked. */
  readonly snapshots: CaseSnapshots | null;
  readonly parked: boolean;
  readonly relay: Relay | null;
  /** Phones that joined, beside the one that opened it. */
  readonly joinedIds: readonly number[];
  /** Played for practice: nobody is called, and every text is marked. `by` is the phone of the nurse who asked for it. */
  readonly rehearsal: Rehearsal | null;
  readonly lastNumber: number;
  readonly lastHash: Buffer | null;
}

const relayShape = z.object({ phoneId: z.number(), nurse: z.string(), untilMs: z.number(), asked: z.boolean() });
/** A nurse writes with the family: what it texts goes to her phone as well. `asked`: the next text answers her. */
export type Relay = z.infer<typeof relayShape>;

export interface Rehearsal {
  readonly by: number | null;
}

export interface CaseRow {
  readonly id: number;
  readonly phone_id: number;
  readonly number: Buffer;
  readonly opted_out: boolean;
  readonly language: string | null;
  readonly protocol_id: string;
  readonly file: Buffer | null;
  readonly snapshots: Buffer | null;
  readonly parked_ms: number | null;
  readonly relay: unknown;
  readonly joined_ids: number[];
  readonly rehearsal: boolean;
  readonly rehearsal_by: number | null;
  readonly last_number: number;
  readonly last_hash: Buffer | null;
}

/** What every query of a case selects, from "case" c and phone p. */
export const caseColumns =
  'c.id, c.phone_id, p.number, p.opted_out, p.language, c.protocol_id, c.file, c.snapshots, c.parked_ms, c.relay, c.joined_ids, c.rehearsal, c.rehearsal_by, c.last_number, c.last_hash';

const lockOpen = statement(
  'case.lockOpen',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.phone_id = $1 AND c.closed_ms IS NULL FOR UPDATE OF c`,
);
const lockById = statement(
  'case.lockById',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.id = $1 AND c.closed_ms IS NULL FOR UPDATE OF c`,
);
const lockPaged = statement(
  'case.lockPaged',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.closed_ms IS NULL AND c.id IN (SELECT case_id FROM page WHERE phone_id = $1) ORDER BY c.id FOR UPDATE OF c`,
);
const lockByCode = statement(
  'case.lockByCode',
  `SELECT ${caseColumns} FROM "case" c JOIN phone p ON p.id = c.phone_id
   WHERE c.closed_ms IS NULL AND NOT c.rehearsal AND c.id % $1 = $2 ORDER BY c.id FOR UPDATE OF c`,
);
const insertCase = statement(
  'case.open',
  `INSERT INTO "case" (phone_id, protocol_id, file, snapshots, opened_ms, parked_ms, rehearsal, rehearsal_by)
   VALUES ($1, $2, $3, $4, $5, $6, $7, $8) RETURNING id`,
);
const setRelay = statement('case.relay', 'UPDATE "case" SET relay = $2 WHERE id = $1');
const setFile = statement('case.file', 'UPDATE "case" SET file = $2 WHERE id = $1');
const readFile = statement(
  'family.read',
  'SELECT file FROM family WHERE phone_id = COALESCE((SELECT family_id FROM family_phone WHERE phone_id = $1), $1)',
);

const snapshotsShape = z.object({ conversation: z.unknown(), paging: z.unknown(), aftercare: z.unknown() });

/** The phone's open case, its own or the one it joined, locked, or null. Lock the phone first. */
export async function lockOpenCase(
  client: Queryable,
  seal: Seal,
  { id, joinedId }: Pick<Phone, 'id' | 'joinedId'>,
): Promise<LockedCase | null> {
  const [own] = await client.query<CaseRow>(lockOpen, [id]);
  if (own !== undefined) return caseOf(seal, own);
  return joinedId === null ? null : lockCase(client, seal, joinedId);
}

/** An open case by its id, locked, or null where it is closed. */
export async function lockCase(client: Queryable, seal: Seal, caseId: number): Promise<LockedCase | null> {
  const [row] = await client.query<CaseRow>(lockById, [caseId]);
  return row === undefined ? null : caseOf(seal, row);
}

/** The open cases a nurse's phone was called for, locked in the order of their ids. */
export async function lockPagedCases(
  client: Queryable,
  seal: Seal,
  nursePhoneId: number,
): Promise<readonly LockedCase[]> {
  const rows = await client.query<CaseRow>(lockPaged, [nursePhoneId]);
  return rows.map((row) => caseOf(seal, row));
}

/** The open cases of a code, locked: several share one only after thousands. */
export async function lockCasesByCode(client: Queryable, seal: Seal, code: string): Promise<readonly LockedCase[]> {
  const letter = codeLetters.indexOf(code.charAt(0));
  if (letter < 0) return [];
  const rows = await client.query<CaseRow>(lockByCode, [
    codeLetters.length * 100,
    letter * 100 + Number(code.slice(1)),
  ]);
  return rows.map((row) => caseOf(seal, row));
}

/** A new case of a locked phone; `snapshots` null opens it parked, for a person. */
export async function insertNewCase(
  parts: Parts,
  turn: Turn,
  phone: Pick<Phone, 'id' | 'number' | 'optedOut' | 'language'>,
  begin: Pick<LockedCase, 'file' | 'snapshots'> & Partial<Pick<LockedCase, 'rehearsal'>>,
): Promise<LockedCase> {
  const { file, snapshots, rehearsal = null } = begin;
  const parked = snapshots === null;
  const id = protocolId(parts.protocol);
  const [row] = await turn.client.query<{ id: number }>(insertCase, [
    phone.id,
    id,
    sealJson(parts.seal, file),
    sealJson(parts.seal, snapshots),
    turn.nowMs,
    parked ? turn.nowMs : null,
    rehearsal !== null,
    rehearsal?.by ?? null,
  ]);
  if (row === undefined) throw new MissingRow('case');
  const { number, optedOut, language } = phone;
  return {
    id: row.id,
    phoneId: phone.id,
    number,
    optedOut,
    language,
    protocolId: id,
    file,
    snapshots,
    parked,
    relay: null,
    joinedIds: [],
    rehearsal,
    lastNumber: 0,
    lastHash: null,
  };
}

/** Notes who writes with the family. */
export async function rememberRelay(client: Queryable, caseId: number, relay: Relay | null): Promise<void> {
  await client.query(setRelay, [caseId, relay]);
}

/** The file of the family a phone belongs to, no child of several first; null where nobody is enrolled. */
export async function familyOf(client: Queryable, seal: Seal, phoneId: number): Promise<Family | null> {
  const [row] = await client.query<{ file: Buffer }>(readFile, [phoneId]);
  return row === undefined ? null : fileOfCase(openFile(seal, row.file), null);
}

/** The case with the file of the child it is now known to be about, kept where that is news. */
export async function rememberChild(
  client: Queryable,
  seal: Seal,
  theCase: LockedCase,
  child: number | 'none' | null,
): Promise<LockedCase> {
  if (theCase.file === null) return theCase;
  const file = fileOfCase(theCase.file, child);
  if (file.child === theCase.file.child) return theCase;
  await client.query(setFile, [theCase.id, sealJson(seal, file)]);
  return { ...theCase, file };
}

export function caseOf(seal: Seal, row: CaseRow): LockedCase {
  return {
    id: row.id,
    phoneId: row.phone_id,
    number: seal.open(row.number),
    optedOut: row.opted_out,
    language: languageShape.parse(row.language),
    protocolId: row.protocol_id,
    file: row.file === null ? null : openFile(seal, row.file),
    snapshots: row.snapshots === null ? null : snapshotsShape.parse(JSON.parse(seal.open(row.snapshots))),
    parked: row.parked_ms !== null,
    relay: row.relay === null ? null : relayShape.parse(row.relay),
    joinedIds: row.joined_ids,
    rehearsal: row.rehearsal ? { by: row.rehearsal_by } : null,
    lastNumber: row.last_number,
    lastHash: row.last_hash,
  };
}

export function sealJson(seal: Seal, value: object | null): Buffer | null {
  return value === null ? null : seal.seal(JSON.stringify(value));
}

const codeLetters = 'ABCDEFGHJKLMNPQRTUVWXYZ'; // no I, O, S: they read as digits

/** A short code that tells a nurse's cases apart: a letter and two digits. Two open cases rarely share one, and texts name the child too. */
export function caseCode(caseId: number): string {
  const letter = codeLetters[Math.floor(caseId / 100) % codeLetters.length];
  return `${letter}${String(caseId % 100).padStart(2, '0')}`;
}

/** Whether it has the form of a code, be it of no case at all. */
export function isCodeLike(text: string): boolean {
  return /^[A-Z]\d\d$/.test(text);
}
