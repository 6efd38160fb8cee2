/** Every message to a caregiver with parameters of every kind, invented: what the sheet and the report print and the tests read. */
import { inPlaceTroubles, questionKeys, signs } from '#machines/facts.ts';
import type { Card, GoInReason, HoldReason, NotedFacts, Preface, Say, SayKey, Says } from '#machines/says.ts';
import type { PrefaceKey } from '#src/wording/catalogue.ts';

/** Saturday 6 March 2027, 2:10 am in New York. */
export const sampleNowMs = Date.parse('2027-03-06T02:10:00-05:00');
/** Invented names to choose between. */
export const sampleChildren = ['Leo', 'Wren'] as const;
const minutesAgo = (minutes: number) => sampleNowMs - minutes * 60_000;

const holdReasons: readonly HoldReason[] = [
  'hard',
  'no-strips',
  'no-contents',
  'unread',
  'second-high',
  'not-secured',
  'tube-problem',
  ...inPlaceTroubles,
];

const goInReasons: readonly GoInReason[] = [
  'tract-too-young',
  'kind',
  'tract',
  'half-out',
  'latex',
  'no-kit',
  'not-shown',
  'will-not-go-in',
  'warning',
  'second-high',
  'cannot-wait',
  'nobody-answered',
  'unwell-unread',
  'burst-own',
  'nurse',
];

const insides: readonly Card['inside'][] = ['own', 'temporary', 'half-out', 'in-place', 'nose', 'nothing'];
const goInSamples = goInReasons.flatMap((reason) => insides.map((inside) => ({ reason, inside })));
const tubes = ['own', 'temporary'] as const;
const lengths = [
  { lowCm: 3, highCm: 4 },
  { lowCm: 4, highCm: 4 },
  { lowCm: 4, highCm: 6 },
];
const bothWays = [true, false];
export const none: readonly Record<never, never>[] = [{}];

const emptyCard: Card = {
  tubeKind: null,
  cameOutAtMs: null,
  inside: 'nothing',
  checked: false,
  lastReading: null,
  latexAllergy: false,
  cannotWait: null,
};
export const fullCard: Card = {
  tubeKind: 'gj',
  cameOutAtMs: minutesAgo(200),
  inside: 'temporary',
  checked: false,
  lastReading: { low: 6, high: 6.5 },
  latexAllergy: true,
  cannotWait: 'her seizure medicine, levetir 2 mL at 3 am and the heart drops at 4',
};

export function keysOf<K extends string>(table: Readonly<Record<K, unknown>>): readonly K[] {
  const isKey = (key: string): key is K => key in table;
  return Object.keys(table).filter(isKey);
}

export const sayParams: { readonly [K in SayKey]: readonly Says[K][] } = {
  opening: none,
  openingTubeIn: none,
  askUnwell: none,
  askTrouble: none,
  emergencyCalled: none,
  clarifySign: signs.flatMap((sign) => bothWays.map((tubeIn) => ({ sign, tubeIn }))),
  emergency: [{ signs: [] }, ...signs.map((sign) => ({ signs: [sign] })), { signs }],
  emergencyStill: none,
  askWho: none,
  askWhichChild: [{}],
  confirmFile: [
    {
      child: 'Robin',
      tubeKind: 'g',
      firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
      weight: { kg: 7 },
    },
    {
      child: null,
      tubeKind: 'unknown',
      firstPlaced: { earliest: '2026-03-12', latest: '2026-04-03' },
      weight: { band: 'over-3' },
    },
    { child: null, tubeKind: null, firstPlaced: null, weight: null },
  ],
  askTubeKind: none,
  askTubeKindByLook: none,
  askFirstPlaced: none,
  askOwnTube: none,
  askOwnTubeIn: none,
  ownTubeSteps: bothWays.map((oneTry) => ({ oneTry })),
  ownTubeAsHolderSteps: none,
  askHowIn: none,
  askKit: bothWays.flatMap((stranger) => bothWays.map((latexAllergy) => ({ stranger, latexAllergy }))),
  askWeight: none,
  askWeightUnit: [{ bare: 5 }, { bare: 6.25 }],
  askWeightAgain: [{ told: { kg: 22 } }, { told: { bare: 25 } }, { told: { kg: 2.999 } }],
  insertLayOut: none,
  insertMeasure: lengths,
  insertPutIn: [
    { oneTry: false, stopAtAnyResistance: false },
    { oneTry: true, stopAtAnyResistance: false },
    { oneTry: true, stopAtAnyResistance: true },
  ],
  secondTry: lengths,
  askTubeIn: none,
  askCameOut: none,
  askLastSeenIn: none,
  askAfterIn: none,
  askStrips: none,
  askContents: [1, 2, 3, 4].flatMap((attempt) => bothWays.map((newStrip) => ({ attempt, newStrip }))),
  askPh: none,
  askFedLately: none,
  askLooks: none,
  recheckWait: [{ dueAtMs: minutesAgo(-60) }, { dueAtMs: minutesAgo(-60 * 23) }],
  recheckStill: [{ dueAtMs: minutesAgo(-20) }],
  secureSteps: tubes.flatMap((tube) => [
    { flushMl: 5, balloonMostMl: 5, tube },
    { flushMl: 10, balloonMostMl: 2.5, tube },
  ]),
  secureAgain: [{ balloonMostMl: 5 }, { balloonMostMl: 2.5 }],
  use: tubes.flatMap((tube) => [1, 30].map((stayDays) => ({ tube, stayDays }))),
  useStill: tubes.map((tube) => ({ tube })),
  hold: holdReasons.flatMap((reason) => bothWays.map((clinicArranges) => ({ reason, clinicArranges }))),
  holdStill: none,
  leaveInStill: none,
  nurse: [{ reason: 'nose-tube' }],
  nurseStill: none,
  goIn: goInSamples,
  goInCard: [
    emptyCard,
    fullCard,
    { ...fullCard, tubeKind: 'half-out', inside: 'half-out', cannotWait: null },
    { ...fullCard, tubeKind: 'unknown', inside: 'own', checked: true },
  ],
  goInStill: [{ told: null }, ...goInSamples.map((told) => ({ told }))],
  nudge: questionKeys.map((asking) => ({ asking })),
  recheckCall: none,
  callAnswer: [{ next: 'ring' }, { next: 'text' }],
  callUnanswered: none,
  pageUnanswered: [{ advice: 'carry-on' }, { advice: 'stay' }],
  pageBegan: [{ mostMinutes: 20 }, { mostMinutes: 120 }],
  pageTaken: [{ nurse: 'Dana' }],
  pagePassed: [{ nurse: 'Dana' }],
  relay: [{ nurse: 'Dana', words: 'Is the child awake?' }],
  ringSoon: [{ nurse: 'Dana', number: '+12025550100' }],
  askCorrection: none,
  stopped: none,
  help: none,
  phoneJoined: [{ lastFour: '0162' }],
  closedByNurse: (['go-in', 'in-use', 'held'] as const).flatMap((left) => [
    { left, asks: false },
    { left, asks: true },
  ]),
  rehearsalBegan: [{ nurse: null }, { nurse: 'Dana' }],
  rehearsalPage: none,
  rehearsalOver: (['done', 'quiet', 'asked', 'elsewhere', 'paused'] as const).map((how) => ({ how })),
  rehearsalReal: none,
  askAboutTube: none,
  paused: none,
  notAboutTube: none,
  thanks: none,
  askFirstFeed: none,
  firstFeedWell: none,
  firstFeedLater: none,
  askNextDay: none,
  nextDayWell: none,
  askClinic: none,
  clinicDone: none,
  clinicNotYet: [{ tube: 'temporary' }, { tube: 'own' }],
  clinicStillNot: none,
  stayWarning: [{ daysLeft: 7 }, { daysLeft: 1 }],
  stayOver: none,
  askArrived: none,
  arrivedYes: none,
  arrivedNo: none,
  askOutcome: none,
  outcomeWell: none,
  outcomeNotWell: none,
};

const everyFact: NotedFacts = {
  tubeKind: 'g',
  firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
  weight: { kg: 7 },
  cameOutAtMs: minutesAgo(20),
};

export const prefaceSamples: { readonly [K in PrefaceKey]: readonly Extract<Preface, { readonly key: K }>[] } = {
  noted: [
    { key: 'noted', facts: everyFact },
    { key: 'noted', facts: { weight: { band: 'over-3' }, latexAllergy: true } },
    { key: 'noted', facts: { ph: { low: 5, high: 5.5 }, cameOutAtMs: minutesAgo(60 * 4) } },
  ],
  notUnderstood: (['unreadable', 'unsure', 'future', 'impossible', 'two-answers', 'no-number'] as const).map((why) => ({
    key: 'notUnderstood',
    why,
  })),
  goesToNurse: [{ key: 'goesToNurse' }],
  oneChild: [{ key: 'oneChild' }],
  nurseCalled: [{ key: 'nurseCalled' }],
  mediaKept: [{ key: 'mediaKept' }],
  passedOn: [{ key: 'passedOn', nurse: 'Dana' }],
  earlyReading: [{ key: 'earlyReading' }],
  hourOver: [{ key: 'hourOver' }],
  cleared: [{ key: 'cleared' }],
  startOver: [{ key: 'startOver' }],
  feverOrWarning: [{ key: 'feverOrWarning' }],
  longInside: [{ key: 'longInside' }],
};

type SayOf<K extends SayKey> = { [P in K]: { key: P; params: Says[P]; preface: readonly Preface[] } }[K];

function saysOf<K extends SayKey>(key: K): readonly SayOf<K>[] {
  return sayParams[key].map((params) => ({ key, params, preface: [] }));
}

/** Every message to a caregiver, without prefaces. */
export const says: readonly Say[] = keysOf(sayParams).flatMap((key) => saysOf(key));

/** Every preface. */
export const prefaces: readonly Preface[] = Object.values(prefaceSamples).flat();
