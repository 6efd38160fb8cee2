/** The state map is drawn from the machines, so it can only be wrong by leaving something out. */
import { describe, expect, it } from 'vitest';
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

describe('as it is drawn', () => {
  const [conversation, paging] = stateMap().machines;

  it('each state is under its parent, with the question it asks', () => {
    expect(conversation?.nodes.slice(0, 2)).toEqual([
      { id: 'dislodgement', parent: null, label: 'dislodgement', asking: null },
      { id: 'dislodgement.firstText', parent: 'dislodgement', label: 'firstText', asking: null },
    ]);
    expect(conversation?.nodes).toContainEqual({
      id: 'dislodgement.placement.ph',
      parent: 'dislodgement.placement',
      label: 'ph',
      asking: 'ph',
    });
  });

  it('an edge is labelled by its event, its delay, or as a decision, and stands once', () => {
    const edge = (from: string, to: string, label: string) => ({
      from: `dislodgement.${from}`,
      to: `dislodgement.${to}`,
      label,
    });
    expect(conversation?.edges).toEqual(
      expect.arrayContaining([
        edge('firstText', 'safety.emergency', 'answer.unwell'),
        edge('placement.ph.open', 'placement.ph.nudged', 'after busyQuiet'),
        edge('deciding.which', 'safety.emergency.still', 'always'),
      ]),
    );
    const drawn = conversation?.edges.map((one) => JSON.stringify(one)) ?? [];
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it('the other machines are named', () => {
    expect(stateMap().machines.map(({ name }) => name)).toEqual(['conversation', 'paging', 'aftercare']);
    expect(paging?.nodes[0]?.id).toBe('paging');
  });
});
