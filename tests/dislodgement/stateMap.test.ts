/** The state map is drawn from the machines, so it can only be wrong by leaving something out. */
import { expect, it } from 'vitest';
import { questionKeys } from '#machines/facts.ts';
import { stateMap } from '#machines/stateMap.ts';

it('shows every question the line asks, and joins only states that exist', () => {
  const { machines } = stateMap();
  const asked = new Set(machines.flatMap(({ nodes }) => nodes.flatMap(({ asking }) => asking ?? [])));
  expect(asked).toEqual(new Set(questionKeys));
  for (const { nodes, edges } of machines) {
    const ids = new Set(nodes.map(({ id }) => id));
    expect(edges.length).toBeGreaterThan(0);
    expect(edges.filter(({ from, to }) => !ids.has(from) || !ids.has(to))).toEqual([]);
  }
});
