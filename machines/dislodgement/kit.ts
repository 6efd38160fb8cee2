/** The kit every leg of the conversation is built from: its types, guards, actions and delays, each named once. */
import { assertEvent, assign, enqueueActions, setup } from 'xstate';
import type { Clarifying } from '../case.ts';
import type { Unclear } from '../events.ts';
import type { Disposition, FamilyFile, PageReason, QuestionKey, Sign } from '../facts.ts';
import { placeholderProtocol } from '../protocol/placeholder.ts';
import type { Protocol } from '../protocol/settings.ts';
import type { Preface, Say, SayKey } from '../says.ts';
import { type Context, freshContext, nothingToClarify, type Outcome, type Placed, restsOn, tubeIn } from './context.ts';
import type { ConversationEvent } from './conversationEvent.ts';
import { duePages } from './duePages.ts';
import { gravest } from './gates.ts';
import { guards, signsToClarify } from './guards.ts';
import { noteAnswer, noteBeside, noteCannotWait, withPlaced } from './note.ts';
import { type Line, outcomeLines, pageForOutcome, stillLine } from './outcomes.ts';
import { fullyOut, giveUp, reopen, takeBack, tubeOutAgain } from './reopen.ts';
import { noteTold } from './told.ts';

/** A state that asks, and what its question makes clear where it only makes another one clear. */
export interface Meta {
  readonly asking: QuestionKey;
  readonly clarifying?: Clarifying;
}

/** What the actions below may enqueue: effects, each with its parameters. */
type EffectAction =
  | { type: 'say'; params: { say: Say; by: 'text' | 'call' } }
  | { type: 'page'; params: { reason: PageReason } }
  | { type: 'beginAftercare'; params: { after: 'use' | 'own-tube' | 'go-in'; sinceMs: number } }
  | { type: 'endAftercare'; params: undefined };

/** XState's `enqueueActions` with this kit's types spelt out: inside `setup` it cannot infer its neighbours. */
function enqueueing<Params>(
  collect: Parameters<
    typeof enqueueActions<
      Context,
      ConversationEvent,
      Params,
      ConversationEvent,
      never,
      EffectAction,
      never,
      never,
      never
    >
  >[0],
) {
  return enqueueActions<
    Context,
    ConversationEvent,
    Params,
    ConversationEvent,
    never,
    EffectAction,
    never,
    never,
    never
  >(collect);
}

const minuteMs = 60_000;

/** Messages that fill their two segments by themselves. */
const longLines: ReadonlySet<SayKey> = new Set(['opening', 'openingTubeIn', 'askUnwell', 'secureSteps']);

/** The preface of the next message: what was kept for it, and the facts told unasked. */
function prefaceOf({ preface, unrepeated }: Context): Preface[] {
  const noted: Preface[] = Object.keys(unrepeated).length > 0 ? [{ key: 'noted', facts: unrepeated }] : [];
  return [...preface, ...noted];
}

export const kit = setup({
  types: {
    context: {} as Context,
    events: {} as ConversationEvent,
    input: {} as { protocol: Protocol; file: FamilyFile | null; openedOn: string },
    meta: {} as Meta,
  },
  delays: {
    quiet: ({ context }) => context.protocol.clinical.quietMinutes * minuteMs,
    busyQuiet: ({ context }) => context.protocol.clinical.busyQuietMinutes * minuteMs,
    recheckCall: ({ context }) => context.protocol.clinical.recheckCallMinutes * minuteMs,
    /** What is left of the recheck's hour, so that a text in between does not start it again. */
    recheckAfter: ({ context, event }) => Math.max(0, (tubeIn(context).recheckDueAtMs ?? 0) - event.at),
    /** A held case that nobody closed comes back to the nurse. Common practice, no source. */
    holdReview: () => 12 * 60 * minuteMs,
  },
  guards,
  actions: {
    // Effects: named, typed, and carried out by the shell.
    say: (_, _params: { say: Say; by: 'text' | 'call' }) => {},
    page: (_, _params: { reason: PageReason }) => {},
    /** `sinceMs` is what its waits count from. */
    beginAftercare: (_, _params: { after: 'use' | 'own-tube' | 'go-in'; sinceMs: number }) => {},
    endAftercare: () => {},
    closeCase: () => {},
    /** Says one message, with all that waited to be said before it; a long message leaves what has room in the next. */
    tell: enqueueing<Line>(({ context, enqueue }, line) => {
      const hasRoom = !longLines.has(line.key);
      const later = hasRoom ? [] : context.preface.filter(({ key }) => key === 'oneChild');
      const preface = hasRoom ? prefaceOf(context) : context.preface.filter((one) => !later.includes(one));
      enqueue({ type: 'say', params: { say: { ...line, preface }, by: 'text' } });
      enqueue.assign({ preface: later, unrepeated: hasRoom ? {} : context.unrepeated });
    }),
    pageOnce: enqueueing<{ reason: PageReason }>(({ context, enqueue }, params) => {
      if (context.pagedOnce.includes(params.reason)) return;
      enqueue({ type: 'page', params });
      enqueue.assign({ pagedOnce: [...context.pagedOnce, params.reason] });
    }),
    /** Pages for what the facts have come to show; a reason whose fact stopped holding may come again. */
    pageForFacts: enqueueing<undefined>(({ context, event, enqueue }) => {
      const due = duePages(context, event);
      for (const reason of due) if (!context.pagedFacts.includes(reason)) enqueue({ type: 'page', params: { reason } });
      enqueue.assign({ pagedFacts: due });
    }),
    /** Comes to rest: pages what only the outcome calls for, and begins what follows it. */
    settle: enqueueing<Outcome>(({ context, event, enqueue }, outcome) => {
      const reason = pageForOutcome(outcome);
      const paged = [...context.pagedOnce, ...context.pagedFacts];
      const news = reason !== null && !paged.includes(reason);
      if (news) enqueue({ type: 'page', params: { reason } });
      const after = outcome.to === 'hold' || outcome.to === 'nurse' ? null : outcome.to;
      const sinceMs = context.placed?.allowedAtMs ?? event.at;
      if (after !== null) enqueue({ type: 'beginAftercare', params: { after, sinceMs } });
      const allowed = after === 'use' || after === 'own-tube';
      enqueue.assign({
        outcome,
        aftercare: after !== null,
        pagedOnce: news ? [...context.pagedOnce, reason] : context.pagedOnce,
        placed: context.placed === null ? null : settled(context.placed, outcome, allowed ? sinceMs : null),
      });
    }),
    /** Says where the case rests: in full the first time, afterwards in one line. */
    tellOutcome: enqueueing<undefined>(({ context, enqueue }) => {
      const outcome = restsOn(context);
      const again = JSON.stringify(outcome) === JSON.stringify(context.said);
      const lines = again ? [stillLine(context, outcome)] : outcomeLines(context, outcome);
      const preface = again ? prefaceOf(context) : context.preface;
      const says = lines.map((line, index): Say => ({ ...line, preface: index === 0 ? preface : [] }));
      for (const say of says) enqueue({ type: 'say', params: { say, by: 'text' } });
      const unrepeated = again ? {} : context.unrepeated;
      enqueue.assign({ preface: [], unrepeated, said: outcome, disposition: outcome.to });
    }),
    /** Aftercare of an outcome that no longer holds ends with it. */
    endVoidAftercare: enqueueing<undefined>(({ context, enqueue }) => {
      if (!context.aftercare || context.outcome !== null || context.danger !== null) return;
      enqueue({ type: 'endAftercare' });
      enqueue.assign({ aftercare: false, said: null });
    }),
    note: assign(({ context, event }) => {
      assertEvent(event, 'answer.*');
      return reopen(context, noteTold(noteAnswer(context, event), event), event);
    }),
    noteTold: assign(({ context, event }) =>
      'told' in event ? reopen(context, noteTold(context, event), event) : context,
    ),
    preface: assign({ preface: ({ context }, params: Preface) => [...context.preface, params] }),
    /** A person asked for beside something else is paged too, and told so. */
    pageIfWanted: enqueueing<undefined>(({ context, event, enqueue }) => {
      if (!('person' in event) || !event.person) return;
      enqueue({ type: 'page', params: { reason: 'person-wanted' } });
      enqueue.assign({ preface: [...context.preface, { key: 'nurseCalled' }] });
    }),
    notUnderstood: assign(({ context, event }, params: { key: QuestionKey }) => {
      const why: Unclear = event.type === 'unclear' ? event.why : 'unreadable';
      return {
        unclear: { key: params.key, count: 1 },
        preface: [...context.preface, { key: 'notUnderstood' as const, why }],
      };
    }),
    giveUp: assign(({ context }, params: { key: QuestionKey }) => giveUp(context, params.key)),
    takeBack: assign(({ context, event }) => {
      assertEvent(event, 'correct');
      return takeBack(context, event.key);
    }),
    takeBackUnwell: assign(({ context }) => takeBack(context, 'unwell')),
    /** It never softens going in. */
    noteProblem: assign(({ context }) => ({
      ...withPlaced(context, { stopped: 'tube-problem' }),
      outcome: context.outcome?.to === 'go-in' ? context.outcome : null,
    })),
    /** The one asked about; the next is asked about then. A case that began before they were kept knows of none. */
    denySign: assign(({ context }) => clarifying(context.clarifyAlso ?? [])),
    /** Something was said in use that nobody could read: the permission rests until the danger signs are answered again. */
    doubtWell: assign({ unwell: 'unasked', outcome: null, disposition: null }),
    noteFullyOut: assign(({ context }) => fullyOut(context)),
    noteOutAgain: assign(({ context }) => tubeOutAgain(context)),
    noteDanger: assign(({ context, event }) => ({
      danger: {
        named: [...(context.danger?.named ?? []), ...namedIn(context, event)],
      },
      outcome: null,
      ...nothingToClarify,
    })),
    /** Whoever names a warning sign has seen the list of danger signs, once it was sent. */
    noteWarning: assign(({ context, event }) => ({
      warning: true,
      warningSigns: [...new Set([...(context.warningSigns ?? []), ...namedIn(context, event)])],
      outcome: null,
      ...nothingToClarify,
      unwell: context.openingSaid && context.unwell === 'unasked' ? ('well' as const) : context.unwell,
    })),
    /** What waits to be made clear or allowed no longer matters; who goes in already, or is in danger, is not told again. */
    sendIn: assign(({ context }) =>
      context.outcome?.to === 'go-in' || context.danger !== null
        ? { sentIn: 'now' as const }
        : { sentIn: 'now' as const, ...nothingToClarify, outcome: null, disposition: null },
    ),
    noteNear: assign(({ context, event }) => {
      assertEvent(event, 'signs');
      return clarifying(signsToClarify(context, event));
    }),
    /** Beside a warning only a doubtful danger is still asked about. */
    noteNearDanger: assign(({ context, event }) => {
      assertEvent(event, 'signs');
      return clarifying(event.near.filter((sign) => gravest(context, [sign], event) === 'danger'));
    }),
    noteBeside: assign(({ context, event }) => {
      assertEvent(event, 'signs');
      return reopen(context, noteBeside(context, event), event);
    }),
    noteCannotWait: assign(({ context, event }) => {
      assertEvent(event, 'cannotWait');
      return noteCannotWait(context, event.what);
    }),
    /** Says in full again what was said last; steps too, as long as no tube is in. */
    sayAfresh: assign({ said: null, stepsSent: null }),
    beganAftercare: assign({ aftercare: true }),
    noteDisposition: assign({ disposition: (_, params: { to: Disposition }) => params.to }),
    openingSaid: assign({ openingSaid: true }),
    stepsSent: assign({ stepsSent: (_, params: { steps: NonNullable<Context['stepsSent']> }) => params.steps }),
    startRecheck: assign(({ context, event }) =>
      withPlaced(context, {
        recheck: 'waiting',
        recheckDueAtMs: event.at + context.protocol.clinical.recheckMinutes * minuteMs,
      }),
    ),
    /** New contents and a new strip: nothing of the first reading counts. */
    recheckNow: assign(({ context }) =>
      withPlaced(context, {
        recheck: 'due',
        afterIn: 'unasked',
        contentsTried: 0,
        contents: false,
        reading: null,
        fedLately: null,
        looks: null,
      }),
    ),
    clear: assign(({ context }) => ({ ...withPlaced(context, { cleared: true }), outcome: null })),
    noteTaken: assign({ unanswered: false }),
    noteUnanswered: assign({ unanswered: true }),
  },
});

/** The signs a text names, or the one it was asked about. */
function namedIn({ clarify }: Context, event: ConversationEvent): readonly Sign[] {
  if (event.type === 'signs' && event.sure.length > 0) return event.sure;
  return clarify === null ? [] : [clarify];
}

/** A tube remembers when it was first allowed, and that it was held as hard. */
function settled(placed: Placed, outcome: Outcome, allowedAtMs: number | null): Placed {
  const heldHard = placed.heldHard || (outcome.to === 'hold' && outcome.reason === 'hard');
  return { ...placed, heldHard, allowedAtMs: allowedAtMs ?? placed.allowedAtMs };
}

/** One question at a time; the others wait for theirs. */
function clarifying([first, ...clarifyAlso]: readonly Sign[]): Pick<Context, 'clarify' | 'clarifyAlso'> {
  return { clarify: first ?? null, clarifyAlso };
}

type Input = Parameters<typeof freshContext>[0];

/** The context a case begins with; without input it is made to be thrown away. */
export const context = ({ input }: { input: Input | undefined }): Context =>
  input === undefined ? thrownAway : freshContext(input);

const thrownAway = freshContext({ protocol: placeholderProtocol, file: null, openedOn: '' });
