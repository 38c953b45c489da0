import type { Arrangement } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import type { Fabric } from '@seamwright/pattern';
import { lightnessOf } from './lightness.ts';

/**
 * Two fabrics that differ by less in lightness are hardly told apart side by side: one step of a grey scale of ten, by which
 * quilters sort fabrics into light, medium and dark (common practice). For greys OKLab's lightness is (L* + 16) ÷ 116 (both
 * are cube roots of the luminance), so a step of 10 L* is 10 ÷ 116.
 */
export const LEAST_DIFFERENCE = 10 / 116;

/** Two fabrics that lie side by side somewhere and look as light as each other. */
export interface AlikeFabrics {
  readonly fabrics: readonly [Fabric, Fabric];
  /** Patches on either side of a seam, by index. */
  readonly neighbours: readonly (readonly [number, number])[];
  readonly seams: readonly Segment[];
}

/**
 * The fabrics of neighbouring patches that are hardly told apart in lightness, the most alike first. Neighbours of one fabric
 * are left out: they are meant to look like one.
 *
 * @param fabricOf by the index of a patch; undefined where none is chosen
 */
export function alikeInLightness(
  { edges, vertices }: Arrangement,
  fabricOf: (patch: number) => Fabric | undefined,
): readonly AlikeFabrics[] {
  const found = new Map<string, Found>();
  for (const { left, right, from, to } of edges) {
    const [a, b] = left < right ? [left, right] : [right, left];
    const [one, other] = [fabricOf(a), fabricOf(b)];
    if (a < 0 || one === undefined || other === undefined || one.id === other.id) continue;
    if (differenceOf(one, other) >= LEAST_DIFFERENCE) continue;
    const fabrics: [Fabric, Fabric] = one.id < other.id ? [one, other] : [other, one];
    const key = `${fabrics[0].id} ${fabrics[1].id}`;
    const pair: Found = found.get(key) ?? { fabrics, neighbours: new Map(), seams: [] };
    found.set(key, pair);
    pair.neighbours.set(`${a} ${b}`, [a, b]);
    pair.seams.push({ a: vertices[from]!.at, b: vertices[to]!.at });
  }
  return [...found.values()]
    .map(({ neighbours, ...pair }) => ({ ...pair, neighbours: [...neighbours.values()] }))
    .sort((p, q) => differenceOf(...p.fabrics) - differenceOf(...q.fabrics));
}

interface Found {
  readonly fabrics: readonly [Fabric, Fabric];
  readonly neighbours: Map<string, readonly [number, number]>;
  readonly seams: Segment[];
}

const differenceOf = (one: Fabric, other: Fabric): number =>
  Math.abs(lightnessOf(one.colour) - lightnessOf(other.colour));
