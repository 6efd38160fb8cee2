/** The names the store, the page and the saved snapshots know the machines by. */
import { expect, it } from 'vitest';
import { stateMap } from '#machines/stateMap.ts';

it('every state is named under its machine', () => {
  const { machines } = stateMap();
  expect(machines.map(({ nodes: [root] }) => root?.id)).toEqual(['dislodgement', 'paging', 'aftercare']);
  for (const { nodes } of machines) {
    const [root] = nodes;
    for (const { id } of nodes) expect(`${id}.`.startsWith(`${root?.id}.`), id).toBe(true);
  }
});
