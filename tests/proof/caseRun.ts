/** A whole case stepped through the product's own post, its timers kept by due time: who is called, what is said, when. */
import { type CaseSignal, type CaseSnapshots, type CaseView, openCase, stepCase, viewCase } from '#machines/case.ts';
import type { Effect } from '#machines/effects.ts';
import type { Move } from './moves.ts';

import { type World, walkAtMs } from './worlds.ts';

export interface Due {
  readonly machine: 'conversation' | 'paging' | 'aftercare';
  readonly id: string;
  readonly event: string;
  readonly atMs: number;
}

export type Tamper = (effects: readonly Effect[]) => readonly Effect[];
const asItIs: Tamper = (effects) => effects;

/** Where a case is: immutable, so that a walk can go on from one place in many ways. */
export interface Place {
  readonly world: World;
  readonly nowMs: number;
  readonly snapshots: CaseSnapshots;
  readonly due: readonly Due[];
  /** A planted fault changes what leaves the case; the real one leaves it alone. */
  readonly tamper: Tamper;
  /** What the last step did. */
  readonly effects: readonly Effect[];
}

export function openPlace(world: World, tamper = asItIs): Place {
  const snapshots = openCase(world.protocol, world.file, walkAtMs);
  return { world, nowMs: walkAtMs, snapshots, due: [], effects: [], tamper };
}

const views = new WeakMap<Place, CaseView>();

/** Every rule looks at the same place, and looking restores three machines: it is looked at once. */
export function viewAt(place: Place): CaseView {
  const known = views.get(place);
  if (known !== undefined) return known;
  const view = viewCase(place.world.protocol, place.snapshots);
  views.set(place, view);
  return view;
}

/** One signal at the place's own time. */
export function signalled(place: Place, signal: CaseSignal): Place {
  const step = stepCase(place.world.protocol, place.snapshots, signal);
  const { snapshots } = step;
  const effects = place.tamper(step.effects);
  return {
    ...place,
    snapshots,
    effects,
    due: effects.reduce((due, effect) => kept(due, effect, place.nowMs), place.due),
  };
}

function kept(due: readonly Due[], effect: Effect, nowMs: number): readonly Due[] {
  if (effect.type !== 'startTimer' && effect.type !== 'cancelTimer') return due;
  const others = due.filter(({ machine, id }) => machine !== effect.machine || id !== effect.id);
  if (effect.type === 'cancelTimer') return others;
  const { machine, id, event, delayMs } = effect;
  return [...others, { machine, id, event, atMs: nowMs + delayMs }];
}

/** Fires one timer, at its due time or now if that is past. */
export function fired(place: Place, due: Due): Place {
  const nowMs = Math.max(place.nowMs, due.atMs);
  const rest = place.due.filter((other) => other !== due);
  const type = `xstate.after.${due.event.replace(/^xstate\.after\./, '')}` as const;
  const event = { type, at: nowMs, clinicOpen: false };
  return signalled({ ...place, nowMs, due: rest }, { machine: due.machine, event });
}

/** The timer that is due first. */
export const earliest = (place: Place): Due | undefined => [...place.due].sort((a, b) => a.atMs - b.atMs)[0];

/** Takes one move of the conversation's walk; a timer fires when it is due. */
export function moved(place: Place, { event, clinicOpen }: Move): Place {
  if (event.type.startsWith('xstate.after.')) {
    const due = place.due.find(({ machine, event: own }) => machine === 'conversation' && own === event.type);
    if (due === undefined) throw new Error(`${event.type} is not due`);
    return fired(place, due);
  }
  const stamp = { at: place.nowMs, clinicOpen };
  switch (event.type) {
    case 'page.taken':
      return taken(place);
    case 'page.began':
    case 'page.passed':
    case 'page.unanswered':
    case 'notWell':
      return place;
    default:
      // What is left is a text or a nurse's word: the other machines' news and timers are above.
      return signalled(place, {
        machine: 'conversation',
        event: { ...event, ...stamp } as CaseSignal['event'],
      } as CaseSignal);
  }
}

export function passed(place: Place, from: 0 | 1 | 2): Place {
  const event = { type: 'pass', nurse: 'A', from, at: place.nowMs, clinicOpen: false } as const;
  return signalled(place, { machine: 'paging', event });
}

/** The family's own call rang whoever stands there. */
export function rung(place: Place, there: 0 | 1 | 2): Place {
  const event = { type: 'rung', place: there, at: place.nowMs, clinicOpen: false } as const;
  return signalled(place, { machine: 'paging', event });
}

export function taken(place: Place): Place {
  const event = { type: 'take', nurse: 'A', at: place.nowMs, clinicOpen: false } as const;
  return signalled(place, { machine: 'paging', event });
}
