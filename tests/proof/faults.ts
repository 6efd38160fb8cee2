/** How a conversation is made wrong on purpose: another guard or action, another event heard, another output. */

import type { Context } from '#machines/dislodgement/context.ts';
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import { dislodgement } from '#machines/dislodgement/machine.ts';
import type { Effect } from '#machines/effects.ts';
import type { PageReason } from '#machines/facts.ts';
import type { Say, SayKey } from '#machines/says.ts';
import type { Tamper } from './caseRun.ts';
import { type Conversation, type Line, lineOf, type Outputs, type Snapshot, type Stepper } from './outputs.ts';

export interface Fault {
  readonly name: string;
  /** The conversation made wrong. */
  readonly line: Line;
  /** Or the whole case, where paging or aftercare is wrong. */
  readonly tamper?: Tamper;
  /** Which world shows it; the default protocol and an unknown phone where not said. */
  readonly world?: number;
}

type Provided = Parameters<Conversation['provide']>[0];

/** Other guards, actions or delays. */
export const provided = (name: string, implementations: Provided): Fault => ({
  name,
  line: lineOf(dislodgement.provide(implementations)),
});

const sound = lineOf(dislodgement);
const stepping = (step: Stepper): Line => ({ ...sound, step });

/** The machine hears something else than was said. */
export const misheard = (
  name: string,
  hear: (event: ConversationEvent, snapshot: Snapshot) => ConversationEvent,
): Fault => ({ name, line: stepping((snapshot, event) => sound.step(snapshot, hear(event, snapshot))) });

/** What the machine does is lost or changed on the way out. */
export const tampered = (
  name: string,
  tamper: (outputs: Outputs, event: ConversationEvent, before: Snapshot) => Outputs,
): Fault => ({
  name,
  line: stepping((snapshot, event) => {
    const step = sound.step(snapshot, event);
    return { ...step, outputs: tamper(step.outputs, event, snapshot) };
  }),
});

export const pageDropped = (reason: PageReason): Fault =>
  tampered(`the page for ${reason} is dropped`, (outputs) => ({
    ...outputs,
    pages: outputs.pages.filter((page) => page !== reason),
  }));

/** Timers whose id begins so are never started. */
export const timerLost = (name: string, begins: string): Fault =>
  tampered(name, (outputs) => ({
    ...outputs,
    timers: outputs.timers.filter(({ id, start }) => start === null || !id.includes(begins)),
  }));

/** A message with other parameters. */
export function said<K extends SayKey>(name: string, key: K, params: Extract<Say, { key: K }>['params']): Fault {
  const change = (say: Say): Say => (say.key === key ? ({ ...say, params: { ...say.params, ...params } } as Say) : say);
  return tampered(name, (outputs) => ({ ...outputs, says: outputs.says.map(change) }));
}

/** The event goes by as if nothing had been heard: the last thing said is said again. */
export const ignored = (
  name: string,
  when: (event: ConversationEvent, context: Context) => boolean,
  says: Say,
): Fault => ({
  name,
  line: stepping((snapshot, event) =>
    when(event, snapshot.context)
      ? { snapshot, outputs: { says: [says], pages: [], timers: [], aftercare: null, closed: false } }
      : sound.step(snapshot, event),
  ),
});

/** Something that leaves the case is lost. */
export const neverLeaves = (name: string, is: (effect: Effect) => boolean): Fault => ({
  name,
  line: sound,
  tamper: (effects) => effects.filter((effect) => !is(effect)),
});

/** The turn throws. */
export const thrown = (name: string, when: (event: ConversationEvent) => boolean): Fault => ({
  name,
  line: stepping((snapshot, event) => {
    if (when(event)) throw new Error('planted');
    return sound.step(snapshot, event);
  }),
});
