/** The walk: every state of the conversation that answers, timers and a few disturbances can reach, each step judged. */
import { answersAt, disturbances, gravest, mayCome, mayMatter } from './alphabet.ts';
import { atTheStart, type Bystander, type Setting } from './bystander.ts';
import { hears } from './hears.ts';
import type { Move } from './moves.ts';
import type { Line, Snapshot, Step, Stepper } from './outputs.ts';
import { keyOf } from './projection.ts';
import { judge } from './rules.ts';
import { sees, seesGivenUp } from './sees.ts';
import { noVerdict, type RuleName, type Verdict } from './verdict.ts';
import { type World, walkAtMs } from './worlds.ts';

export interface WalkOptions {
  readonly world: World;
  readonly line: Line;
  /** At most this many disturbances on a path. */
  readonly disturbances: number;
  /** Stops at the first violation. */
  readonly stopAtFirst: boolean;
}

export interface Violation {
  readonly rule: RuleName;
  readonly why: string;
  readonly path: readonly string[];
}

export interface Walked {
  /** The shortest way to each place a case can be in, by what is asked and what stands. */
  readonly representatives: readonly (readonly Move[])[];
  readonly states: number;
  /** Ways through the states walked, counted up to so many events; the count is a floating number, as it is large. */
  readonly paths: number;
  readonly pathSteps: number;
  readonly transitions: number;
  readonly exercised: Verdict['exercised'];
  /** The shortest path to each different violation. */
  readonly violations: readonly Violation[];
}

interface Node {
  snapshot: Snapshot | null;
  bystander: Bystander;
  readonly from: number;
  readonly move: Move | null;
  readonly disturbed: number;
}

/** A step, or what it threw: a text that throws is answered by nothing the machine says. */
function stepped({ step }: Line, snapshot: Snapshot, event: Parameters<Stepper>[1]): Step | string {
  try {
    return step(snapshot, event);
  } catch (error) {
    return `${event.type} throws: ${error instanceof Error ? error.message : String(error)}`;
  }
}

const pathSteps = 20;

/** Ways of one to `pathSteps` events from the start along the edges walked. */
function countPaths(edges: readonly number[], states: number): number {
  let ending = new Float64Array(states);
  ending[0] = 1;
  let paths = 0;
  for (let step = 0; step < pathSteps; step += 1) {
    const next = new Float64Array(states);
    for (let edge = 0; edge < edges.length; edge += 2) {
      const to = edges[edge + 1] ?? 0;
      next[to] = (next[to] ?? 0) + (ending[edges[edge] ?? 0] ?? 0);
    }
    ending = next;
    paths += ending.reduce((sum, count) => sum + count, 0);
  }
  return paths;
}

/** Whether a question was left in silence: nudged, called, given to a nurse. */
function silent(snapshot: Snapshot | null): boolean {
  return snapshot !== null && /"(?:nudged|called|silent|reviewed)"/.test(JSON.stringify(snapshot.value));
}

/**
 * Silence at a question is the same chain of timers wherever it begins, and answers come as before it, so it is walked before
 * the last disturbance only. That its first timer runs is judged at every state.
 */
function waits({ event }: Move): boolean {
  return /^xstate\.after\.(?:quiet|busyQuiet|recheckCall)\./.test(event.type);
}

/** One path to each pair of what is asked and what stands, and why. */
function representatives(nodes: readonly Node[], pathTo: (index: number) => Move[]): Move[][] {
  const paths = new Map<string, Move[]>();
  for (const [index, { bystander: b }] of nodes.entries()) {
    const place = [b.open, b.clarifying, b.standing, b.standing !== null && b.standingReason].join();
    if (b.opened && !b.over && !paths.has(place)) paths.set(place, pathTo(index));
  }
  return [...paths.values()];
}

/** Breadth first, states with fewer disturbances before states with more, so that every state is met at its fewest. */
export function walk(options: WalkOptions): Walked {
  const { world, line } = options;
  const { protocol, file } = world;
  const setting: Setting = { clinical: protocol.clinical, timeZone: protocol.site.timeZone };
  const anytime = disturbances(protocol.clinical, walkAtMs);
  const anytimeInSilence = gravest(anytime);
  const verdict = noVerdict();
  const violations = new Map<string, Violation>();
  const seen = new Map<string, number>();
  const edges: number[] = [];
  const nodes: Node[] = [];
  const layers: number[][] = [[]];
  let transitions = 0;

  const add = (snapshot: Snapshot, bystander: Bystander, from: number, move: Move | null, disturbed: number) => {
    const key = keyOf(snapshot, bystander, setting, walkAtMs);
    const known = seen.get(key);
    const index = known ?? nodes.push({ snapshot, bystander, from, move, disturbed }) - 1;
    if (from >= 0) edges.push(from, index);
    if (known !== undefined) return;
    seen.set(key, index);
    layers[disturbed] ??= [];
    layers[disturbed].push(index);
  };

  const pathTo = (index: number): Move[] => {
    const moves: Move[] = [];
    for (let at = nodes[index]; at?.move != null; at = nodes[at.from]) moves.unshift(at.move);
    return moves;
  };

  const breaks = (index: number, move: Move) => {
    for (const { rule, why } of verdict.broken.splice(0)) {
      const path = () => [...pathTo(index), move].map(({ words }) => words);
      if (!violations.has(`${rule} ${why}`)) violations.set(`${rule} ${why}`, { rule, why, path: path() });
    }
  };

  const take = (index: number, node: Node, move: Move) => {
    if (node.snapshot === null) return;
    transitions += 1;
    const event = { ...move.event, at: walkAtMs, clinicOpen: move.clinicOpen };
    const step = stepped(line, node.snapshot, event);
    if (typeof step === 'string') {
      verdict.broken.push({ rule: 'S9', why: step });
      return breaks(index, move);
    }
    const { snapshot, outputs } = step;
    const before = node.bystander;
    const heard = seesGivenUp(hears(before, event, setting), event, outputs);
    const after = sees(heard, event, outputs);
    judge({ before, heard, after, event, outputs, setting }, verdict);
    breaks(index, move);
    add(snapshot, after, index, move, node.disturbed + (move.disturbs ? 1 : 0));
  };

  add(line.begin(world), atTheStart(file), -1, null, 0);
  for (let layer = 0; layer <= options.disturbances; layer += 1) {
    // A layer grows while it is walked.
    for (const index of layers[layer] ?? []) {
      const node = nodes[index];
      if (node === undefined) continue;
      const last = layer === options.disturbances;
      const moves = answersAt(node.bystander, protocol.clinical, walkAtMs).filter(
        (move) => !(last && layer > 0 && waits(move)),
      );
      if (!last)
        moves.push(
          ...(silent(node.snapshot) ? anytimeInSilence : anytime).filter(
            (move) => mayMatter(move, world, node.bystander) && mayCome(move, node.bystander),
          ),
        );
      for (const move of moves) take(index, node, move);
      node.snapshot = null;
      if (options.stopAtFirst && violations.size > 0) break;
    }
  }
  return {
    representatives: representatives(nodes, pathTo),
    states: nodes.length,
    paths: countPaths(edges, nodes.length),
    pathSteps,
    transitions,
    exercised: verdict.exercised,
    violations: [...violations.values()],
  };
}
