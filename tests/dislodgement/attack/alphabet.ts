/** Everything a night can bring, drawn at random: answers of every class, corrections, signs, silence, nurses. */
import type { NurseFacts, TextEvent, Unstamped } from '#machines/events.ts';
import {
  type Answers,
  type FamilyFile,
  type QuestionKey,
  questionKeys,
  signs,
  type Told,
  tubeKinds,
} from '#machines/facts.ts';
import { daysBefore, startMs } from '../night.ts';

/** A number from 0 to below 1; the same seed gives the same row. Mulberry32, a public-domain generator. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** One thing that happens. */
export type Happening =
  | { readonly type: 'text'; readonly event: Unstamped<TextEvent> }
  | { readonly type: 'wait'; readonly minutes: number }
  | { readonly type: 'clinic'; readonly open: boolean }
  | { readonly type: 'take' | 'clear' | 'close' | 'sendIn' | 'pass' }
  | { readonly type: 'corrects'; readonly told: NurseFacts };

export class Dice {
  readonly #next: () => number;

  constructor(seed: number) {
    this.#next = seeded(seed);
  }

  /** True this often, 0 to 1. */
  chance(share: number): boolean {
    return this.#next() < share;
  }

  pick<T>(values: readonly T[]): T {
    const value = values[Math.floor(this.#next() * values.length)];
    if (value === undefined) throw new Error('nothing to pick from');
    return value;
  }
}

const hourMs = 3_600_000;
const ages = [400, 57, 56, 28, 27, 14, 13, 0].map(daysBefore);
const weights = [
  { kg: 9 },
  { kg: 2.99 },
  { kg: 3 },
  { kg: 3.01 },
  { bare: 2.9 },
  { bare: 5 },
  { bare: 6.6139 },
  { bare: 9 },
  'unknown',
] as const;
const readings = [
  [4, 4],
  [5.5, 5.5],
  [5, 6],
  [5.6, 5.6],
  [6, 6],
  [6.5, 6.5],
  [7, 7],
  [7.1, 7.1],
  [9, 9],
  [15, 15],
] as const;
const cameOut = [20 * 60_000, 3 * hourMs, 5 * hourMs].map((agoMs) => startMs - agoMs);
const yesNo = ['yes', 'no'] as const;
const yesNoUnknown = ['yes', 'no', 'unknown'] as const;
const inserted = ['easy', 'hard', 'no', 'in'] as const;

/** The classes each question's answers fall into; the first is the one that goes on. */
export const values: { readonly [K in QuestionKey]: readonly Answers[K][] } = {
  unwell: ['no', 'yes'],
  who: ['joins', 'none', 'unknown'],
  'which-child': ['none'],
  confirm: yesNo,
  'tube-kind': tubeKinds,
  'first-placed': [...ages, 'unknown'],
  'own-tube': ['no', 'yes', 'burst', 'long-inside', 'unknown'],
  'own-tube-in': inserted,
  kit: ['yes', 'no', 'not-shown'],
  weight: [...weights, { unit: 'kg' }, { unit: 'lb' }, 'as-told'],
  'tube-in': inserted,
  'came-out': [...cameOut, 'unknown'],
  'after-in': ['no', 'yes'],
  strips: yesNo,
  contents: yesNo,
  ph: readings.map(([low, high]) => ({ low, high })),
  'fed-lately': yesNoUnknown,
  looks: yesNoUnknown,
  secured: ['yes', 'no', 'part'],
  'first-feed': ['yes', 'no', 'later'],
  'next-day': yesNo,
  arrived: yesNo,
  clinic: yesNo,
};

function drawTold(dice: Dice): Told {
  return dice.pick<Told>([
    { tubeKind: dice.pick(tubeKinds) },
    { firstPlaced: dice.pick([...ages, 'unknown'] as const) },
    { weight: dice.pick(weights) },
    { cameOutAtMs: dice.pick(cameOut) },
    { ownTube: dice.pick(['yes', 'burst', 'long-inside', 'no', 'unknown'] as const) },
    { kit: dice.pick(['yes', 'no', 'not-shown'] as const) },
    { insertedHow: dice.pick(['easy', 'hard'] as const) },
    { strips: dice.pick(yesNo) },
    { latexAllergy: true },
    { born: dice.pick(ages) },
    {},
  ]);
}

function drawBeside(dice: Dice) {
  return {
    told: dice.chance(0.1) ? drawTold(dice) : {},
    person: dice.chance(0.03),
    corrects: dice.chance(0.1),
  };
}

const nothingBeside = { told: {}, person: false, corrects: false };

/** Four answers of five go on, so that walks reach the far end. */
function drawAnswer(dice: Dice, asking: QuestionKey): Unstamped<TextEvent> {
  const ahead = dice.chance(0.8);
  const value: unknown = ahead ? values[asking][0] : dice.pick<unknown>(values[asking]);
  const pair = { type: `answer.${asking}`, value, ...(ahead ? nothingBeside : drawBeside(dice)) };
  // Key and value belong together by the table above; the union of all pairs cannot be built from it without help.
  return pair as unknown as Unstamped<TextEvent>;
}

const plain = ['outAgain', 'tubeProblem', 'person', 'media', 'smallTalk', 'unknownDevice'] as const;

function drawOther(dice: Dice): Unstamped<TextEvent> {
  const beside = drawBeside(dice);
  return dice.pick<() => Unstamped<TextEvent>>([
    () => ({ ...beside, type: dice.pick(plain) }),
    () => ({ ...beside, type: 'told', told: drawTold(dice), corrects: dice.chance(0.5) }),
    () => ({ ...beside, type: 'told', told: drawTold(dice), corrects: dice.chance(0.5) }),
    // Beside these three nothing else is read; a reading is told unasked only to correct one.
    () => ({ ...nothingBeside, type: dice.pick(['stop', 'help'] as const) }),
    () => ({ ...nothingBeside, type: 'correct', key: dice.pick([...questionKeys, null]), corrects: true }),
    () => ({ ...nothingBeside, type: 'correct', key: dice.pick([...questionKeys, null]), corrects: true }),
    () => ({ ...nothingBeside, type: 'told', told: { ph: dice.pick(values.ph) }, corrects: true }),
    () => ({ ...beside, type: 'unclear', why: 'unreadable' }),
    () => ({ ...beside, type: 'unclear', why: 'unreadable' }),
    () => ({ ...beside, type: 'repeat', step: dice.pick([1, 2, 3, null] as const) }),
    () => ({ ...beside, type: 'cannotWait', what: 'the night medicine' }),
    () => ({ ...beside, type: 'signs', sure: [dice.pick(signs)], near: [] }),
    () => ({ ...beside, type: 'signs', sure: [], near: [dice.pick(signs)] }),
  ])();
}

/** The next thing to happen to a case that asks this; the first is always a text about a tube. */
export function drawHappening(dice: Dice, asking: QuestionKey | null): Happening {
  if (asking !== null && dice.chance(0.8)) return { type: 'text', event: drawAnswer(dice, asking) };
  if (dice.chance(0.55)) return { type: 'text', event: drawOther(dice) };
  if (dice.chance(0.6)) return { type: 'wait', minutes: dice.pick([1, 5, 10, 15, 30, 60, 60, 61, 181, 1_441]) };
  if (dice.chance(0.3)) return { type: 'clinic', open: dice.chance(0.5) };
  return drawNursesWord(dice);
}

function drawNursesWord(dice: Dice): Happening {
  if (dice.chance(0.05)) return { type: 'close' };
  if (dice.chance(0.1)) return { type: 'sendIn' };
  if (dice.chance(0.3)) return { type: 'corrects', told: drawCorrection(dice) };
  return { type: dice.pick(['take', 'clear', 'clear', 'pass'] as const) };
}

function drawCorrection(dice: Dice): NurseFacts {
  return dice.pick<NurseFacts>([
    { tubeKind: dice.pick(['g', 'gj', 'j'] as const) },
    { firstPlaced: dice.pick(ages) },
    { weight: dice.pick([{ kg: 9 }, { kg: 2.99 }, { kg: 3 }]) },
  ]);
}

/** The first text about a tube, with or without facts. */
export function drawFirstText(dice: Dice): Happening {
  const told = dice.chance(0.5) ? drawTold(dice) : {};
  return { type: 'text', event: { type: 'told', told, person: dice.chance(0.05), corrects: false } };
}

/** An invented family, or an unknown phone. */
export function drawFile(dice: Dice): FamilyFile | null {
  if (dice.chance(0.5)) return null;
  return {
    child: null,
    born: dice.chance(0.7) ? '2024-01-01' : null,
    tubeKind: dice.pick(['g', 'g', 'gj', 'unknown'] as const),
    firstPlaced: dice.pick([dice.pick(ages).latest, '2025-03-01', '2025-03-01', null]),
    weightKg: dice.pick([2.5, 9, null]),
    weighedOn: dice.pick(['2027-03-01', null]),
    latexAllergy: dice.chance(0.2),
    cannotWait: dice.chance(0.1) ? 'the night medicine' : null,
  };
}
