/** What the line can say to a caregiver: a key and typed parameters, never words. `src/wording` turns each into text. */

import type { Unclear } from './events.ts';
import type { DateRange, InPlace, PhReading, QuestionKey, Sign, TubeKind, Weight } from './facts.ts';

/** Facts to repeat back, so that a misreading is seen. */
export interface NotedFacts {
  readonly tubeKind?: TubeKind;
  readonly firstPlaced?: DateRange;
  readonly weight?: Weight;
  readonly cameOutAtMs?: number;
  /** The own tube was put back unasked: nothing through it yet. */
  readonly backIn?: true;
  readonly ph?: PhReading;
  readonly latexAllergy?: true;
}

/** A short sentence put before the main text of the same message. */
export type Preface =
  | { readonly key: 'noted'; readonly facts: NotedFacts }
  /** The answer was not understood; the question follows once more. */
  | { readonly key: 'notUnderstood'; readonly why: Unclear }
  /** Given up on an answer: a nurse is called about it, and the line goes on. */
  | { readonly key: 'goesToNurse' }
  | { readonly key: 'nurseCalled' }
  /** A picture or voice note was kept for the nurse; it is never a reading. */
  | { readonly key: 'mediaKept' }
  /** An answer to the nurse's own question went to her; it answers none of the line's. */
  | { readonly key: 'passedOn'; readonly nurse: string }
  /** A reading sent while the recheck waits is noted, not counted. */
  | { readonly key: 'earlyReading' }
  | { readonly key: 'hourOver' }
  /** Another child was named too: the line goes on for one only, and a nurse is called. */
  | { readonly key: 'oneChild' }
  | { readonly key: 'cleared' }
  /** It came out again: what was read and allowed before no longer counts. */
  | { readonly key: 'startOver' }
  | { readonly key: 'feverOrWarning' }
  /** The own tube told to be whole turned out a GJ by its long inside part. */
  | { readonly key: 'longInside' };

export type HoldReason =
  | 'hard'
  | 'no-strips'
  | 'no-contents'
  | 'unread'
  | 'second-high'
  | 'not-secured'
  | 'tube-problem'
  | InPlace;
export type GoInReason =
  | 'tract-too-young'
  | 'kind'
  | 'tract'
  | 'half-out'
  | 'latex'
  | 'no-kit'
  | 'not-shown'
  | 'will-not-go-in'
  | 'warning'
  | 'second-high'
  | 'cannot-wait'
  | 'nobody-answered'
  | 'unwell-unread'
  | 'burst-own'
  | 'nurse';

/** How a closed case was left: the child on its way, the tube in use, or nothing to go through one yet. */
export type Left = 'go-in' | 'in-use' | 'held';

/** What the desk of the emergency department needs to see. */
export interface Card {
  readonly tubeKind: TubeKind | null;
  readonly cameOutAtMs: number | null;
  /** What holds the stoma now. */
  readonly inside: 'own' | 'temporary' | 'half-out' | 'in-place' | 'nose' | 'nothing';
  /** Whether the placement was confirmed by a reading that passed. */
  readonly checked: boolean;
  readonly lastReading: PhReading | null;
  readonly latexAllergy: boolean;
  readonly cannotWait: string | null;
}

/** How a rehearsal ended: it came to its end, by silence, by a word, by STOP, by a real case on another phone, by a paused line. */
export type RehearsalEnd = 'done' | 'quiet' | 'asked' | 'elsewhere' | 'paused';

export interface Says {
  // Safety
  /** The first answer, in two segments: danger, no help sent, stop feed, cover, keep the tube, danger signs yes or no. */
  opening: Record<never, never>;
  /** The same where a tube is in: leave it in, nothing through it. */
  openingTubeIn: Record<never, never>;
  /** The danger signs asked again, short. */
  askUnwell: Record<never, never>;
  /** One question about a sign said in a small or doubtful way; yes means it is a danger or warning. */
  clarifySign: { readonly sign: Sign; readonly tubeIn: boolean };
  /** A text in use that nobody could read: is something wrong with the child or the tube? */
  askTrouble: Record<never, never>;
  /** Emergency number now, nothing by tube or mouth. */
  emergency: { readonly signs: readonly Sign[] };
  emergencyStill: Record<never, never>;
  /** Help was called: what to do till it comes. */
  emergencyCalled: Record<never, never>;
  // Facts
  /** Whether somebody texts about this child already: its first name and the last four digits of a parent's phone, or no. */
  askWho: Record<never, never>;
  /** Which of the family's children it is; the names are the shell's. */
  askWhichChild: Record<never, never>;
  confirmFile: {
    readonly child: string | null;
    readonly tubeKind: TubeKind | null;
    readonly firstPlaced: DateRange | null;
    readonly weight: Weight | null;
  };
  askTubeKind: Record<never, never>;
  /** The same by looking: how many ports, how long the inside part. */
  askTubeKindByLook: Record<never, never>;
  askFirstPlaced: Record<never, never>;
  // Own tube
  askOwnTube: Record<never, never>;
  /** The same of an own tube that is back in: was it whole, its balloon good? */
  askOwnTubeIn: Record<never, never>;
  /** Wash, try the balloon outside the body and empty it, put it back gently, hold with tape; easily, pushed, or not in? */
  ownTubeSteps: { readonly oneTry: boolean };
  /** Burst but complete, no kit: wash, one gentle try, tape, balloon flat, never used. */
  ownTubeAsHolderSteps: Record<never, never>;
  askHowIn: Record<never, never>;
  // Temporary tube
  askKit: { readonly stranger: boolean; readonly latexAllergy: boolean };
  askWeight: Record<never, never>;
  askWeightUnit: { readonly bare: number };
  /** A weight that hardly fits the child's age, repeated. */
  askWeightAgain: { readonly told: { readonly kg: number } | { readonly bare: number } };
  insertLayOut: Record<never, never>;
  /** Names the insertion length, the only centimetres a caregiver reads. */
  insertMeasure: { readonly lowCm: number; readonly highCm: number };
  /** Gently in, taped, balloon flat, mark at the skin; asks how it went. */
  insertPutIn: { readonly oneTry: boolean; readonly stopAtAnyResistance: boolean };
  /** Second try, with the smaller tube if there is one; asks how it went. */
  secondTry: { readonly lowCm: number; readonly highCm: number };
  askTubeIn: Record<never, never>;
  askCameOut: Record<never, never>;
  askLastSeenIn: Record<never, never>;
  // Placement
  askAfterIn: Record<never, never>;
  askStrips: Record<never, never>;
  /** `attempt` from 1; later ones say to turn side to side, to sit up, that air may come first. */
  askContents: { readonly attempt: number; readonly newStrip: boolean };
  askPh: Record<never, never>;
  askFedLately: Record<never, never>;
  askLooks: Record<never, never>;
  /** Nothing by tube or mouth; the line comes back then; tell now what cannot wait. */
  recheckWait: { readonly dueAtMs: number };
  recheckStill: { readonly dueAtMs: number };
  /** Flush, fill the balloon through the small side valve, pull snug, new mark, tape; done? */
  secureSteps: { readonly flushMl: number; readonly balloonMostMl: number; readonly tube: 'own' | 'temporary' };
  secureAgain: { readonly balloonMostMl: number };
  // Close
  use: { readonly tube: 'own' | 'temporary'; readonly stayDays: number };
  useStill: { readonly tube: 'own' | 'temporary' };
  hold: { readonly reason: HoldReason; readonly clinicArranges: boolean };
  holdStill: Record<never, never>;
  /** The same of a tube that never came out. */
  leaveInStill: Record<never, never>;
  nurse: { readonly reason: 'nose-tube' };
  nurseStill: Record<never, never>;
  /** Emergency department of the tube team's hospital (over an hour away: the nearest), nothing through the tube. */
  goIn: { readonly reason: GoInReason; readonly inside: Card['inside'] };
  goInCard: Card;
  /** `told` is what the first text to go in said; null where only that the child is on the way is known. */
  goInStill: { readonly told: Says['goIn'] | null };
  // Beside the way
  /** One nudge on an unanswered question. */
  nudge: { readonly asking: QuestionKey };
  /** Read out by telephone when a recheck stays unanswered. */
  recheckCall: Record<never, never>;
  /** Nobody took the page; `advice` is what to do meanwhile. */
  pageUnanswered: { readonly advice: 'carry-on' | 'stay' };
  /** A nurse is being called, and by when one should have answered. */
  pageBegan: { readonly mostMinutes: number };
  pageTaken: { readonly nurse: string };
  /** Her own words, signed with her first name. */
  relay: { readonly nurse: string; readonly words: string };
  /** The line puts her through by telephone: whose number will ring, E.164. */
  ringSoon: { readonly nurse: string; readonly number: string };
  /** She had the case and gave it to the next person on call. */
  pagePassed: { readonly nurse: string };
  /** Asks in plain words what to correct. */
  askCorrection: Record<never, never>;
  stopped: Record<never, never>;
  help: Record<never, never>;
  /** To every phone of the case: another one is in it now. */
  phoneJoined: { readonly lastFour: string };
  /** How it was left still holds; `asks`, to a text soon after the close: whether the tube is out now. */
  closedByNurse: { readonly left: Left; readonly asks: boolean };
  /** Spoken to a family that rings: the emergency number first; then a nurse is rung, or it is asked to text. */
  callAnswer: { readonly next: 'ring' | 'text' };
  /** Spoken when nobody on call answered the family's call. */
  callUnanswered: Record<never, never>;
  /** People have stopped the line's advice: the emergency number, nothing through the tube, a nurse will ring. */
  paused: Record<never, never>;
  // Rehearsal
  /** What it is, how it ends, the emergency number; `nurse` where one asks for it. */
  rehearsalBegan: { readonly nurse: string | null };
  /** Here a nurse would be called; nobody is. */
  rehearsalPage: Record<never, never>;
  /** From now on a tube out is real. */
  rehearsalOver: { readonly how: RehearsalEnd };
  /** What was practised is over, as the last text may be real; the real case has been answered. */
  rehearsalReal: Record<never, never>;
  // Before a case
  askAboutTube: Record<never, never>;
  notAboutTube: Record<never, never>;
  thanks: Record<never, never>;
  // Aftercare
  askFirstFeed: Record<never, never>;
  firstFeedWell: Record<never, never>;
  /** Not fed yet: how to, and that the line asks again. */
  firstFeedLater: Record<never, never>;
  askNextDay: Record<never, never>;
  nextDayWell: Record<never, never>;
  askClinic: Record<never, never>;
  clinicDone: Record<never, never>;
  clinicNotYet: { readonly tube: 'own' | 'temporary' };
  /** Asked for the last time, and it still does not know: a nurse is told. */
  clinicStillNot: Record<never, never>;
  stayWarning: { readonly daysLeft: number };
  stayOver: Record<never, never>;
  askArrived: Record<never, never>;
  arrivedYes: Record<never, never>;
  arrivedNo: Record<never, never>;
  /** The day after the emergency department: is the child well, and was the tube seen to? */
  askOutcome: Record<never, never>;
  outcomeWell: Record<never, never>;
  outcomeNotWell: Record<never, never>;
}

export type SayKey = keyof Says;
export type Say = {
  [K in SayKey]: { readonly key: K; readonly params: Says[K]; readonly preface: readonly Preface[] };
}[SayKey];
