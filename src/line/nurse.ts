/** A nurse's text: one of her words about one of her cases, or, from the same phone, a parent's text. Read this first. */
import { statement } from '#src/store/database.ts';
import { opens, readFresh } from './caregiver.ts';
import { caseCode, familyOf, isCodeLike, type LockedCase, lockCasesByCode, lockPagedCases } from './cases.ts';
import type { HeardText } from './line.ts';
import { askToClear, askToClose, askToCorrect, askToSendIn, report, settlePending } from './nurse/confirmed.ts';
import { type Desk, placeOf, tell } from './nurse/desk.ts';
import { codesIn, namedFirst, withoutCodes, withoutName } from './nurse/naming.ts';
import { offersNow } from './nurse/offers.ts';
import { more, pass, take } from './nurse/pages.ts';
import { askToPause, askToResume } from './nurse/pausing.ts';
import { sendRehearsal } from './nurse/sendRehearsal.ts';
import { putThrough, tellFamily } from './nurse/talk.ts';
import type { Parts } from './parts.ts';
import { type Phone, rememberPending } from './phones.ts';
import { caseName } from './plan.ts';
import type { Turn } from './turn.ts';

const hasCase = statement('nurse.hasCase', 'SELECT 1 FROM "case" WHERE phone_id = $1 AND closed_ms IS NULL');

/** Answers a nurse's text; false where it is no word of hers but a caregiver's text from the same phone. */
export async function answerNurse(parts: Parts, turn: Turn, phone: Phone, text: HeardText): Promise<boolean> {
  const cases = await lockPagedCases(turn.client, parts.seal, phone.id);
  parts.checkpoint('nurse locked');
  const paged: Desk = { parts, turn, phone, name: parts.nurseOf(phone.number)?.name ?? 'The nurse', cases };
  const desk = await withUnpaged(paged, text.body);
  const { named, all, heard } = heardFrom(desk, text.body);
  const unknown = named === null ? unknownCode(desk, text.body) : null;
  if (unknown !== null) {
    await rememberPending(turn.client, phone, null);
    return tell(desk, { key: 'noSuchCase', params: { code: unknown, cases: cases.map(caseName) } });
  }
  // A yes is only for what was asked just before it: any other text of hers leaves that undone, but for a look at the child.
  if (heard.word !== 'yes' && heard.word !== 'no' && heard.word !== 'more')
    await rememberPending(turn.client, phone, null);
  if (all.length > 1 && heard.word !== 'take' && heard.word !== 'other')
    return tell(desk, { key: 'which', params: { word: wordName(heard.word), cases: all.map(caseName) } });
  switch (heard.word) {
    case 'take':
      return tell(desk, await take(desk, all));
    case 'clear':
      return tell(desk, await askToClear(desk, named));
    case 'yes':
    case 'no':
      if (phone.pending !== null) return tell(desk, await settlePending(desk, phone.pending, heard.word));
      return (await isCaregiver(desk)) ? false : tellOffers(desk);
    case 'pause':
      return tell(desk, await askToPause(desk, heard.words));
    case 'resume':
      return tell(desk, await askToResume(desk));
    case 'other':
      // With a code of a case it is hers, whatever it says.
      return named === null ? answerOther(desk, text) : tellOffers(desk);
    case 'practice':
      // Without a name it is a parent's own wish, where she is one.
      if (heard.words === '' && (await isCaregiver(desk))) return false;
      return tell(desk, await sendRehearsal(desk, heard.words));
    default:
      // Words a parent may write as well: beside a case of her own child they are a nurse's only with a code.
      return (await isForHerChild(desk, named)) ? answerOther(desk, text) : answerWord(desk, named, heard);
  }
}

const wordName = (word: string) => (word === 'send-in' ? 'GO IN' : word.toUpperCase());

/** On call, she may take any open case by its code, whether or not its page has come to her yet. */
async function withUnpaged(desk: Desk, body: string): Promise<Desk> {
  const known = new Set(desk.cases.map(({ id }) => caseCode(id)));
  const code = codesIn(body).find((one) => !known.has(one));
  if (code === undefined || (await placeOf(desk)) === null) return desk;
  const { turn, parts } = desk;
  const unpaged = await lockCasesByCode(turn.client, parts.seal, code);
  const { heard } = heardFrom({ ...desk, cases: unpaged }, body);
  return heard.word === 'take' ? { ...desk, cases: [...desk.cases, ...unpaged] } : desk;
}

/** A code right after a word of hers that is none of her cases': what she meant for one family goes to no other. */
function unknownCode({ parts }: Desk, body: string): string | null {
  const [word = '', code = '', ...more] = body.trim().split(/\s+/);
  const bare = code.replace(/[^A-Za-z0-9]/g, '').toUpperCase();
  if (!isCodeLike(bare)) return null;
  return parts.readNurse([word, ...more].join(' ')).word === 'other' ? null : bare;
}

/** Her word, and the cases she named: by their codes, or beside a bare word, or first of what she tells, by the child's name. */
function heardFrom({ parts, cases }: Desk, body: string) {
  const { all, rest } = withoutCodes(cases, body);
  const named = all[0] ?? null;
  const heard = parts.readNurse(rest);
  if (heard.word === 'tell' && named === null) return { named: namedFirst(cases, heard.words), all, heard };
  if (heard.word !== 'other') return { named, all, heard };
  const byName = withoutName(cases, rest);
  if (byName === null) return { named, all, heard };
  return { named: byName.named, all: [byName.named], heard: parts.readNurse(byName.rest) };
}

type Word = Exclude<
  ReturnType<Parts['readNurse']>,
  { readonly word: 'take' | 'clear' | 'yes' | 'no' | 'pause' | 'resume' | 'practice' | 'other' }
>;

async function answerWord(desk: Desk, named: LockedCase | null, heard: Word): Promise<boolean> {
  switch (heard.word) {
    case 'pass':
      return tell(desk, await pass(desk, named));
    case 'more':
      return more(desk, named);
    case 'call':
      return tell(desk, await putThrough(desk, named));
    case 'send-in':
      return tell(desk, await askToSendIn(desk, named));
    case 'tell':
      return tell(desk, await tellFamily(desk, named, heard.words));
    case 'fact':
      return tell(desk, await askToCorrect(desk, named, heard.words));
    case 'close':
      return tell(desk, await askToClose(desk, named, heard.words));
    case 'wrong':
      return tell(desk, await report(desk, named, heard.words));
  }
}

async function answerOther(desk: Desk, text: HeardText): Promise<boolean> {
  if (await isCaregiver(desk)) return false;
  const { parts, turn } = desk;
  const reading = readFresh(parts, turn, desk.phone, null, text.body, null);
  if (opens(reading)) return false;
  if (reading.event.type === 'stop') {
    parts.log.error({ phoneId: desk.phone.id }, 'a phone that pages reach texted STOP');
    return tell(desk, { key: 'stopped', params: {} });
  }
  return tellOffers(desk);
}

/** Nothing was done: what waited for her yes is named, else what she can do now. */
async function tellOffers(desk: Desk): Promise<true> {
  const asked = desk.cases.find(({ id }) => id === desk.phone.pending?.caseId);
  if (asked !== undefined) return tell(desk, { key: 'dropped', params: { ...caseName(asked), why: 'unread' } });
  return tell(desk, { key: 'notSure', params: { can: await offersNow(desk) } });
}

/** No code, and either nothing she was called for or a case of her own child. */
async function isForHerChild(desk: Desk, named: LockedCase | null): Promise<boolean> {
  if (named !== null) return false;
  if (desk.cases.length === 0) return isCaregiver(desk);
  return (await desk.turn.client.query(hasCase, [desk.phone.id])).length > 0;
}

/** A nurse may be a parent too: enrolled, or with a case of her own child open. */
async function isCaregiver({ parts, turn, phone }: Desk): Promise<boolean> {
  const open = await turn.client.query(hasCase, [phone.id]);
  return open.length > 0 || (await familyOf(turn.client, parts.seal, phone.id)) !== null;
}
