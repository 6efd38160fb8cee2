/**
 * Whether a pattern can be catastrophic: a repetition that can read one string in two ways doubles the engine's work with
 * every further letter. Decided on the automaton of each unbounded repetition, by whether two different paths lead from a
 * position back to it over the same letters (Weideman et al. 2016, exponential degree of ambiguity). It counts no time.
 */
import { type Node, nodesIn, parsePattern } from '#src/reading/sieve/patternTree.ts';

/** The positions of an automaton: which letters each reads, where it can begin and end, and what can follow. */
interface Automaton {
  readonly first: readonly number[];
  readonly last: readonly number[];
  readonly empty: boolean;
}

class Positions {
  readonly letters: bigint[] = [];
  readonly follow: Set<number>[] = [];
  /** An edge that two loops add is read in two ways. */
  twice = false;

  join(from: readonly number[], to: readonly number[]): void {
    for (const before of from) {
      for (const after of to) {
        const follows = this.follow[before];
        if (follows?.has(after)) this.twice = true;
        follows?.add(after);
      }
    }
  }

  build(node: Node): Automaton {
    switch (node.is) {
      case 'letters': {
        const at = this.letters.push(node.letters) - 1;
        this.follow.push(new Set());
        return { first: [at], last: [at], empty: false };
      }
      case 'nothing':
        return { first: [], last: [], empty: true };
      case 'either': {
        const parts = node.nodes.map((part) => this.build(part));
        return {
          first: parts.flatMap(({ first }) => first),
          last: parts.flatMap(({ last }) => last),
          empty: parts.some(({ empty }) => empty),
        };
      }
      case 'row':
        return node.nodes.map((part) => this.build(part)).reduce((one, next) => this.inRow(one, next), nothing);
      case 'repeat': {
        const body = this.build(node.node);
        if (node.most === Number.POSITIVE_INFINITY) this.join(body.last, body.first);
        const empty = body.empty || node.least === 0;
        // Further rounds of a bounded repetition are further positions; a few show every ambiguity.
        const rounds = Number.isFinite(node.most) ? Math.min(node.most, 3) : 1;
        let all = { ...body, empty };
        for (let round = 1; round < rounds; round++) all = this.inRow(all, { ...this.build(node.node), empty: true });
        return all;
      }
    }
  }

  private inRow(one: Automaton, next: Automaton): Automaton {
    this.join(one.last, next.first);
    return {
      first: one.empty ? [...one.first, ...next.first] : one.first,
      last: next.empty ? [...one.last, ...next.last] : next.last,
      empty: one.empty && next.empty,
    };
  }
}

const nothing: Automaton = { first: [], last: [], empty: true };

/** Whether two different paths over the same letters leave a position and come back to it. */
function comesBackTwice({ letters, follow }: Positions): boolean {
  const count = letters.length;
  const next = (pair: number): number[] => {
    const found: number[] = [];
    for (const x of follow[Math.floor(pair / count)] ?? []) {
      for (const y of follow[pair % count] ?? []) {
        if (((letters[x] ?? 0n) & (letters[y] ?? 0n)) !== 0n) found.push(x * count + y);
      }
    }
    return found;
  };
  const into = new Map<number, number[]>();
  const seen = new Set<number>(letters.map((_, at) => at * count + at));
  for (const pair of seen) {
    for (const to of next(pair)) {
      into.set(to, [...(into.get(to) ?? []), pair]);
      seen.add(to);
    }
  }
  // Round a pair of different positions and back to one position: they are strongly connected.
  const isApart = (pair: number) => Math.floor(pair / count) !== pair % count;
  return connected([...seen], next, (pair) => into.get(pair) ?? []).some(
    (part) => part.some(isApart) && !part.every(isApart),
  );
}

/** The strongly connected parts of a graph, by two passes (Kosaraju). */
function connected(
  all: readonly number[],
  next: (at: number) => readonly number[],
  before: (at: number) => readonly number[],
): number[][] {
  const finished: number[] = [];
  walk(all, next, (at) => finished.push(at));
  const parts: number[][] = [];
  walk(finished.reverse(), before, (at, isNew) => (isNew ? parts.push([at]) : parts.at(-1)?.push(at)));
  return parts;
}

/** Depth first from each in turn; `leave` hears each position when it is left, and whether it is the first of its walk. */
function walk(
  all: readonly number[],
  next: (at: number) => readonly number[],
  leave: (at: number, isNew: boolean) => void,
): void {
  const seen = new Set<number>();
  for (const start of all) {
    if (seen.has(start)) continue;
    seen.add(start);
    let isNew = true;
    const path = [{ at: start, rest: [...next(start)] }];
    while (path.length > 0) {
      const here = path.at(-1);
      const to = here?.rest.pop();
      if (to === undefined) {
        path.pop();
        if (here) leave(here.at, isNew);
        isNew = false;
      } else if (!seen.has(to)) {
        seen.add(to);
        path.push({ at: to, rest: [...next(to)] });
      }
    }
  }
}

/** Whether some unbounded repetition of the pattern is exponentially ambiguous. What only looks around reads nothing. */
export function isCatastrophic(source: string): boolean {
  const outermost = nodesIn(parsePattern(source)).filter(
    (node) => node.is === 'repeat' && node.most === Number.POSITIVE_INFINITY && node.node.is !== 'letters',
  );
  return outermost.some((node) => {
    const positions = new Positions();
    positions.build(node);
    return positions.twice || comesBackTwice(positions);
  });
}
