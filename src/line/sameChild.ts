/**
 * The same child on a phone that is nobody's on file: it says who it is while another family's case is open, is asked for the child's
 * first name and digits of a parent's phone, and goes on in that case where they fit exactly one. Until then it hears nothing of it.
 */
import type { TextEvent, Unstamped } from '#machines/events.ts';
import { MissingRow } from '#src/errors.ts';
import { namesOf } from '#src/families/children.ts';
import { openFile } from '#src/families/file.ts';
import type { Reading } from '#src/reading/read.ts';
import { fits } from '#src/reading/who.ts';
import { type Queryable, statement } from '#src/store/database.ts';
import type { Seal } from '#src/store/seal.ts';
import { type LockedCase, lockCase } from './cases.ts';
import { joinCase } from './joined.ts';
import type { Family } from './line.ts';
import type { Parts } from './parts.ts';
import type { Phone } from './phones.ts';
import { type SignalAt, type Turn, takeStep } from './turn.ts';

const anotherOpen = statement(
  'sameChild.another',
  `SELECT FROM "case" WHERE closed_ms IS NULL AND parked_ms IS NULL AND NOT rehearsal AND file IS NOT NULL AND phone_id <> $1 LIMIT 1`,
);
/** Open cases of enrolled families, each with the numbers of its family's phones. A phone that only joined is no proof for the next. */
const openFamilies = statement(
  'sameChild.families',
  `SELECT c.id, c.file, ARRAY(
     SELECT p.number FROM phone p WHERE p.id IN (c.phone_id, f.id)
       OR p.id IN (SELECT phone_id FROM family_phone WHERE family_id = f.id)) AS numbers
   FROM "case" c CROSS JOIN LATERAL (
     SELECT COALESCE((SELECT family_id FROM family_phone WHERE phone_id = c.phone_id), c.phone_id) AS id) f
   WHERE c.closed_ms IS NULL AND c.parked_ms IS NULL AND NOT c.rehearsal AND c.file IS NOT NULL`,
);
const wasPaged = statement('sameChild.paged', 'SELECT FROM page WHERE case_id = $1 LIMIT 1');

/** The event of a text that says who is writing, where no file does and another family's case is open. */
export async function noteWhoWrites<E extends Unstamped<TextEvent>>(
  client: Queryable,
  phone: Pick<Phone, 'id'>,
  file: Family | null,
  { saysWho }: Pick<Reading, 'saysWho'>,
  event: E,
): Promise<E> {
  if (!saysWho || file !== null || (await client.query(anotherOpen, [phone.id])).length === 0) return event;
  return { ...event, told: { ...event.told, mayJoin: true } };
}

/** The case that a text's name and digits fit, and which of its family's several children it names. */
export interface Fitting {
  readonly theCase: LockedCase;
  readonly children: readonly number[];
}

/**
 * The one other case that the text fits, locked; null where none does, or more than one. A nurse's text may lock both cases the other
 * way round: the database then ends one of the two turns, which is tried again.
 */
export async function fittingCase(client: Queryable, seal: Seal, body: string): Promise<Fitting | null> {
  const rows = await client.query<{ id: number; file: Buffer; numbers: Buffer[] }>(openFamilies);
  const fitting = rows.flatMap(({ id, file, numbers }) => {
    const family = openFile(seal, file);
    const several = namesOf(family);
    const names = several.length > 0 ? several : [family.child ?? ''];
    const children = fits(
      body,
      names,
      numbers.map((number) => seal.open(number)),
    );
    return children.length === 0 ? [] : [{ id, children: several.length > 0 ? children : [] }];
  });
  const [only, more] = fitting;
  if (only === undefined || more !== undefined) return null;
  const theCase = await lockCase(client, seal, only.id);
  return theCase === null || theCase.parked ? null : { theCase, children: only.children };
}

/**
 * Ends the phone's own case and goes on in the fitting one: its phones hear that one more listens, and the newcomer what is asked
 * there. What it told so far is heard there too; where a nurse was called for its own case, she is called for that one.
 */
export async function goOnThere(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  own: LockedCase,
  { theCase, children }: Fitting,
  { told, person, corrects }: Unstamped<TextEvent>,
): Promise<void> {
  const ends: SignalAt = (stamp) => ({
    machine: 'conversation',
    event: { ...stamp, type: 'answer.who', value: 'joins', told, person: false, corrects },
  });
  const ended = await takeStep(parts, turn, own, ends, { answering: false });
  const calls = person || (await turn.client.query(wasPaged, [own.id])).length > 0;
  const joins: SignalAt = (stamp) => ({
    machine: 'conversation',
    event: { ...stamp, type: 'phone.joined', lastFour: phone.number.slice(-4) },
  });
  await takeStep(parts, turn, await joinCase(turn.client, theCase, phone), joins, { answering: false });
  const joined = await lockCase(turn.client, parts.seal, theCase.id);
  if (joined === null) throw new MissingRow('case');
  const carried = { ...ended.view.told, ...(children.length > 0 && { children }) };
  const asks: SignalAt = (stamp) => ({
    machine: 'conversation',
    event: { ...stamp, type: 'repeat', step: null, told: carried, person: calls, corrects: false },
  });
  const toldNothing = Object.keys(carried).length === 0 && !calls;
  await takeStep(parts, turn, joined, asks, {
    answering: true,
    speakerId: phone.id,
    ...(toldNothing && { onlyTo: phone.id }),
  });
}
