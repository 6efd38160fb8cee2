/** A caregiver's text in a rehearsal: played on, or taken as real. Whatever may be real closes it and opens the real case at once. */
import { asReal, mayBeReal } from '#machines/rehearsal.ts';
import { MissingRow } from '#src/errors.ts';
import { openWith, readFresh, readInCase } from './caregiver.ts';
import { familyOf, type LockedCase, lockCase } from './cases.ts';
import { toListeners } from './joined.ts';
import { afterReading } from './language.ts';
import type { HeardText } from './line.ts';
import type { Parts } from './parts.ts';
import { optOut, type Phone } from './phones.ts';
import { protocolOf } from './protocols.ts';
import { endRehearsal, restartSilence } from './rehearsal.ts';
import { tellResult } from './rehearsalResult.ts';
import { type SignalAt, stampOf, type Turn, takeStep } from './turn.ts';
import { writeMessages } from './write.ts';

/** Answers a text of the phone that practises; its case is locked. */
export async function answerInRehearsal(
  parts: Parts,
  turn: Turn,
  phone: Phone,
  theCase: LockedCase,
  text: HeardText,
): Promise<void> {
  if (theCase.snapshots === null) throw new MissingRow('snapshots');
  const { reading, event } = await readInCase(parts, turn, phone, theCase, text);
  const { language } = await afterReading(turn.client, phone.id, phone, theCase.file, reading);
  const spoken = { ...theCase, language };
  if (reading.rehearsal === 'over') return endRehearsal(parts, turn, spoken, 'asked');
  const protocol = await protocolOf(turn.client, theCase.protocolId);
  const signalAt: SignalAt = (stamp) => ({ machine: 'conversation', event: { ...event, ...stamp } });
  const { raised, view: then } = parts.machines.stepCase(
    protocol,
    theCase.snapshots,
    signalAt(stampOf(parts, protocol, turn.nowMs)),
  );
  if (reading.rehearsal === 'real' || mayBeReal(event, { raised, disposition: then.disposition })) {
    await endRehearsal(parts, turn, spoken, 'real');
    const family = await familyOf(turn.client, parts.seal, phone.id);
    const spoke = { ...phone, language };
    const saidMs = Math.min(text.saidAtMs ?? turn.nowMs, turn.nowMs);
    const afresh = readFresh(parts, { ...turn, nowMs: saidMs }, spoke, family, text.body, null).event;
    const real = await openWith(parts, turn, spoke, family, asReal(event, { raised }, afresh));
    const saying = { say: { key: 'rehearsalReal', params: {}, preface: [] }, kind: 'text', urgent: false } as const;
    await writeMessages(parts.seal, turn, real.id, toListeners(parts, turn, protocol.site, real, [real], saying));
    return tellResult(parts, turn, spoken, 'real');
  }
  const { view } = await takeStep(parts, turn, spoken, signalAt, { answering: true });
  if (event.type === 'stop') await optOut(turn.client, phone, true);
  const stands = await lockCase(turn.client, parts.seal, theCase.id);
  if (stands === null) throw new MissingRow('case');
  if (event.type === 'stop') await endRehearsal(parts, turn, stands, 'stopped');
  else if (view.disposition !== null) await endRehearsal(parts, turn, stands, 'done');
  else await restartSilence(turn, stands);
}
