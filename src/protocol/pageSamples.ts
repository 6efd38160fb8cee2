/** Pages to a nurse with parameters of every kind, invented: the short one, the longest ones, one that knows nothing. */
import { dispositions, pageLevels, pageReasons, signs, tubeKinds } from '#machines/facts.ts';
import type { NursePage } from '#src/wording/nurseSays.ts';

export const shortPage: NursePage = {
  level: 'urgent',
  reasons: ['hard-insertion'],
  dangerSigns: [],
  child: 'Robin',
  code: '4K7',
  caregiver: '+12125550101',
  tubeKind: 'g',
  tract: 'usable',
  firstPlaced: { earliest: '2026-03-12', latest: '2026-03-12' },
  inside: 'temporary',
  ph: 5,
  minutesOut: 45,
  disposition: 'hold',
  language: 'en',
  cannotWait: null,
  again: false,
  gap: false,
  clearable: true,
};
/** Every part at its longest. */
export const longPage: NursePage = {
  level: 'emergency',
  reasons: ['danger-sign', 'sick-line', ...pageReasons],
  dangerSigns: [...signs],
  child: 'Maximiliana-Rosalind Tennant',
  code: '4K7Q',
  caregiver: '+123456789012345',
  tubeKind: 'unknown',
  tract: 'nearly-too-young',
  firstPlaced: { earliest: '2026-12-22', latest: '2027-02-23' },
  inside: 'temporary',
  ph: 10.25,
  minutesOut: 60 * 24 * 40 + 59,
  disposition: 'go-in',
  language: 'es',
  cannotWait: 'her seizure medicine, levetir 2 mL at 3 am and the heart medicine at 4',
  again: true,
  gap: true,
  clearable: false,
};
const emptyPage: NursePage = {
  ...shortPage,
  child: null,
  tubeKind: null,
  tract: null,
  firstPlaced: null,
  inside: 'nothing',
  ph: null,
  minutesOut: null,
  disposition: null,
  clearable: false,
};
/** The longest that can be cleared: danger, a wait for the hospital and what cannot wait are sent in instead. */
const longClearable: NursePage = {
  ...longPage,
  reasons: ['hard-insertion', 'weight-doubtful', 'same-child'],
  dangerSigns: [],
  tubeKind: 'g',
  tract: 'usable',
  disposition: 'hold',
  cannotWait: null,
  clearable: true,
};

export const pages: readonly NursePage[] = [
  shortPage,
  longPage,
  longClearable,
  emptyPage,
  ...pageReasons.map((reason) => ({ ...shortPage, reasons: [reason] })),
  ...pageLevels.map((level) => ({ ...shortPage, level })),
  ...tubeKinds.map((tubeKind) => ({ ...shortPage, tubeKind })),
  ...dispositions.map((disposition) => ({ ...shortPage, disposition })),
];
