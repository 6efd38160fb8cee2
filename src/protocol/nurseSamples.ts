/** Every message to a nurse with parameters of every kind, invented: what the sheet and the report print and the tests read. */
import { dispositions, pageReasons } from '#machines/facts.ts';
import { levelOf } from '#machines/paging/levels.ts';
import type {
  CaseDetails,
  Fact,
  HandoverText,
  NurseSay,
  NurseSayKey,
  NurseSays,
  RehearsalResult,
} from '#src/wording/nurseSays.ts';
import { nurseOffers } from '#src/wording/nurseSays.ts';
import { longPage, pages } from './pageSamples.ts';
import { keysOf, none } from './samples.ts';

const handovers: readonly HandoverText[] = [
  {
    atMs: Date.parse('2027-03-06T07:30:00-05:00'),
    pressing: [{ child: 'Robin', code: '4K7', disposition: 'hold', unanswered: false, fault: false }],
    cases: 2,
    tubes: 1,
    leastDaysLeft: 30,
    rechecks: 1,
    unanswered: 0,
    gaps: 0,
    clearances: 1,
  },
  {
    atMs: Date.parse('2027-03-06T07:30:00-05:00'),
    pressing: dispositions.map((disposition) => ({
      child: 'Maximiliana-Rosalind Tennant',
      code: '4K7',
      disposition,
      unanswered: true,
      fault: false,
    })),
    cases: 123,
    tubes: 123,
    leastDaysLeft: -2,
    rechecks: 12,
    unanswered: 12,
    gaps: 12,
    clearances: 12,
  },
  {
    atMs: Date.parse('2027-03-06T07:30:00-05:00'),
    pressing: [{ child: null, code: '9Q2', disposition: null, unanswered: true, fault: true }],
    cases: 1,
    tubes: 0,
    leastDaysLeft: null,
    rechecks: 0,
    unanswered: 0,
    gaps: 1,
    clearances: 0,
  },
];
const tonight = {
  fromMs: Date.parse('2027-03-06T17:00:00-05:00'),
  toMs: Date.parse('2027-03-07T08:00:00-05:00'),
};
const paused = { by: 'Maximiliana-Rosalind', atMs: tonight.fromMs };
const robin = { child: 'Robin', code: '4K7' };
const nameless = { child: null, code: '9Q2' };

const facts: readonly Fact[] = [
  { tubeKind: 'gj' },
  { firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' } },
  { weight: { kg: 7 } },
];
const details: CaseDetails = {
  born: '2024-04-18',
  firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
  chartLast4: '0417',
  tubeSize: '14 Fr',
  stemLengthCm: 1.7,
  fillVolumeMl: 4,
  acidReducer: true,
  latexAllergy: true,
  insertedHow: 'hard',
  weightKg: 13.4,
  failedTries: 1,
  fedLately: 'no',
  cannotWait: 'her seizure medicine at 3 am',
  caregiver: '+12025550101',
  language: 'es',
};
const unfiled: CaseDetails = {
  ...details,
  born: null,
  firstPlaced: null,
  chartLast4: null,
  tubeSize: null,
  stemLengthCm: null,
  fillVolumeMl: null,
  acidReducer: null,
  latexAllergy: null,
  insertedHow: null,
  weightKg: null,
  fedLately: null,
  cannotWait: null,
  language: 'en',
};

const rehearsed: RehearsalResult = {
  child: 'Maximiliana-Rosalind Tennant',
  how: 'done',
  disposition: 'hold',
  answered: 12,
  unread: 3,
  asking: 'own-tube-in',
  raised: ['not-reached', 'untouched', 'hard-insertion', 'silence'],
};

export const nurseParams: { readonly [K in NurseSayKey]: readonly NurseSays[K][] } = {
  page: pages,
  pageCall: pages,
  news: [
    ...pageReasons.map((reason) => ({
      ...robin,
      level: levelOf[reason],
      reason,
      ph: null,
      disposition: null,
      words: null,
    })),
    { ...robin, level: 'routine', reason: 'reading-corrected', ph: 6.5, disposition: 'recheck', words: null },
    { ...robin, level: 'urgent', reason: 'unread', ph: 6.5, disposition: 'recheck', words: longPage.words },
  ],
  stands: [
    { ...robin, disposition: 'use', tubeIn: 'temporary' },
    { ...robin, disposition: 'own-tube', tubeIn: 'own' },
    ...(['go-in', 'emergency', 'hold', 'nurse'] as const).map((disposition) => ({
      ...nameless,
      disposition,
      tubeIn: null,
    })),
  ],
  taken: [
    { cases: [robin], clear: [], optedOut: [] },
    { cases: [robin], clear: [], optedOut: [robin] },
    { cases: [robin, nameless], clear: [], optedOut: [robin] },
    { cases: [robin], clear: [robin], optedOut: [] },
    { cases: [robin, nameless], clear: [robin, nameless], optedOut: [] },
  ],
  passed: [
    { ...robin, already: false },
    { ...robin, already: true },
  ],
  which: [{ word: 'CLOSE', cases: [robin, nameless] }],
  noCase: none,
  notYours: [{ ...robin, nurse: 'Bea' }],
  heldBy: [true, false].map((mayTake) => ({ ...robin, nurse: 'Bea', sinceMs: tonight.fromMs, mayTake })),
  takenOn: [{ ...robin, nurse: 'Bea' }],
  noSuchCase: [
    { code: 'A99', cases: [] },
    { code: 'A99', cases: [robin, nameless] },
  ],
  more: [
    { ...robin, ...details },
    { ...nameless, ...unfiled },
  ],
  moreSaid: [{ ...robin, texts: ['it came out', 'no', 'shes crying a bit'] }],
  sendInConfirm: [robin],
  sentIn: [robin],
  sentInAlready: (['emergency', 'go-in'] as const).map((disposition) => ({ ...robin, disposition })),
  factConfirm: facts.map((fact) => ({ ...robin, fact })),
  factTaken: facts.flatMap((fact) => [
    ...[true, false].map((asked) => ({ ...robin, fact, asked, told: null, raised: [], paged: false })),
    { ...robin, fact, asked: false, told: 'go-in', raised: ['restricted-kind', 'restricted-tract'], paged: false },
    { ...robin, fact, asked: false, told: 'go-in', raised: ['tract-nearly-too-young'], paged: true },
  ]),
  factNot: none,
  notSent: [robin],
  told: [robin],
  tellTooLong: [{ most: 200 }],
  tellConfirm: [{ ...robin, language: 'es' }],
  reply: [{ ...robin, words: 'yes she is awake' }],
  calling: [robin],
  bridgeCall: [robin, nameless],
  familyRings: [{ family: robin }, { family: nameless }, { family: null }],
  callThrough: [robin, nameless],
  callWords: [{ cases: 0 }, { cases: 2 }],
  mediaCame: [
    { ...robin, sound: false, link: 'https://line.example/media/2s.t8k3x1.AbCdEfGhIjKlMnOpQrStUv' },
    { ...robin, sound: true, link: 'https://line.example/media/2s.t8k3x1.AbCdEfGhIjKlMnOpQrStUv' },
    { ...nameless, sound: false, link: null },
  ],
  clearedByOther: [{ ...robin, nurse: 'Bea' }],
  reported: [robin],
  nothingToTake: none,
  clearConfirm: [
    { ...robin, tubeKind: 'g', ph: 5 },
    { ...nameless, tubeKind: null, ph: null },
  ],
  dropped: (['no', 'late', 'unread'] as const).map((why) => ({ ...robin, why })),
  cleared: [robin, nameless],
  clearNotNow: [
    { why: 'nothing-held', cases: [] },
    { why: 'not-hard', cases: [robin] },
    { why: 'several', cases: [robin, nameless] },
  ],
  closeConfirm: [
    { ...robin, followUp: true, left: 'in-use' },
    { ...nameless, followUp: false, left: 'held' },
  ],
  closed: [robin, nameless],
  notSure: [{ can: [] }, { can: ['PRACTICE'] }, { can: nurseOffers }],
  nothingPending: none,
  handover: handovers,
  handoverAgain: handovers,
  handoverFailed: none,
  handoverTaken: none,
  nothingHandedOver: none,
  swapAsk: [{ asker: 'Maximiliana-Rosalind', ...tonight }],
  swapAsked: [{ other: 'Bo', ...tonight }],
  swapAgreed: [{ other: 'Bo', ...tonight }],
  swapRefused: [{ other: 'Bo' }],
  swapDeclined: [{ asker: 'Bo' }],
  swapNobody: [{ other: 'Bo' }],
  swapForm: none,
  pauseConfirm: [{ open: 0 }, { open: 12 }],
  resumeConfirm: [paused],
  pausedNow: [paused],
  resumedNow: none,
  pausedAlready: [paused],
  notPaused: none,
  pauseLeads: [{ leads: ['Bo', 'Bea'] }, { leads: [] }],
  pausedNoAdvice: [paused],
  rehearsalSent: [
    { child: 'Robin', number: '+12025550101' },
    { child: null, number: '+12025550101' },
  ],
  rehearsalNot: (['nobody-named', 'not-found', 'several', 'open', 'busy', 'opted-out'] as const).map((why) => ({
    why,
  })),
  rehearsalResult: [
    ...(['done', 'quiet', 'asked', 'stopped', 'elsewhere', 'paused', 'real'] as const).map((how) => ({
      ...rehearsed,
      how,
    })),
    { ...rehearsed, child: null, answered: 0, unread: 0, disposition: null, asking: null, raised: [] },
  ],
  stopped: none,
};

type NurseSayOf<K extends NurseSayKey> = { [P in K]: { key: P; params: NurseSays[P] } }[K];

function nurseSaysOf<K extends NurseSayKey>(key: K): readonly NurseSayOf<K>[] {
  return nurseParams[key].map((params) => ({ key, params }));
}

/** Every message to a nurse. */
export const nurseSays: readonly NurseSay[] = keysOf(nurseParams).flatMap((key) => nurseSaysOf(key));
