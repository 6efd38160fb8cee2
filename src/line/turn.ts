/** One turn of one case: restore it, take one step, write down all of it. Runs inside the caller's transaction. */
import type { CaseSignal, CaseStep } from '#machines/case.ts';
import type { MachineName } from '#machines/effects.ts';
import type { Stamp } from '#machines/events.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { rehearsed } from '#machines/rehearsal.ts';
import { MissingRow, NothingSaid } from '#src/errors.ts';
import type { Queryable } from '#src/store/database.ts';
import { type LockedCase, rememberChild } from './cases.ts';
import { listenersOf } from './joined.ts';
import { lastWords } from './lastWords.ts';
import type { Parts } from './parts.ts';
import { type Plan, planStep } from './plan.ts';
import { protocolOf } from './protocols.ts';
import { reach } from './reach.ts';
import { chain, digest } from './record.ts';
import { writeStep } from './write.ts';

/** A timer's name within its case. */
export interface TimerName {
  readonly machine: MachineName;
  readonly id: string;
}

/** What holds for the whole of one transaction. */
export interface Turn {
  readonly client: Queryable;
  readonly nowMs: number;
  readonly cause: string;
  /** The text that came in, where one did. */
  readonly heard?: string;
  /** People have stopped the line's advice. */
  readonly paused: boolean;
  /** Due times of what the turn starts, epoch ms: armed once it is committed. */
  readonly dueMs: number[];
}

export interface StepOptions {
  /** The signal is a caregiver's text: it must be answered, and the answer goes out even after a STOP. */
  readonly answering: boolean;
  /** Whose text it is, where that is not the phone that opened the case. */
  readonly speakerId?: number;
  /** Only this phone hears what is said: the others have heard it. */
  readonly onlyTo?: number;
  /** The phone of the nurse whose `take` this is. */
  readonly takerPhoneId?: number;
  /** The timer that came true; it is gone unless the step starts it again. */
  readonly fired?: TimerName;
}

/**
 * One transaction of the line. `begin` makes the turn: call it once the rows are locked, with whether the line is paused, so
 * that its time is the time it really runs. What the turn starts is armed after the commit.
 */
export async function inTransaction<T>(
  parts: Parts,
  cause: string,
  work: (client: Queryable, begin: (paused: boolean) => Promise<Turn>) => Promise<T>,
): Promise<T> {
  const dueMs: number[] = [];
  const result = await parts.database.transaction((client) =>
    work(client, async (paused) => ({ client, nowMs: await parts.clock.now(client), cause, paused, dueMs })),
  );
  parts.checkpoint('turn committed');
  for (const due of dueMs) parts.alarm.arm(due);
  parts.checkpoint('alarm armed');
  return result;
}

/** Builds a signal once the stamp is known. */
export type SignalAt = (stamp: Stamp) => CaseSignal;

/** Takes one step of a locked case. Throws `NothingSaid` where a caregiver's text would be met with silence. */
export async function takeStep(
  parts: Parts,
  turn: Turn,
  before: LockedCase,
  signalAt: SignalAt,
  options: StepOptions,
): Promise<CaseStep> {
  if (before.snapshots === null) throw new MissingRow('snapshots');
  const protocol = await protocolOf(turn.client, before.protocolId);
  const signal = signalAt(stampOf(parts, protocol, turn.nowMs));
  const taken = parts.machines.stepCase(protocol, before.snapshots, signal);
  const step = before.rehearsal === null ? taken : rehearsed(before.snapshots, taken);
  if (options.answering && !step.effects.some((effect) => effect.type === 'say'))
    throw new NothingSaid(signal.event.type);
  parts.checkpoint('step taken');
  const theCase = await rememberChild(turn.client, parts.seal, before, step.view.child);
  const reached = await reach(parts, turn, theCase.id, step.effects, options.takerPhoneId);
  if (reached.places.size > 0) parts.checkpoint('page reached');
  const listeners = await listenersOf(turn.client, theCase);
  const leaves = signal.event.type === 'stop';
  const words = await lastWords(parts, turn, theCase, step.effects, options);
  const plan = planStep({ parts, turn, theCase, protocol, reached, listeners, leaves, words, ...options }, step);
  const snapshots = JSON.stringify(step.snapshots);
  const link = chain(theCase, {
    at: turn.nowMs,
    ...signal,
    effects: step.effects,
    ...traces(turn, theCase, step, plan),
    snapshots: digest(snapshots),
  });
  await writeStep(parts, turn, theCase, {
    snapshots,
    plan,
    link,
    type: signal.event.type,
    takerPhoneId: options.takerPhoneId ?? null,
  });
  parts.checkpoint('step saved');
  return step;
}

/** What the event keeps beside its decision: how the case stands after it, and what binds texts to it. */
function traces(turn: Turn, { rehearsal }: LockedCase, { view, raised }: CaseStep, plan: Plan) {
  const { disposition, tubeIn, clearable, facts } = view;
  return {
    ...(turn.heard !== undefined && { heard: digest(turn.heard) }),
    ...(rehearsal !== null && { rehearsal: { wouldPage: raised } }),
    said: plan.messages.map(({ body }) => digest(body)),
    stands: { disposition, tubeIn, clearable, facts },
  };
}

/** When it is, for the machines of a case that runs on this protocol. */
export function stampOf(parts: Parts, protocol: Protocol, nowMs: number): Stamp {
  return { at: nowMs, clinicOpen: parts.clinicOpen(protocol.site, nowMs) };
}
