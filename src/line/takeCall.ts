/** A person who was rung by a family's call presses a key: she takes the case's page, and the two are connected. */
import { statement } from '#src/store/database.ts';
import { findCall, markConnected } from './callPlan.ts';
import { caseCode, lockCase } from './cases.ts';
import { hearText } from './inbound.ts';
import type { Parts } from './parts.ts';
import { isPaused } from './pause.ts';
import { lockPhoneOf } from './phones.ts';
import { numbersOnCall } from './safeMessage.ts';
import { inTransaction, takeStep } from './turn.ts';

const pageOf = statement('take.page', 'SELECT 1 FROM page WHERE case_id = $1 AND phone_id = $2 AND open');

/** `id` and `place` name the call and whose turn it was; both are signed by the carrier. */
export interface CallKey {
  readonly id: string;
  readonly place: number;
  readonly digit: string;
  readonly cause: string;
}

/** Whether the two are connected: only by the key 1. The page is taken as by her text, once however often it is told. */
export async function takeCall(parts: Parts, { id, place, digit, cause }: CallKey): Promise<boolean> {
  if (digit !== '1') return false;
  const call = await findCall(parts.database, parts.seal, id);
  const number = call?.plan.rings[place];
  if (call === null || number === undefined) return false;
  await markConnected(parts.database, id);
  if (call.caseId === null) return true;
  const { caseId } = call;
  await notePage(parts, number, caseId, cause);
  await hearText(parts, { from: number, body: `take ${caseCode(caseId)}`, id: `call ${id} ${place}`, cause });
  return true;
}

/** Who was not called yet for this case has been now: the record says so before she takes it. */
async function notePage(parts: Parts, number: string, caseId: number, cause: string): Promise<void> {
  await inTransaction(parts, cause, async (client, begin) => {
    const phoneId = await lockPhoneOf(parts, client, number);
    const theCase = await lockCase(client, parts.seal, caseId);
    if (theCase === null || theCase.parked) return;
    const turn = await begin(await isPaused(client));
    if ((await client.query(pageOf, [caseId, phoneId])).length > 0) return;
    const place = (await numbersOnCall(parts, turn)).indexOf(number);
    if (place !== 0 && place !== 1 && place !== 2) return;
    await takeStep(parts, turn, theCase, (stamp) => ({ machine: 'paging', event: { type: 'rung', place, ...stamp } }), {
      answering: false,
    });
  });
}
