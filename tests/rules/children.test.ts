/** The children of one family: which there are to choose from, and in which order. */
import { expect, it } from 'vitest';
import type { FamilyFile } from '#machines/facts.ts';
import { severalChildren } from '#machines/rules/children.ts';

const child = (name: string | null): FamilyFile => ({
  child: name,
  born: null,
  tubeKind: 'g',
  firstPlaced: null,
  weightKg: null,
  weighedOn: null,
});
const names = (first: string | null, ...others: (string | null)[]) =>
  severalChildren({ ...child(first), siblings: others.map(child) }).map((one) => one.child);

it('are none to choose from where there is one', () => {
  expect(severalChildren(child('Wren'))).toEqual([]);
  expect(severalChildren({ ...child('Wren'), siblings: [] })).toEqual([]);
});

it('stand in the order of their names, each with its own file and no others within', () => {
  expect(names('Wren', 'Leo')).toEqual(['Leo', 'Wren']);
  expect(names('Ada', 'Leo')).toEqual(['Ada', 'Leo']);
  expect(names('Leo', 'Wren', 'Ada')).toEqual(['Ada', 'Leo', 'Wren']);
  expect(severalChildren({ ...child('Wren'), siblings: [child('Leo')] })).toEqual([child('Leo'), child('Wren')]);
});

it('leave out a first child that has no name', () => {
  expect(names(null, 'Wren', 'Leo')).toEqual(['Leo', 'Wren']);
});

it('keep their order where two have one name', () => {
  const [one, other] = [
    { ...child('Leo'), weightKg: 5 },
    { ...child('Leo'), weightKg: 6 },
  ];
  expect(severalChildren({ ...one, siblings: [other] })).toEqual([one, other]);
});
