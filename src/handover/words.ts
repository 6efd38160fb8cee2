/** A handed-over case in words: how pressing it is, what it is, what is to be done, and what to watch for. */
import type { DateRange, Disposition } from '#machines/facts.ts';
import type { HandedCase, Severity } from './handover.ts';
import type { LocalTime } from './sheet.ts';

export const severityWords: Readonly<Record<Severity, string>> = {
  now: 'Needs somebody now',
  watch: 'To be watched',
  settled: 'Settled for now',
};

const kinds = {
  g: 'G tube',
  gj: 'GJ tube',
  j: 'J tube',
  'half-out': 'tube half out',
  unknown: 'kind of tube unknown',
  nose: 'nose tube',
};

const told: Readonly<Record<Disposition, string>> = {
  emergency: 'told to call the emergency number',
  'go-in': 'told to go to the emergency department, nothing through the tube',
  hold: 'on hold: nothing through the tube until a nurse says so',
  recheck: 'waits for the second reading, nothing through the tube',
  use: 'may use the temporary tube',
  'own-tube': 'may use its own tube',
  nurse: 'waits for a person',
};

/** If this, then that: cautious, and the same the family was told. Common practice, no source. */
const contingencies: Readonly<Record<Disposition, string>> = {
  emergency: 'If nobody has seen the child yet: ring the family now, and the emergency number if they do not answer.',
  'go-in': 'If they have not arrived: ring them. If they cannot come, or the child gets worse: the emergency number.',
  hold: 'If pain, fresh blood, a tight belly, vomiting or fever comes: send in. Where the tube lies is for a clinician to settle before anything goes through it.',
  recheck:
    'If the second reading is high too, or none can be taken: nothing goes through the tube and the child is seen.',
  use: 'If pain, fresh blood, a tight belly, vomiting or fever comes with the tube in use: stop feeding and send in. If it comes out again: it is a new case.',
  'own-tube':
    'If pain, fresh blood, a tight belly, vomiting or fever comes with the tube in use: stop feeding and send in. If it comes out again: it is a new case.',
  nurse: 'If the family cannot be reached: keep ringing, then do as your rules say for a child who cannot be reached.',
};

/** Patient summary. `atMs` is the time of the handover. */
export function summaryOf({ view, undelivered }: HandedCase, atMs: number): string {
  if (view === null)
    return 'The line had a fault in this case and gives the family no guidance. It is a person’s from there on.';
  const { tubeKind, firstPlaced, weightKg, ph, cameOutAt, insertedHow } = view.facts;
  const hoursOut = cameOutAt === undefined ? null : (atMs - Date.parse(cameOutAt)) / 3_600_000;
  return sentence([
    tubeKind === undefined ? 'Kind of tube unknown' : kinds[tubeKind],
    firstPlaced === undefined ? 'first placement unknown' : `first placed ${rangeWords(firstPlaced)}`,
    weightKg === undefined ? null : `${weightKg} kg`,
    hoursOut === null ? null : `came out ${hoursOut.toFixed(1)} h ago`,
    view.inside === 'in-place'
      ? 'never came out'
      : view.tubeIn === null
        ? 'nothing in'
        : `${view.tubeIn} tube in${insertedHow === 'hard' ? ', went in hard' : ''}`,
    ph === undefined ? 'no reading' : `pH ${ph}`,
    view.disposition === null ? 'still being asked' : told[view.disposition],
    view.takenBy === null ? 'no nurse has it' : `${view.takenBy} has it`,
    view.cannotWait === null ? null : `cannot wait: ${view.cannotWait}`,
    undelivered === 0 ? null : `${undelivered} of our texts may not have reached them`,
  ]);
}

/** Action list. */
export function actionsOf(one: HandedCase, local: LocalTime): readonly string[] {
  const { unanswered, due, view, undelivered } = one;
  const next = due.filter(({ what }) => what !== 'silence');
  return [
    ...(unanswered === null
      ? []
      : [
          `Ring the family: ${unanswered.level} page unanswered since ${local(unanswered.sinceMs)}, calls so far: ${unanswered.calls}`,
        ]),
    ...(view === null ? ['Ring the family and take the case over'] : []),
    ...(view?.clearable ? ['Clear it or send in: a hard insertion whose reading passed'] : []),
    ...(undelivered > 0 ? ['Ring the family: texts may not have reached them'] : []),
    ...next.map(({ what, atMs }) => `${dueWords[what] ?? what}: ${local(atMs)}, by the line`),
    ...(view?.disposition === 'use' ? ['Clinic: a day for the lasting tube'] : []),
  ];
}

const dueWords: Readonly<Record<string, string>> = {
  recheck: 'Second reading due',
  page: 'Next page',
  aftercare: 'Next check-up text',
};

/** Situation awareness and contingency. */
export function contingencyOf({ view }: HandedCase): string {
  if (view === null) return contingencies.nurse;
  if (view.disposition === null)
    return 'If they stop answering: the line reminds them once, then pages. Danger signs at any time: the emergency number.';
  return contingencies[view.disposition];
}

function rangeWords({ earliest, latest }: DateRange): string {
  if (earliest === null) return `${latest} or before`;
  return earliest === latest ? latest : `${earliest} to ${latest}`;
}

function sentence(parts: readonly (string | null)[]): string {
  return `${parts.filter((part) => part !== null).join('; ')}.`;
}
