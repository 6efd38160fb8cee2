/** The clinical settings as data: name, default, bounds, unit and source of each. A site's clinician signs every value. */
import { common, type NumberSetting } from './numberSetting.ts';
import { pageSettings } from './pageSettings.ts';
import type { Site } from './site.ts';

export type { NumberSetting, Site };

/** The names end in their unit. Bounds are inclusive; a protocol file outside them is refused. */
export const clinicalSettings = {
  tractUsableAfterDays: {
    default: 56,
    least: 42,
    most: 183,
    unit: 'days',
    meaning: 'the tube may be used only if the tract is strictly older',
    source:
      "children's-hospital practice: 8 weeks; published floors run from 4 to 8 weeks (StatPearls 2020, Gastrostomy Tube Replacement)",
  },
  noInsertionUnderDays: {
    default: 14,
    least: 0,
    most: 56,
    unit: 'days',
    meaning: 'under this age nothing is put in: it is covered',
    source: 'StatPearls 2020: early loss needs surgical advice, a blind attempt can enter the peritoneal cavity',
  },
  cautiousUnderDays: {
    default: 28,
    least: 14,
    most: 56,
    unit: 'days',
    meaning: 'under this age page first, one try, stop at any resistance',
    source: 'StatPearls 2020: under 4 weeks no replacement without consultation',
  },
  insertionTries: {
    default: 2,
    least: 1,
    most: 3,
    unit: 'tries',
    meaning: 'tries to put a tube in, never with force',
    source: common,
  },
  outTooLongHours: {
    default: 4,
    least: 2,
    most: 8,
    unit: 'h',
    meaning: 'out longer than this: one try only, urgent page',
    source: "children's-hospital guideline: something back within 4 h",
  },
  phLimit: {
    default: 6,
    least: 4,
    most: 6,
    unit: 'pH',
    meaning: 'a reading must be under this',
    source: 'NPSA/2011/PSA002: pH 1 to 5.5; feeding not started at 6 or more',
  },
  phStripStep: {
    default: 0.5,
    least: 0.1,
    most: 1,
    unit: 'pH',
    meaning: 'step of the strip; between two steps the higher counts',
    source: 'NPSA 2011: 0.5-unit strips',
  },
  phStripTop: {
    default: 9,
    least: 6,
    most: 14,
    unit: 'pH',
    meaning: 'top of the strip; a reading there has no upper end',
    source: 'NPSA 2011: strips of 2.0 to 9.0',
  },
  recheckMinutes: {
    default: 60,
    least: 30,
    most: 120,
    unit: 'min',
    meaning: 'wait before the one recheck',
    source: 'hospital teaching on NPSA Alert 05: wait one hour, nothing down the tube, repeat',
  },
  contentsTries: {
    default: 3,
    least: 1,
    most: 4,
    unit: 'tries',
    meaning: 'tries to draw back stomach contents',
    source: common,
  },
  flushMl: {
    default: 5,
    least: 1,
    most: 10,
    unit: 'mL',
    meaning: 'water to flush after a reading passed',
    source: common,
  },
  balloonMostMl: {
    default: 5,
    least: 2,
    most: 5,
    unit: 'mL',
    meaning: 'never fill the balloon with more',
    source: "children's-hospital practice: 5 mL syringes",
  },
  stayDays: {
    default: 30,
    least: 1,
    most: 30,
    unit: 'days',
    meaning: 'how long a temporary tube may stay',
    source: common,
  },
  quietMinutes: {
    default: 5,
    least: 2,
    most: 10,
    unit: 'min',
    meaning: 'silence at a question before the nudge, and again before the page',
    source: common,
  },
  busyQuietMinutes: {
    default: 15,
    least: 5,
    most: 30,
    unit: 'min',
    meaning: 'the same while hands are busy',
    source: common,
  },
  recheckCallMinutes: {
    default: 5,
    least: 2,
    most: 10,
    unit: 'min',
    meaning: 'an unanswered recheck is followed by a telephone call, then a page',
    source: common,
  },
  arrivedAfterMinutes: {
    default: 60,
    least: 30,
    most: 120,
    unit: 'min',
    meaning: 'when the line asks whether the child has arrived',
    source: common,
  },
  firstFeedAfterMinutes: {
    default: 180,
    least: 60,
    most: 480,
    unit: 'min',
    meaning: 'when the line asks how the first feed went',
    source: common,
  },
  nextDayAfterHours: {
    default: 24,
    least: 12,
    most: 36,
    unit: 'h',
    meaning: 'when the line asks how the child is the next day',
    source: 'NPSA/2010/RRR010: warning signs in the first 72 h',
  },
  laterSignsAfterHours: {
    default: 72,
    least: 48,
    most: 84,
    unit: 'h',
    meaning: 'when the line asks about the warning signs once more',
    source: 'NPSA/2010/RRR010: warning signs in the first 72 h',
  },
  stayFirstWarningDays: {
    default: 7,
    least: 2,
    most: 14,
    unit: 'days',
    meaning: 'first warning before the stay limit',
    source: common,
  },
  staySecondWarningDays: {
    default: 2,
    least: 1,
    most: 7,
    unit: 'days',
    meaning: 'second warning before the stay limit',
    source: common,
  },
  ...pageSettings,
} as const satisfies Record<string, NumberSetting>;

export type ClinicalName = keyof typeof clinicalSettings;
export type Clinical = { readonly [K in ClinicalName]: number } & {
  /** A first reading from `phLimit` to this may pass after a feed, fenced; 'off' forbids it. */
  readonly phAfterFeed: 'off' | 6.5 | 7;
};

export interface Protocol {
  readonly clinical: Clinical;
  readonly site: Site;
}
