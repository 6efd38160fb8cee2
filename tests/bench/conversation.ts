/** The conversation that is measured, once for real and once recorded, so that the floor writes the same rows. */
import { type CaseSnapshots, type CaseStep, openCase, stepCase, viewCase } from '#machines/case.ts';
import type { Stamp } from '#machines/events.ts';
import type { Protocol } from '#machines/protocol/settings.ts';
import type { Machines, Parts } from '#src/line/parts.ts';
import { readNurse } from '#src/reading/nurse.ts';
import { type Reading, read } from '#src/reading/read.ts';
import type { Seal } from '#src/store/seal.ts';
import { word, wordForNurse } from '#src/wording/word.ts';

/** A stranger's way from the first text to the length and on to a recheck, in plain words. Invented. */
export const texts = [
  'my daughters feeding tube fell out 20 minutes ago',
  'no shes fine',
  'its a g tube',
  'about two years ago',
  'no the dog got it',
  'yes and i was shown how',
  '7.4 kg',
  'slid right in',
  'no none of that',
  'yes we have strips',
  'got some',
  '6.5',
  'no',
] as const;

/** Machine, reading and wording as they are. */
export const whole: Pick<Parts, 'machines' | 'read' | 'readNurse' | 'word' | 'wordForNurse'> = {
  machines: { openCase, stepCase, viewCase },
  read,
  readNurse,
  word,
  wordForNurse,
};

export interface Turned {
  readonly reading: Reading;
  readonly step: CaseStep;
}

/** One text read against the open question and given to the case, as a turn does; null begins a case. */
export function answer(protocol: Protocol, before: CaseSnapshots | null, text: string, atMs: number): Turned {
  const stamp: Stamp = { at: atMs, clinicOpen: false };
  const snapshots = before ?? openCase(protocol, null, atMs);
  const view = viewCase(protocol, snapshots);
  const reading = read(text, {
    asking: view.asking,
    clarifying: view.clarifying,
    bareWeight: view.bareWeight,
    answered: view.answered,
    caseOpen: before !== null,
    tubeIn: view.tubeIn !== null,
    nowMs: atMs,
    timeZone: protocol.site.timeZone,
    language: 'en',
  });
  const step = stepCase(protocol, snapshots, { machine: 'conversation', event: { ...reading.event, ...stamp } });
  return { reading, step };
}

/** Plays the conversation once on the machines alone and keeps what each turn decided. */
export function record(protocol: Protocol, atMs: number): Turned[] {
  let snapshots: CaseSnapshots | null = null;
  return texts.map((text) => {
    const turned = answer(protocol, snapshots, text, atMs);
    snapshots = turned.step.snapshots;
    return turned;
  });
}

/** The same turns with nothing decided, read or worded: each returns what was recorded. The turn's number rides in the snapshot. */
export function recorded(
  turns: readonly Turned[],
): Pick<Parts, 'machines' | 'read' | 'word' | 'wordForNurse' | 'readNurse'> {
  const [first] = turns;
  if (first === undefined) throw new Error('nothing was recorded');
  const numbered = (snapshots: CaseSnapshots, turn: number): CaseSnapshots => ({ ...snapshots, ...{ turn } });
  const turnOf = (snapshots: CaseSnapshots): number => ('turn' in snapshots ? Number(snapshots.turn) : 0);
  const at = (turn: number): Turned => turns[turn] ?? first;
  const machines: Machines = {
    openCase: () => numbered(first.step.snapshots, 0),
    stepCase: (_, snapshots) => {
      const turn = turnOf(snapshots);
      const { step } = at(turn);
      return { ...step, snapshots: numbered(step.snapshots, turn + 1) };
    },
    viewCase: () => first.step.view,
  };
  return {
    machines,
    read: () => first.reading,
    readNurse: () => ({ word: 'other' }),
    word: () => fixed,
    wordForNurse: () => fixed,
  };
}

/** As long as the line's texts are in the middle. */
const fixed = 'x'.repeat(170);

/** Seals nothing, finds by the number itself. */
export const noSeal: Seal = {
  seal: (text) => Buffer.from(text),
  open: (sealed) => sealed.toString(),
  sealBytes: (bytes) => bytes,
  openBytes: (sealed) => sealed,
  finder: (number) => Buffer.from(number),
  finders: (number) => [Buffer.from(number)],
  keyId: Buffer.alloc(4),
};
