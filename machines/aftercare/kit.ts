/** What aftercare is made of: its events, its facts, its effects, and when it comes back. */
import { assertEvent, assign, setup } from 'xstate';
import type { DelayedEvent, Stamp, TextEvent } from '#machines/events.ts';
import type { PageReason, QuestionKey } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import type { Site } from '#machines/protocol/site.ts';
import { afterQuietHoursMs } from '#machines/rules/quietHours.ts';
import type { Say } from '#machines/says.ts';
import { type Asked, type FollowUp, followUps, nextFollowUp, overtakenBy } from './schedule.ts';
import { dayMs, limitAtMs, nextMarkAtMs } from './stayLimit.ts';

export type AftercareEvent =
  | DelayedEvent
  | (Stamp & { readonly type: 'begin.use'; readonly tube: 'own' | 'temporary'; readonly sinceMs?: number })
  | (Stamp & { readonly type: 'begin.goIn' })
  /** The case has opened again: whatever was to follow no longer does. */
  | (Stamp & { readonly type: 'end' })
  | Extract<
      TextEvent,
      { type: 'answer.first-feed' | 'answer.next-day' | 'answer.clinic' | 'answer.arrived' | 'unclear' | 'correct' }
    >;

export interface AftercareContext extends Asked {
  readonly tube: 'own' | 'temporary' | null;
  /** Unreadable answers to the open question. */
  readonly unclear: number;
}

/** Nothing has begun: `beganAtMs` counts from the permission or the way in. */
export const nothingBegun = {
  tube: null,
  beganAtMs: 0,
  unclear: 0,
  open: null,
  askedAtMs: 0,
  settled: [],
} as const satisfies Omit<AftercareContext, 'clinical' | 'site'>;

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;

/** Silence at a question: one nudge after this, and after as long again it counts as silent. Common practice, no source. */
const silenceMs = hourMs;
/** How long a case whose questions are over still listens before it closes. Common practice, no source. */
const closeAfterMs = dayMs;

/** Time left until then; none where it is past. */
const untilMs = (dueMs: number, atMs: number) => Math.max(0, dueMs - atMs);

/** The kind of question a follow-up asks. */
export const questionOf = {
  'first-feed': 'first-feed',
  'first-signs': 'next-day',
  'later-signs': 'next-day',
  clinic: 'clinic',
  'clinic-again': 'clinic',
} as const satisfies Record<FollowUp, QuestionKey>;
export type Question = (typeof questionOf)[FollowUp];

/** The latest of its questions that was asked. */
function askedLast(context: AftercareContext, key: QuestionKey | null): FollowUp | null {
  const asked = followUps.filter(
    (one) => questionOf[one] === key && (one === context.open || context.settled.includes(one)),
  );
  return asked.at(-1) ?? null;
}

const including = (settled: readonly FollowUp[], more: readonly FollowUp[]) => [...new Set([...settled, ...more])];

/** What is settled once the open question is, too. */
const settledWithOpen = ({ settled, open }: AftercareContext) => including(settled, open === null ? [] : [open]);

export const kit = setup({
  types: {
    context: {} as AftercareContext,
    events: {} as AftercareEvent,
    input: {} as { readonly clinical: Clinical; readonly site: Site },
    meta: {} as { readonly asking: QuestionKey },
  },
  actions: {
    // Effects: they do nothing here; the case turns them into what the shell delivers.
    say: (_, _params: Say) => {},
    page: (_, _params: { readonly reason: PageReason }) => {},
    /** The child is not well with the tube in use: the conversation hears it as a warning sign. */
    notWell: (_, _params: Record<never, never>) => {},
    closeCase: (_, _params: Record<never, never>) => {},
    // Facts
    /** A permission that stands again, since the same time, does not ask again what was answered. */
    begin: assign(({ context }, { tube, atMs }: { readonly tube: AftercareContext['tube']; readonly atMs: number }) => {
      const { askedAtMs, settled } = atMs === context.beganAtMs ? context : nothingBegun;
      return { ...nothingBegun, tube, beganAtMs: atMs, askedAtMs, settled };
    }),
    /** The question that has come: it takes the place of the open one, and of those it overtakes. */
    askNext: assign(({ context, event }) => {
      const next = nextFollowUp(context, event.at);
      if (next === null) return {};
      const settled = including(settledWithOpen(context), overtakenBy(next.followUp));
      return { open: next.followUp, askedAtMs: event.at, settled };
    }),
    /** Asked again although it was answered. */
    askTakenBack: assign(({ context, event }) => {
      assertEvent(event, 'correct');
      return { open: askedLast(context, event.key), askedAtMs: event.at };
    }),
    settle: assign(({ context }) => ({ open: null, settled: settledWithOpen(context) })),
    /** A clinic that knows is not asked about again. */
    settleClinic: assign(({ context }) => ({
      open: null,
      settled: including(context.settled, ['clinic', 'clinic-again']),
    })),
    countUnclear: assign(({ context }) => ({ unclear: context.unclear + 1 })),
    resetUnclear: assign({ unclear: 0 }),
  },
  guards: {
    saysNo: ({ event }) => 'value' in event && event.value === 'no',
    saysLater: ({ event }) => 'value' in event && event.value === 'later',
    beginsOwn: ({ event }) => {
      assertEvent(event, 'begin.use');
      return event.tube === 'own';
    },
    isOwn: ({ context }) => context.tube === 'own',
    isUnclearAgain: ({ context }) => context.unclear > 0,
    isBeforeLimit: ({ context, event }) => event.at < limitAtMs(context.beganAtMs, context.clinical),
    nextAsks: ({ context, event }, params: { readonly key: Question }) => {
      const next = nextFollowUp(context, event.at);
      return next !== null && questionOf[next.followUp] === params.key;
    },
    /** The clinic is asked about for the second and last time. */
    isLastClinic: ({ context }) => context.open === 'clinic-again',
    /** An answer given before is taken back without a new one. */
    takesBack: ({ event }, params: { readonly key: QuestionKey }) => {
      assertEvent(event, 'correct');
      return event.key === params.key;
    },
    wasAsked: ({ context }, params: { readonly key: Question }) => askedLast(context, params.key) !== null,
  },
  delays: {
    /** To the next question; where none is left, to the end of listening. */
    untilNextQuestion: ({ context, event }) => {
      const next = nextFollowUp(context, event.at);
      return next === null ? closeAfterMs : untilMs(next.atMs, event.at);
    },
    untilArrived: ({ context, event }) =>
      untilMs(context.beganAtMs + context.clinical.arrivedAfterMinutes * minuteMs, event.at),
    untilOutcome: ({ context: { beganAtMs, clinical, site }, event }) =>
      untilMs(afterQuietHoursMs(beganAtMs + clinical.nextDayAfterHours * hourMs, site), event.at),
    untilStayMark: ({ context, event }) =>
      untilMs(nextMarkAtMs(context.beganAtMs, context.clinical, context.site, event.at), event.at),
    untilQuietHoursEnd: ({ context, event }) => untilMs(afterQuietHoursMs(event.at, context.site), event.at),
    silence: silenceMs,
    untilClosing: closeAfterMs,
  },
});
