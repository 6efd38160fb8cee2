/** The places of a case that golden snapshots are taken at: how it gets there, and what is answered there. All invented. */
import type { CaseSignal } from '#machines/case.ts';
import type { TextEvent, Unstamped } from '#machines/events.ts';
import type { Answers, FamilyFile, QuestionKey, Told } from '#machines/facts.ts';
import { oldTract, startMs } from '#tests/dislodgement/night.ts';

type Stampless =
  | Unstamped<TextEvent>
  | { readonly type: 'nurse.clear' }
  | { readonly type: 'nurse.close' }
  | { readonly type: 'take'; readonly nurse: string };
/** Something that happens, or minutes that go by. */
export type Move = Stampless | { readonly waitMinutes: number };

export interface Place {
  readonly name: string;
  readonly file: FamilyFile | null;
  readonly moves: readonly Move[];
  readonly answer: Stampless;
}

const beside = { told: {}, person: false, corrects: false };
const told = (facts: Told): Stampless => ({ ...beside, type: 'told', told: facts });
const wait = (waitMinutes: number): Move => ({ waitMinutes });
const take: Stampless = { type: 'take', nurse: 'Imke' };
const thanks: Stampless = { ...beside, type: 'smallTalk' };

/** The pair of key and value is checked by the signature. */
function answer<K extends QuestionKey>(key: K, value: Answers[K]): Stampless {
  return { ...beside, type: `answer.${key}`, value } as Stampless;
}

const enrolled: FamilyFile = {
  child: 'Wren',
  born: '2023-04-18',
  tubeKind: 'g',
  firstPlaced: '2024-02-06',
  weightKg: 13.4,
  weighedOn: '2026-09-21',
};

const bornLastYear = { earliest: '2026-01-10', latest: '2026-01-10' };

/** Jude is 0, Wren 1. */
const twoOnFile: FamilyFile = { ...enrolled, siblings: [{ ...enrolled, child: 'Jude', tubeKind: 'gj' }] };

const out = told({ tubeKind: 'g', cameOutAtMs: startMs - 20 * 60_000 });
const well = [out, answer('unwell', 'no')];
const old = [...well, answer('first-placed', oldTract)];
const noOwn = [...old, answer('own-tube', 'no')];
const kit = [...noOwn, answer('kit', 'yes')];
const lesson = [...kit, answer('weight', { kg: 7 })];
const placed = [...lesson, answer('tube-in', 'easy')];
const calm = [...placed, answer('after-in', 'no')];
const strips = [...calm, answer('strips', 'yes')];
const contents = [...strips, answer('contents', 'yes')];
const high = [...contents, answer('ph', { low: 6.5, high: 6.5 }), answer('fed-lately', 'no')];
const recheck = [...high, wait(60)];
const passed = [...contents, answer('ph', { low: 5, high: 5 })];
const inUse = [...passed, answer('secured', 'yes')];
const hard = [...lesson, answer('tube-in', 'hard'), answer('after-in', 'no'), answer('strips', 'yes')];
const held = [...hard, answer('contents', 'yes'), answer('ph', { low: 5, high: 5 })];
const goingIn = [told({ tubeKind: 'gj' }), answer('unwell', 'no'), ...lesson.slice(2), answer('tube-in', 'easy')];
const gone = [...goingIn, answer('came-out', startMs)];
const danger: Move = { ...beside, type: 'signs', sure: ['breathing'], near: [] };

const stranger = (name: string, moves: readonly Move[], next: Stampless): Place => ({
  name,
  file: null,
  moves,
  answer: next,
});

export const places: readonly Place[] = [
  stranger('unwell', [out], answer('unwell', 'no')),
  stranger('who', [told({ mayJoin: true }), answer('unwell', 'no')], answer('who', 'none')),
  { name: 'which-child', file: twoOnFile, moves: well, answer: told({ children: [0] }) },
  { name: 'confirm', file: enrolled, moves: well, answer: answer('confirm', 'yes') },
  stranger('tube-kind', [told({}), answer('unwell', 'no')], answer('tube-kind', 'g')),
  stranger('first-placed', well, answer('first-placed', oldTract)),
  stranger('own-tube', old, answer('own-tube', 'no')),
  stranger('own-tube-in', [...old, answer('own-tube', 'yes')], answer('own-tube-in', 'easy')),
  stranger('kit', noOwn, answer('kit', 'yes')),
  stranger('weight', kit, answer('weight', { bare: 5 })),
  stranger('weight-unit', [...kit, answer('weight', { bare: 5 })], answer('weight', { unit: 'kg' })),
  stranger(
    'weight-doubt',
    [...kit.slice(0, -1), told({ born: bornLastYear, kit: 'yes' }), answer('weight', { kg: 60 })],
    answer('weight', 'as-told'),
  ),
  stranger('tube-in', lesson, answer('tube-in', 'easy')),
  stranger('came-out', goingIn, answer('came-out', startMs)),
  stranger('after-in', placed, answer('after-in', 'no')),
  stranger('strips', calm, answer('strips', 'yes')),
  stranger('contents', strips, answer('contents', 'yes')),
  stranger('ph', contents, answer('ph', { low: 5, high: 5.5 })),
  stranger('fed-lately', [...contents, answer('ph', { low: 6.5, high: 6.5 })], answer('fed-lately', 'yes')),
  stranger(
    'looks',
    [...contents, answer('ph', { low: 6.5, high: 6.5 }), answer('fed-lately', 'yes')],
    answer('looks', 'yes'),
  ),
  stranger('recheck-waits', high, thanks),
  stranger('recheck-due', recheck, answer('after-in', 'no')),
  stranger('secured', passed, answer('secured', 'yes')),
  stranger('held-for-clearance', held, { type: 'nurse.clear' }),
  stranger('going-in', gone, thanks),
  stranger('arrived', [...gone, wait(60)], answer('arrived', 'yes')),
  stranger('emergency', [...contents, danger], thanks),
  stranger('page-climbs', [...held, wait(12)], take),
  stranger('page-goes-round', [...held, wait(90)], take),
  stranger('page-taken', [...held, take], answer('unwell', 'no')),
  stranger('nurse-reminded', [...held, take, wait(35)], thanks),
  stranger('first-feed', [...inUse, wait(180)], answer('first-feed', 'yes')),
  // Saturday 02:10, so the next day is asked about on Sunday at 07:00, and the clinic on Monday at 15:00.
  stranger('next-day', [...inUse, wait(180), answer('first-feed', 'yes'), wait(26 * 60)], answer('next-day', 'yes')),
  stranger(
    'clinic',
    [...inUse, wait(180), answer('first-feed', 'yes'), wait(26 * 60), answer('next-day', 'yes'), wait(32 * 60)],
    answer('clinic', 'no'),
  ),
];

/** A move that is no wait, as a signal at its time. */
export function signalOf(move: Stampless, at: number): CaseSignal {
  const stamp = { at, clinicOpen: false };
  return move.type === 'take'
    ? { machine: 'paging', event: { ...move, ...stamp } }
    : { machine: 'conversation', event: { ...move, ...stamp } };
}
