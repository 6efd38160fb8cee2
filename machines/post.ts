/** The post of one turn: which machine hears an event, and where each action of a step goes. */
import { type Action, parseAction } from './action.ts';
import type { AftercareEvent } from './aftercare/kit.ts';
import { aftercare } from './aftercare/machine.ts';
import type { CaseSignal } from './case.ts';
import type { ConversationEvent } from './dislodgement/conversationEvent.ts';
import { dislodgement } from './dislodgement/machine.ts';
import type { DueWhat, Effect, MachineName } from './effects.ts';
import type { Heard, Stamp } from './events.ts';
import type { PageReason } from './facts.ts';
import type { PagingEvent } from './paging/kit.ts';
import { levelOf } from './paging/levels.ts';
import { paging } from './paging/machine.ts';
import type { Running } from './running.ts';
import { aftercareAsks, askingOf } from './view.ts';
import { stepped } from './withoutActor.ts';

/** An event on its way to one machine. */
export type Post =
  | { readonly machine: 'conversation'; readonly event: ConversationEvent }
  | { readonly machine: 'paging'; readonly event: PagingEvent }
  | { readonly machine: 'aftercare'; readonly event: AftercareEvent };

/** Answers to aftercare's questions go to aftercare, everything else a caregiver texts to the conversation. */
export function addressed(running: Running, signal: CaseSignal): Post[] {
  if (signal.machine !== 'conversation') return [signal];
  const { event } = signal;
  switch (event.type) {
    case 'answer.first-feed':
    case 'answer.next-day':
    case 'answer.clinic':
    case 'answer.arrived':
      // Where it is not awaited it is talk, and answered as such.
      return running.aftercareIsIdle || !running.aftercare.can(event)
        ? [{ machine: 'conversation', event: { ...event, type: 'smallTalk' } }]
        : [{ machine: 'aftercare', event }, ...toldBeside(event), ...personWanted(event)];
    case 'correct':
      return !running.aftercareIsIdle && running.aftercare.can(event)
        ? [{ machine: 'aftercare', event }, ...toldBeside(event), ...personWanted(event)]
        : [{ machine: 'conversation', event }];
    case 'unclear':
      return askingOf(running.conversation) === null && aftercareAsks(running) !== null
        ? [{ machine: 'aftercare', event }, ...toldBeside(event), ...personWanted(event)]
        : [{ machine: 'conversation', event }];
    default:
      return [{ machine: 'conversation', event }];
  }
}

/** A fact told beside an answer of what follows may still void a permission. */
function toldBeside({ told, corrects, at, clinicOpen }: Heard): Post[] {
  if (Object.keys(told).length === 0) return [];
  return [{ machine: 'conversation', event: { at, clinicOpen, type: 'told', told, corrects, person: false } }];
}

/** Aftercare asks its own questions only; a person asked for beside an answer is paged all the same. */
function personWanted({ person, at, clinicOpen }: Heard): Post[] {
  if (!person) return [];
  return [{ machine: 'paging', event: raised({ reason: 'person-wanted' }, { at, clinicOpen }, false) }];
}

/** Moves one machine and returns its actions; a machine that ends in error throws. */
export function step(running: Running, { machine, event }: Post): readonly Action[] {
  switch (machine) {
    case 'conversation': {
      const [next, actions] = stepped(dislodgement, running.conversation, event);
      running.conversation = sound(next);
      return actions.map(parseAction);
    }
    case 'paging': {
      const [next, actions] = stepped(paging, running.paging, event);
      running.paging = sound(next);
      return actions.map(parseAction);
    }
    case 'aftercare': {
      const [next, actions] = stepped(aftercare, running.aftercare, event);
      running.aftercare = sound(next);
      return actions.map(parseAction);
    }
  }
}

function sound<S extends { status: string; error: unknown }>(snapshot: S): S {
  if (snapshot.status === 'error') throw snapshot.error;
  return snapshot;
}

interface Sorted {
  readonly effects: Effect[];
  readonly posts: Post[];
}

/** What leaves the case, and what only moves between its machines. */
export function sort(actions: readonly Action[], { machine, event }: Post): Sorted {
  const sorted: Sorted = { effects: [], posts: [] };
  const stamp: Stamp = { at: event.at, clinicOpen: event.clinicOpen };
  const byTaker = 'byTaker' in event;
  for (const action of actions) {
    if (action.type === 'page') sorted.posts.push({ machine: 'paging', event: raised(action.params, stamp, byTaker) });
    else sortOne(action, machine, stamp, sorted);
  }
  return sorted;
}

function raised({ reason }: { readonly reason: PageReason }, stamp: Stamp, byTaker: boolean): PagingEvent {
  return { ...stamp, type: 'page.raise', reason, level: levelOf[reason], ...(byTaker && { byTaker }) };
}

function sortOne(
  action: Exclude<Action, { readonly type: 'page' }>,
  machine: MachineName,
  stamp: Stamp,
  { effects, posts }: Sorted,
): void {
  switch (action.type) {
    case 'say':
      effects.push({ type: 'say', ...action.params });
      return;
    case 'callNurse':
      effects.push({ type: 'callNurse', ...action.params });
      return;
    case 'tellNurse':
      effects.push({ type: 'tellNurse', ...action.params });
      return;
    case 'taken':
      posts.push({ machine: 'conversation', event: { ...stamp, type: 'page.taken', nurse: action.params.nurse } });
      return;
    case 'began':
      posts.push({
        machine: 'conversation',
        event: { ...stamp, type: 'page.began', mostMinutes: action.params.mostMinutes },
      });
      return;
    case 'passed':
      posts.push({ machine: 'conversation', event: { ...stamp, type: 'page.passed', nurse: action.params.nurse } });
      return;
    case 'unanswered':
      posts.push({ machine: 'conversation', event: { ...stamp, type: 'page.unanswered' } });
      return;
    case 'notWell':
      posts.push({ machine: 'conversation', event: { ...stamp, type: 'notWell' } });
      return;
    case 'beginAftercare':
      posts.push({ machine: 'aftercare', event: beginning(action.params, stamp) });
      return;
    case 'endAftercare':
      posts.push({ machine: 'aftercare', event: { ...stamp, type: 'end' } });
      return;
    case 'closeCase':
      // A nurse who closes a case has it; a case that only ran out keeps calling until somebody takes it.
      if (machine === 'conversation') posts.push({ machine: 'paging', event: { ...stamp, type: 'page.close' } });
      return;
    case 'xstate.raise':
      effects.push(timer(action.params, machine));
      return;
    case 'xstate.cancel':
      effects.push({ type: 'cancelTimer', machine, id: action.params.sendId });
      return;
  }
}

function beginning(
  { after, sinceMs }: { after: 'use' | 'own-tube' | 'go-in'; sinceMs: number },
  stamp: Stamp,
): AftercareEvent {
  if (after === 'go-in') return { ...stamp, type: 'begin.goIn' };
  return { ...stamp, type: 'begin.use', tube: after === 'use' ? 'temporary' : 'own', sinceMs };
}

function timer(
  { event, id, delay }: Extract<Action, { type: 'xstate.raise' }>['params'],
  machine: MachineName,
): Effect {
  return { type: 'startTimer', machine, id, what: dueWhat(machine, event.type), delayMs: delay, event: event.type };
}

function dueWhat(machine: MachineName, event: string): DueWhat {
  if (machine === 'paging') return 'page';
  if (machine === 'aftercare' || event.startsWith('xstate.after.holdReview.')) return 'aftercare';
  return event.startsWith('xstate.after.recheckAfter.') ? 'recheck' : 'silence';
}
