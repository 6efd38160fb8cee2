/** A nurse rings the line: she is put through to the family of the one case she has, or hears the few words she can text. */
import { statement } from '#src/store/database.ts';
import type { CallPlan } from '../callPlan.ts';
import { familyOf, type LockedCase, lockPagedCases } from '../cases.ts';
import type { Parts } from '../parts.ts';
import type { Phone } from '../phones.ts';
import { caseName } from '../plan.ts';
import { lastTaker } from '../reach.ts';
import type { Turn } from '../turn.ts';
import type { Desk } from './desk.ts';
import { announceCall } from './talk.ts';

const ownCase = statement('rings.ownCase', 'SELECT 1 FROM "case" WHERE phone_id = $1 AND closed_ms IS NULL');
interface NurseRings {
  /** The one she has. */
  readonly theCase: LockedCase | null;
  readonly plan: CallPlan;
}

/** Null where she rings as a parent: with a case of her own child open, or enrolled and with none of a family's. */
export async function nurseRings(parts: Parts, turn: Turn, phone: Phone): Promise<NurseRings | null> {
  if ((await turn.client.query(ownCase, [phone.id])).length > 0) return null;
  const cases = await lockPagedCases(turn.client, parts.seal, phone.id);
  const hers: LockedCase[] = [];
  for (const theCase of cases) {
    const taker = await lastTaker(turn.client, parts.seal, theCase.id);
    if (taker?.phoneId === phone.id) hers.push(theCase);
  }
  const [only] = hers;
  if (only === undefined && (await familyOf(turn.client, parts.seal, phone.id)) !== null) return null;
  const scene = { site: parts.protocol.site, nowMs: turn.nowMs };
  const quiet = { language: 'en', rings: [], whisper: '', unanswered: '' } as const;
  if (only === undefined || hers.length > 1) {
    const spoken = parts.wordForNurse({ key: 'callWords', params: { cases: hers.length } }, scene);
    return { theCase: null, plan: { ...quiet, spoken, through: null } };
  }
  const desk: Desk = { parts, turn, phone, name: parts.nurseOf(phone.number)?.name ?? 'The nurse', cases };
  await announceCall(desk, only);
  const spoken = parts.wordForNurse({ key: 'callThrough', params: caseName(only) }, scene);
  return { theCase: only, plan: { ...quiet, spoken, through: only.number } };
}
