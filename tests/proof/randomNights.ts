/** Nights drawn at random, without a bound on disturbances, on a clock that runs: what the walk leaves out is met here. */
import { answersAt, disturbances, mayCome } from './alphabet.ts';
import { atTheStart, type Setting } from './bystander.ts';
import { hears } from './hears.ts';
import type { Move } from './moves.ts';
import type { Line, Outputs } from './outputs.ts';
import { judge } from './rules.ts';
import { sees, seesGivenUp, shortId } from './sees.ts';
import { noVerdict, type Verdict } from './verdict.ts';
import type { Violation } from './walk.ts';
import { type World, walkAtMs } from './worlds.ts';

export interface Nights {
  readonly nights: number;
  readonly steps: number;
  readonly exercised: Verdict['exercised'];
  readonly violations: readonly (Violation & { readonly seed: number })[];
}

/** Mulberry32: small, seeded, good enough to draw moves. */
function randomOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const minuteMs = 60_000;
const stepsANight = 45;

/** Plays as many nights; a violation names the seed of its night. */
export function randomNights(world: World, line: Line, firstSeed: number, nights: number): Nights {
  const verdict = noVerdict();
  const violations: Nights['violations'][number][] = [];
  let steps = 0;
  for (let seed = firstSeed; seed < firstSeed + nights; seed += 1) {
    const path: string[] = [];
    steps += night(world, line, randomOf(seed), verdict, path);
    const [first] = verdict.broken.splice(0);
    if (first !== undefined) violations.push({ ...first, path, seed });
  }
  return { nights, steps, exercised: verdict.exercised, violations };
}

/** One night, until a rule is broken, the case is over or the night is long enough. Returns its steps. */
function night(world: World, line: Line, random: () => number, verdict: Verdict, path: string[]): number {
  const { protocol, file } = world;
  const { clinical, site } = protocol;
  const setting: Setting = { clinical, timeZone: site.timeZone };
  let snapshot = line.begin(world);
  let bystander = atTheStart(file);
  let atMs = walkAtMs;
  const due = new Map<string, number>();
  const oneOf = <T>(list: readonly T[]): T | undefined => list[Math.floor(random() * list.length)];
  for (let step = 0; step < stepsANight; step += 1) {
    const answers = answersAt(bystander, clinical, atMs);
    const anytime = disturbances(clinical, atMs).filter((move) => mayCome(move, bystander));
    const move = oneOf(random() < 0.75 ? answers : anytime) ?? oneOf(anytime);
    if (move === undefined) return step;
    atMs = timeOf(move, due, atMs + Math.floor(random() * 6) * minuteMs);
    path.push(`${new Date(atMs).toISOString().slice(11, 16)} ${move.words}`);
    const event = { ...move.event, at: atMs, clinicOpen: move.clinicOpen };
    const taken = line.step(snapshot, event);
    const heard = seesGivenUp(hears(bystander, event, setting), event, taken.outputs);
    const after = sees(heard, event, taken.outputs);
    judge({ before: bystander, heard, after, event, outputs: taken.outputs, setting }, verdict);
    keep(due, taken.outputs, atMs);
    snapshot = taken.snapshot;
    bystander = after;
    if (verdict.broken.length > 0 || after.over) return step + 1;
  }
  return stepsANight;
}

/** A timer fires when it is due, other things after a while. */
function timeOf({ event }: Move, due: ReadonlyMap<string, number>, laterMs: number): number {
  return Math.max(laterMs, due.get(shortId(event.type)) ?? 0);
}

function keep(due: Map<string, number>, { timers }: Outputs, atMs: number): void {
  for (const { id, start } of timers) {
    if (start === null) due.delete(shortId(id));
    else due.set(shortId(id), atMs + start.delayMs);
  }
}
