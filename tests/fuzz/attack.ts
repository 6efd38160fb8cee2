/** One attack: so many requests from one seed against one face, then a look at what is left. */
import { createSeal, practiceKey } from '#src/store/seal.ts';
import type { TestDatabase } from '#tests/store/databases.ts';
import { look, type Standing } from './consistent.ts';
import { diceOf } from './dice.ts';
import { faultsOf } from './judge.ts';
import { liveProbe } from './liveProbes.ts';
import { practiceProbe } from './practiceProbes.ts';
import type { Face, Probe } from './probe.ts';
import { createSender } from './send.ts';
import { openStand } from './stand.ts';

export interface Attack {
  readonly face: Face;
  readonly requests: number;
  readonly seed: number;
  /** Requests on their way at once. */
  readonly lanes: number;
}

export interface Outcome {
  /** Answers by status; `none` for HTTP that is none and gets its connection closed. */
  readonly statuses: Readonly<Record<string, number>>;
  /** At most twenty, each with the request. */
  readonly faults: readonly string[];
  readonly standing: Standing;
  readonly log: string;
}

const faultsMost = 20;

export async function attack({ face, requests, seed, lanes }: Attack, test: TestDatabase): Promise<Outcome> {
  const dice = diceOf(seed);
  const stand = await openStand(face, test, diceOf(seed + 1));
  const sender = createSender(lanes);
  const statuses: Record<string, number> = {};
  const faults: string[] = [];
  let place = 0;
  const lane = async () => {
    while (place < requests) {
      const number = place++;
      const probe = face === 'practice' ? practiceProbe(dice, number) : liveProbe(dice, number);
      if (face === 'live' && dice.chance(0.02)) stand.pass(dice.oneOf([60_000, 300_000, 3_600_000]));
      const answer = await sender.send(probe, stand.url);
      const status = String(answer.status ?? 'none');
      statuses[status] = (statuses[status] ?? 0) + 1;
      for (const fault of faultsOf(probe, answer))
        if (faults.length < faultsMost)
          faults.push(`request ${number}: ${fault}: ${described(probe)}\n  ${answer.body.slice(0, 300)}`);
    }
  };
  try {
    await Promise.all(Array.from({ length: lanes }, lane));
    sender.close();
    await stand.end();
    const { faults: left, standing } = await look(stand.database, createSeal(practiceKey));
    return { statuses, faults: [...faults, ...left], standing, log: stand.log() };
  } finally {
    await stand.close();
  }
}

function described({ method, path, headers, body, raw }: Probe): string {
  const said = (raw ?? body)?.toString('latin1').slice(0, 300) ?? '';
  return JSON.stringify({ method, path: path.slice(0, 200), headers, said });
}
