import {
  compose,
  determinant,
  reflection,
  rotation,
  type Transform,
  transformPoint,
  transformPolygon,
  transformSegment,
  translation,
} from '@seamwright/geometry';
import { describe, expect, test } from 'vitest';
import { type Cloth, type CutRules, cutPieces, type PieceCut } from '../src/index.ts';
import { type Block, knownBlocks, USUAL } from './blocks.ts';

const BLOCKS = knownBlocks();
const RULES: CutRules = { allowance: 0.25, spare: 0.25, turn: 3, roundUpTo: 0.25 };

/** The same block elsewhere, its plan carried along: nothing is solved again. */
const carried = ({ name, arrangement, plan }: Block, t: Transform): Block => ({
  name,
  arrangement: {
    ...arrangement,
    patches: arrangement.patches.map((patch) => ({
      ...patch,
      polygon: transformPolygon(t, patch.polygon),
      heart: transformPoint(t, patch.heart),
    })),
  },
  plan: {
    ...plan,
    sections: plan.sections.map((section) => ({
      ...section,
      outline: transformPolygon(t, section.outline),
      sewLines: section.sewLines.map((line) => ({ ...line, ...transformSegment(t, line) })),
    })),
  },
});

const cut = (block: Block, rules: CutRules, cloth: Cloth | null = null, scale = 1) =>
  cutPieces({ ...block, rules, clothOf: () => cloth, copies: 2, scale });

/**
 * What is the same wherever the block lies. A first patch's rectangle may begin at another of its edges; a half-rectangle
 * is mirrored with its patch, or is the same where either covers.
 */
const sizes = (pieces: readonly PieceCut[], mirrored: boolean) =>
  pieces.map(({ name, shape, width, height }) => {
    const eitherWay = shape === 'rectangle' ? /^[A-Z]+1$/.test(name) : mirrored;
    return [name, shape, ...(eitherWay ? [width, height].sort((a, b) => a - b) : [width, height])];
  });

describe('a block turned, mirrored and moved has the same sizes', () => {
  test.each<[string, Transform]>([
    ['a quarter turn', rotation(90)],
    ['turned by 33.3° and moved', compose(rotation(33.3), translation(31, -17.3))],
    ['mirrored, turned and moved', compose(reflection(1), compose(rotation(201), translation(5, 5)))],
  ])('%s', (_, t) => {
    for (const block of BLOCKS) {
      const there = cut(carried(block, t), RULES);
      const mirrored = determinant(t) < 0;
      expect(sizes(there, mirrored), block.name).toEqual(sizes(cut(block, RULES), mirrored));
    }
  });
});

test('everything twice as large is cut twice as large', () => {
  const twice = { allowance: 0.5, spare: 0.5, turn: 3, roundUpTo: 0.5 };
  for (const block of BLOCKS) {
    const small = cut(block, RULES);
    cut(block, twice, null, 2).forEach((piece, k) => {
      expect([piece.shape, piece.width, piece.height]).toEqual([
        small[k]!.shape,
        2 * small[k]!.width,
        2 * small[k]!.height,
      ]);
      expect(piece.toleranceShift).toBeCloseTo(2 * small[k]!.toleranceShift, 9);
      expect(piece.toleranceAngle).toBeCloseTo(small[k]!.toleranceAngle, 6);
    });
  }
});

test('more allowance, spare or turn never makes a piece smaller', () => {
  const upright: Cloth = { id: 'waves', name: 'Waves', usableWidth: 40, directional: true };
  const more = (Object.keys({ allowance: 0, spare: 0, turn: 0 }) as (keyof CutRules)[]).map((rule) => ({
    ...RULES,
    [rule]: RULES[rule] * 1.5,
  }));
  for (const block of BLOCKS) {
    const least = cut(block, RULES, upright);
    for (const rules of more) {
      cut(block, rules, upright).forEach(({ width, height }, k) => {
        expect(width).toBeGreaterThanOrEqual(least[k]!.width);
        expect(height).toBeGreaterThanOrEqual(least[k]!.height);
      });
    }
  }
});

test('pieces lie along their sew line, or along the grain', () => {
  const upright: Cloth = { id: 'waves', name: 'Waves', usableWidth: 40, directional: true };
  const plain: Cloth = { ...upright, directional: false };
  for (const block of BLOCKS) {
    for (const piece of cut(block, USUAL, upright))
      expect(piece).toMatchObject({ shape: 'rectangle', angle: 0 });
    const onGrain = cutPieces({ ...block, rules: USUAL, clothOf: () => plain, alongGrain: () => true });
    for (const { angle } of onGrain) expect(angle % 90).toBe(0);
    const sewLines = new Map(
      block.plan.sections.flatMap(({ sewLines }) => sewLines.map((s) => [s.patch, s])),
    );
    for (const { patch, shape, width, height, angle } of cut(block, USUAL)) {
      const sewLine = sewLines.get(patch);
      if (sewLine === undefined) continue;
      // Rectangles: their width. Half-rectangles: a leg or the long side.
      const longSide = angle - (Math.atan2(height, width) * 180) / Math.PI;
      const lines = shape === 'rectangle' ? [angle] : [angle, angle + 90, longSide];
      const seam = (Math.atan2(sewLine.b.y - sewLine.a.y, sewLine.b.x - sewLine.a.x) * 180) / Math.PI;
      const off = Math.min(...lines.map((line) => Math.abs(Math.sin(((line - seam) * Math.PI) / 180))));
      expect(off).toBeLessThan(1e-6);
    }
  }
});
