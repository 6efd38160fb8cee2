/** The machines of a case as plain data: every state, and every move out of it by name, for the sheet and its hash. */
import type { AnyStateNode } from 'xstate';
import { aftercare } from '#machines/aftercare/machine.ts';
import { dislodgement } from '#machines/dislodgement/machine.ts';
import type { MachineName } from '#machines/effects.ts';
import { paging } from '#machines/paging/machine.ts';

/** One way out of a state: what has to happen, under which condition, where it leads and what is done on the way. */
export interface Move {
  /** The event; `after ...` for a delay, `at once` for a decision. */
  readonly on: string;
  readonly when: string | null;
  /** Path of the state it leads to; null where the state stays. */
  readonly to: string | null;
  readonly does: readonly string[];
}

export interface StateDefinition {
  /** Path below the machine, as `placement.ph`; empty for the machine itself. */
  readonly path: string;
  /** The question it asks, if it asks one. */
  readonly asking: string | null;
  readonly entry: readonly string[];
  /** In the order they are tried. */
  readonly moves: readonly Move[];
}

export interface MachineDefinition {
  readonly name: MachineName;
  readonly states: readonly StateDefinition[];
}

/** All three machines, from the machines themselves. */
export function machineDefinitions(): readonly MachineDefinition[] {
  return [
    { name: 'conversation', states: statesUnder(dislodgement.root) },
    { name: 'paging', states: statesUnder(paging.root) },
    { name: 'aftercare', states: statesUnder(aftercare.root) },
  ];
}

function statesUnder(node: AnyStateNode): StateDefinition[] {
  const transitions = [...(node.always ?? []), ...[...node.transitions.values()].flat()];
  return [
    {
      path: pathOf(node),
      asking: node.meta?.asking ?? null,
      entry: actionNames(node.entry),
      moves: transitions.map((transition) => ({
        on: eventName(transition.eventType),
        when: transition.guard === undefined ? null : guardName(transition.guard),
        to: transition.target?.map(pathOf).join(' and ') ?? null,
        does: actionNames(transition.actions),
      })),
    },
    ...Object.values(node.states).flatMap(statesUnder),
  ];
}

const pathOf = (node: AnyStateNode): string => node.path.join('.');

/** `xstate.after.quiet.dislodgement.placement.ph` reads as "after quiet". */
function eventName(eventType: string): string {
  if (eventType === '') return 'at once';
  const delay = /^xstate\.after\.([^.]+)\./.exec(eventType)?.[1];
  return delay === undefined ? eventType : `after ${delay}`;
}

/** XState's `and`, `or` and `not` are functions that carry what they join. */
function guardName(guard: unknown): string {
  if (typeof guard !== 'function' || !('guards' in guard) || !Array.isArray(guard.guards)) return namedWith(guard);
  const names = guard.guards.map(guardName);
  if (guard.name === 'not') return `not ${names.join()}`;
  return names.join(` ${guard.name} `);
}

/** What starts and stops the delays is a function of XState's own; the delays show as moves. */
function actionNames(actions: readonly unknown[]): string[] {
  return actions.filter((action) => typeof action !== 'function').map(namedWith);
}

/** A guard or action with its fixed parameters; those taken from the case are left out. */
function namedWith(part: unknown): string {
  if (typeof part === 'string') return part;
  if (typeof part !== 'object' || part === null || !('type' in part))
    throw new TypeError('a guard or action has no name');
  const params = 'params' in part ? leaves(part.params) : [];
  return [String(part.type), ...params].join(' ');
}

function leaves(value: unknown): string[] {
  if (typeof value === 'function' || value === undefined) return [];
  if (typeof value !== 'object' || value === null) return [String(value)];
  return Object.entries(value).flatMap(([name, inner]) =>
    typeof inner === 'boolean' ? (inner ? [name] : []) : leaves(inner),
  );
}
