/** What the bench prints: a figure, and beside it the goal it is held to and whether it is met. */

export interface Goal {
  readonly words: string;
  readonly met: boolean;
}

/** Prints one figure on one line. */
export function print(place: string, what: string, figure: string, goal?: Goal): void {
  const judged = goal === undefined ? '' : `   goal ${goal.words}: ${goal.met ? 'met' : 'NOT MET'}`;
  process.stdout.write(`${place.padEnd(11)} ${what.padEnd(44)} ${figure}${judged}\n`);
}

export function atLeast(least: number, value: number): Goal {
  return { words: `at least ${least}`, met: value >= least };
}

export function under(most: number, value: number, unit: string): Goal {
  return { words: `under ${most} ${unit}`, met: value < most };
}

export function median(values: readonly number[]): number {
  return percentile(values, 0.5);
}

/** The value that this share of all is not above. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** How fast many texts were answered. */
export interface Pace {
  readonly perSecond: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
}

export function paceOf(tookMs: readonly number[], seconds: number): Pace {
  return { perSecond: tookMs.length / seconds, p50Ms: percentile(tookMs, 0.5), p99Ms: percentile(tookMs, 0.99) };
}

export function paceWords({ perSecond, p50Ms, p99Ms }: Pace): string {
  return `${perSecond.toFixed(0).padStart(5)} messages/s   p50 ${p50Ms.toFixed(1)} ms   p99 ${p99Ms.toFixed(1)} ms`;
}

/** The median of each figure over several runs. */
export function medianPace(paces: readonly Pace[]): Pace {
  const of = (figure: keyof Pace) => median(paces.map((pace) => pace[figure]));
  return { perSecond: of('perSecond'), p50Ms: of('p50Ms'), p99Ms: of('p99Ms') };
}
