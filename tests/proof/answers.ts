/** The classes of answers to each question, with both sides of every boundary of the protocol at hand. */
import type { DateRange, PhReading, QuestionKey } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import type { Bystander } from './bystander.ts';
import { type Move, says, tells } from './moves.ts';

const dayMs = 86_400_000;
export type Asked = (setting: Clinical, atMs: number, b: Bystander) => Move[];

/** A first placement this many days before the day of `atMs`, which the walk keeps away from midnight. */
export function daysAgo(days: number, atMs: number): DateRange {
  const date = new Date(atMs - days * dayMs).toISOString().slice(0, 10);
  return { earliest: date, latest: date };
}

const unique = (numbers: readonly number[]) => [...new Set(numbers)].filter((number) => number >= 0);

function firstPlaced(clinical: Clinical, atMs: number): Move[] {
  const { noInsertionUnderDays: none, cautiousUnderDays: cautious, tractUsableAfterDays: usable } = clinical;
  const ages = unique([none - 1, none, cautious - 1, cautious, usable, usable + 1]);
  const across: DateRange = { earliest: null, latest: daysAgo(usable, atMs).latest };
  return [
    ...ages.map((age) => says('first-placed', daysAgo(age, atMs))),
    says('first-placed', across),
    says('first-placed', 'unknown'),
  ];
}

/** Weights on both sides of 3 kg, of 6.6139 lb and of the 6 kg of fever; told with and without a unit. */
function weight(_clinical: Clinical, _atMs: number, b: Bystander): Move[] {
  if (b.clarifying === 'doubt') return doubted(b);
  if (b.clarifying === 'unit') return [says('weight', { unit: 'kg' }), says('weight', { unit: 'lb' })];
  return [
    // The longest length first: a state met again while the tube is in keeps the first.
    ...[3.01, 7, 3, 2.99].map((kg) => says('weight', { kg })),
    ...[2.99, 3, 6.61, 6.62, 100].map((number) => says('weight', { bare: number })),
    says('weight', { kg: 500 }),
    says('weight', 'unknown'),
  ];
}

/** The same number again in each way, another that fits, others in doubt as well, and no number. */
function doubted({ weight: told }: Bystander): Move[] {
  const number = told === null || told === 'unknown' ? 0 : 'kg' in told ? told.kg : (told.bare ?? 0);
  return [
    says('weight', 'as-told'),
    says('weight', { kg: number }),
    says('weight', { bare: number }),
    ...[7, 2.9, 60, 500].map((kg) => says('weight', { kg })),
    ...[5, 120].map((bare) => says('weight', { bare })),
    says('weight', 'unknown'),
  ];
}

/** Both sides of the limit, of the after-feed value and of the strip's top; a range across, and no reading at all. */
export function readings({ phLimit, phStripStep: step, phStripTop: top, phAfterFeed }: Clinical): PhReading[] {
  const one = (ph: number): PhReading => ({ low: ph, high: ph });
  const tops = phAfterFeed === 'off' ? [] : [phAfterFeed, phAfterFeed + 0.1];
  const edges = unique([phLimit - step, phLimit - 0.01, phLimit, ...tops, top - step, top]);
  return [...edges.map(one), { low: phLimit - step, high: phLimit }, one(14.5)];
}

/** Whether the clinic is open matters only where a second reading may be high. */
function ph(clinical: Clinical, _atMs: number, b: Bystander): Move[] {
  const hours = b.tube?.recheck === 'due' ? [false, true] : [false];
  return hours.flatMap((open) => readings(clinical).map((reading) => says('ph', reading, open)));
}

function cameOut({ outTooLongHours }: Clinical, atMs: number): Move[] {
  const limitMs = atMs - outTooLongHours * 3_600_000;
  return [...[atMs - 1_200_000, limitMs, limitMs - 1].map((ms) => says('came-out', ms)), says('came-out', 'unknown')];
}

const inserted = (key: 'tube-in' | 'own-tube-in') => (): Move[] =>
  (['easy', 'hard', 'no', 'in'] as const).map((how) => says(key, how));
const yesOrNo = (key: 'unwell' | 'confirm' | 'after-in' | 'strips' | 'contents') => (): Move[] => [
  says(key, 'yes'),
  says(key, 'no'),
];
const yesNoUnknown = (key: 'fed-lately' | 'looks') => (): Move[] =>
  (['yes', 'no', 'unknown'] as const).map((value) => says(key, value));

export const answerClasses: Partial<Record<QuestionKey, Asked>> = {
  unwell: yesOrNo('unwell'),
  who: () => (['joins', 'none', 'unknown'] as const).map((value) => says('who', value)),
  'which-child': () => [
    ...[0, 1].map((child) => ({ ...tells({ children: [child] }), disturbs: false })),
    says('which-child', 'none'),
  ],
  confirm: yesOrNo('confirm'),
  'tube-kind': () => (['g', 'gj', 'j', 'half-out', 'unknown', 'nose'] as const).map((kind) => says('tube-kind', kind)),
  'first-placed': firstPlaced,
  'own-tube': () => (['yes', 'burst', 'long-inside', 'no', 'unknown'] as const).map((own) => says('own-tube', own)),
  'own-tube-in': inserted('own-tube-in'),
  kit: () => (['yes', 'no', 'not-shown'] as const).map((kit) => says('kit', kit)),
  weight,
  'tube-in': inserted('tube-in'),
  'came-out': cameOut,
  'after-in': yesOrNo('after-in'),
  strips: yesOrNo('strips'),
  contents: yesOrNo('contents'),
  ph,
  'fed-lately': yesNoUnknown('fed-lately'),
  looks: yesNoUnknown('looks'),
  secured: () => (['yes', 'no', 'part'] as const).map((value) => says('secured', value)),
};
