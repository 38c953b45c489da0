import type { Slip } from './placing-by-hand.ts';

/** Numbers in 0 … 1 from a seed. Algorithm: mulberry32, T. Ettinger, 2017 (public domain; from memory). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A slip within the given limits; every second one at the limits, where a piece fails first. */
export function randomSlip(random: () => number, spare: number, turn: number): Slip {
  const atLimit = random() < 0.5;
  const far = spare * (atLimit ? 1 : Math.sqrt(random()));
  // Straight against a side, or any way.
  const way = random() * 2 * Math.PI;
  const degrees = atLimit && random() < 0.7 ? (random() < 0.5 ? turn : -turn) : turn * (2 * random() - 1);
  return { dx: far * Math.cos(way), dy: far * Math.sin(way), degrees };
}
