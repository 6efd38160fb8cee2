/** Holds the proof against each wrong machine: the first rule it breaks, and the shortest path there. */
import { dislodgement } from '#machines/dislodgement/machine.ts';
import type { Tamper } from './caseRun.ts';
import type { Fault } from './faults.ts';
import { type Line, lineOf } from './outputs.ts';
import { walkProduct } from './product.ts';
import { silenceAfter } from './silence.ts';
import { walk } from './walk.ts';
import { type World, worlds } from './worlds.ts';

export interface Caught {
  readonly rule: string;
  readonly why: string;
}

/** Walks until the first violation, first without disturbances, then with one; null if the fault went unseen. */
export function caughtBy({ line, world, tamper }: Fault): Caught | null {
  const where = worlds[world ?? 0];
  if (where === undefined) throw new Error(`no world ${world}`);
  if (tamper !== undefined) return caughtByCase(where, line, tamper);
  for (const disturbances of [0, 1]) {
    const [violation] = walk({ world: where, line, disturbances, stopAtFirst: true }).violations;
    if (violation !== undefined) return violation;
  }
  return null;
}

/** By silence alone, else by whatever the other machines can hear. */
function caughtByCase(world: World, line: Line, tamper: Tamper): Caught | null {
  const { representatives } = walk({ world, line, disturbances: 0, stopAtFirst: false });
  for (const path of representatives) {
    const [why] = silenceAfter(world, path, tamper).broken;
    if (why !== undefined) return { rule: 'S10', why };
  }
  const [why] = walkProduct(world, representatives, tamper).broken;
  return why === undefined ? null : { rule: why.split(' ', 1).join(), why };
}

/** The machine as it is: while it breaks a rule itself, a fault that is caught proves nothing. */
export const soundMachine = (world: number): Fault => ({
  name: `no fault, ${worlds[world]?.name}`,
  line: lineOf(dislodgement),
  world,
});
