/** One case played again on a protocol: the texts and nurses' words as they came, its timers by its own waits. */
import { type CaseSignal, type CaseSnapshots, type CaseView, openCase, stepCase, viewCase } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { Disposition, FamilyFile } from '#machines/facts.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import { clinicOpen } from '#src/rota/clinicHours.ts';

/** A case's waiting timer, due at an epoch ms. */
export interface Waiting extends Pick<Extract<Effect, { type: 'startTimer' }>, 'machine' | 'id' | 'what'> {
  readonly event: `xstate.after.${string}`;
  readonly dueMs: number;
}

/** One step of a case as it was played. */
export interface Played {
  readonly atMs: number;
  /** A timer brought it about, nobody's text. */
  readonly byTimer: boolean;
  readonly effects: readonly Effect[];
  /** As it stands after the step. */
  readonly disposition: Disposition | null;
}

/** A case on a protocol, without shell or database: the same machines, its timers kept here. */
export class Replay {
  readonly protocol: Protocol;
  #snapshots: CaseSnapshots;
  #waiting: readonly Waiting[];

  constructor(protocol: Protocol, snapshots: CaseSnapshots, waiting: readonly Waiting[] = []) {
    this.protocol = protocol;
    this.#snapshots = snapshots;
    this.#waiting = waiting;
  }

  /** A case that begins at `atMs` with nothing told yet. */
  static opened(protocol: Protocol, file: FamilyFile | null, atMs: number): Replay {
    return new Replay(protocol, openCase(protocol, file, atMs));
  }

  get view(): CaseView {
    return viewCase(this.protocol, this.#snapshots);
  }

  get snapshots(): CaseSnapshots {
    return this.#snapshots;
  }

  /** Soonest first. */
  get waiting(): readonly Waiting[] {
    return this.#waiting.toSorted((a, b) => a.dueMs - b.dueMs);
  }

  /** Takes one step at the signal's own time, the clinic open or shut as this protocol has it. */
  hear(signal: CaseSignal): Played {
    return this.#step(stamped(signal, this.protocol), false);
  }

  /** Fires every timer due by `untilMs`, each at its own due time. */
  waitUntil(untilMs: number): Played[] {
    const played: Played[] = [];
    for (let [next] = this.waiting; next !== undefined && next.dueMs <= untilMs; [next] = this.waiting) {
      played.push(this.fire(next));
    }
    return played;
  }

  /** One timer coming true at its due time. */
  fire({ machine, id, event, dueMs }: Waiting): Played {
    this.#waiting = this.#waiting.filter((other) => other.machine !== machine || other.id !== id);
    const delayed: CaseSignal = { machine, event: { type: event, at: dueMs, clinicOpen: false } };
    return this.#step(stamped(delayed, this.protocol), true);
  }

  /** A case that closes keeps no timer. */
  #step(signal: CaseSignal, byTimer: boolean): Played {
    const atMs = signal.event.at;
    const { snapshots, effects, view } = stepCase(this.protocol, this.#snapshots, signal);
    this.#snapshots = snapshots;
    for (const effect of effects) this.#keepTime(effect, atMs);
    if (effects.some(({ type }) => type === 'closeCase')) this.#waiting = [];
    return { atMs, byTimer, effects, disposition: view.disposition };
  }

  #keepTime(effect: Effect, atMs: number): void {
    if (effect.type !== 'startTimer' && effect.type !== 'cancelTimer') return;
    const others = this.#waiting.filter(({ machine, id }) => machine !== effect.machine || id !== effect.id);
    this.#waiting = effect.type === 'startTimer' ? [...others, waitingOf(effect, atMs)] : others;
  }
}

function stamped(signal: CaseSignal, { site }: Protocol): CaseSignal {
  const open = clinicOpen(site, signal.event.at);
  switch (signal.machine) {
    case 'conversation':
      return { ...signal, event: { ...signal.event, clinicOpen: open } };
    case 'paging':
      return { ...signal, event: { ...signal.event, clinicOpen: open } };
    case 'aftercare':
      return { ...signal, event: { ...signal.event, clinicOpen: open } };
  }
}

const isDelayed = (event: string): event is Waiting['event'] => event.startsWith('xstate.after.');

function waitingOf(effect: Extract<Effect, { type: 'startTimer' }>, atMs: number): Waiting {
  const { machine, id, what, event, delayMs } = effect;
  if (!isDelayed(event)) throw new TypeError(`${event} is no delayed event`);
  return { machine, id, what, event, dueMs: atMs + Math.round(delayMs) };
}
