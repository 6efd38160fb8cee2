/** Where a time stands in the picture: busy minutes are given room, quiet hours are cut short and marked as cut. */

export interface Scale {
  readonly left: number;
  readonly right: number;
  /** The beginning of a moment; a time between two moments stands between them. */
  x(ms: number): number;
  readonly moments: readonly { readonly ms: number; readonly x: number }[];
  /** Quiet stretches that are drawn shorter than they were. */
  readonly cuts: readonly { readonly x: number; readonly minutes: number }[];
}

/** Pixels between two marks of one moment. */
export const step = 9;
const momentWidth = 14;
const minuteWidth = 4;
const longestGap = 72;
const leastWidth = 760;
/** Room for the words beside the last mark, and for what still holds. */
const tailWidth = 190;

/** `times` are those of every mark; of those in `crowded`, each has a place of its own beside the others of its moment. */
export function scaleOf(times: readonly number[], crowded: readonly (readonly number[])[], left: number): Scale {
  const distinct = [...new Set(times)].sort((a, b) => a - b);
  const widthAt = (ms: number) =>
    momentWidth + step * Math.max(0, ...crowded.map((row) => row.filter((one) => one === ms).length - 1));
  const gaps = distinct.map((ms, index) => ((distinct[index + 1] ?? ms) - ms) / 60_000);
  const raw = distinct.map((ms, index) => widthAt(ms) + Math.min((gaps[index] ?? 0) * minuteWidth, longestGap));
  const total = raw.reduce((sum, width) => sum + width, 0);
  const stretch = Math.max(1, leastWidth / total);
  let x = left + momentWidth / 2;
  const moments: { ms: number; x: number }[] = [];
  const cuts: { x: number; minutes: number }[] = [];
  for (const [index, ms] of distinct.entries()) {
    moments.push({ ms, x });
    const gap = gaps[index] ?? 0;
    const width = (raw[index] ?? 0) * stretch;
    if (gap * minuteWidth > longestGap) cuts.push({ x: x + width - (longestGap * stretch) / 2, minutes: gap });
    x += width;
  }
  return { left, right: Math.max(x, left + leastWidth) + tailWidth, moments, cuts, x: (ms) => between(moments, ms) };
}

function between(moments: readonly { readonly ms: number; readonly x: number }[], ms: number): number {
  const after = moments.findIndex((moment) => moment.ms >= ms);
  const next = moments[after === -1 ? moments.length - 1 : after];
  const before = moments[Math.max(0, after - 1)];
  if (next === undefined || before === undefined) return 0;
  if (next.ms <= ms || next.ms === before.ms) return next.x;
  return before.x + ((next.x - before.x) * (ms - before.ms)) / (next.ms - before.ms);
}

/** Each mark of a row with its place: those of one moment side by side. */
export function spread<T extends { readonly atMs: number }>(scale: Scale, row: readonly T[]): (T & { x: number })[] {
  const seen = new Map<number, number>();
  return row.map((mark) => {
    const before = seen.get(mark.atMs) ?? 0;
    seen.set(mark.atMs, before + 1);
    return { ...mark, x: scale.x(mark.atMs) + before * step };
  });
}
