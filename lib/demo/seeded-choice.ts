/** A source of chance that gives the same values for the same seed on every machine. */
export type SeededChoice = {
  /** A number from 0 up to, not including, 1. */
  next(): number;
  /** A whole multiple of `step` from `least` to `most`, both included. */
  between(least: number, most: number, step?: number): number;
  /** One entry of a list that is not empty. */
  one<T>(list: readonly T[]): T;
};

/** Mulberry32: 32 bits of state, enough for a few thousand invented facts. */
export function seededChoice(seed: number): SeededChoice {
  let state = seed >>> 0;
  function next(): number {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
  function between(least: number, most: number, step = 1): number {
    return least + step * Math.floor(next() * (Math.floor((most - least) / step) + 1));
  }
  function one<T>(list: readonly T[]): T {
    const entry = list[Math.floor(next() * list.length)];
    if (entry === undefined) throw new Error('nothing to choose from');
    return entry;
  }
  return { next, between, one };
}
