/** The line as the rest of the house sees it: it hears a text, answers it for good or not at all, and comes back in time. */
import type { PublicFacts } from '#machines/case.ts';
import type { DueWhat, MachineName } from '#machines/effects.ts';
import type { Disposition, FamilyFile, LanguageCode, PageLevel, QuestionKey } from '#machines/facts.ts';
import type { MessageKind } from '#src/carrier/port.ts';
import type { CallPlan, KeptCall } from './callPlan.ts';
import type { HeardCall } from './calls.ts';
import type { KeyAnswer, PressedKey } from './keys.ts';
import type { OpenedMedia } from './media.ts';
import type { Pause } from './pause.ts';
import type { CallKey } from './takeCall.ts';

export type Family = FamilyFile & { readonly language: LanguageCode };

/** A family's file, with the phones it has beside the one it is enrolled by, E.164. */
export type Enrolment = Family & { readonly phones?: readonly string[] };

/** An inbound text. `id` is the carrier's, unique on the whole line; `cause` names the request that brought it. */
export interface HeardText {
  /** E.164. */
  readonly from: string;
  readonly body: string;
  /** A call is heard as a text without words. */
  readonly kind?: MessageKind;
  readonly id: string;
  /** Where the carrier has the pictures and voice notes that came with it. */
  readonly media?: readonly string[];
  /** When it was said, epoch ms, where the line hears of it later: its times are counted from then. */
  readonly saidAtMs?: number;
  readonly cause: string;
}

/** A message that left the line; `at` is ISO 8601 with the site's offset. */
export interface Sent {
  readonly to: string;
  readonly body: string;
  readonly at: string;
  readonly kind: MessageKind;
}

export interface ThreadEntry {
  readonly direction: 'in' | 'out';
  readonly body: string;
  readonly at: string;
  readonly kind: MessageKind;
}

/** A case as the public interface shows it, with the active states for the map and the protocol it runs on. */
export interface CaseReport {
  readonly id: string;
  readonly asking: QuestionKey | null;
  readonly disposition: Disposition | null;
  readonly facts: PublicFacts;
  readonly pages: readonly {
    readonly to: string;
    readonly level: PageLevel;
    readonly at: string;
    readonly takenAt: string | null;
  }[];
  readonly due: readonly { readonly what: DueWhat; readonly at: string }[];
  readonly states: { readonly [M in MachineName]: readonly string[] };
  /** Played for practice. */
  readonly rehearsal: boolean;
  /** Content hash of the protocol the case began with. */
  readonly protocol: string;
}

/** What a practice line goes back to. */
export interface Seeds {
  readonly families: readonly (Enrolment & { readonly number: string })[];
}

/** What a carrier's status callback says of a message we sent (`Outgoing.id`). */
export type Callback = 'accepted' | 'delivered' | 'refused';

export interface Line {
  /** A key pressed in a call of the line's; what the call goes on with. */
  pressKey(key: PressedKey): Promise<KeyAnswer>;
  /** Practice only: a key pressed in the newest call to this phone. */
  pressInNewestCall(key: Omit<PressedKey, 'messageId' | 'id'>): Promise<KeyAnswer>;
  /** A call to the line, in one transaction; a repeated id changes nothing. Null where it could not be settled what is spoken. */
  hearCall(call: HeardCall): Promise<CallPlan | null>;
  /** A call that was heard, or null. */
  keptCall(id: string): Promise<KeptCall | null>;
  /** A key of somebody who was rung by such a call; whether the two are connected. */
  takeCall(key: CallKey): Promise<boolean>;
  /** A picture or voice note by the last part of the link a nurse was sent, or null. */
  openMedia(token: string): Promise<OpenedMedia | null>;
  /** Answers one text in one transaction; a repeated id changes nothing. Rejects only if nothing could be kept at all. */
  hear(text: HeardText): Promise<void>;
  /** Fires all that is due now and carries all that is queued, until nothing is left. What it sends has this cause. */
  settle(cause: string): Promise<void>;
  /** All that left the line because of one request, in order. */
  sentBecauseOf(cause: string): Promise<Sent[]>;
  thread(number: string): Promise<ThreadEntry[]>;
  newestCase(number: string): Promise<CaseReport | null>;
  /** Practice only: the clock goes from due time to due time up to `toMs`, firing and carrying. Refuses to go back. */
  advance(toMs: number, cause: string): Promise<void>;
  /** Epoch ms. */
  now(): Promise<number>;
  /** Who stopped the advice, or null. */
  pause(): Promise<Pause | null>;
  enrol(number: string, family: Enrolment): Promise<void>;
  /** The enrolled families, for the practice page to choose from, in the order of their numbers. */
  families(): Promise<readonly { readonly number: string; readonly child: string | null }[]>;
  /** Practice only: everything back to the seeds, the clock set (forward or back). */
  reset(nowMs: number, seeds: Seeds): Promise<void>;
  /** A carrier's status callback; an id it does not know is ignored. */
  noteFate(messageId: string, fate: Callback, carrierId: string | null): Promise<void>;
  start(): Promise<void>;
  /** Takes no new work, lets running turns and sends end. */
  stop(): Promise<void>;
}
