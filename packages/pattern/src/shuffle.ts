import { type ColourwayKey, fabricIn } from './colourways.ts';
import type { Pattern } from './pattern.ts';

/** The fabrics that patches are cut from in a colourway, in the pattern's order of fabrics. */
export function fabricsWorn({ fabrics = [], blocks }: Pattern, colourway: ColourwayKey): readonly string[] {
  const worn = new Set(blocks.flatMap(({ patches }) => patches.map((record) => fabricIn(record, colourway))));
  return fabrics.map(({ id }) => id).filter((id) => worn.has(id));
}

/**
 * For each fabric another one of the same in its place: none keeps its own, and each is used once, where there are two or
 * more. Which ones follows from the seed alone. (Sattolo, 1986: a shuffle that makes one cycle; from memory.)
 *
 * @param seed a whole number
 */
export function shuffledFabrics(ids: readonly string[], seed: number): ReadonlyMap<string, string> {
  const random = seeded(seed);
  const shuffled = [...ids];
  for (let i = shuffled.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * i);
    [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
  }
  return new Map(ids.map((id, i) => [id, shuffled[i]!]));
}

/** Numbers in [0, 1) from a seed: the mulberry32 generator (public domain; from memory). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
