/** What a careful bystander knows: only what was texted, what was said back, who was paged and what was timed. */
import type {
  DateRange,
  Disposition,
  FamilyFile,
  InPlace,
  KitAnswer,
  OwnTubeAnswer,
  PhReading,
  QuestionKey,
  Sign,
  TubeKind,
  Weight,
  YesNo,
  YesNoUnknown,
} from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';

/** The tube that is in, and what was found out about it since it went in. */
export interface TubeSeen {
  readonly which: 'own' | 'temporary';
  /** A burst tube put in only to hold the stoma open. */
  readonly holderOnly: boolean;
  readonly how: 'easy' | 'hard' | null;
  /** Asked how the child is since it went in, and well. */
  readonly well: boolean;
  readonly contents: boolean;
  readonly reading: PhReading | null;
  readonly fed: YesNoUnknown | null;
  readonly looks: YesNoUnknown | null;
  readonly recheck: 'none' | 'waiting' | 'due';
  readonly cleared: boolean;
  readonly secured: boolean;
  /** Chosen before the allergy was known. */
  readonly maybeLatex: boolean;
  /** Something was wrong with it, or an answer about it could not be read. */
  readonly stopped: boolean;
  /** The line held for a hard insertion: from there it stays hard. */
  readonly heldHard: boolean;
  /** The own tube told to be whole, before it went in and since; any temporary tube is. */
  readonly whole: boolean;
}

/** A tube that has just gone in. */
export const justIn = (
  which: 'own' | 'temporary',
  how: 'easy' | 'hard' | null,
  own: Bystander['ownTube'],
): TubeSeen => ({
  which,
  holderOnly: which === 'own' && own === 'burst',
  how,
  well: false,
  contents: false,
  reading: null,
  fed: null,
  looks: null,
  recheck: 'none',
  cleared: false,
  secured: false,
  maybeLatex: false,
  stopped: false,
  heldHard: false,
  whole: which === 'temporary' || own === 'yes',
});

/** What one child's file holds, and whether there is anything to confirm. */
export interface SeenFile {
  readonly kind: TubeKind | null;
  readonly tract: DateRange | null;
  readonly weight: Weight | null;
  readonly born: DateRange | null;
  readonly latex: boolean;
  readonly cannotWait: boolean;
  readonly fileOpen: boolean;
}

export interface Bystander {
  /** The files of a family's several children, in the order of their names; none where there is only one. */
  readonly children: readonly SeenFile[];
  /** The child it is about, as far as any was named. */
  readonly which: number | 'none' | null;
  readonly opened: boolean;
  readonly over: boolean;
  readonly enrolled: boolean;
  /** The family's file has not been confirmed yet, so nothing in it is known. */
  readonly fileOpen: boolean;
  readonly kind: TubeKind | null;
  /** Which tube one half out is, as far as anybody said. */
  readonly halfOutOf: TubeKind | null;
  /** It never came out, by what is wrong with it. */
  readonly inPlace: InPlace | null;
  readonly tract: DateRange | 'unknown' | null;
  readonly weight: Weight | null;
  readonly bareWeight: number | null;
  /** The line repeated the weight in doubt, and it was told again. */
  readonly weightToldAgain: boolean;
  readonly born: DateRange | null;
  readonly cameOutAtMs: number | 'unknown' | null;
  readonly ownTube: OwnTubeAnswer | null;
  readonly kit: KitAnswer | null;
  readonly strips: YesNo | null;
  readonly latex: boolean;
  readonly cannotWait: boolean;
  /** The list of danger signs was sent. */
  readonly signsSent: boolean;
  readonly unwell: 'unasked' | 'well' | 'unread';
  /** A danger: `named` by a sign, or a plain yes, which alone can be taken back. */
  readonly danger: 'plain' | 'named' | null;
  readonly warning: boolean;
  /** A nurse sent the child in. */
  readonly sentIn: boolean;
  readonly tube: TubeSeen | null;
  readonly triesFailed: number;
  readonly outAgain: boolean;
  /** The question the last message asked, as far as any did. */
  readonly open: QuestionKey | null;
  /** The sign being clarified. */
  readonly sign: Sign | null;
  /** The open question only makes another one clear. */
  readonly clarifying: 'unit' | 'doubt' | 'how' | 'last-seen' | 'sign' | 'trouble' | null;
  readonly standing: Disposition | null;
  readonly standingReason: string | null;
  /** Unreadable answers in a row to the open question. */
  readonly unread: number;
  /** Reasons a nurse was paged for in this case, sorted. */
  readonly paged: readonly string[];
  /** A nurse was paged for silence since the last text. */
  readonly silencePaged: boolean;
  readonly aftercare: 'use' | 'own-tube' | 'go-in' | null;
  /** Ids of the timers that run, sorted. */
  readonly timers: readonly string[];
}

const nothingOnFile: SeenFile = {
  kind: null,
  tract: null,
  weight: null,
  born: null,
  latex: false,
  cannotWait: false,
  fileOpen: false,
};

/** One child's file as it is read. */
function seen(file: FamilyFile): SeenFile {
  const dated = (date: string | null): DateRange | null => (date === null ? null : { earliest: date, latest: date });
  return {
    kind: file.tubeKind === 'unknown' ? null : file.tubeKind,
    tract: dated(file.firstPlaced),
    weight: file.weightKg === null ? null : { kg: file.weightKg },
    born: dated(file.born),
    latex: file.latexAllergy ?? false,
    cannotWait: file.cannotWait != null,
    fileOpen: true,
  };
}

/** A bystander before the first text, with the family's file in hand or none. */
export function atTheStart(file: FamilyFile | null): Bystander {
  const children = file === null ? [] : [file, ...(file.siblings ?? [])].map(seen);
  const [only] = children;
  const several = children.length > 1;
  const { kind, tract, weight, born, latex, cannotWait, fileOpen } =
    only === undefined || several ? nothingOnFile : only;
  return {
    children: several ? children : [],
    which: null,
    opened: false,
    over: false,
    enrolled: file !== null,
    fileOpen,
    kind,
    halfOutOf: null,
    inPlace: null,
    tract,
    weight,
    bareWeight: null,
    weightToldAgain: false,
    born,
    cameOutAtMs: null,
    ownTube: null,
    kit: null,
    strips: null,
    latex,
    cannotWait,
    signsSent: false,
    unwell: 'unasked',
    danger: null,
    warning: false,
    sentIn: false,
    tube: null,
    triesFailed: 0,
    outAgain: false,
    open: null,
    sign: null,
    clarifying: null,
    standing: null,
    standingReason: null,
    unread: 0,
    paged: [],
    silencePaged: false,
    aftercare: null,
    timers: [],
  };
}

/** Whose numbers hold, and when; the site's zone decides which day it is. */
export interface Setting {
  readonly clinical: Clinical;
  readonly timeZone: string;
}

const dayMs = 86_400_000;
const days = new Map<string, number>();

/** The site's day number at `atMs`, by the platform's own calendar. */
export function dayNumber(atMs: number, timeZone: string): number {
  const hour = `${timeZone} ${Math.floor(atMs / 900_000)}`;
  const known = days.get(hour);
  if (known !== undefined) return known;
  const date = new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(atMs);
  const day = Date.parse(date) / dayMs;
  days.set(hour, day);
  return day;
}

export type TractClass = 'unasked' | 'unknown' | 'too-young' | 'nearly' | 'young' | 'usable';

/** The tract by the youngest age it can have; strictly more than the setting is usable. */
export function tractClass(b: Bystander, setting: Setting, atMs: number): TractClass {
  const { tract } = b;
  if (tract === null) return 'unasked';
  if (tract === 'unknown') return atMostAsOldAsTheChild(b, setting, atMs);
  return classOfAge(Date.parse(tract.latest) / dayMs, setting, atMs);
}

/** A tract of unknown age is no older than its child. */
function atMostAsOldAsTheChild({ born }: Bystander, setting: Setting, atMs: number): TractClass {
  if (born === null || born.earliest === null) return 'unknown';
  const atMost = classOfAge(Date.parse(born.earliest) / dayMs, setting, atMs);
  return atMost === 'usable' ? 'unknown' : atMost;
}

function classOfAge(since: number, { clinical, timeZone }: Setting, atMs: number): TractClass {
  const age = dayNumber(atMs, timeZone) - since;
  if (age < clinical.noInsertionUnderDays) return 'too-young';
  if (age < clinical.cautiousUnderDays) return 'nearly';
  return age > clinical.tractUsableAfterDays ? 'usable' : 'young';
}

export type Band = 'under-3' | '3' | 'over-3' | 'unknown';

export function bandOf(weight: Weight): Band {
  if (weight === 'unknown') return 'unknown';
  if ('band' in weight) return weight.band;
  return weight.kg < 3 ? 'under-3' : weight.kg > 3 ? 'over-3' : '3';
}

/** Nothing may go in: too young a tract, or of unknown age in a child under 3 kg. */
export function nothingGoesIn(b: Bystander, setting: Setting, atMs: number): boolean {
  const tract = tractClass(b, setting, atMs);
  return tract === 'too-young' || (tract === 'unknown' && b.weight !== null && bandOf(b.weight) === 'under-3');
}

/** Fever is a danger unless the child is surely three months old: by its birth, or by more than 6 kg. */
export function feverIsDanger({ born, weight }: Bystander, { timeZone }: Setting, atMs: number): boolean {
  if (born === null) return !(weight !== null && weight !== 'unknown' && 'kg' in weight && weight.kg > 6);
  const birth = new Date(born.latest);
  const later = Date.UTC(birth.getUTCFullYear(), birth.getUTCMonth() + 3, birth.getUTCDate());
  return dayNumber(atMs, timeZone) < later / dayMs;
}

export type ReadingClass = 'none' | 'pass' | 'after-feed' | 'high';

/** A reading counts at its upper end, raised to the strip's next step; at the top of the strip it has no upper end. */
export function readingClass(reading: PhReading | null, { clinical }: Setting): ReadingClass {
  if (reading === null) return 'none';
  const thousandth = (ph: number) => Math.round(ph * 1000);
  const step = thousandth(clinical.phStripStep);
  const upper = Math.ceil(thousandth(reading.high) / step) * step;
  if (upper >= thousandth(clinical.phStripTop)) return 'high';
  if (upper < thousandth(clinical.phLimit)) return 'pass';
  if (clinical.phAfterFeed === 'off' || upper > thousandth(clinical.phAfterFeed)) return 'high';
  return 'after-feed';
}

/** The reading that counts now passes: by itself, or first of all, after a feed, looking right, and easily in. */
export function readingHolds({ tube }: Bystander, setting: Setting): boolean {
  if (tube === null || !tube.contents) return false;
  const reading = readingClass(tube.reading, setting);
  if (reading === 'pass') return true;
  return (
    reading === 'after-feed' &&
    tube.recheck === 'none' &&
    tube.fed === 'yes' &&
    tube.looks === 'yes' &&
    tube.how === 'easy'
  );
}

export function tooLongOut({ cameOutAtMs }: Bystander, { clinical }: Setting, atMs: number): boolean {
  if (cameOutAtMs === null) return false;
  return cameOutAtMs === 'unknown' || cameOutAtMs > atMs || atMs - cameOutAtMs > clinical.outTooLongHours * 3_600_000;
}

/** Only one try: the tract nearly too young, out too long, or out again. */
export function oneTryOnly(b: Bystander, setting: Setting, atMs: number): boolean {
  return b.outAgain || tractClass(b, setting, atMs) === 'nearly' || tooLongOut(b, setting, atMs);
}
