/** What can reach a case at any place, by a short name: each class of answer, fact, sign and word, the nurse's too, and time. */
import type { TextEvent, Unstamped } from '#machines/events.ts';
import { type QuestionKey, questionKeys, signs, type Told, tubeKinds } from '#machines/facts.ts';
import { values } from '../attack/alphabet.ts';
import { daysBefore, type Night, startMs } from '../night.ts';

export type Texts = Readonly<Record<string, (night: Night) => Night>>;

/** A value as a reader takes it in: JSON without its quotes. */
export const plain = (value: unknown): string => JSON.stringify(value).replaceAll('"', '');

const beside = { told: {}, person: false, corrects: false };
const hourMs = 3_600_000;

const facts: readonly Told[] = [
  ...tubeKinds.map((tubeKind) => ({ tubeKind })),
  ...[57, 56, 27, 13].map((days) => ({ firstPlaced: daysBefore(days) })),
  { firstPlaced: 'unknown' },
  ...[{ kg: 2.5 }, { kg: 9 }, { bare: 5 }].map((weight) => ({ weight })),
  { weight: 'unknown' },
  ...[1, 5].map((hours) => ({ cameOutAtMs: startMs - hours * hourMs })),
  ...(['yes', 'burst', 'long-inside', 'no'] as const).map((ownTube) => ({ ownTube })),
  ...(['yes', 'no', 'not-shown'] as const).map((kit) => ({ kit })),
  ...(['easy', 'hard'] as const).map((insertedHow) => ({ insertedHow })),
  { strips: 'no' },
  { latexAllergy: true },
  { born: daysBefore(60) },
  ...[5, 8].map((ph) => ({ ph: { low: ph, high: ph } })),
];

/** The answers to one question: key and value belong together by the table of values. */
function answers(key: QuestionKey | null): Texts {
  if (key === null) return {};
  const events = values[key].map(
    (value) => ({ ...beside, type: `answer.${key}`, value }) as unknown as Unstamped<TextEvent>,
  );
  return named(values[key].map((value, index) => [`${key} ${plain(value)}`, events[index]]));
}

function named(events: readonly (readonly [string, Unstamped<TextEvent> | undefined])[]): Texts {
  return Object.fromEntries(
    events.flatMap(([name, event]) => (event ? [[name, (night: Night) => night.text(event)] as const] : [])),
  );
}

const always: Texts = {
  ...named(facts.map((told) => [`told ${plain(told)}`, { ...beside, type: 'told', told }])),
  ...named(facts.map((told) => [`no, ${plain(told)}`, { ...beside, type: 'told', told, corrects: true }])),
  ...named(signs.map((sign) => [sign, { ...beside, type: 'signs', sure: [sign], near: [] }])),
  ...named(
    (['bleeding', 'fever', 'pain', 'leak'] as const).map((sign) => [
      `perhaps ${sign}`,
      { ...beside, type: 'signs', sure: [], near: [sign] },
    ]),
  ),
  ...named(
    [...questionKeys, null].map((key) => [`wrong: ${key}`, { ...beside, type: 'correct', key, corrects: true }]),
  ),
  ...named(([1, 2, 3, null] as const).map((step) => [`again ${step}`, { ...beside, type: 'repeat', step }])),
  ...named(
    (['outAgain', 'tubeProblem', 'person', 'media', 'smallTalk', 'stop', 'help', 'unknownDevice'] as const).map(
      (type) => [type, { ...beside, type }],
    ),
  ),
  ...named([['nothing told, a person wanted', { ...beside, type: 'told', person: true }]]),
  ...named([['cannot wait', { ...beside, type: 'cannotWait', what: 'the night medicine' }]]),
  unclear: (night) => night.unclear(),
  'unclear twice': (night) => night.unclear().unclear(),
  'nurse takes': (night) => night.take(),
  'nurse clears': (night) => night.clear(),
  'nurse closes': (night) => night.close(),
  'nurse sends in': (night) => night.sendIn(),
  'the next timer': (night) =>
    night.wait(Math.max(0, (Math.min(...night.timers.map(({ dueMs }) => dueMs)) - night.nowMs) / 60_000)),
  'half an hour': (night) => night.wait(30),
};

/** Everything that can reach a case that asks this. */
export const textsAt = (asking: QuestionKey | null): Texts => ({ ...answers(asking), ...always });
