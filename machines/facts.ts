/** The facts of one case: what the caregiver or the file has told so far, in the words every other file uses. */

/** The languages the line speaks. */
export const languageCodes = ['en', 'es', 'fr'] as const;
export type LanguageCode = (typeof languageCodes)[number];

/** Which tube came out. `half-out` is still partly in; `nose` is a tube through the nose, not this line's business. */
export const tubeKinds = ['g', 'gj', 'j', 'half-out', 'unknown', 'nose'] as const;
export type TubeKind = (typeof tubeKinds)[number];

/** A tube that never came out, by what is wrong with it, the least first; `in-place` where nothing more was told. */
export const inPlaceTroubles = ['in-place', 'in-blocked', 'in-sore', 'in-leaking'] as const;
export type InPlace = (typeof inPlaceTroubles)[number];

/** Whether a reason is that of a tube that never came out. */
export function isInPlace(reason: string): reason is InPlace {
  return inPlaceTroubles.some((one) => one === reason);
}

/** Calendar dates as `yyyy-mm-dd` in the site's zone, both ends included; `earliest` is null where only "at least" is known. */
export interface DateRange {
  readonly earliest: string | null;
  readonly latest: string;
}

/**
 * A weight as it was told: with a unit, as a bare number (unit unknown), or the unit alone as the answer to "kg or lb?".
 * Kilograms are exact conversions of what was told.
 */
export type WeightTold =
  | { readonly kg: number }
  | { readonly bare: number }
  | { readonly unit: 'kg' | 'lb' }
  | 'unknown';

/** The weight as far as it is settled. A bare number that means the same band in both units settles only the band. */
export type Weight = { readonly kg: number } | { readonly band: WeightBand; readonly bare?: number } | 'unknown';
export type WeightBand = 'under-3' | '3' | 'over-3';

/** A pH as read off the strip; a single number has `low` equal to `high`. */
export interface PhReading {
  readonly low: number;
  readonly high: number;
}

export type YesNo = 'yes' | 'no';
export type YesNoUnknown = 'yes' | 'no' | 'unknown';
export type OwnTubeAnswer = 'yes' | 'burst' | 'long-inside' | 'no' | 'unknown';
export type KitAnswer = 'yes' | 'no' | 'not-shown';
/** `in` says that it is in without saying how it went: the line asks "easily or pushed?". */
export type InsertedAnswer = 'easy' | 'hard' | 'no' | 'in';

/**
 * Signs the reader can hear in a text. Which of them is a danger, a warning, or a near miss to clarify depends on where
 * the case stands and on the child's age, so the machine decides that, never the reader.
 */
export const signs = [
  'breathing', // trouble breathing
  'colour', // blue, grey, very pale
  'limp', // limp, floppy, hard to wake, not responding, a seizure
  'bleeding', // bleeding that goes on, a lot of blood
  'hard-belly', // hard and swollen belly
  'severe-pain', // severe pain, screaming that does not stop
  'vomit', // green or repeated vomit
  'fever', // any fever
  'pain', // new or feeding pain that is not called severe
  'fresh-blood', // fresh blood that is not called going on
  'tight-belly', // a belly tighter or bigger than before
  'leak', // leaking around the tube
] as const;
export type Sign = (typeof signs)[number];

/** Everything a text can tell unasked; each field is absent when the text says nothing of it. */
export interface Told {
  /** Which of the family's several children the text names, by their numbers. */
  readonly children?: readonly number[];
  /** It says that it is another child than the one on file. */
  readonly notOnFile?: true;
  /** The text speaks of more than one tube-fed child without a name that is filed. */
  readonly severalChildren?: true;
  /** From a phone without a file, while another family's case is open, the text says who is writing: it may be the same child. */
  readonly mayJoin?: true;
  readonly tubeKind?: TubeKind;
  /** Of a tube half out: which it is. */
  readonly halfOutOf?: 'g' | 'gj' | 'j';
  /** The tube is where it belongs and never came out. */
  readonly inPlace?: InPlace;
  /** The child's own tube was put back before the line asked for it, and how that went. */
  readonly backIn?: 'easy' | 'hard' | 'in';
  readonly firstPlaced?: DateRange | 'unknown';
  readonly weight?: WeightTold;
  /** When the tube came out or was last seen in, epoch ms; the earlier end of a range. */
  readonly cameOutAtMs?: number;
  readonly ownTube?: OwnTubeAnswer;
  readonly kit?: KitAnswer;
  readonly insertedHow?: 'easy' | 'hard';
  readonly strips?: YesNo;
  readonly latexAllergy?: true;
  /** The child's birth, from an age or a birth date told. */
  readonly born?: DateRange;
  /** A medicine or feed that must not be missed, in the words of a first text; later ones are an event of their own. */
  readonly cannotWait?: string;
  /** Only with words of correction ("sorry, I misread, it was 6.5"), or sent before the recheck asks. */
  readonly ph?: PhReading;
}

/** What the file holds for an enrolled family; null where the file does not know. */
export interface FamilyFile {
  readonly child: string | null;
  readonly born: string | null;
  readonly tubeKind: 'g' | 'gj' | 'unknown';
  readonly firstPlaced: string | null;
  readonly weightKg: number | null;
  readonly weighedOn: string | null;
  readonly latexAllergy?: boolean;
  /** A medicine or feed that must not be missed, in the file's words. */
  readonly cannotWait?: string | null;
  /** The own tube's stem, from the skin to the balloon: a temporary tube told to go in less far would not clear it. */
  readonly stemLengthCm?: number | null;
  // What only a person reads: the machines decide nothing by it.
  /** When the family agreed to be texted. */
  readonly consentOn?: string | null;
  /** Last four of the chart number. */
  readonly chartLast4?: string | null;
  /** As the tube says it, such as "14 Fr". */
  readonly tubeSize?: string | null;
  readonly fillVolumeMl?: number | null;
  /** Whether the child gets a medicine that lowers stomach acid: readings run higher. */
  readonly acidReducer?: boolean | null;
  /** The hospital that manages the tube, where it is not the site's own, and how far it is. */
  readonly hospital?: string | null;
  readonly hospitalMinutes?: number | null;
  /** When a person last went through these facts with the family. */
  readonly reviewedOn?: string | null;
  /** The family's other children with a tube: which of them it is about is asked. */
  readonly siblings?: readonly FamilyFile[];
}

/** The line's questions, as the public interface names them. */
export const questionKeys = [
  'unwell',
  'who',
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
  'first-feed',
  'next-day',
  'arrived',
  'clinic',
] as const;
export type QuestionKey = (typeof questionKeys)[number];

/** The value each question can be answered with. */
export interface Answers {
  readonly unwell: YesNo;
  /** `joins` where what was told fits exactly one other open case; `none` where nobody else has texted. */
  readonly who: 'joins' | 'none' | 'unknown';
  /** A child that is named is a fact told; the answer of its own is that it is none of them. */
  readonly 'which-child': 'none';
  readonly confirm: YesNo;
  readonly 'tube-kind': TubeKind;
  readonly 'first-placed': DateRange | 'unknown';
  readonly 'own-tube': OwnTubeAnswer;
  readonly 'own-tube-in': InsertedAnswer;
  readonly kit: KitAnswer;
  /** `as-told` is a yes to a number the line repeated in doubt. */
  readonly weight: WeightTold | 'as-told';
  readonly 'tube-in': InsertedAnswer;
  /** Epoch ms, the earlier end of a range. */
  readonly 'came-out': number | 'unknown';
  readonly 'after-in': YesNo;
  readonly strips: YesNo;
  readonly contents: YesNo;
  readonly ph: PhReading;
  readonly 'fed-lately': YesNoUnknown;
  readonly looks: YesNoUnknown;
  /** `part` names one of the steps, and nothing of the others. */
  readonly secured: YesNo | 'part';
  /** `later` where it has not been given yet. */
  readonly 'first-feed': YesNo | 'later';
  readonly 'next-day': YesNo;
  readonly arrived: YesNo;
  readonly clinic: YesNo;
}

/** What the caregiver was last told to do. */
export const dispositions = ['emergency', 'go-in', 'hold', 'recheck', 'use', 'own-tube', 'nurse'] as const;
export type Disposition = (typeof dispositions)[number];

export const pageLevels = ['routine', 'urgent', 'emergency'] as const;
export type PageLevel = (typeof pageLevels)[number];

/** Why a nurse is called; each has one level, see `paging/levels.ts`. */
export const pageReasons = [
  'danger-sign',
  'warning-sign',
  'tract-too-young',
  'tract-nearly-too-young',
  'unwell-unread',
  'restricted-kind',
  'restricted-tract',
  'half-out',
  ...inPlaceTroubles,
  'nose-tube',
  'latex',
  'no-kit',
  'not-shown',
  'will-not-go-in',
  'out-too-long',
  'hard-insertion',
  'no-strips',
  'no-contents',
  'second-high',
  'unread',
  'unread-in-use',
  'not-secured',
  'tube-problem',
  'came-out-again',
  'stopped',
  'person-wanted',
  'rang',
  'cannot-wait',
  'silence',
  'aftercare-silence',
  'not-arrived',
  'not-reached',
  'untouched',
  'not-well-after',
  'sick-line',
  'weight-unknown',
  'weight-doubtful',
  'which-child',
  'same-child',
  'child-corrected',
  'other-child',
  'reading-corrected',
  'after-feed-reading',
  'clinic-not-called',
  'stay-limit',
] as const;
export type PageReason = (typeof pageReasons)[number];
