/** What one world of the proof came to, as plain data that a worker can hand over, and as lines to read. */
import type { Product } from './product.ts';
import type { Nights } from './randomNights.ts';
import type { Silence } from './silence.ts';
import type { Walked } from './walk.ts';
import type { Ways } from './ways.ts';

export interface Proven {
  readonly world: string;
  readonly disturbances: number;
  readonly walked: Omit<Walked, 'representatives'>;
  readonly silences: readonly Silence[];
  readonly product: Product;
  readonly nights: Nights;
  readonly ways: readonly (Ways & { readonly name: string; readonly limit: number })[];
  readonly seconds: number;
}

/** Everything that speaks against the machines, in plain words; empty where the proof holds. */
export function faultsOf({ walked, silences, product, nights, ways }: Proven): string[] {
  return [
    ...walked.violations.map(({ rule, why, path }) => `${rule} ${why}\n    ${path.join(' > ')}`),
    ...nights.violations.map(({ rule, why, path, seed }) => `${rule} ${why} (night ${seed})\n    ${path.join(' > ')}`),
    ...new Set(silences.flatMap(({ broken }) => broken.map((why) => `S7 S10 ${why}`))),
    ...product.broken,
    ...ways.flatMap(({ name, mostTexts, limit, broken }) => [
      ...(mostTexts > limit ? [`S11 ${name}: ${mostTexts} texts before the length, not ${limit}`] : []),
      ...broken.map((why) => `S11 ${why}`),
    ]),
  ];
}

/** How often each rule was exercised, over all that was walked. */
export function exercisedBy({ walked, nights, product, silences, ways }: Proven): Record<string, number> {
  const counts: Record<string, number> = { ...walked.exercised };
  for (const [rule, count] of Object.entries(nights.exercised)) counts[rule] = (counts[rule] ?? 0) + count;
  for (const [rule, count] of Object.entries(product.exercised)) counts[rule] = (counts[rule] ?? 0) + count;
  counts.S7 = (counts.S7 ?? 0) + silences.length;
  counts.S11 = ways.reduce((sum, { questions }) => sum + questions, 0);
  return counts;
}

const inUse = ({ asking }: Silence) => asking === 'use' || asking === 'own-tube';

type Time = (silence: Silence) => number | null;

/** The waits a clinician asks about. */
const waits: readonly { readonly what: string; readonly time: Time }[] = [
  {
    what: 'from a text nobody follows up to a nurse called',
    time: (silence) => (inUse(silence) ? null : silence.toNurseMs),
  },
  {
    what: 'the same with a tube in use, where the first feed is asked about',
    time: (silence) => (inUse(silence) ? silence.toNurseMs : null),
  },
  { what: 'from a call nobody takes to the family told what to do', time: ({ toFamilyMs }) => toFamilyMs },
  { what: 'between two calls while nobody takes it', time: ({ longestPauseMs }) => longestPauseMs },
];

export interface LongestWait {
  readonly what: string;
  readonly minutes: number;
  /** What was open there. */
  readonly asking: string;
}

/** The longest of each wait over all silences. */
export function longestWaits(silences: readonly Silence[]): LongestWait[] {
  return waits.map(({ what, time }) => {
    const all = silences.map((silence) => ({ ms: time(silence) ?? 0, asking: silence.asking }));
    const most = all.reduce((a, b) => (b.ms > a.ms ? b : a), { ms: 0, asking: 'nothing' });
    return { what, minutes: Math.round(most.ms / 60_000), asking: most.asking };
  });
}

/** The lines of one world. */
export function lines(proven: Proven): string[] {
  const { world, disturbances, walked, silences, product, nights, ways, seconds } = proven;
  const count = (n: number) => n.toLocaleString('en');
  return [
    `${world} (${seconds.toFixed(0)} s)`,
    `  conversation: ${count(walked.states)} states, ${count(walked.transitions)} transitions, with at most ${disturbances} disturbance(s) on a path`,
    `  paths: ${walked.paths.toExponential(1)} ways through it of up to ${walked.pathSteps} events`,
    `  random: ${count(nights.nights)} nights of ${count(nights.steps)} events, disturbances without bound, on a clock that runs`,
    ...(product.states > 0
      ? [
          `  product with paging and aftercare: ${count(product.states)} states, ${count(product.transitions)} transitions`,
        ]
      : []),
    ...ways.map(
      ({ name, mostTexts, limit, ways: n }) =>
        `  ${name}: at most ${mostTexts} texts before the length (${limit} allowed), ${n} ways`,
    ),
    `  silence from ${silences.length} places; the longest times:`,
    ...longestWaits(silences).map(({ what, minutes, asking }) => `    ${what}: ${minutes} min (${asking})`),
  ];
}
