/** A structural lint over a built machine: the slips that neither TypeScript nor XState refuses, and what this house bans. */
import type { AnyStateMachine, AnyStateNode } from 'xstate';

const stateKeys = new Set(
  'id initial type states entry exit on after always onDone meta description tags history target output'.split(' '),
);
/** `schemas` is what `setup` itself writes. */
const machineKeys = new Set([...stateKeys, 'context', 'schemas']);
const transitionKeys = new Set('target guard actions reenter meta description'.split(' '));
const stateTypes = new Set(['atomic', 'compound', 'parallel', 'final', 'history', undefined]);

/** Any object of a machine's configuration, as it was written. */
type Config = Readonly<Record<string, unknown>>;

const isConfig = (value: unknown): value is Config => typeof value === 'object' && value !== null;
const listOf = (value: unknown): readonly unknown[] => (value === undefined ? [] : [value].flat());

/** The names a machine was set up with. */
type Named = Readonly<Record<'actions' | 'guards' | 'delays', Config>>;

/** One line for each fault, with the id of the state it is in; a sound machine has none. Targets XState itself refuses. */
export function lintMachine(machine: AnyStateMachine): string[] {
  const nodes = nodesUnder(machine.root);
  const faults = nodes.flatMap((node) =>
    stateFaults(node, machine.implementations).map((fault) => `${node.id}: ${fault}`),
  );
  // Where an initial state does not exist, nothing can be said of what is reached.
  if (faults.some((fault) => fault.includes('unknown initial'))) return faults;
  const reached = reachedFrom(machine.root);
  return [...faults, ...nodes.filter((node) => !reached.has(node)).map((node) => `${node.id}: is never reached`)];
}

const nodesUnder = (node: AnyStateNode): AnyStateNode[] => [node, ...Object.values(node.states).flatMap(nodesUnder)];

function stateFaults(node: AnyStateNode, named: Named): string[] {
  const config: Config = { ...node.config };
  const { initial, type } = config;
  return [
    ...extraKeys(config, node.parent === undefined ? machineKeys : stateKeys),
    ...(stateTypes.has(type as string | undefined) ? [] : [`unknown type ${type}`]),
    ...(typeof initial === 'string' && !(initial in node.states) ? [`unknown initial ${initial}`] : []),
    ...actionFaults(config.entry, named),
    ...actionFaults(config.exit, named),
    ...onFaults(config.on, named),
    ...afterFaults(config.after, named),
    ...transitionFaults(config.always, named),
    ...transitionFaults(config.onDone, named),
  ];
}

const extraKeys = (config: Config, known: ReadonlySet<string>): string[] =>
  Object.keys(config).flatMap((key) => (known.has(key) ? [] : [`unknown key ${key}`]));

function onFaults(on: unknown, named: Named): string[] {
  return Object.entries(isConfig(on) ? on : {}).flatMap(([event, transitions]) => [
    ...(event.includes('*') ? [`catches ${event}`] : []),
    ...transitionFaults(transitions, named),
  ]);
}

function afterFaults(after: unknown, named: Named): string[] {
  return Object.entries(isConfig(after) ? after : {}).flatMap(([delay, transitions]) => [
    ...delayFaults(/^\d+$/.test(delay) ? Number(delay) : delay, named),
    ...transitionFaults(transitions, named),
  ]);
}

function delayFaults(delay: unknown, named: Named): string[] {
  if (delay === undefined) return [];
  if (typeof delay !== 'string') return [`inline delay ${typeof delay === 'number' ? delay : ''}`.trim()];
  return delay in named.delays ? [] : [`unknown delay ${delay}`];
}

function transitionFaults(transitions: unknown, named: Named): string[] {
  return listOf(transitions)
    .filter(isConfig)
    .flatMap((transition) => [
      ...extraKeys(transition, transitionKeys),
      ...guardFaults(transition.guard, named),
      ...actionFaults(transition.actions, named),
    ]);
}

/** A guard is a name, a name with parameters, a function of its own, or `and`, `or`, `not` over other guards. */
function guardFaults(guard: unknown, named: Named): string[] {
  if (typeof guard === 'function') {
    return 'guards' in guard ? listOf(guard.guards).flatMap((inner) => guardFaults(inner, named)) : [];
  }
  return nameFaults(guard, 'guards', named);
}

/** An effect must have a name, or the case would never see it; XState's own actions (`assign`, `raise`) need none. */
function actionFaults(actions: unknown, named: Named): string[] {
  return listOf(actions).flatMap((action) => {
    if (typeof action !== 'function') return nameFaults(action, 'actions', named);
    if (!('type' in action) || !String(action.type).startsWith('xstate.')) return ['inline action'];
    return 'delay' in action ? delayFaults(action.delay, named) : [];
  });
}

function nameFaults(reference: unknown, kind: 'actions' | 'guards', named: Named): string[] {
  if (reference === undefined) return [];
  const name = isConfig(reference) ? reference.type : reference;
  const faults = isConfig(reference) ? extraKeys(reference, new Set(['type', 'params'])) : [];
  return typeof name === 'string' && name in named[kind] ? faults : [...faults, `unknown ${kind.slice(0, -1)} ${name}`];
}

/** Every state that some chain of transitions leads to, guards taken as passable. */
function reachedFrom(root: AnyStateNode): ReadonlySet<AnyStateNode> {
  const reached = new Set<AnyStateNode>();
  const entered = new Set<AnyStateNode>();

  /** A state that is on: it can take its transitions, its parent is on, and so are all regions of a parallel state. */
  function turnOn(node: AnyStateNode): void {
    if (reached.has(node)) return;
    reached.add(node);
    if (node.parent !== undefined) turnOn(node.parent);
    if (node.type === 'parallel') Object.values(node.states).forEach(enter);
    const transitions = [...[...node.transitions.values()].flat(), ...(node.always ?? [])];
    for (const { target } of transitions) target?.forEach(enter);
  }

  /** A state that is a target itself: its initial state is on too. */
  function enter(node: AnyStateNode): void {
    if (entered.has(node)) return;
    entered.add(node);
    turnOn(node);
    if (node.type === 'compound') node.initial.target.forEach(enter);
    if (node.type === 'history' && node.parent !== undefined) enter(node.parent);
  }

  enter(root);
  return reached;
}
