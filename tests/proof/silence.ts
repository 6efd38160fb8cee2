/** S7 and S10: from every place a case can be in, silence alone: when a person is told, and when the family is told what to do. */
import { earliest, fired, moved, openPlace, type Place, type Tamper, viewAt } from './caseRun.ts';
import type { Move } from './moves.ts';
import type { World } from './worlds.ts';

export interface Silence {
  readonly asking: string;
  /** From the last text to the first call of a nurse, whenever that was needed; null while a nurse has the case or is being called. */
  readonly toNurseMs: number | null;
  /** From the first untaken call to the family being told what to do meanwhile. */
  readonly toFamilyMs: number | null;
  /** The longest pause between two calls while nobody takes the page. */
  readonly longestPauseMs: number;
  readonly broken: readonly string[];
}

const dayMs = 86_400_000;
const hourMs = 3_600_000;
/** How long silence is watched: by then every wait but those of aftercare is over. */
const watchedMs = dayMs;

const calls = ({ effects }: Place) => effects.some(({ type }) => type === 'callNurse');
const tellsFamily = ({ effects }: Place) =>
  effects.some((effect) => effect.type === 'say' && ['pageUnanswered', 'goIn'].includes(effect.say.key));

/** Brings a case along the path, then says nothing more; nobody takes any page. */
export function silenceAfter(world: World, path: readonly Move[], tamper?: Tamper): Silence {
  let place = openPlace(world, tamper);
  let calledAtMs: number | null = null;
  for (const move of path) {
    place = moved(place, move);
    if (calls(place)) calledAtMs ??= place.nowMs;
  }
  const view = viewAt(place);
  const asking = view.asking ?? view.disposition ?? 'nothing';
  if (view.closed) return { asking, toNurseMs: null, toFamilyMs: null, longestPauseMs: 0, broken: [] };
  return watched(place, asking, calledAtMs);
}

function watched(start: Place, asking: string, calledAtMs: number | null): Silence {
  const fromMs = start.nowMs;
  const callTimes = calledAtMs === null ? [] : [fromMs];
  let firstCallMs = calledAtMs;
  let familyMs: number | null = calledAtMs !== null && tellsFamily(start) ? fromMs : null;
  let place = start;
  for (let due = earliest(place); due !== undefined && due.atMs <= fromMs + watchedMs; due = earliest(place)) {
    place = fired(place, due);
    if (calls(place)) {
      firstCallMs ??= place.nowMs;
      callTimes.push(place.nowMs);
    }
    if (firstCallMs !== null && tellsFamily(place)) familyMs ??= place.nowMs;
  }
  const pauses = callTimes.slice(1).map((time, index) => time - (callTimes[index] ?? time));
  const broken = [
    ...(firstCallMs === null ? [`${asking}: silence never reaches a nurse`] : []),
    ...(callTimes.length > 0 && fromMs + watchedMs - (callTimes.at(-1) ?? 0) > hourMs
      ? [`${asking}: the calls stop untaken`]
      : []),
    ...(firstCallMs !== null && familyMs === null ? [`${asking}: the family is never told what to do meanwhile`] : []),
  ];
  return {
    asking,
    toNurseMs: calledAtMs === null && firstCallMs !== null ? firstCallMs - fromMs : null,
    toFamilyMs: firstCallMs !== null && familyMs !== null ? familyMs - Math.max(firstCallMs, fromMs) : null,
    longestPauseMs: Math.max(0, ...pauses),
    broken,
  };
}
