/** The proof's figures as the file that the protocol's sheet prints for its signer. */
import { writeFileSync } from 'node:fs';
import { machinesHash } from '#src/protocol/content.ts';
import { type Proof, proofFile, safetyRules } from '#src/protocol/proof.ts';
import { keysOf } from '#src/protocol/samples.ts';
import { exercisedBy, faultsOf, longestWaits, type Proven } from './report.ts';
import { worlds } from './worlds.ts';

/** What all worlds came to, over the machines as they are now. */
export function figuresOf(all: readonly Proven[], ranAt: Date): Proof {
  const sum = (count: (proven: Proven) => number) => all.reduce((total, proven) => total + count(proven), 0);
  const faults = all.flatMap(faultsOf);
  return {
    machines: machinesHash(),
    ranAt: ranAt.toISOString(),
    states: sum(({ walked, product }) => walked.states + product.states),
    transitions: sum(({ walked, product }) => walked.transitions + product.transitions),
    rules: Object.fromEntries(
      keysOf(safetyRules).map((id) => [
        id,
        {
          exercised: sum((proven) => exercisedBy(proven)[id] ?? 0),
          violations: faults.filter((fault) => fault.split(' ').includes(id)).length,
        },
      ]),
    ),
    longest: [
      ...longestOf(
        'at the default settings',
        all.filter(({ world }) => isDefault(world)),
      ),
      ...longestOf(
        'with every setting at an end of its bounds',
        all.filter(({ world }) => !isDefault(world)),
      ),
    ],
  };
}

const isDefault = (name: string) => worlds.some((world) => world.name === name && world.whole);

function longestOf(settings: string, some: readonly Proven[]): Proof['longest'] {
  const waits = longestWaits(some.flatMap(({ silences }) => silences));
  return waits.map(({ what, minutes }) => ({ what: `${what}, ${settings}`, minutes }));
}

/** Writes the file a clinician's sheet reads; figures of a broken proof are written too, so that the sheet shows them. */
export function writeFigures(figures: Proof): void {
  writeFileSync(proofFile, `${JSON.stringify(figures, null, 2)}\n`);
}
