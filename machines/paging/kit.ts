/** What the paging machine is made of: its events, its facts, its effects, and when it calls again. */
import { assertEvent, assign, enqueueActions, setup } from 'xstate';
import type { DelayedEvent, Stamp } from '#machines/events.ts';
import type { PageLevel, PageReason } from '#machines/facts.ts';
import type { Clinical } from '#machines/protocol/settings.ts';
import { isHigher, levelOf, type Waits, type Way, waitsOf } from './levels.ts';

/** A person's place on the rota: 0 is first on call. */
export type Place = 0 | 1 | 2;

/** A nurse's word about a page: she has it, or, from her place, it is for the next person. */
export type PageWord = Stamp &
  /**
   * `from` is her place where the rota has one for her; else she stands in for whoever was called last. `over`: she takes it from
   * whoever has it, which no text does unasked.
   */
  (
    | { readonly type: 'take'; readonly nurse: string; readonly from?: Place; readonly over?: true }
    | { readonly type: 'pass'; readonly nurse: string; readonly from: Place }
  );

export type PagingEvent =
  | DelayedEvent
  | PageWord
  | (Stamp &
      (
        | {
            readonly type: 'page.raise';
            readonly reason: PageReason;
            readonly level: PageLevel;
            /** It comes of a text of the one who has the case. */
            readonly byTaker?: true;
          }
        | { readonly type: 'page.close' }
        /** Whether the case now waits for its nurse; `touched` where this comes of a word of hers. */
        | { readonly type: 'case.stands'; readonly waitsForNurse: boolean; readonly touched: boolean }
        /** A nurse is at work on the case beside its machines: she writes to the family, or rings it. */
        | { readonly type: 'touch' }
        /** The family's own call rang the person at this place, and she takes it. */
        | { readonly type: 'rung'; readonly place: Place }
        /** The person at this place takes the case over from whoever has it. */
        | { readonly type: 'stepsIn'; readonly place: Place }
      ));

export interface PagingContext {
  readonly clinical: Clinical;
  /** Level of the climb; `routine` while nothing was raised. */
  readonly level: PageLevel;
  readonly reasons: readonly PageReason[];
  /** Reasons added since the climb began: whoever takes it may not have heard of them. */
  readonly unheard: readonly PageReason[];
  /** The person the climb stands at. */
  readonly place: Place;
  /** Epoch ms when the climb started; 0 while nothing was raised. */
  readonly beganAtMs: number;
  /** How often all three were called after the first way up. */
  readonly rounds: number;
  /** First name of the person who took it; null while nobody has. */
  readonly takenBy: string | null;
}

export interface CallParams {
  readonly place: Place;
  readonly level: PageLevel;
  readonly reasons: readonly PageReason[];
  readonly by: readonly Way[];
}

const minuteMs = 60_000;
/** Once `pageAgainHours` are over it is called every hour. Common practice, no source. */
const laterRoundMinutes = 60;

export const nothingRaised = {
  level: 'routine',
  reasons: [],
  unheard: [],
  place: 0,
  beganAtMs: 0,
  rounds: 0,
  takenBy: null,
} as const satisfies Omit<PagingContext, 'clinical'>;

/** Time left until a wait counted from the start of the climb is over, so that a late timer delays nobody after it. */
function untilMs(context: PagingContext, wait: keyof Waits, atMs: number): number {
  const dueMs = context.beganAtMs + waitsOf(context.level, context.clinical)[wait] * minuteMs;
  return Math.max(0, dueMs - atMs);
}

/** Only a page.raise starts or widens a climb. */
export function raisedBy(event: PagingEvent): Extract<PagingEvent, { type: 'page.raise' }> {
  assertEvent(event, 'page.raise');
  return event;
}

/** When a climb that goes on from this place now would have begun. From the second on, no wait counts from there any more. */
function asIfBegunAtMs({ level, clinical }: PagingContext, from: Place, atMs: number): number {
  return from === 0 ? atMs - waitsOf(level, clinical).secondMinutes * minuteMs : atMs;
}

const withReason = (reasons: readonly PageReason[], reason: PageReason) => [...new Set([...reasons, reason])];

type Tell = { type: 'tellNurse'; params: { readonly level: PageLevel; readonly reason: PageReason } };

const telling = enqueueActions<PagingContext, PagingEvent, undefined, PagingEvent, never, Tell, never, never, never>(
  ({ context, enqueue }) => {
    for (const reason of context.unheard) enqueue({ type: 'tellNurse', params: { level: levelOf[reason], reason } });
    enqueue.assign({ unheard: [] });
  },
);

export const kit = setup({
  types: {
    context: {} as PagingContext,
    events: {} as PagingEvent,
    input: {} as { readonly clinical: Clinical },
  },
  actions: {
    // Effects: they do nothing here; the case turns them into what the shell delivers.
    callNurse: (_, _params: CallParams) => {},
    tellNurse: (_, _params: { readonly level: PageLevel; readonly reason: PageReason }) => {},
    unanswered: (_, _params: Record<never, never>) => {},
    taken: (_, _params: { readonly nurse: string }) => {},
    passed: (_, _params: { readonly nurse: string }) => {},
    began: (_, _params: { readonly mostMinutes: number }) => {},
    // Facts
    beginClimb: assign(({ event }) => {
      const { reason, level, at } = raisedBy(event);
      return { ...nothingRaised, level, reasons: [reason], beganAtMs: at };
    }),
    restartHigher: assign(({ context, event }) => {
      const { reason, level, at } = raisedBy(event);
      return { ...nothingRaised, level, reasons: withReason(context.reasons, reason), beganAtMs: at };
    }),
    addReason: assign(({ context, event }) => {
      const { reason } = raisedBy(event);
      const known = context.reasons.includes(reason);
      return {
        reasons: withReason(context.reasons, reason),
        unheard: known ? context.unheard : withReason(context.unheard, reason),
      };
    }),
    /** Whoever has it knows of it. */
    noteReason: assign(({ context, event }) => ({ reasons: withReason(context.reasons, raisedBy(event).reason) })),
    /** She is called about it, and has as long as it gives the first person on call. */
    noteAsked: assign(({ context, event }) => {
      const { reason, level, at } = raisedBy(event);
      return {
        level: isHigher(level, context.level) ? level : context.level,
        reasons: withReason(context.reasons, reason),
        beganAtMs: at,
      };
    }),
    /** Whoever takes it is told what was added since the climb began. */
    tellUnheard: telling,
    standAt: assign((_, { place }: { readonly place: Place }) => ({ place })),
    countRound: assign(({ context }) => ({ rounds: context.rounds + 1 })),
    /** Whoever passes it on has had her turn: the climb goes on as if her wait were over. */
    passOn: assign(({ context, event }) => {
      assertEvent(event, 'pass');
      return { beganAtMs: asIfBegunAtMs(context, event.from, event.at), rounds: 0, takenBy: null };
    }),
    /** Whoever gives it on stands elsewhere now than where she took it: it begins again with the first on call. */
    giveBack: assign(({ event }) => ({ beganAtMs: event.at, rounds: 0, takenBy: null })),
    /** The taker lets it lie: the climb goes on from her place as if her wait were over. */
    goOn: assign(({ context, event }) => ({
      beganAtMs: asIfBegunAtMs(context, context.place, event.at),
      reasons: withReason(context.reasons, 'untouched'),
      rounds: 0,
      takenBy: null,
    })),
    noteTaker: assign(({ context, event }) => {
      assertEvent(event, 'take');
      return { takenBy: event.nurse, place: event.from ?? context.place };
    }),
    forget: assign(nothingRaised),
  },
  guards: {
    isHigher: ({ context, event }) => isHigher(raisedBy(event).level, context.level),
    /** A danger sign in a climb that is at its level already: it may wait for nobody's turn. */
    isFurtherDangerSign: ({ context, event }) => {
      const { reason, level } = raisedBy(event);
      return reason === 'danger-sign' && !isHigher(level, context.level);
    },
    /** No graver than what she took it for. */
    isTakersOwn: ({ context, event }) => {
      const { byTaker, level } = raisedBy(event);
      return byTaker === true && !isHigher(level, context.level);
    },
    /** Graver than what can wait, short of an emergency, and not of her own making. */
    isForHer: ({ event }) => {
      const { byTaker, level } = raisedBy(event);
      return level === 'urgent' && byTaker !== true;
    },
    isAnother: ({ context, event }) => {
      assertEvent(event, 'take');
      return event.nurse !== context.takenBy;
    },
    /** A swap since she took it: the first on call is another, who has not been asked. */
    hasMoved: ({ context, event }) => {
      assertEvent(event, 'pass');
      return event.from !== 0 && event.from !== context.place;
    },
    takesOver: ({ event }) => {
      assertEvent(event, 'take');
      return event.over === true;
    },
    passedFrom: ({ event }, params: { readonly place: Place }) => {
      assertEvent(event, 'pass');
      return event.from === params.place;
    },
    wasRoutine: ({ context }) => context.level === 'routine',
    standsAt: ({ context }, params: { readonly place: Place }) => context.place === params.place,
    waitsForNurse: ({ event }) => {
      assertEvent(event, 'case.stands');
      return event.waitsForNurse;
    },
    touched: ({ event }) => {
      assertEvent(event, 'case.stands');
      return event.touched;
    },
    isRoutine: ({ event }) => raisedBy(event).level === 'routine',
  },
  delays: {
    untilRepeat: ({ context, event }) => untilMs(context, 'repeatMinutes', event.at),
    untilSecond: ({ context, event }) => untilMs(context, 'secondMinutes', event.at),
    untilThird: ({ context, event }) => untilMs(context, 'thirdMinutes', event.at),
    /** The third person has the level's first wait, counted from the call itself. */
    thirdsTurn: ({ context }) => waitsOf(context.level, context.clinical).repeatMinutes * minuteMs,
    /** The first round comes one round's wait after the third person was called; the third's turn is already over. */
    untilFirstRound: ({ context: { level, clinical } }) =>
      Math.max(0, clinical.pageAgainMinutes - waitsOf(level, clinical).repeatMinutes) * minuteMs,
    untouched: ({ context }) => context.clinical.untouchedMinutes * minuteMs,
    /** Reminded, she has as long as the first person called has before the second. */
    remindersTurn: ({ context }) => waitsOf(context.level, context.clinical).secondMinutes * minuteMs,
    untilNextRound: ({ context: { rounds, clinical } }) => {
      const isEarly = rounds * clinical.pageAgainMinutes < clinical.pageAgainHours * 60;
      return (isEarly ? clinical.pageAgainMinutes : laterRoundMinutes) * minuteMs;
    },
  },
});
