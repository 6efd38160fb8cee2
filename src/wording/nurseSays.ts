/** What the line can say to a nurse's phone: a key and typed parameters, never words. */

import type { Resting } from '#machines/effects.ts';
import type { NurseFacts } from '#machines/events.ts';
import type {
  DateRange,
  Disposition,
  LanguageCode,
  PageLevel,
  PageReason,
  QuestionKey,
  Sign,
  TubeKind,
} from '#machines/facts.ts';
import type { TractVerdict } from '#machines/rules/tractAge.ts';
import type { Card, Left, RehearsalEnd } from '#machines/says.ts';

/** One case as a page shows it; null where it is not known. */
export interface NursePage {
  readonly level: PageLevel;
  readonly reasons: readonly PageReason[];
  /** The danger signs told by name. */
  readonly dangerSigns: readonly Sign[];
  readonly child: string | null;
  /** The case's short code, to tell two cases apart. */
  readonly code: string;
  /** The caregiver's number, to telephone. */
  readonly caregiver: string;
  readonly tubeKind: TubeKind | null;
  readonly tract: TractVerdict | null;
  readonly firstPlaced: DateRange | null;
  readonly inside: Card['inside'];
  readonly ph: number | null;
  readonly minutesOut: number | null;
  readonly disposition: Disposition | null;
  readonly language: LanguageCode;
  /** A medicine or feed that must not be missed, in the family's or the file's words. */
  readonly cannotWait: string | null;
  /** The warning signs told by name. */
  readonly warningSigns: readonly Sign[];
  /** The family's last words. */
  readonly words: string | null;
  /** What is in was hard to get in. */
  readonly hard: boolean;
  /** A nurse cleared it, and the family secures it now. */
  readonly cleared: boolean;
  /** The family opted out of texts: it was told nothing. */
  readonly optedOut: boolean;
  /** This person was called for it before. */
  readonly again: boolean;
  /** The rota names nobody for this place, so the fallback number is called. */
  readonly gap: boolean;
  /** It waits for her clearance, which is possible now. */
  readonly clearable: boolean;
}

/** How a text to a nurse names a case. */
export interface CaseName {
  readonly child: string | null;
  readonly code: string;
}

/** The morning handover as a text has it: what is pressing by name, the rest by number. */
export interface HandoverText {
  /** Epoch ms. */
  readonly atMs: number;
  /** The cases that press, then those to watch. */
  readonly pressing: readonly (CaseName & {
    readonly disposition: Disposition | null;
    readonly unanswered: boolean;
    /** The line gives this family no guidance. */
    readonly fault: boolean;
  })[];
  readonly cases: number;
  readonly tubes: number;
  /** Of the tube that has to come out first; null where none is counted. */
  readonly leastDaysLeft: number | null;
  readonly rechecks: number;
  readonly unanswered: number;
  readonly gaps: number;
  readonly clearances: number;
}

/** When two people stand in each other's place, epoch ms. */
export interface SwapTime {
  readonly fromMs: number;
  readonly toMs: number;
}

/** Who paused the line, and when, epoch ms. */
export interface PauseShown {
  readonly by: string;
  readonly atMs: number;
}

/** Why a rehearsal is not sent to a family. */
export type RehearsalRefusal = 'nobody-named' | 'not-found' | 'several' | 'open' | 'busy' | 'opted-out';

/** How a rehearsal went. */
export interface RehearsalResult {
  readonly child: string | null;
  readonly how: RehearsalEnd | 'stopped' | 'real';
  readonly disposition: Disposition | null;
  /** Questions of different kinds that were answered, and texts that could not be read. */
  readonly answered: number;
  readonly unread: number;
  /** The question it stopped at. */
  readonly asking: QuestionKey | null;
  /** What a nurse would have been called for, in the order it came. */
  readonly raised: readonly PageReason[];
}

/** A fact a nurse may correct. */
export type Fact = NurseFacts;

/** What she needs to identify the child and to act; null or absent where nobody told or filed it. */
export interface CaseDetails {
  readonly born: string | null;
  readonly firstPlaced: DateRange | null;
  readonly chartLast4: string | null;
  readonly tubeSize: string | null;
  readonly stemLengthCm: number | null;
  readonly fillVolumeMl: number | null;
  readonly acidReducer: boolean | null;
  readonly latexAllergy: boolean | null;
  readonly insertedHow: 'easy' | 'hard' | null;
  readonly weightKg: number | null;
  readonly failedTries: number;
  readonly fedLately: 'yes' | 'no' | 'unknown' | null;
  readonly cannotWait: string | null;
  /** The family's number, E.164. */
  readonly caregiver: string;
  readonly language: LanguageCode;
}

/** The words a nurse can be offered, in the order she is likely to want them. */
export const nurseOffers = [
  'TAKE',
  'PASS',
  'MORE',
  'TELL',
  'CALL',
  'CLEAR',
  'FACT',
  'GO IN',
  'CLOSE',
  'WRONG',
  'PRACTICE',
] as const;
export type NurseOffer = (typeof nurseOffers)[number];

export interface NurseSays {
  /** Situation, background, assessment, request; at most two segments; asks for TAKE. */
  page: NursePage;
  /** The same, read out by telephone. */
  pageCall: NursePage;
  /** Further news for the person who took the page. */
  news: CaseName & {
    readonly level: PageLevel;
    readonly reason: PageReason;
    readonly ph: number | null;
    readonly disposition: Disposition | null;
    readonly words: string | null;
  };
  /** Where her case has come to rest without a page. */
  stands: CaseName & { readonly disposition: Resting; readonly tubeIn: 'own' | 'temporary' | null };
  /** `clear` are those of them that she could clear, `optedOut` those whose family gets no texts. */
  taken: {
    readonly cases: readonly CaseName[];
    readonly clear: readonly CaseName[];
    readonly optedOut: readonly CaseName[];
  };
  /** Her words were not sent: the family opted out. */
  notSent: CaseName;
  /** Passed to the next person; or, `already`, the page had gone on from her. */
  passed: CaseName & { readonly already: boolean };
  /** Several cases, and she named none; `word` is what to text with the code. */
  which: { readonly word: string; readonly cases: readonly CaseName[] };
  noCase: Record<never, never>;
  /** A code beside her word that is no open case of hers. */
  noSuchCase: { readonly code: string; readonly cases: readonly CaseName[] };
  /** Somebody else has it. */
  notYours: CaseName & { readonly nurse: string };
  /** Her TAKE of a case another has; `mayTake` where she is on call and a YES takes it over. */
  heldBy: CaseName & { readonly nurse: string; readonly sinceMs: number; readonly mayTake: boolean };
  /** To whoever had it before. */
  takenOn: CaseName & { readonly nurse: string };
  more: CaseName & CaseDetails;
  /** The family's own last words. */
  moreSaid: CaseName & { readonly texts: readonly string[] };
  sendInConfirm: CaseName;
  sentIn: CaseName;
  sentInAlready: CaseName & { readonly disposition: 'emergency' | 'go-in' };
  factConfirm: CaseName & { readonly fact: Fact };
  /** `asked`: the family is asked again, as the fact would allow more than was known. */
  factTaken: CaseName & {
    readonly fact: Fact;
    readonly asked: boolean;
    /** What the family was told because of it, where that is new. */
    readonly told: Disposition | null;
    /** What it calls a nurse for; `paged` where that is graver than what she took it for, so that everybody is called afresh. */
    readonly raised: readonly PageReason[];
    readonly paged: boolean;
  };
  factNot: Record<never, never>;
  /** Her words went to the family. */
  told: CaseName;
  tellTooLong: { readonly most: number };
  /** The family reads another language: as it is, or a call with an interpreter. */
  tellConfirm: CaseName & { readonly language: LanguageCode };
  /** What the family texted while she writes with it. */
  reply: CaseName & { readonly words: string };
  calling: CaseName;
  /** Spoken when she answers the call that puts her through. */
  bridgeCall: CaseName;
  /** Spoken when she answers a family's own call; null where its number is withheld. */
  familyRings: { readonly family: CaseName | null };
  /** Spoken when she rings the line: she is put through to the family of the one case she has. */
  callThrough: CaseName;
  /** Spoken when she rings the line and has none, or several. */
  callWords: { readonly cases: number };
  /** A picture or voice note of the family, by a link that opens for an hour; null where it could not be kept. */
  mediaCame: CaseName & { readonly sound: boolean; readonly link: string | null };
  clearedByOther: CaseName & { readonly nurse: string };
  reported: CaseName;
  nothingToTake: Record<never, never>;
  /** A clearance is confirmed once: what is held, its reading, what YES allows. */
  clearConfirm: CaseName & { readonly tubeKind: TubeKind | null; readonly ph: number | null };
  cleared: CaseName;
  /** She said no to what was asked back, her yes came too late for it, or what she texted instead was not read. */
  dropped: CaseName & { readonly why: 'no' | 'late' | 'unread' };
  /** `cases` are those held, or those that could be cleared. */
  clearNotNow: { readonly why: 'nothing-held' | 'not-hard' | 'several'; readonly cases: readonly CaseName[] };
  /** `followUp`: check-ups of a tube in use, or of an arrival, end with it; `left`: what the family has to go on doing. */
  closeConfirm: CaseName & { readonly followUp: boolean; readonly left: Left };
  closed: CaseName;
  /** Not understood, or a yes or no to nothing: what she can do now. */
  notSure: { readonly can: readonly NurseOffer[] };
  /** What waited for a yes is gone: nothing happens. */
  nothingPending: Record<never, never>;
  /** To the day team, at the site's hour. */
  handover: HandoverText;
  /** The same to whoever is on call, because the day team has not said that it has it. */
  handoverAgain: HandoverText;
  /** The handover could not be put together. */
  handoverFailed: Record<never, never>;
  handoverTaken: Record<never, never>;
  /** An acknowledgement with no handover waiting for one. */
  nothingHandedOver: Record<never, never>;
  /** To the person who is asked to stand in. */
  swapAsk: { readonly asker: string } & SwapTime;
  swapAsked: { readonly other: string } & SwapTime;
  /** To both. */
  swapAgreed: { readonly other: string } & SwapTime;
  /** To who asked, and to who said no. */
  swapRefused: { readonly other: string };
  swapDeclined: { readonly asker: string };
  /** Neither of the two is on call then. */
  swapNobody: { readonly other: string };
  /** It speaks of a swap and is not understood. */
  swapForm: Record<never, never>;
  /** A lead is asked back before the line is paused or resumed; `open` cases then have no guidance. */
  pauseConfirm: { readonly open: number };
  resumeConfirm: PauseShown;
  pausedNow: PauseShown;
  resumedNow: Record<never, never>;
  /** Paused or not, it was so already. */
  pausedAlready: PauseShown;
  notPaused: Record<never, never>;
  /** Only these may. */
  pauseLeads: { readonly leads: readonly string[] };
  /** A rehearsal went to this family, E.164. */
  rehearsalSent: { readonly child: string | null; readonly number: string };
  rehearsalNot: { readonly why: RehearsalRefusal };
  rehearsalResult: RehearsalResult;
  /** What she asked would advise the family, and the line is paused. */
  pausedNoAdvice: PauseShown;
  /** The nurse's own phone texted STOP: pages may no longer reach it. */
  stopped: Record<never, never>;
}

export type NurseSayKey = keyof NurseSays;
export type PauseKey =
  | 'pauseConfirm'
  | 'resumeConfirm'
  | 'pausedNow'
  | 'resumedNow'
  | 'pausedAlready'
  | 'notPaused'
  | 'pauseLeads'
  | 'pausedNoAdvice';
export type RehearsalKey = 'rehearsalSent' | 'rehearsalNot' | 'rehearsalResult';
export type SwapKey = Extract<NurseSayKey, `swap${string}`>;
export type HandoverKey = 'handover' | 'handoverAgain' | 'handoverFailed' | 'handoverTaken' | 'nothingHandedOver';
export type NurseSay = { [K in NurseSayKey]: { readonly key: K; readonly params: NurseSays[K] } }[NurseSayKey];
