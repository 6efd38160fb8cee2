/** What one step of the conversation did, as anyone outside can see it: said, paged, timed, begun, ended. */
import { initialTransition, type SnapshotFrom } from 'xstate';
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import type { dislodgement } from '#machines/dislodgement/machine.ts';
import type { PageReason } from '#machines/facts.ts';
import type { Say } from '#machines/says.ts';
import { stepped } from '#machines/withoutActor.ts';
import { type World, walkDay } from './worlds.ts';

export type Conversation = typeof dislodgement;
export type Snapshot = SnapshotFrom<Conversation>;

export interface Outputs {
  readonly says: Say[];
  readonly pages: PageReason[];
  /** Ids started and stopped, in order; `delayMs` and `event` are those of a start. */
  readonly timers: {
    readonly id: string;
    readonly start: { readonly delayMs: number; readonly event: string } | null;
  }[];
  aftercare: 'use' | 'own-tube' | 'go-in' | 'ended' | null;
  closed: boolean;
}

export interface Step {
  readonly snapshot: Snapshot;
  readonly outputs: Outputs;
}

/** How a conversation takes a step; a planted fault is another one. */
export type Stepper = (snapshot: Snapshot, event: ConversationEvent) => Step;

export const noOutputs = (): Outputs => ({ says: [], pages: [], timers: [], aftercare: null, closed: false });

/** A line to be proved: the real one, or one made wrong on purpose. A snapshot keeps the machine it began with. */
export interface Line {
  readonly begin: (world: World) => Snapshot;
  readonly step: Stepper;
}

export function lineOf(machine: Conversation): Line {
  return {
    begin: ({ protocol, file }) => initialTransition(machine, { protocol, file, openedOn: walkDay })[0],
    step: stepOf(machine),
  };
}

interface Action {
  readonly type: string;
  readonly params?: unknown;
}

/** A step of the real machine, or of one made wrong on purpose. Throws if the machine ends in error. */
function stepOf(machine: Conversation): Stepper {
  return (snapshot, event) => {
    const [next, actions] = stepped(machine, snapshot, event);
    if (next.status === 'error') throw next.error;
    const outputs = noOutputs();
    for (const action of actions) collect(action, outputs);
    return { snapshot: next, outputs };
  };
}

/** The parameters are those the kit types each action with; the product checks them at its own boundary. */
function collect({ type, params }: Action, outputs: Outputs): void {
  switch (type) {
    case 'say':
      outputs.says.push((params as { say: Say }).say);
      return;
    case 'page':
      outputs.pages.push((params as { reason: PageReason }).reason);
      return;
    case 'beginAftercare':
      outputs.aftercare = (params as { after: 'use' | 'own-tube' | 'go-in' }).after;
      return;
    case 'endAftercare':
      outputs.aftercare = 'ended';
      return;
    case 'closeCase':
      outputs.closed = true;
      return;
    case 'xstate.cancel':
      outputs.timers.push({ id: (params as { sendId: string }).sendId, start: null });
      return;
    case 'xstate.raise': {
      const { id, delay, event } = params as { id: string; delay?: number; event: { type: string } };
      if (typeof delay === 'number') outputs.timers.push({ id, start: { delayMs: delay, event: event.type } });
      return;
    }
  }
}
