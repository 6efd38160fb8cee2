/**
 * The product of conversation, paging and aftercare, stepped through the case's own post. Paging sees only levels and reasons,
 * aftercare only that a tube is in use or a child on the way, and both their own timers and answers: so two places are the same
 * where paging, aftercare and what is asked and stands are.
 */
import type { TextEvent, Unstamped } from '#machines/events.ts';
import {
  type Due,
  fired,
  moved,
  openPlace,
  type Place,
  passed,
  rung,
  signalled,
  type Tamper,
  taken,
  viewAt,
} from './caseRun.ts';
import type { Move } from './moves.ts';
import type { World } from './worlds.ts';

export interface Product {
  readonly states: number;
  readonly transitions: number;
  /** How often a page was demanded, and how often what follows. */
  readonly exercised: { readonly S6: number; readonly S7: number; readonly S9: number; readonly S10: number };
  readonly broken: readonly string[];
}

const heard = { told: {}, person: false, corrects: false } as const;
const texts: readonly Unstamped<TextEvent>[] = [
  { type: 'person', ...heard },
  { type: 'stop', ...heard },
  { type: 'signs', sure: ['breathing'], near: [], ...heard },
  { type: 'signs', sure: ['leak'], near: [], ...heard },
  { type: 'smallTalk', ...heard },
  { type: 'unclear', why: 'unreadable', ...heard },
];
const asked: readonly Unstamped<TextEvent>[] = (['first-feed', 'next-day', 'clinic', 'arrived'] as const).flatMap(
  (key) =>
    (['yes', 'no'] as const).map((value) => ({ type: `answer.${key}`, value, ...heard }) as Unstamped<TextEvent>),
);

const mostStates = 4000;

/** Breadth first from the representatives of the conversation's walk. */
export function walkProduct(world: World, paths: readonly (readonly Move[])[], tamper?: Tamper): Product {
  const seen = new Set<string>();
  const queue: Place[] = [];
  const broken = new Set<string>();
  const exercised = { S6: 0, S7: 0, S9: 0, S10: 0 };
  let transitions = 0;
  const add = (place: Place) => {
    const key = keyOf(place);
    if (seen.has(key) || seen.size >= mostStates) return;
    seen.add(key);
    queue.push(place);
  };
  for (const path of paths) add(path.reduce(moved, openPlace(world, tamper)));
  for (let place = queue.shift(); place !== undefined; place = queue.shift()) {
    for (const [words, next] of steps(place)) {
      transitions += 1;
      for (const why of faultsOf(place, next, words, exercised)) broken.add(why);
      if (!viewAt(next).closed) add(next);
    }
  }
  return { states: seen.size, transitions, exercised, broken: [...broken] };
}

function keyOf(place: Place): string {
  const view = viewAt(place);
  const { paging, aftercare } = view.states;
  const level = place.effects.flatMap((effect) => (effect.type === 'callNurse' ? [effect.level] : []));
  const own = place.due.flatMap(({ machine, event }) => (machine === 'conversation' ? [] : [event]));
  return JSON.stringify([
    view.asking !== null,
    view.disposition,
    paging,
    aftercare,
    level.at(-1),
    own.sort(),
    view.closed,
  ]);
}

/** Everything the other machines can hear: texts, their own answers, the nurse, and the timers in any order. */
function steps(place: Place): [string, Place][] {
  const view = viewAt(place);
  const stamp = { at: place.nowMs, clinicOpen: false };
  const text = (event: Unstamped<TextEvent>): [string, Place] => [
    event.type === 'signs' && event.sure.includes('breathing') ? 'danger' : event.type,
    signalled(place, { machine: 'conversation', event: { ...event, ...stamp } as TextEvent }),
  ];
  const own = asked.filter(
    ({ type }) => type === `answer.${view.asking}` || (view.asking === null && type === 'answer.arrived'),
  );
  return [
    ...[...texts, ...own].map(text),
    ['take', taken(place)],
    ...([0, 1, 2] as const).map((from): [string, Place] => [`pass ${from}`, passed(place, from)]),
    ...([0, 1, 2] as const).map((there): [string, Place] => [`rung ${there}`, rung(place, there)]),
    ['nurse.goIn', signalled(place, { machine: 'conversation', event: { type: 'nurse.goIn', ...stamp } })],
    ['nurse.close', signalled(place, { machine: 'conversation', event: { type: 'nurse.close', ...stamp } })],
    ...place.due.map((due): [string, Place] => [due.event, fired(place, due)]),
  ];
}

/** Somebody is being called: everybody in turn, or first whoever has the case. */
const climbs = (place: Place) =>
  viewAt(place).states.paging.some((id) => id.includes('climbing') || id.includes('taken.asked'));
const takenBefore = (place: Place) => viewAt(place).states.paging.includes('paging.taken');
const timersOf = (place: Place, machine: Due['machine']) => place.due.filter((due) => due.machine === machine).length;
const called = ({ effects }: Place) => effects.some(({ type }) => type === 'callNurse');

const later = (place: Place, event: string) =>
  place.due.some((due) => due.machine === 'aftercare' && due.event.includes(event));
/** Another question comes, or all of them came. */
const asksOn = (place: Place) =>
  viewAt(place).states.aftercare.includes('aftercare.inUse.questions.done') || later(place, 'untilNextQuestion');
const staysCounted = (place: Place) =>
  viewAt(place).states.aftercare.includes('aftercare.inUse.stay.unlimited') || later(place, 'aftercare.inUse.stay');

const texted = new Set<string>(['danger', ...[...texts, ...asked].map(({ type }) => type)]);

/** S6, S7, S9 and S10 over one step. */
function faultsOf(before: Place, after: Place, words: string, exercised: Product['exercised']): string[] {
  const view = viewAt(after);
  const answered = after.effects.some(({ type }) => type === 'say');
  const counted = exercised as { S6: number; S7: number; S9: number; S10: number };
  const faults: string[] = [];
  const hold = (rule: keyof typeof counted, demand: boolean, why: string) => {
    counted[rule] += 1;
    if (!demand)
      faults.push(`${rule} ${why} (after ${words} at ${viewAt(before).disposition ?? viewAt(before).asking})`);
  };
  if (texted.has(words)) hold('S9', answered, `${words} is answered with silence`);
  if (view.closed) {
    hold('S10', words === 'nurse.close' || !climbs(after), 'a case is over while a nurse is being called');
    return faults;
  }
  if (words === 'person' || words === 'stop' || words === 'danger') {
    hold('S10', climbs(after) || called(after), 'a nurse is needed and nobody is called');
  }
  if (climbs(after)) hold('S10', timersOf(after, 'paging') === 1, `${timersOf(after, 'paging')} timers of a climb run`);
  if (words.startsWith('pass') && (takenBefore(before) || climbs(before)))
    hold('S10', climbs(after), 'a page passed on calls nobody');
  if (words === 'take' && climbs(before)) hold('S10', !climbs(after), 'a taken page climbs on');
  if (words.startsWith('rung')) {
    const goesOn = climbs(after) === climbs(before) && timersOf(after, 'paging') === timersOf(before, 'paging');
    hold('S10', goesOn && called(after) === climbs(before), 'a call of the family changes a climb, or is not noted');
  }
  const inUse = view.disposition === 'use' || view.disposition === 'own-tube';
  const askedAll = view.states.aftercare.includes('aftercare.closed');
  if (inUse && !askedAll) hold('S6', asksOn(after) && staysCounted(after), 'a tube is in use and nothing follows');
  if (view.disposition === 'go-in' && !askedAll)
    hold('S6', timersOf(after, 'aftercare') > 0, 'a child was sent in and nobody asks');
  // While the family is asked something the case waits for it, and its silence pages.
  const rests = view.asking === null && (view.disposition === 'hold' || view.disposition === 'nurse');
  if (takenBefore(after) && rests)
    hold('S10', timersOf(after, 'paging') === 1, 'a taken case waits for its nurse and nobody reminds her');
  hold('S7', after.due.length > 0, 'nothing at all comes back to the case');
  return faults;
}
