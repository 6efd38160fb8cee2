/** Everything that can happen at a state: answers, timers, and what may be texted, wished, corrected or decided at any time. */
import type { ConversationEvent } from '#machines/dislodgement/conversationEvent.ts';
import type { NurseFacts } from '#machines/events.ts';
import type { PhReading, QuestionKey, Sign } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import { answerClasses, daysAgo } from './answers.ts';
import type { Bystander } from './bystander.ts';
import { bare, disturbance, type Move, tells, timer } from './moves.ts';
import type { World } from './worlds.ts';

const heard = { told: {}, person: false, corrects: false } as const;
const unreadable: Move = {
  event: { type: 'unclear', why: 'unreadable', ...heard },
  clinicOpen: false,
  words: 'cannot be read',
  disturbs: true,
};
/** The second in a row belongs to the first: together they are one disturbance. */
const unreadableAgain: Move = { ...unreadable, disturbs: false };
const clears: Move = {
  event: { type: 'nurse.clear' },
  clinicOpen: false,
  words: 'the nurse clears',
  disturbs: false,
};

/** Answers to the open question, a second unreadable one, the timers that run, and the nurse's clearance. */
export function answersAt(b: Bystander, clinical: Clinical, atMs: number): Move[] {
  if (!b.opened) return [{ ...tells({}), disturbs: false }];
  const asked = b.open === null ? [] : (answerClasses[b.open]?.(clinical, atMs, b) ?? []);
  const read = b.open !== null && b.unread > 0 ? [unreadableAgain] : [];
  const cleared = b.standing === 'hold' ? [clears] : [];
  return [...asked, ...read, ...b.timers.map(timer), ...cleared];
}

const signs = (sure: readonly Sign[], near: readonly Sign[]): Move =>
  disturbance(
    { type: 'signs', sure, near, ...heard },
    sure.length > 0 ? `names ${sure.join(' and ')}` : `half names ${near.join(' and ')}`,
  );

const correctable: readonly (QuestionKey | null)[] = [
  null,
  'unwell',
  'which-child',
  'confirm',
  'tube-kind',
  'first-placed',
  'own-tube',
  'own-tube-in',
  'kit',
  'weight',
  'tube-in',
  'came-out',
  'after-in',
  'strips',
  'contents',
  'ph',
  'fed-lately',
  'looks',
  'secured',
];

/** Facts told beside the way, each kind on the careful side and the other, with and without words of correction. */
function toldAnytime(clinical: Clinical, atMs: number): Move[] {
  const { noInsertionUnderDays: none, cautiousUnderDays: cautious, tractUsableAfterDays: usable } = clinical;
  const ages = [none - 1, cautious - 1, usable, usable + 1].filter((age) => age >= 0);
  const both = (told: Parameters<typeof tells>[0]) => [tells(told), tells(told, true)];
  const one = (ph: number): PhReading => ({ low: ph, high: ph });
  return [
    ...[[0], [1]].flatMap((children) => both({ children })),
    tells({ children: [0, 1] }),
    tells({ mayJoin: true }),
    ...(['g', 'gj', 'j', 'half-out', 'unknown', 'nose'] as const).flatMap((tubeKind) => both({ tubeKind })),
    ...(['in-place', 'in-leaking'] as const).map((inPlace) => tells({ inPlace })),
    ...(['easy', 'in'] as const).map((backIn) => tells({ backIn })),
    ...ages.flatMap((age) => both({ firstPlaced: daysAgo(age, atMs) })),
    ...both({ firstPlaced: 'unknown' }),
    ...[{ kg: 2.9 }, { kg: 3.1 }, { kg: 7 }, { bare: 5 }, 'unknown' as const].map((weight) => tells({ weight })),
    tells({ cameOutAtMs: atMs - 1_200_000 }, true),
    tells({ cameOutAtMs: atMs - clinical.outTooLongHours * 3_600_000 - 1 }),
    ...(['yes', 'burst', 'long-inside', 'no'] as const).map((ownTube) => tells({ ownTube })),
    tells({ ownTube: 'yes' }, true),
    ...(['yes', 'no', 'not-shown'] as const).map((kit) => tells({ kit })),
    ...(['yes', 'no'] as const).map((strips) => tells({ strips })),
    tells({ latexAllergy: true }),
    tells({ insertedHow: 'hard' }),
    ...both({ insertedHow: 'easy' }),
    tells({ ph: one(clinical.phStripTop) }, true),
    tells({ ph: one(clinical.phLimit - clinical.phStripStep) }, true),
    tells({ born: daysAgo(40, atMs) }),
    tells({ born: daysAgo(400, atMs) }),
  ];
}

/**
 * A question that waits in silence hears everything as it did before: its nudged and silent states have no answers of their
 * own. There only the graver half of what may come is tried.
 */
const inSilence: ReadonlySet<ConversationEvent['type']> = new Set([
  'signs',
  'outAgain',
  'tubeProblem',
  'person',
  'stop',
  'unclear',
  'cannotWait',
  'page.taken',
  'page.unanswered',
  'notWell',
  'nurse.close',
  'nurse.goIn',
] as const);

export const gravest = (moves: readonly Move[]): Move[] => moves.filter(({ event }) => inSilence.has(event.type));

/** Kits, allergies, wishes and talk are heard the same whatever the settings are: the default protocol has met them all. */
const whateverTheSetting: ReadonlySet<string> = new Set([
  'media',
  'help',
  'smallTalk',
  'unknownDevice',
  'repeat',
  'person',
  'stop',
  'cannotWait',
  'page.taken',
  'page.unanswered',
  'page.began',
  'page.passed',
  'nurse.reports',
  'relayed',
  'phone.joined',
]);
const factsOfNoSetting: ReadonlySet<string> = new Set(['kit', 'strips', 'latexAllergy', 'born', 'ownTube', 'mayJoin']);

const factsOfAChild: ReadonlySet<string> = new Set(['children', 'latexAllergy']);
const beforeEveryChild: ReadonlySet<string> = new Set(['signs', 'outAgain', 'nurse.goIn']);

/** Whether it is tried here in this world. */
export function mayMatter(
  move: Move,
  { whole, aboutChildren }: Pick<World, 'whole' | 'aboutChildren'>,
  b: Bystander,
): boolean {
  return whole || (aboutChildren ? hangsOnTheChild(move, b) : hangsOnASetting(move));
}

/**
 * Whether it can make a difference which child it is. Once that is settled, what follows is as in a family of that one child,
 * on file or told, which the other worlds walk; only the child itself may still turn out to be another.
 */
function hangsOnTheChild({ event }: Move, { which }: Bystander): boolean {
  if (event.type === 'told') return Object.keys(event.told).some((fact) => factsOfAChild.has(fact));
  if (event.type === 'correct') return event.key === 'which-child' || event.key === 'confirm';
  return which === null && beforeEveryChild.has(event.type);
}

/** Whether a setting at its bounds can make a difference to it. */
function hangsOnASetting({ event }: Move): boolean {
  if (event.type === 'told') return Object.keys(event.told).some((fact) => !factsOfNoSetting.has(fact));
  return !whateverTheSetting.has(event.type);
}

/** Whether it can come here: a page that was raised, aftercare that follows, a file to confirm. */
export function mayCome({ event }: Move, b: Bystander): boolean {
  switch (event.type) {
    case 'page.taken':
    case 'page.unanswered':
      return b.paged.length > 0;
    case 'notWell':
      return b.aftercare === 'use' || b.aftercare === 'own-tube';
    case 'correct':
      if (event.key === 'which-child') return b.children.length > 0;
      return event.key !== 'confirm' || b.enrolled;
    case 'told':
      // Only a phone on no file may be another family's.
      if (event.told.mayJoin) return !b.enrolled;
      return event.told.children === undefined || b.children.length > 0;
    case 'phone.joined':
      return b.enrolled && b.opened;
    // A STOP opens no case, and before there is one there is nothing to clear or to close.
    case 'stop':
    case 'nurse.clear':
    case 'nurse.close':
      return b.opened;
    // Only whoever was called for the case has a word in it.
    case 'nurse.goIn':
    case 'relayed':
    case 'nurse.corrects':
    case 'nurse.reports':
    case 'page.passed':
    case 'page.began':
      return b.paged.length > 0;
    default:
      return true;
  }
}

/** Facts a nurse corrects, each kind and both sides of each boundary; a weight on both sides of the band. */
function corrections(
  { noInsertionUnderDays: none, cautiousUnderDays: cautious, tractUsableAfterDays: usable }: Clinical,
  atMs: number,
) {
  const facts: NurseFacts[] = [
    ...(['g', 'gj', 'j'] as const).map((tubeKind) => ({ tubeKind })),
    ...[none - 1, cautious - 1, usable, usable + 1]
      .filter((age) => age >= 0)
      .map((age) => ({ firstPlaced: daysAgo(age, atMs) })),
    ...[{ kg: 2.9 }, { kg: 7 }].map((weight) => ({ weight })),
  ];
  return facts.map((told) => ({
    ...tells(told),
    event: { type: 'nurse.corrects', told, corrects: true } as const,
    words: `the nurse corrects ${JSON.stringify(told).replaceAll('"', '')}`,
  }));
}

/** What may come at any time. */
export function disturbances(clinical: Clinical, atMs: number): Move[] {
  return [
    unreadable,
    ...toldAnytime(clinical, atMs),
    signs(['breathing'], []),
    signs(['fever'], []),
    signs(['pain'], []),
    signs(['leak'], []),
    signs([], ['colour']),
    signs([], ['fresh-blood']),
    bare('outAgain', 'it came out again'),
    bare('tubeProblem', 'the tube does not run'),
    bare('person', 'wants a person'),
    disturbance({ type: 'person', rang: true, ...heard }, 'rings the line'),
    bare('media', 'sends a picture'),
    bare('smallTalk', 'says thanks'),
    bare('stop', 'STOP'),
    bare('help', 'HELP'),
    disturbance({ type: 'relayed', nurse: 'A', ...heard }, 'answers the nurse'),
    bare('unknownDevice', 'names an unknown device'),
    disturbance({ type: 'cannotWait', what: 'a medicine', ...heard }, 'something cannot wait'),
    disturbance({ type: 'repeat', step: null, ...heard }, 'asks to hear it again'),
    disturbance({ type: 'told', told: {}, person: true, corrects: false }, 'tells nothing and wants a person'),
    ...correctable.map((key) => disturbance({ type: 'correct', key, ...heard }, `takes back ${key ?? 'something'}`)),
    disturbance({ type: 'page.taken', nurse: 'A' }, 'a nurse takes the page'),
    disturbance({ type: 'page.unanswered' }, 'nobody takes the page'),
    disturbance({ type: 'notWell' }, 'not well with the tube in use'),
    disturbance({ type: 'nurse.clear' }, 'the nurse clears'),
    disturbance({ type: 'nurse.close' }, 'the nurse closes'),
    disturbance({ type: 'nurse.goIn' }, 'the nurse sends them in'),
    disturbance({ type: 'phone.joined', lastFour: '0162' }, 'another phone joins'),
    disturbance({ type: 'nurse.reports', what: 'it misread us' }, 'the nurse reports the line'),
    disturbance({ type: 'page.began', mostMinutes: 20 }, 'the family hears of a page'),
    disturbance({ type: 'page.passed', nurse: 'A' }, 'the nurse passes it on'),
    ...corrections(clinical, atMs),
  ];
}
