/** The whole proof of one world: the walk, the nights, the product, the silences and the ways to the length. */
import { dislodgement } from '#machines/dislodgement/machine.ts';
import type { FamilyFile } from '#machines/facts.ts';
import { lineOf } from './outputs.ts';
import { type Product, walkProduct } from './product.ts';
import { randomNights } from './randomNights.ts';
import type { Proven } from './report.ts';
import { silenceAfter } from './silence.ts';
import { walk } from './walk.ts';
import { everything, waysToTheLength } from './ways.ts';
import type { World } from './worlds.ts';

const notWalked: Product = { states: 0, transitions: 0, exercised: { S6: 0, S7: 0, S9: 0, S10: 0 }, broken: [] };

/** `nights` are drawn from the seed 1 on. */
export function prove(world: World, disturbances: number, nights: number): Proven {
  const begin = performance.now();
  const line = lineOf(dislodgement);
  const { representatives, ...walked } = walk({ world, line, disturbances, stopAtFirst: false });
  const plainly = world.file === null ? { name: 'a stranger', limit: 7 } : onFile(world.file);
  return {
    world: world.name,
    disturbances,
    walked,
    silences: representatives.map((path) => silenceAfter(world, path)),
    // No setting but the length of waits touches the product.
    product: world.whole ? walkProduct(world, representatives) : notWalked,
    nights: randomNights(world, line, 1, nights),
    ways: [
      { ...plainly, ...waysToTheLength(world, line, {}) },
      { name: 'a first text that says it all', limit: 4, ...waysToTheLength(world, line, everything) },
    ],
    seconds: (performance.now() - begin) / 1000,
  };
}

/** Of several children it takes one text more: which of them it is. */
function onFile({ siblings = [] }: FamilyFile): { readonly name: string; readonly limit: number } {
  return siblings.length === 0 ? { name: 'a family on file', limit: 5 } : { name: 'a family of several', limit: 6 };
}
