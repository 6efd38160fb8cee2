/** One invented handover with everything in it. */
import type { CaseView } from '#machines/case.ts';
import type { HandedCase, Handover } from '#src/handover/handover.ts';

const atMs = Date.parse('2027-03-06T07:30:00-05:00');
const hourMs = 3_600_000;

export const view: CaseView = {
  asking: null,
  child: null,
  clarifying: null,
  bareWeight: null,
  answered: null,
  disposition: 'hold',
  facts: {
    tubeKind: 'g',
    firstPlaced: { earliest: '2024-02-06', latest: '2024-02-06' },
    weightKg: 13.4,
    ph: 5,
    cameOutAt: new Date(atMs - 5 * hourMs).toISOString(),
    insertedHow: 'hard',
  },
  told: {},
  tubeIn: 'temporary',
  inside: 'temporary',
  temporarySinceMs: null,
  cannotWait: null,
  dangerSigns: [],
  warningSigns: [],
  placedAtMs: null,
  cleared: false,
  failedTries: 0,
  fedLately: null,
  latexAllergy: false,
  clearable: true,
  takenBy: 'Imke',
  closed: false,
  states: { conversation: [], paging: [], aftercare: [] },
};

const wren: HandedCase = {
  child: 'Wren',
  code: 'A01',
  severity: 'now',
  openedMs: atMs - 5 * hourMs,
  number: '+12125550101',
  view,
  unanswered: null,
  due: [{ what: 'silence', atMs: atMs + hourMs }],
  undelivered: 0,
};

export const handover: Handover = {
  atMs,
  cases: [
    wren,
    {
      ...wren,
      child: 'Linnet & "Co" <b>',
      code: 'A02',
      view: null,
      unanswered: { level: 'emergency', sinceMs: atMs - hourMs, calls: 4 },
    },
    {
      ...wren,
      child: 'Finch',
      code: 'A03',
      severity: 'watch',
      view: { ...view, disposition: 'recheck', clearable: false, takenBy: null, cannotWait: 'her heart medicine at 9' },
      due: [{ what: 'recheck', atMs: atMs + hourMs / 2 }],
      undelivered: 2,
    },
    {
      ...wren,
      child: null,
      code: 'A04',
      severity: 'settled',
      view: { ...view, disposition: 'use', clearable: false, temporarySinceMs: atMs - 2 * hourMs },
      due: [{ what: 'aftercare', atMs: atMs + hourMs }],
    },
  ],
  tubes: [
    { child: 'Lark', code: 'A00', number: '+12125550104', daysLeft: -1, caseOpen: false },
    { child: null, code: 'A04', number: '+12125550101', daysLeft: 30, caseOpen: true },
    { child: 'Wren', code: 'A01', number: '+12125550101', daysLeft: null, caseOpen: true },
  ],
  gaps: [{ place: 1, startMs: atMs + 10 * hourMs, endMs: atMs + 12 * hourMs }],
  clearances: [{ child: null, code: 'A04', atMs: atMs - 3 * hourMs }],
  reviews: [{ child: 'Siskin', number: '+12125550103', why: ['weight under 3 kg, older than a week'] }],
};
