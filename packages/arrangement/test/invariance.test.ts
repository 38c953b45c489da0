import { area, type Point, type Segment } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundaryRing, cornersOfRing } from '../src/boundary.ts';
import type { Arrangement } from '../src/types.ts';
import { areas, arranged, kinds, onBoundary, rectangle } from './drawings.ts';

// Not fc.double, which draws mostly from next to 0.
const share = fc.nat(999_983).map((n) => n / 999_984);
const OUTLINE = rectangle(12, 9);

/** Splits that start on the outline and end on it or anywhere inside; many of them end loose. */
const drawing = fc
  .array(fc.tuple(share, share, share, fc.boolean()), { minLength: 1, maxLength: 9 })
  .map((splits) =>
    splits.map(
      ([s, t, u, through]): Segment => ({
        a: onBoundary(OUTLINE, s),
        b: through ? onBoundary(OUTLINE, t) : { x: 12 * t, y: 9 * u },
      }),
    ),
  );

/** Ways to draw the same block differently. Turns and mirrors are exact in floating point, so nothing may change. */
const SAME: Record<string, (p: Point) => Point> = {
  'a quarter turn': ({ x, y }) => ({ x: -y, y: x }),
  'a half turn': ({ x, y }) => ({ x: -x, y: -y }),
  'three quarter turns': ({ x, y }) => ({ x: y, y: -x }),
  'the mirror image': ({ x, y }) => ({ x: -x, y }),
};

function structure(block: Arrangement): unknown {
  return {
    patches: areas(block, 9),
    edges: block.edges.length,
    vertices: block.vertices.length,
    kinds: kinds(block).sort(),
  };
}

describe('how a block is drawn does not matter', () => {
  it('order and direction of the splits', () => {
    fc.assert(
      fc.property(drawing, fc.infiniteStream(fc.boolean()), fc.nat(), (segments, flips, seed) => {
        const shuffled = segments
          .map((s, i) => ({ s, key: Math.sin(seed + i) }))
          .sort((p, q) => p.key - q.key)
          .map(({ s }) => (flips.next().value ? { a: s.b, b: s.a } : s));
        expect(structure(arranged(OUTLINE, shuffled))).toEqual(structure(arranged(OUTLINE, segments)));
      }),
      { seed: 11, numRuns: 400 },
    );
  });

  for (const [name, move] of Object.entries(SAME)) {
    it(name, () => {
      fc.assert(
        fc.property(drawing, (segments) => {
          const moved = segments.map(({ a, b }) => ({ a: move(a), b: move(b) }));
          expect(structure(arranged(OUTLINE.map(move), moved))).toEqual(
            structure(arranged(OUTLINE, segments)),
          );
        }),
        { seed: 12, numRuns: 200 },
      );
    });
  }

  it('the outline drawn the other way round', () => {
    fc.assert(
      fc.property(drawing, (segments) => {
        expect(structure(arranged([...OUTLINE].reverse(), segments))).toEqual(
          structure(arranged(OUTLINE, segments)),
        );
      }),
      { seed: 13, numRuns: 100 },
    );
  });
});

describe('the structure is sound', () => {
  it('patches fill the block, rings and edges agree, every edge has two sides', () => {
    fc.assert(
      fc.property(drawing, (segments) => {
        const block = arranged(OUTLINE, segments);
        const total = block.patches.reduce((sum, patch) => sum + patch.area, 0);
        expect(total).toBeCloseTo(108, 9);
        for (const patch of block.patches) {
          expect(patch.ring).toHaveLength(patch.edges.length);
          expect(patch.depth).toBeGreaterThan(0);
          patch.edges.forEach((e, i) => {
            const { from, to, left, right } = block.edges[e]!;
            const [start, end] = [patch.ring[i]!, patch.ring[(i + 1) % patch.ring.length]!];
            // The patch lies on the right of its own walk.
            expect([from, to, right]).toSatisfy(
              () =>
                (from === start && to === end && right === patch.index) ||
                (to === start && from === end && left === patch.index),
            );
          });
        }
        for (const { left, right, line, from, to } of block.edges) {
          expect(left).not.toBe(right);
          for (const v of [from, to]) expect(block.vertices[v]!.lines).toContain(line);
        }
      }),
      { seed: 14, numRuns: 300 },
    );
  });

  it('the boundary of connected patches encloses their area', () => {
    fc.assert(
      fc.property(drawing, fc.nat(), (segments, pick) => {
        const block = arranged(OUTLINE, segments);
        const chosen = new Set([pick % block.patches.length]);
        for (const { left, right } of block.edges) {
          if (chosen.size >= 4) break;
          if (left >= 0 && right >= 0 && chosen.has(left) !== chosen.has(right)) chosen.add(left).add(right);
        }
        const inside = [...chosen].reduce((sum, p) => sum + block.patches[p]!.area, 0);
        const enclosed = area(cornersOfRing(block, boundaryRing(block, chosen)));
        // A ring of patches round one that is not chosen encloses that one too.
        expect(enclosed).toBeGreaterThan(inside - 1e-9);
        const whole = new Set(block.patches.map(({ index }) => index));
        expect(area(cornersOfRing(block, boundaryRing(block, whole)))).toBeCloseTo(108, 9);
      }),
      { seed: 15, numRuns: 300 },
    );
  });
});
