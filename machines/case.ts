/** One case as a whole: its conversation, paging and aftercare, stepped together in one turn. */
import { initialTransition } from 'xstate';
import { aftercare } from './aftercare/machine.ts';
import { dislodgement } from './dislodgement/machine.ts';
import type { Effect, MachineName } from './effects.ts';
import type { DelayedEvent, NurseEvent, PhoneJoined, TextEvent } from './events.ts';
import type {
  DateRange,
  Disposition,
  FamilyFile,
  PageReason,
  QuestionKey,
  Sign,
  Told,
  TubeKind,
  WeightBand,
  YesNoUnknown,
} from './facts.ts';
import type { PagingEvent } from './paging/kit.ts';
import { paging } from './paging/machine.ts';
import { addressed, type Post, sort, step } from './post.ts';
import type { Protocol } from './protocol/settings.ts';
import { today } from './rules/tractAge.ts';
import { Running, save } from './running.ts';
import type { Card, Preface } from './says.ts';
import { isOver, viewOf } from './view.ts';

/** The machines' persisted snapshots, plain JSON; `aftercare` is null until it begins. */
export interface CaseSnapshots {
  readonly conversation: unknown;
  readonly paging: unknown;
  readonly aftercare: unknown;
}

/** What the reader needs to know of an open question, beside its key. */
export type Clarifying = 'sign' | 'unit' | 'how' | 'last-seen' | 'look' | 'doubt' | 'trouble' | null;

/** The facts as the public interface names them. */
export interface PublicFacts {
  readonly tubeKind?: TubeKind;
  /** Of a tube half out, the kind it was told to be. */
  readonly halfOutOf?: TubeKind;
  readonly firstPlaced?: DateRange;
  readonly weightKg?: number;
  readonly weightBand?: WeightBand;
  readonly ph?: number;
  readonly cameOutAt?: string;
  readonly insertedHow?: 'easy' | 'hard';
}

/** What the shell, the page and the nurse may know of a case. */
export interface CaseView {
  readonly asking: QuestionKey | null;
  /** The number of the family's child it is about, where it has several and one was named; `none` where it is not the only one on file. */
  readonly child: number | 'none' | null;
  readonly clarifying: Clarifying;
  readonly bareWeight: number | null;
  /** The question answered last, as long as no answer to the one after it could not be read. */
  readonly answered: QuestionKey | null;
  readonly disposition: Disposition | null;
  readonly facts: PublicFacts;
  /** What the family told, as another case about the same child may hear it. */
  readonly told: Told;
  readonly tubeIn: 'own' | 'temporary' | null;
  /** What is in the stoma, for the nurse. */
  readonly inside: Card['inside'];
  /** Since when a temporary tube may be used, epoch ms, which its stay counts from; null where none may. */
  readonly temporarySinceMs: number | null;
  /** A medicine or feed that must not be missed, as it was told or filed. */
  readonly cannotWait: string | null;
  /** Held only for a hard insertion whose reading passed: the one thing a nurse can clear. */
  readonly clearable: boolean;
  /** The danger signs told by name. */
  readonly dangerSigns: readonly Sign[];
  readonly warningSigns: readonly Sign[];
  /** When the tube that is in went in, epoch ms. */
  readonly placedAtMs: number | null;
  /** A nurse cleared it. */
  readonly cleared: boolean;
  readonly failedTries: number;
  readonly fedLately: YesNoUnknown | null;
  readonly latexAllergy: boolean;
  readonly takenBy: string | null;
  readonly closed: boolean;
  /** For the state map. */
  readonly states: CaseStates;
}

/** Ids of the active state nodes of each machine. */
export type CaseStates = { readonly [M in MachineName]: readonly string[] };

export type CaseSignal =
  | { readonly machine: 'conversation'; readonly event: TextEvent | NurseEvent | PhoneJoined | DelayedEvent }
  | {
      readonly machine: 'paging';
      /** `page.raise` is the shell's own: the family cannot be reached. */
      readonly event: Exclude<PagingEvent, { readonly type: 'page.close' | 'case.stands' }>;
    }
  | { readonly machine: 'aftercare'; readonly event: DelayedEvent };

export interface CaseStep {
  readonly snapshots: CaseSnapshots;
  readonly effects: readonly Effect[];
  readonly view: CaseView;
  /** What a nurse was needed for in this step, whether or not somebody new is called for it. */
  readonly raised: readonly PageReason[];
}

/** A new case with nothing told yet; step it with the first text. `file` is null for an unknown phone. */
export function openCase(protocol: Protocol, file: FamilyFile | null, atMs: number): CaseSnapshots {
  const { clinical, site } = protocol;
  const openedOn = today(atMs, site.timeZone);
  return {
    conversation: save(initialTransition(dislodgement, { protocol, file, openedOn })[0]),
    paging: save(initialTransition(paging, { clinical })[0]),
    aftercare: save(initialTransition(aftercare, { clinical, site })[0]),
  };
}

/** Takes one step. Throws if a machine ends in error: the shell then falls back to the safe message. */
export function stepCase(protocol: Protocol, snapshots: CaseSnapshots, signal: CaseSignal): CaseStep {
  const running = runningOf(protocol, snapshots).copy();
  const wasOver = isOver(running);
  const wasTaken = running.pagingIsTaken;
  const told = wasTaken ? running.conversation.context.disposition : null;
  const effects: Effect[] = [];
  const raised: PageReason[] = [];
  const waiting: Post[] = addressed(running, signal);
  for (let post = waiting.shift(); post !== undefined; post = waiting.shift()) {
    if (post.event.type === 'page.raise') raised.push(post.event.reason);
    const sorted = sort(step(running, post), post);
    effects.push(...sorted.effects);
    waiting.push(...sorted.posts);
  }
  if (wasTaken && !effects.some(({ type }) => type === 'callNurse')) effects.push(...restsAnew(running, signal, told));
  effects.push(...standing(running, signal));
  if (!wasOver && isOver(running)) effects.push({ type: 'closeCase' });
  return { snapshots: running.save(), effects: withHolder(running, effects), view: viewOf(running), raised };
}

/** Nobody new is called where a nurse has the case: the family hears to whom it went. */
function withHolder(running: Running, effects: readonly Effect[]): readonly Effect[] {
  const nurse = running.pagingIsTaken ? running.paging.context.takenBy : null;
  if (nurse === null) return effects;
  const toHer = (one: Preface): Preface =>
    one.key === 'nurseCalled' || one.key === 'goesToNurse' ? { key: 'passedOn', nurse } : one;
  return effects.map((effect) =>
    effect.type === 'say' ? { ...effect, say: { ...effect.say, preface: effect.say.preface.map(toHer) } } : effect,
  );
}

/** Whoever has the case hears where it has come to rest, unless her own text brought it there or a page says so. */
function restsAnew(running: Running, { event }: CaseSignal, told: Disposition | null): readonly Effect[] {
  const { disposition } = running.conversation.context;
  if (!running.pagingIsTaken || 'byTaker' in event) return [];
  if (disposition === null || disposition === 'recheck' || disposition === told) return [];
  return [{ type: 'tellStands', disposition }];
}

/** Whoever took the page hears of her case again if it waits for her and she lets it lie. */
function standing(running: Running, { machine, event }: CaseSignal): readonly Effect[] {
  if (!running.pagingIsTaken || event.type.startsWith('xstate.after.')) return [];
  const { at, clinicOpen } = event;
  const stands = {
    type: 'case.stands',
    waitsForNurse: running.conversation.hasTag('waitsForNurse'),
    touched: machine === 'paging' ? !notHers.has(event.type) : event.type.startsWith('nurse.'),
  } as const;
  const post: Post = { machine: 'paging', event: { ...stands, at, clinicOpen } };
  return sort(step(running, post), post).effects;
}

/** What is raised in a case, and the family's own call to her, are no word of hers. */
const notHers: ReadonlySet<string> = new Set(['page.raise', 'rung']);

/** What the shell may know of a case between its steps. */
export function viewCase(protocol: Protocol, snapshots: CaseSnapshots): CaseView {
  const running = runningOf(protocol, snapshots);
  looked.set(snapshots, running);
  return viewOf(running);
}

/** A text is read against its case and then given to it: what was revived for the one serves the other. */
const looked = new WeakMap<CaseSnapshots, Running>();

function runningOf(protocol: Protocol, snapshots: CaseSnapshots): Running {
  const known = looked.get(snapshots);
  return known?.protocol === protocol ? known : new Running(protocol, snapshots);
}
