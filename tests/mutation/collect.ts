/**
 * Stands in for vitest in a mutation run: takes in the tests of the files that are loaded, and keeps vitest's own `expect`.
 * Starting vitest costs a fifth of a second, and every mutant would pay it.
 */
export { expect } from 'vitest';

type Body = (...args: readonly unknown[]) => unknown;

export interface Collected {
  readonly name: string;
  readonly run: () => unknown;
}

let collected: Collected[] = [];
let groups: readonly string[] = [];

/** The tests taken in since the last call, in the order they stand. */
export function takeCollected(): readonly Collected[] {
  const taken = collected;
  collected = [];
  return taken;
}

/** Two tests of one name are told apart by their place. */
export const it = withEach((name, run) => {
  collected.push({ name: `${[...groups, name].join(' ')} (${collected.length})`, run });
});

export const describe = withEach((name, run) => {
  groups = [...groups, name];
  run();
  groups = groups.slice(0, -1);
});

function withEach(take: (name: string, run: () => unknown) => void) {
  const each = (rows: readonly unknown[]) => (name: string, body: Body) => {
    for (const row of rows) take(name, () => (Array.isArray(row) ? body(...row) : body(row)));
  };
  return Object.assign(take, { each });
}
