/** Her words about a page: she takes it, passes it on, or wants to know more of the child. */
import { statement } from '#src/store/database.ts';
import type { CaseDetails, NurseSay } from '#src/wording/nurseSays.ts';
import { type LockedCase, rememberRelay } from '../cases.ts';
import { languageOf } from '../language.ts';
import { showMedia } from '../media.ts';
import { caseName } from '../plan.ts';
import { takeParked } from '../safeMessage.ts';
import { type SignalAt, takeStep } from '../turn.ts';
import { type Desk, hasNow, isSay, type Looked, look, meant, otherTaker, placeOf, takeOne, tell } from './desk.ts';
import { askToTakeOver } from './takeOver.ts';

const openPages = statement('nurse.openPages', 'SELECT DISTINCT case_id FROM page WHERE phone_id = $1 AND open');
const familyTexts = statement(
  'nurse.familyTexts',
  `WITH said AS (
     SELECT id, body FROM message WHERE phone_id = ANY ($1) AND direction = 'in' AND kind = 'text'
     AND id >= COALESCE((SELECT min(id) FROM message WHERE case_id = $2 AND phone_id = ANY ($1)), 0) - 1
   )
   SELECT body FROM said
   WHERE id = (SELECT min(id) FROM said) OR id IN (SELECT id FROM said ORDER BY id DESC LIMIT 2) ORDER BY id`,
);

/** Every open page of hers, or those she named. */
export async function take(desk: Desk, named: readonly LockedCase[]): Promise<NurseSay> {
  const { turn, phone, parts } = desk;
  const rows = await turn.client.query<{ case_id: number }>(openPages, [phone.id]);
  const open = new Set(rows.map((row) => row.case_id));
  const taken = desk.cases.filter((theCase) => open.has(theCase.id) && (named.length === 0 || named.includes(theCase)));
  for (const theCase of taken) {
    if (theCase.parked) await takeParked(turn, theCase.id, phone.id);
    else await takeOne(desk, theCase);
    await showMedia(parts, turn, theCase, phone.id);
    parts.checkpoint('page taken');
  }
  const others = named.filter((theCase) => !taken.includes(theCase));
  if (taken.length === 0 || others.length > 0) return askToTakeOver(desk, others, taken);
  return hasNow(desk, taken);
}

/** To the person after her; she is off it where nobody has taken it since, or she has. */
export async function pass(desk: Desk, named: LockedCase | null): Promise<NurseSay> {
  const theCase = meant(desk, named, 'PASS');
  if (isSay(theCase)) return theCase;
  const [found] = await look(desk, [theCase]);
  if (found === undefined) return { key: 'passed', params: { ...caseName(theCase), already: true } };
  const other = await otherTaker(desk, found);
  if (other !== null) return { key: 'notYours', params: { ...caseName(theCase), nurse: other.nurse } };
  const { parts, turn, name } = desk;
  // Whoever is off the rota by now gives it back to its beginning.
  const from = (await placeOf(desk)) ?? 2;
  const event = { type: 'pass', nurse: name, from } as const;
  const signalAt: SignalAt = (stamp) => ({ machine: 'paging', event: { ...event, ...stamp } });
  const { view } = await takeStep(parts, turn, theCase, signalAt, { answering: false });
  const already = view.states.paging.join() === found.view.states.paging.join();
  if (!already) await rememberRelay(turn.client, theCase.id, null);
  return { key: 'passed', params: { ...caseName(theCase), already } };
}

/** All she needs to know the child and to act, then the family's own words: its first and its last. */
export async function more(desk: Desk, named: LockedCase | null): Promise<true> {
  const theCase = meant(desk, named, 'MORE');
  if (isSay(theCase)) return tell(desk, theCase);
  const [found] = await look(desk, [theCase]);
  if (found !== undefined) await tell(desk, { key: 'more', params: { ...caseName(theCase), ...details(desk, found) } });
  const { client } = desk.turn;
  const rows = await client.query<{ body: Buffer }>(familyTexts, [[theCase.phoneId, ...theCase.joinedIds], theCase.id]);
  const texts = rows.map(({ body }) => desk.parts.seal.open(body));
  await tell(desk, { key: 'moreSaid', params: { ...caseName(theCase), texts } });
  await showMedia(desk.parts, desk.turn, theCase, desk.phone.id);
  return true;
}

function details({ parts }: Desk, { theCase, view }: Looked): CaseDetails {
  const { file } = theCase;
  return {
    born: file?.born ?? null,
    firstPlaced: view.facts.firstPlaced ?? null,
    chartLast4: file?.chartLast4 ?? null,
    tubeSize: file?.tubeSize ?? null,
    stemLengthCm: file?.stemLengthCm ?? null,
    fillVolumeMl: file?.fillVolumeMl ?? null,
    acidReducer: file?.acidReducer ?? null,
    // A file that holds none may never have been asked.
    latexAllergy: view.latexAllergy ? true : null,
    insertedHow: view.facts.insertedHow ?? null,
    weightKg: view.facts.weightKg ?? null,
    failedTries: view.failedTries,
    fedLately: view.fedLately,
    cannotWait: view.cannotWait,
    caregiver: theCase.number,
    language: languageOf(parts.protocol.site, theCase.language, file),
  };
}
