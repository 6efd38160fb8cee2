/** Chance from a seed: the same seed always throws the same. */

export interface Dice {
  /** From 0 up to, not including, `most`. */
  below(most: number): number;
  chance(share: number): boolean;
  oneOf<T>(list: readonly T[]): T;
}

/** Mulberry32: small, seeded, good enough to draw requests. */
export function diceOf(seed: number): Dice {
  let state = seed;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (most: number) => Math.floor(next() * most);
  return {
    below,
    chance: (share) => next() < share,
    oneOf: (list) => {
      const one = list[below(list.length)];
      if (one === undefined) throw new RangeError('nothing to choose from');
      return one;
    },
  };
}
