/** A machine on a simulated clock: keeps its timers as rows, fires each at its own due time, and collects what it does. */
import { type AnyMachineSnapshot, type AnyStateMachine, createActor, getInitialSnapshot, transition } from 'xstate';
import type { Stamp, Unstamped } from '#machines/events.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import { clinicalSettings, type Site } from '#machines/protocol/settings.ts';
import { site as nightSite } from '#tests/dislodgement/night.ts';

/** The defaults of every setting, with the few a test changes. */
export function clinicalWith(changes: Partial<Clinical> = {}): Clinical {
  const defaults = Object.fromEntries(
    Object.entries(clinicalSettings).map(([name, setting]) => [name, setting.default]),
  );
  return { ...(defaults as Omit<Clinical, 'phAfterFeed'>), phAfterFeed: 7, ...changes };
}

/** An effect of a step, and when it came, in minutes since the simulation started. */
export interface Did {
  readonly minute: number;
  readonly type: string;
  readonly params: unknown;
}

interface Timer {
  readonly dueMs: number;
  readonly type: string;
}

const minuteMs = 60_000;
/** More in one wait than any machine does: its timers start each other without time passing. */
const mostEffects = 5_000;
/** Any time will do: the machines only count from the stamps. */
const startMs = Date.parse('2027-03-06T02:10:00-05:00');

export class Simulated<Event extends Stamp & { readonly type: string }> {
  snapshot: AnyMachineSnapshot;
  readonly #machine: AnyStateMachine;
  readonly #clinical: Clinical;
  readonly #site: Site;
  readonly #timers = new Map<string, Timer>();
  #nowMs = startMs;

  constructor(machine: AnyStateMachine, clinical: Clinical = clinicalWith(), site: Site = nightSite) {
    this.#machine = machine;
    this.#clinical = clinical;
    this.#site = site;
    this.snapshot = getInitialSnapshot(machine, { clinical, site });
  }

  /** Takes one stamped step on the saved and restored snapshot, as the shell does; what it did, timers aside, in order. */
  send(event: Unstamped<Event> & { readonly type: string }): Did[] {
    return this.#step({ ...event, at: this.#nowMs, clinicOpen: false });
  }

  /** Moves the clock forward; every timer due on the way fires at its own time. */
  advance(minutes: number): Did[] {
    const untilMs = this.#nowMs + minutes * minuteMs;
    const did = this.#fireDueBy(untilMs);
    this.#nowMs = untilMs;
    return did;
  }

  /** As when every process was down: time passes with no timer fired, then all that is due fires late, in order. */
  advanceAsleep(minutes: number): Did[] {
    this.#nowMs += minutes * minuteMs;
    return this.#fireDueBy(this.#nowMs);
  }

  /** Minutes from now to each waiting timer, soonest first. */
  get due(): number[] {
    return [...this.#timers.values()].map(({ dueMs }) => (dueMs - this.#nowMs) / minuteMs).sort((a, b) => a - b);
  }

  #fireDueBy(untilMs: number): Did[] {
    const did: Did[] = [];
    for (;;) {
      const [next] = [...this.#timers].sort(([, one], [, other]) => one.dueMs - other.dueMs);
      if (next === undefined || next[1].dueMs > untilMs) return did;
      if (did.length > mostEffects) throw new Error('the timers never come to an end');
      const [id, { dueMs, type }] = next;
      this.#timers.delete(id);
      this.#nowMs = Math.max(this.#nowMs, dueMs);
      did.push(...this.#step({ type, at: this.#nowMs, clinicOpen: false }));
    }
  }

  #step(event: Stamp & { readonly type: string }): Did[] {
    const [snapshot, actions] = transition(this.#machine, this.#restored(), event);
    if (snapshot.status === 'error') throw snapshot.error;
    this.snapshot = snapshot;
    return actions.flatMap(({ type, params }) => this.#keep(type, params as RaiseParams));
  }

  #restored(): AnyMachineSnapshot {
    const saved = JSON.parse(JSON.stringify(this.#machine.getPersistedSnapshot(this.snapshot)));
    const snapshot = { ...saved, context: { ...saved.context, clinical: this.#clinical, site: this.#site } };
    return createActor(this.#machine, { snapshot }).getSnapshot();
  }

  #keep(type: string, params: RaiseParams): Did[] {
    if (type === 'xstate.cancel') {
      this.#timers.delete(params.sendId);
      return [];
    }
    if (type === 'xstate.raise') {
      if (typeof params.delay === 'number') {
        if (params.delay < 0) throw new Error(`${params.id} is due before it starts`);
        this.#timers.set(params.id, { dueMs: this.#nowMs + params.delay, type: params.event.type });
      }
      return [];
    }
    return [{ minute: (this.#nowMs - startMs) / minuteMs, type, params }];
  }
}

/** What XState's own `xstate.raise` and `xstate.cancel` carry. */
interface RaiseParams {
  readonly id: string;
  readonly delay: unknown;
  readonly event: { readonly type: string };
  readonly sendId: string;
}
