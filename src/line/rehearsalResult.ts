/** The result of a rehearsal, in one text: to the nurse who asked for it, else to the person first on call. */
import { z } from 'zod';
import { pageReasons } from '#machines/facts.ts';
import { MissingRow } from '#src/errors.ts';
import { statement } from '#src/store/database.ts';
import type { RehearsalResult } from '#src/wording/nurseSays.ts';
import type { LockedCase } from './cases.ts';
import type { Parts } from './parts.ts';
import { protocolOf } from './protocols.ts';
import { onCallNow, phonesOf } from './reach.ts';
import type { Turn } from './turn.ts';
import { writeMessages } from './write.ts';

const readEvents = statement('rehearsal.events', 'SELECT type, body FROM event WHERE case_id = $1 ORDER BY number');
const unreadable: ReadonlySet<string> = new Set(['unclear', 'unknownDevice']);
const noted = z.looseObject({ rehearsal: z.object({ wouldPage: z.array(z.enum(pageReasons)) }).optional() });

/** Tells how the locked rehearsal went. Where the rota names nobody, nobody is troubled with it. */
export async function tellResult(
  parts: Parts,
  turn: Turn,
  theCase: LockedCase,
  how: RehearsalResult['how'],
): Promise<void> {
  const phoneId = theCase.rehearsal?.by ?? (await firstOnCall(parts, turn, theCase.id));
  if (phoneId === null) return;
  const params = await resultOf(parts, turn, theCase, how);
  const { site } = parts.protocol;
  const body = parts.wordForNurse({ key: 'rehearsalResult', params }, { site, nowMs: turn.nowMs });
  await writeMessages(parts.seal, turn, null, [{ phoneId, kind: 'text', body, urgent: false }]);
}

async function resultOf(
  parts: Parts,
  turn: Turn,
  { id, protocolId, snapshots, file }: LockedCase,
  how: RehearsalResult['how'],
): Promise<RehearsalResult> {
  const rows = await turn.client.query<{ type: string; body: Buffer }>(readEvents, [id]);
  if (snapshots === null) throw new MissingRow('snapshots');
  const view = parts.machines.viewCase(await protocolOf(turn.client, protocolId), snapshots);
  const raised = rows.flatMap(({ body }) => noted.parse(JSON.parse(parts.seal.open(body))).rehearsal?.wouldPage ?? []);
  return {
    child: file?.child ?? null,
    how,
    disposition: view.disposition,
    answered: new Set(rows.map(({ type }) => type).filter((type) => type.startsWith('answer.'))).size,
    // The first text answers nothing yet; before it stands how the rehearsal began.
    unread: rows.slice(2).filter(({ type }) => unreadable.has(type)).length,
    asking: view.asking,
    raised: [...new Set(raised)],
  };
}

async function firstOnCall(parts: Parts, turn: Turn, caseId: number): Promise<number | null> {
  const [first] = await onCallNow(parts, turn.client, turn.nowMs);
  if (!first) return null;
  return (await phonesOf(turn.client, parts.seal, [first.number], caseId)).get(first.number)?.phoneId ?? null;
}
