/** The state map: every machine as nodes and edges, drawn from the machines themselves for the practice page and the sheet. */
import { aftercare } from './aftercare/machine.ts';
import { dislodgement } from './dislodgement/machine.ts';
import type { MachineName } from './effects.ts';
import type { QuestionKey } from './facts.ts';
import { paging } from './paging/machine.ts';

/** As much of XState's state node as the map is drawn from, whichever machine it belongs to. */
interface StateNode {
  readonly id: string;
  readonly key: string;
  readonly parent?: { readonly id: string } | undefined;
  readonly meta?: { readonly asking?: QuestionKey } | undefined;
  readonly states: Readonly<Record<string, StateNode>>;
  readonly transitions: ReadonlyMap<string, readonly Transition[]>;
  readonly always?: readonly Transition[] | undefined;
}

interface Transition {
  readonly eventType: string;
  readonly target: readonly { readonly id: string }[] | undefined;
}

export interface MapNode {
  readonly id: string;
  readonly parent: string | null;
  readonly label: string;
  /** The question this state asks, if it asks one. */
  readonly asking: QuestionKey | null;
}

export interface MapEdge {
  readonly from: string;
  readonly to: string;
  /** The event, or "always" for a decision. */
  readonly label: string;
}

export interface MachineMap {
  readonly name: MachineName;
  readonly nodes: readonly MapNode[];
  readonly edges: readonly MapEdge[];
}

/** All three machines of a case. The same for every case: it can be made once and kept. */
export function stateMap(): { readonly machines: readonly MachineMap[] } {
  return {
    machines: [
      mapOf('conversation', dislodgement.root),
      mapOf('paging', paging.root),
      mapOf('aftercare', aftercare.root),
    ],
  };
}

function mapOf(name: MachineName, root: StateNode): MachineMap {
  const nodes = descendants(root);
  return { name, nodes: nodes.map(nodeOf), edges: distinct(nodes.flatMap(edgesOf)) };
}

function descendants(node: StateNode): StateNode[] {
  return [node, ...Object.values(node.states).flatMap(descendants)];
}

function nodeOf(node: StateNode): MapNode {
  return { id: node.id, parent: node.parent?.id ?? null, label: node.key, asking: node.meta?.asking ?? null };
}

function edgesOf(node: StateNode): MapEdge[] {
  const moves = [...node.transitions.values()].flat();
  const decisions = node.always ?? [];
  return [...moves, ...decisions].flatMap((transition) =>
    (transition.target ?? []).map((target) => ({
      from: node.id,
      to: target.id,
      label: transition.eventType === '' ? 'always' : plainEvent(transition.eventType),
    })),
  );
}

/** `xstate.after.quiet.dislodgement.placement.ph` reads as "after quiet". */
function plainEvent(eventType: string): string {
  const delay = /xstate\.after\.([^.]+)\./.exec(eventType)?.[1];
  return delay === undefined ? eventType : `after ${delay}`;
}

function distinct(edges: readonly MapEdge[]): MapEdge[] {
  return [...new Map(edges.map((edge) => [JSON.stringify(edge), edge])).values()];
}
