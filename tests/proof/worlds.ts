/** The protocols and families the proof walks: the default, both ends of the bounds, and a family on file. All invented. */
import type { FamilyFile } from '#machines/facts.ts';
import type { Clinical, Protocol } from '#machines/protocol/settings.ts';
import { protocolWith } from '#tests/dislodgement/night.ts';

/** Saturday 6 March 2027, ten past two in the night at the invented site. */
export const walkAtMs = Date.parse('2027-03-06T02:10:00-05:00');
export const walkDay = '2027-03-06';

export interface World {
  readonly name: string;
  readonly protocol: Protocol;
  readonly file: FamilyFile | null;
  /** Every disturbance is tried; where not, only those that a setting can make a difference to. */
  readonly whole: boolean;
  /** Of these, only what another child can make a difference to: the other worlds have met the rest. */
  readonly aboutChildren?: true;
}

/** Every setting at its careful end. */
const strictest: Partial<Clinical> = {
  tractUsableAfterDays: 183,
  noInsertionUnderDays: 55,
  cautiousUnderDays: 56,
  insertionTries: 1,
  outTooLongHours: 2,
  phLimit: 4,
  phAfterFeed: 'off',
  phStripStep: 1,
  phStripTop: 6,
  contentsTries: 1,
  balloonMostMl: 2,
  stayDays: 10,
  recheckMinutes: 30,
  quietMinutes: 2,
  busyQuietMinutes: 5,
  recheckCallMinutes: 2,
};

/** Every setting at its other end. */
const loosest: Partial<Clinical> = {
  tractUsableAfterDays: 42,
  noInsertionUnderDays: 0,
  cautiousUnderDays: 14,
  insertionTries: 3,
  outTooLongHours: 8,
  phLimit: 6,
  phAfterFeed: 7,
  phStripStep: 0.1,
  phStripTop: 14,
  contentsTries: 4,
  balloonMostMl: 5,
  recheckMinutes: 120,
  quietMinutes: 10,
  busyQuietMinutes: 30,
  recheckCallMinutes: 10,
  firstFeedAfterMinutes: 480,
  emergencyRepeatMinutes: 5,
  emergencySecondMinutes: 10,
  emergencyThirdMinutes: 15,
  urgentRepeatMinutes: 10,
  urgentSecondMinutes: 20,
  urgentThirdMinutes: 30,
  routineRepeatMinutes: 30,
  routineSecondMinutes: 45,
  routineThirdMinutes: 60,
  pageAgainMinutes: 30,
  pageAgainHours: 1,
};

/** A family on file: a G tube in an old tract, weighed of late. */
const enrolled: FamilyFile = {
  child: null,
  born: '2024-06-01',
  tubeKind: 'g',
  firstPlaced: '2024-11-01',
  weightKg: 7,
  weighedOn: '2027-03-01',
};

/** Two children on file: the other one has a combination tube, a young tract, hardly weighs anything, and an allergy. */
const twoChildren: FamilyFile = {
  ...enrolled,
  child: 'Leo',
  siblings: [
    {
      child: 'Wren',
      born: '2026-12-20',
      tubeKind: 'gj',
      firstPlaced: '2027-02-01',
      weightKg: 2.8,
      weighedOn: '2027-03-01',
      latexAllergy: true,
    },
  ],
};

export const worlds: readonly World[] = [
  { name: 'default protocol, unknown phone', protocol: protocolWith(), file: null, whole: true },
  { name: 'default protocol, family on file', protocol: protocolWith(), file: enrolled, whole: true },
  { name: 'every setting at its careful end', protocol: protocolWith(strictest), file: null, whole: false },
  { name: 'every setting at its other end', protocol: protocolWith(loosest), file: null, whole: false },
  {
    name: 'default protocol, two children on file',
    protocol: protocolWith(),
    file: twoChildren,
    whole: false,
    aboutChildren: true,
  },
];
