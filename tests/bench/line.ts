/** The line that is measured, in this process: over any database, deciding for real or as recorded. */
import { performance } from 'node:perf_hooks';
import type { Carrier } from '#src/carrier/port.ts';
import { practiceCarrier } from '#src/carrier/practice.ts';
import { realClock } from '#src/clock.ts';
import { type Alarm, noAlarm } from '#src/line/alarm.ts';
import { noCheckpoint } from '#src/line/checkpoint.ts';
import { createLine } from '#src/line/createLine.ts';
import type { Line } from '#src/line/line.ts';
import type { Parts } from '#src/line/parts.ts';
import { createLog } from '#src/log.ts';
import { clinicOpen } from '#src/rota/clinicHours.ts';
import { alwaysOn, nurseOf, onCall } from '#src/rota/rota.ts';
import { loadSeeds } from '#src/seeds.ts';
import type { Database } from '#src/store/database.ts';
import { createSeal, practiceKey } from '#src/store/seal.ts';
import { unwatched } from '#src/watch/watch.ts';
import { noSeal, record, recorded, texts, whole } from './conversation.ts';
import { type Pace, paceOf } from './figures.ts';

const seeds = loadSeeds('seeds');
export const { protocol } = seeds;
const rota = alwaysOn(seeds.rota.nurses);

/** The whole turn, or the floor under it: the same rows with machine, reading, wording and sealing left out. */
export type Kind = 'whole' | 'floor';

export interface Around {
  readonly carrier?: Carrier;
  readonly alarm?: Alarm;
}

export function benchLine(database: Database, kind: Kind, { carrier, alarm }: Around = {}): Line {
  const decided: Pick<Parts, 'machines' | 'read' | 'readNurse' | 'word' | 'wordForNurse'> =
    kind === 'whole' ? whole : recorded(record(protocol, Date.now()));
  return createLine({
    ...decided,
    kind: 'live',
    database,
    clock: realClock,
    wallMs: Date.now,
    alarm: alarm ?? noAlarm,
    checkpoint: noCheckpoint,
    carrier: carrier ?? practiceCarrier,
    watch: unwatched,
    seal: kind === 'whole' ? createSeal(practiceKey) : noSeal,
    log: createLog({ write: () => {} }),
    protocol,
    lineNumber: '+12025550100',
    publicUrl: 'https://line.example',
    nurses: rota.nurses,
    onCall: (atMs) => onCall(rota, atMs),
    nurseOf: (number) => nurseOf(rota, number),
    rotaGaps: () => [],
    clinicOpen,
    mail: null,
  });
}

let numbered = 0;

/** An invented number that no run has used; no telephone has an area code that begins with 0. */
export function freshNumber(): string {
  numbered += 1;
  return `+1002${String(numbered).padStart(7, '0')}`;
}

/** These many phones text side by side, each one text after the other; every text is carried before it counts. */
export async function converseAll(line: Line, phones: number): Promise<Pace> {
  const tookMs: number[] = [];
  const beganMs = performance.now();
  await Promise.all(Array.from({ length: phones }, () => converse(line, tookMs)));
  await line.settle('bench');
  return paceOf(tookMs, (performance.now() - beganMs) / 1000);
}

async function converse(line: Line, tookMs: number[]): Promise<void> {
  const from = freshNumber();
  for (const [index, body] of texts.entries()) {
    const textedMs = performance.now();
    await line.hear({ from, body, id: `${from}-${index}`, cause: `${from}-${index}` });
    tookMs.push(performance.now() - textedMs);
  }
}
