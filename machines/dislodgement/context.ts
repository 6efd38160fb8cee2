/** What the conversation remembers: facts and counts only, read-only and small. */
import type {
  DateRange,
  Disposition,
  FamilyFile,
  InPlace,
  KitAnswer,
  OwnTubeAnswer,
  PageReason,
  PhReading,
  QuestionKey,
  Sign,
  TubeKind,
  Weight,
  WeightBand,
  YesNo,
  YesNoUnknown,
} from '../facts.ts';
import type { Protocol } from '../protocol/settings.ts';
import { daysBetween } from '../rules/calendarDay.ts';
import { severalChildren } from '../rules/children.ts';
import type { GoInReason, HoldReason, NotedFacts, Preface } from '../says.ts';

/** What the caregiver or the file told. Null: not asked yet. */
export interface Facts {
  readonly tubeKind: TubeKind | null;
  /** Which tube one half out is, as far as it was told or filed. */
  readonly halfOutOf: Exclude<TubeKind, 'half-out' | 'nose'> | null;
  /** The tube never came out: nothing may be put in, whatever its kind. */
  readonly inPlace: InPlace | null;
  readonly firstPlaced: DateRange | 'unknown' | null;
  readonly weight: Weight | null;
  /** A weight told without its unit, where the unit changes the band. */
  readonly bareWeight: number | null;
  /** A weight that hardly fits the child's age was asked about, and told again. */
  readonly weightToldAgain: boolean;
  readonly born: DateRange | null;
  readonly cameOutAtMs: number | 'unknown' | null;
  readonly ownTube: OwnTubeAnswer | null;
  readonly kit: KitAnswer | null;
  readonly latexAllergy: boolean;
  readonly strips: YesNo | null;
  /** A medicine or feed that must not be missed, in the caregiver's or the file's words. */
  readonly cannotWait: string | null;
}

/** One child's file as facts still to be confirmed; `settled` where it holds none that a question asks for. */
export interface Filed {
  readonly facts: Pick<Facts, 'tubeKind' | 'firstPlaced' | 'weight' | 'born' | 'latexAllergy' | 'cannotWait'>;
  readonly file: 'unconfirmed' | 'settled';
}

/** The tube that is in now, and all that was found out about it; all of it void when the tube comes out. */
export interface Placed {
  readonly tube: 'own' | 'temporary';
  /** Epoch ms: how long the stoma was empty is counted up to here. */
  readonly atMs: number;
  /** The band its length was told for; null for the own tube, which goes in as far as it was. */
  readonly lengthBand: WeightBand | 'unknown' | null;
  /** The allergy became known after the tube was chosen. */
  readonly maybeLatex: boolean;
  /** Never to be used until it is out or a person decides: something was wrong with it, or an answer that could not be read. */
  readonly stopped: 'tube-problem' | 'unread' | null;
  /** When it was first allowed, epoch ms: the stay counts from here. */
  readonly allowedAtMs: number | null;
  /** Null while only "it is in" was told. */
  readonly how: 'easy' | 'hard' | null;
  /** A burst own tube only holds the stoma open. */
  readonly holderOnly: boolean;
  readonly afterIn: 'unasked' | 'well';
  readonly contentsTried: number;
  readonly contents: boolean;
  readonly reading: PhReading | null;
  readonly fedLately: YesNoUnknown | null;
  readonly looks: YesNoUnknown | null;
  readonly recheck: 'none' | 'waiting' | 'due';
  readonly recheckDueAtMs: number | null;
  /** It was held as hard to get in: from then on only a nurse's clearance makes it anything else. */
  readonly heldHard: boolean;
  readonly cleared: boolean;
  /** It was changed or taken back while a nurse held the tube by it: news to her. */
  readonly readingCorrected: boolean;
  /** A reading was taken back: the exception after a feed is for a first reading. */
  readonly retested: boolean;
  readonly securedTried: number;
  readonly secured: boolean;
}

/** Where the case came to rest; cleared by whatever re-opens it. */
export type Outcome =
  | { readonly to: 'go-in'; readonly reason: GoInReason }
  | { readonly to: 'hold'; readonly reason: HoldReason; readonly clinicArranges: boolean }
  | { readonly to: 'nurse' | 'use' | 'own-tube' };

export interface Context {
  /** Put in at every restore, never saved: a case keeps the id of the protocol it began with. */
  readonly protocol: Protocol;
  readonly facts: Facts;
  /** Whether the facts on file were confirmed; `none` for an unknown phone, and before it is known which child it is. */
  readonly file: 'none' | 'unconfirmed' | 'settled';
  /** The family's children where it has several, and which of them it is about. */
  readonly children: { readonly files: readonly Filed[]; readonly is: number | 'none' | null } | null;
  /** The caregiver named another child than before. */
  readonly childCorrected: boolean;
  /** Another child of the family was named beside the one it is about: its tube may be out too. */
  readonly otherChild: boolean;
  /**
   * Whether it may be the child of another open case, told by a phone that says who it is: to be asked, asked and not so, or not
   * known. Null: nothing says so.
   */
  readonly sameChild: 'ask' | 'none' | 'maybe' | null;
  readonly openingSaid: boolean;
  readonly unwell: 'unasked' | 'well' | 'unread';
  /** A sign said in a small or doubtful way, being clarified. */
  readonly clarify: Sign | null;
  /** Those that are asked about after it; one that is no more than a warning is not, once another is. */
  readonly clarifyAlso: readonly Sign[];
  /** A danger was told; `named` are its signs, none for a plain yes (which alone can be taken back). */
  readonly danger: { readonly named: readonly Sign[] } | null;
  readonly warning: boolean;
  /** Its signs by name, for the nurse; a case begun before they were kept has none. */
  readonly warningSigns?: readonly Sign[];
  /** A nurse sent the child in: `now`, until a tube that came out again may have to be held open on the way. */
  readonly sentIn: 'no' | 'now' | 'held-open';
  /** What cannot wait was told tonight, not only filed. */
  readonly cannotWaitTold: boolean;
  readonly askedLastSeen: boolean;
  readonly failedTries: number;
  readonly ownTried: boolean;
  readonly cameOutAgain: boolean;
  /** Which insertion steps were sent, so that a question is not answered by the whole lesson again. */
  readonly stepsSent: 'own' | 'own-holder' | 'temporary' | null;
  readonly placed: Placed | null;
  readonly outcome: Outcome | null;
  readonly disposition: Disposition | null;
  /** The outcome in the words last said, so that a later text is not answered by the whole of it again. */
  readonly said: Outcome | null;
  readonly aftercare: boolean;
  /** Nobody took the last climb of pages. */
  readonly unanswered: boolean;
  /** Unreadable answers to one question, in a row. */
  readonly unclear: { readonly key: QuestionKey; readonly count: number } | null;
  /** The question answered last; only the reader goes by it, to know what "sorry, I meant" takes back. */
  readonly answered: QuestionKey | null;
  /** Reasons that stand behind the facts as they are, and were paged. */
  readonly pagedFacts: readonly PageReason[];
  /** Reasons paged once, for as long as the same tube is in or out. */
  readonly pagedOnce: readonly PageReason[];
  readonly preface: readonly Preface[];
  /** Facts told unasked and not yet repeated back. */
  readonly unrepeated: NotedFacts;
}

export const noFacts: Facts = {
  tubeKind: null,
  halfOutOf: null,
  inPlace: null,
  firstPlaced: null,
  weight: null,
  bareWeight: null,
  weightToldAgain: false,
  born: null,
  cameOutAtMs: null,
  ownTube: null,
  kit: null,
  latexAllergy: false,
  strips: null,
  cannotWait: null,
};

/** A filed weight under 3 kg ages fast; older than this it is asked again. Common practice, no source. */
const lightWeightFreshDays = 7;

function filedWeight({ weightKg, weighedOn }: FamilyFile, openedOn: string): Weight | null {
  if (weightKg === null) return null;
  const isFresh = weighedOn !== null && daysBetween(weighedOn, openedOn) <= lightWeightFreshDays;
  return weightKg >= 3 || isFresh ? { kg: weightKg } : null;
}

/** What the file knows, as facts still to be confirmed. */
function filed(file: FamilyFile, openedOn: string): Filed {
  const facts: Filed['facts'] = {
    tubeKind: file.tubeKind === 'unknown' ? null : file.tubeKind,
    firstPlaced: file.firstPlaced === null ? null : { earliest: file.firstPlaced, latest: file.firstPlaced },
    weight: filedWeight(file, openedOn),
    born: file.born === null ? null : { earliest: file.born, latest: file.born },
    latexAllergy: file.latexAllergy ?? false,
    cannotWait: file.cannotWait ?? null,
  };
  const anything = facts.tubeKind !== null || facts.firstPlaced !== null || facts.weight !== null;
  return { facts, file: anything ? 'unconfirmed' : 'settled' };
}

/** No doubtful sign waits for its question. */
export const nothingToClarify = { clarify: null, clarifyAlso: [] } as const satisfies Partial<Context>;

/** A case with nothing told yet. `openedOn` is the date in the site's zone. */
export function freshContext(input: { protocol: Protocol; file: FamilyFile | null; openedOn: string }): Context {
  const several = input.file === null ? [] : severalChildren(input.file);
  const only = input.file === null || several.length > 0 ? null : filed(input.file, input.openedOn);
  return {
    protocol: input.protocol,
    facts: { ...noFacts, ...only?.facts },
    file: only?.file ?? 'none',
    children: several.length === 0 ? null : { files: several.map((child) => filed(child, input.openedOn)), is: null },
    childCorrected: false,
    otherChild: false,
    sameChild: null,
    openingSaid: false,
    unwell: 'unasked',
    ...nothingToClarify,
    danger: null,
    warning: false,
    sentIn: 'no',
    cannotWaitTold: false,
    askedLastSeen: false,
    failedTries: 0,
    ownTried: false,
    cameOutAgain: false,
    stepsSent: null,
    placed: null,
    outcome: null,
    disposition: null,
    said: null,
    aftercare: false,
    unanswered: false,
    unclear: null,
    answered: null,
    pagedFacts: [],
    pagedOnce: [],
    preface: [],
    unrepeated: {},
  };
}

/** The tube that is in; asking about one that is not is an impossible state. */
export function tubeIn({ placed }: Context): Placed {
  if (placed === null) throw new Error('no tube is in, so nothing is known about it');
  return placed;
}

/** Where the case rests; asking before it does is an impossible state. */
export function restsOn({ outcome }: Context): Outcome {
  if (outcome === null) throw new Error('a case rests on no outcome');
  return outcome;
}

type Inserted = Pick<Placed, 'tube' | 'how' | 'holderOnly' | 'atMs' | 'lengthBand'>;

/** A tube that has just gone in: nothing else is known of it yet. */
export function justPlaced(inserted: Inserted): Placed {
  return {
    ...inserted,
    maybeLatex: false,
    stopped: null,
    allowedAtMs: null,
    afterIn: 'unasked',
    contentsTried: 0,
    contents: false,
    reading: null,
    fedLately: null,
    looks: null,
    recheck: 'none',
    recheckDueAtMs: null,
    heldHard: false,
    cleared: false,
    readingCorrected: false,
    retested: false,
    securedTried: 0,
    secured: false,
  };
}
