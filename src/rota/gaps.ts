/** Where a rota does not hold: times without anybody on a line, with two on one line, or with one person on two lines. */
import type { Nurse, Rota, Shift } from './rota.ts';

/** A time on one line of the climb (0 the first), epoch ms. */
export interface Stretch {
  readonly place: number;
  readonly startMs: number;
  readonly endMs: number;
}

/** Two people on one line, or one person on two: `place` is the later line. */
export interface Clash extends Stretch {
  readonly nurses: readonly [Nurse, Nurse];
}

/** Every time between `fromMs` and `toMs` (epoch ms) at which a line has nobody. */
export function gapsIn(rota: Rota, fromMs: number, toMs: number): readonly Stretch[] {
  return rota.lines.flatMap((line, place) => {
    const gaps: Stretch[] = [];
    let coveredMs = fromMs;
    for (const { startMs, endMs } of line(fromMs, toMs)) {
      if (startMs > coveredMs) gaps.push({ place, startMs: coveredMs, endMs: startMs });
      coveredMs = Math.max(coveredMs, endMs);
    }
    if (coveredMs < toMs) gaps.push({ place, startMs: coveredMs, endMs: toMs });
    return gaps;
  });
}

/** Every time at which two people have the same line; the one whose shift began last is called. */
export function overlapsIn(rota: Rota, fromMs: number, toMs: number): readonly Clash[] {
  return rota.lines.flatMap((line, place) => {
    const shifts = line(fromMs, toMs);
    return clashes(shifts, shifts, place, fromMs, toMs, (one, other) => one.nurse.number !== other.nurse.number);
  });
}

/** Every time at which a person has two lines, so that a page climbs to somebody who has not answered already. */
export function doublesIn(rota: Rota, fromMs: number, toMs: number): readonly Clash[] {
  return rota.lines.flatMap((line, place) => {
    const shifts = line(fromMs, toMs);
    const before = rota.lines.slice(0, place).flatMap((other) => other(fromMs, toMs));
    return clashes(before, shifts, place, fromMs, toMs, (one, other) => one.nurse.number === other.nurse.number);
  });
}

function clashes(
  ones: readonly Shift[],
  others: readonly Shift[],
  place: number,
  fromMs: number,
  toMs: number,
  isClash: (one: Shift, other: Shift) => boolean,
): readonly Clash[] {
  return ones.flatMap((one, index) =>
    (ones === others ? others.slice(index + 1) : others).flatMap((other) => {
      const startMs = Math.max(one.startMs, other.startMs, fromMs);
      const endMs = Math.min(one.endMs, other.endMs, toMs);
      if (startMs >= endMs || !isClash(one, other)) return [];
      return [{ place, startMs, endMs, nurses: [one.nurse, other.nurse] as const }];
    }),
  );
}
