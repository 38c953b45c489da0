import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { planSewing, replay, sewingReport } from '../src/index.ts';

/**
 * Traditional blocks, by their traditional names. Names and shapes: Marie D. Webster, Quilts: Their Story and How to Make
 * Them, 1915 (public domain; names from memory); patches and foundations counted by brute force.
 */
type Block = { outline: readonly Point[]; splits: readonly Segment[] };

const l = (x1: number, y1: number, x2: number, y2: number): Segment => ({
  a: { x: x1, y: y1 },
  b: { x: x2, y: y2 },
});
const square = (n: number): Point[] => [
  { x: 0, y: 0 },
  { x: n, y: 0 },
  { x: n, y: n },
  { x: 0, y: n },
];

/** Two logs across, two down in each round, opposite ones of the same length. */
function courthouseSteps(rounds: number): Block {
  const n = 2 * rounds + 1;
  const splits: Segment[] = [];
  for (let r = 0; r < rounds; r += 1) {
    const [low, high] = [r, n - r];
    splits.push(l(low, low + 1, high, low + 1), l(low, high - 1, high, high - 1));
    splits.push(l(low + 1, low + 1, low + 1, high - 1), l(high - 1, low + 1, high - 1, high - 1));
  }
  return { outline: square(n), splits };
}

/** Logs go round: each ends on the next round's first. */
function logCabin(rounds: number): Block {
  const n = 2 * rounds + 1;
  const splits: Segment[] = [];
  for (let r = 0; r < rounds; r += 1) {
    const [low, high] = [r, n - r];
    splits.push(l(low + 1, low, low + 1, high), l(low + 1, high - 1, high, high - 1));
    splits.push(l(high - 1, low, high - 1, high - 1), l(low + 1, low + 1, high - 1, low + 1));
  }
  return { outline: square(n), splits };
}

const economy: Block = {
  outline: square(4),
  splits: [
    l(2, 0, 4, 2),
    l(4, 2, 2, 4),
    l(2, 4, 0, 2),
    l(0, 2, 2, 0),
    l(1, 1, 3, 1),
    l(3, 1, 3, 3),
    l(3, 3, 1, 3),
    l(1, 3, 1, 1),
  ],
};

function geese(n: number): Block {
  const splits = Array.from({ length: n }, (_, i) => [
    l(0, 2 * i, 4, 2 * i),
    l(0, 2 * i + 2, 2, 2 * i),
    l(2, 2 * i, 4, 2 * i + 2),
  ])
    .flat()
    .slice(1);
  return {
    outline: [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 2 * n },
      { x: 0, y: 2 * n },
    ],
    splits,
  };
}

const grid = (n: number, size = n): Segment[] =>
  Array.from({ length: n - 1 }, (_, i) => ((i + 1) * size) / n).flatMap((v) => [
    l(v, 0, v, size),
    l(0, v, size, v),
  ]);

const hourglass: Block = { outline: square(2), splits: [l(0, 0, 2, 2), l(0, 2, 2, 0)] };

const friendshipStar: Block = {
  outline: square(3),
  splits: [...grid(3), l(1, 0, 2, 1), l(3, 1, 2, 2), l(2, 3, 1, 2), l(0, 2, 1, 1)],
};

const churnDash: Block = {
  outline: square(3),
  splits: [
    ...grid(3),
    l(0, 1, 1, 0),
    l(2, 0, 3, 1),
    l(3, 2, 2, 3),
    l(1, 3, 0, 2),
    l(1, 0.5, 2, 0.5),
    l(1, 2.5, 2, 2.5),
    l(0.5, 1, 0.5, 2),
    l(2.5, 1, 2.5, 2),
  ],
};

const ohioStar: Block = {
  outline: square(3),
  splits: [
    ...grid(3),
    ...[
      [1, 0],
      [0, 1],
      [2, 1],
      [1, 2],
    ].flatMap(([x, y]) => [l(x!, y!, x! + 1, y! + 1), l(x! + 1, y!, x!, y! + 1)]),
  ],
};

/** Eight wedges round the middle of an octagon, its corners cut from a square. */
const kaleidoscope: Block = (() => {
  const n = 4;
  const c = n / (2 + Math.SQRT2);
  return {
    outline: square(n),
    splits: [
      l(c, 0, n - c, n),
      l(n - c, 0, c, n),
      l(0, c, n, n - c),
      l(0, n - c, n, c),
      l(c, 0, 0, c),
      l(n - c, 0, n, c),
      l(n, n - c, n - c, n),
      l(c, n, 0, n - c),
    ],
  };
})();

/** Three diamonds in a regular hexagon: seams turn the corner in the middle. */
const threeDiamonds: Block = (() => {
  const corner = (k: number) => ({
    x: 2 + 2 * Math.cos((k * Math.PI) / 3),
    y: 2 + 2 * Math.sin((k * Math.PI) / 3),
  });
  const outline = [0, 1, 2, 3, 4, 5].map(corner);
  return { outline, splits: [0, 2, 4].map((k) => ({ a: { x: 2, y: 2 }, b: outline[k]! })) };
})();

/** A window with two sills that meet in a mitre. */
const mitredAtticWindow: Block = {
  outline: square(3),
  splits: [l(1, 0, 1, 2), l(1, 2, 3, 2), l(0, 3, 1, 2)],
};

const cases: Record<string, readonly [Block, number, number | null]> = {
  ...Object.fromEntries(
    [1, 2, 3, 6].map((r) => [`log cabin, ${r} rounds`, [logCabin(r), 4 * r + 1, 1]] as const),
  ),
  ...Object.fromEntries(
    [1, 2, 5].map((r) => [`courthouse steps, ${r} rounds`, [courthouseSteps(r), 4 * r + 1, 1]] as const),
  ),
  economy: [economy, 9, 1],
  'geese, strip of 7': [geese(7), 21, 1],
  'four-patch': [{ outline: square(2), splits: grid(2) }, 4, 2],
  'nine-patch': [{ outline: square(3), splits: grid(3) }, 9, 3],
  'sixteen-patch': [{ outline: square(4), splits: grid(4) }, 16, 4],
  hourglass: [hourglass, 4, 2],
  'friendship star': [friendshipStar, 13, 3],
  'churn dash': [churnDash, 17, 3],
  'ohio star': [ohioStar, 21, 5],
  'kaleidoscope with corners': [kaleidoscope, 12, 2],
  'three diamonds in a hexagon': [threeDiamonds, 3, null],
  'mitred attic window': [mitredAtticWindow, 3, null],
};

describe('traditional blocks', () => {
  for (const [name, [{ outline, splits }, patches, fewest]] of Object.entries(cases)) {
    it(`${name}: ${patches} patches, ${fewest === null ? 'never with straight seams' : `${fewest} foundations`}`, () => {
      const result = arrange(drawingFromSegments(outline, splits));
      if (!result.ok) throw new Error(result.problem.what);
      expect(result.value.patches).toHaveLength(patches);
      const plan = planSewing(result.value);
      if (fewest === null) {
        expect(plan.verdict).toBe('not sewable');
        expect(plan.findings[0]!.kind).toBe('interlocked');
        return;
      }
      expect(plan.sections).toHaveLength(fewest);
      expect(plan.provenLeast).toBe(true);
      expect(replay(sewingReport(result.value, plan))).toEqual([]);
    });
  }
});

describe('what is not proved is not called proved', () => {
  it('four ohio stars: 16 foundations with full effort; without, an answer that stands, and a bound below it', () => {
    const moved =
      (dx: number, dy: number) =>
      ({ a, b }: Segment) =>
        l(a.x + dx, a.y + dy, b.x + dx, b.y + dy);
    const splits = [
      ...[0, 3].flatMap((dx) => [0, 3].flatMap((dy) => ohioStar.splits.map(moved(dx, dy)))),
      l(3, 0, 3, 6),
      l(0, 3, 6, 3),
    ];
    const result = arrange(drawingFromSegments(square(6), splits));
    if (!result.ok) throw new Error(result.problem.what);
    const full = planSewing(result.value);
    expect([full.sections.length, full.provenLeast, full.atLeast]).toEqual([16, true, 16]);
    const quick = planSewing(result.value, { effort: 0 });
    expect(quick.verdict).toBe('several foundations');
    expect(quick.provenLeast).toBe(false);
    expect(quick.atLeast).toBeLessThanOrEqual(16);
    expect(quick.atLeast).toBeLessThan(quick.sections.length);
    expect(replay(sewingReport(result.value, quick))).toEqual([]);
  });
});
