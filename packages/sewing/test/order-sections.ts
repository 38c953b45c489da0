import { type Arrangement, arrange, boundaryRing, drawingFromSegments } from '@seamwright/arrangement';
import { area, lerp, type Point, type Segment } from '@seamwright/geometry';
import fc from 'fast-check';
import { l } from './grid-block.ts';

/** Some patches of a block. */
export interface SomePatches {
  readonly arrangement: Arrangement;
  /** Ascending, connected, without holes. */
  readonly region: readonly number[];
}

export function arranged(outline: readonly Point[], segments: readonly Segment[]): Arrangement {
  const result = arrange(drawingFromSegments(outline, segments));
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

const wholeBlock = (arrangement: Arrangement): SomePatches => ({
  arrangement,
  region: arrangement.patches.map(({ index }) => index),
});

export const corners = (...pairs: (readonly [number, number])[]): Point[] =>
  pairs.map(([x, y]) => ({ x, y }));

const square = (size: number): Point[] => corners([0, 0], [size, 0], [size, size], [0, size]);

/** Strips side by side. */
export const strips = (count: number): SomePatches =>
  wholeBlock(
    arranged(
      corners([0, 0], [count, 0], [count, 6], [0, 6]),
      Array.from({ length: count - 1 }, (_, i) => l(i + 1, 0, i + 1, 6)),
    ),
  );

/** Logs go round: each ends on the next. */
export function logCabin(rounds: number): SomePatches {
  const size = 2 * rounds + 1;
  const segments = Array.from({ length: rounds }, (_, r) => {
    const [low, high] = [r, size - r];
    return [
      l(low + 1, low, low + 1, high),
      l(low + 1, high - 1, high, high - 1),
      l(high - 1, low, high - 1, high - 1),
      l(low + 1, low + 1, high - 1, low + 1),
    ];
  });
  return wholeBlock(arranged(square(size), segments.flat()));
}

/** Geese one above the other, three patches each. */
export function geese(count: number): SomePatches {
  const segments = Array.from({ length: count }, (_, i) => [
    ...(i === 0 ? [] : [l(0, 2 * i, 4, 2 * i)]),
    l(0, 2 * i + 2, 2, 2 * i),
    l(2, 2 * i, 4, 2 * i + 2),
  ]);
  return wholeBlock(arranged(corners([0, 0], [4, 0], [4, 2 * count], [0, 2 * count]), segments.flat()));
}

/** Two logs across, two down in each round, opposite ones of the same length. */
export function courthouseSteps(rounds: number): SomePatches {
  const size = 2 * rounds + 1;
  const segments = Array.from({ length: rounds }, (_, r) => {
    const [low, high] = [r, size - r];
    return [
      l(low, low + 1, high, low + 1),
      l(low, high - 1, high, high - 1),
      l(low + 1, low + 1, low + 1, high - 1),
      l(high - 1, low + 1, high - 1, high - 1),
    ];
  });
  return wholeBlock(arranged(square(size), segments.flat()));
}

/** A square on its corner in a square, and so on inwards. */
export function squareInSquare(squares: number): SomePatches {
  const size = 2 ** squares;
  let around = square(size);
  const segments: Segment[] = [];
  for (let i = 1; i < squares; i += 1) {
    const middles = around.map((p, k) => lerp(p, around[(k + 1) % 4]!, 0.5));
    segments.push(...middles.map((p, k) => ({ a: p, b: middles[(k + 1) % 4]! })));
    around = middles;
  }
  return wholeBlock(arranged(square(size), segments));
}

/** A regular polygon whose corners are patches of their own, each touching only the middle: they come in any order. */
export function cutCorners(count: number, radius: number): SomePatches {
  const outline = Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  const onSide = (i: number, t: number) => lerp(outline[i % count]!, outline[(i + 1) % count]!, t);
  const segments = outline.map((_, i) => ({ a: onSide(i, 0.7), b: onSide(i + 1, 0.3) }));
  return wholeBlock(arranged(outline, segments));
}

/** A square, and outlines that are not convex: only in such can a fold be unclean. */
const OUTLINES: readonly (readonly Point[])[] = [
  square(12),
  corners([0, 0], [5, 0], [5, 6], [12, 6], [12, 12], [0, 12]),
  corners([0, 0], [12, 0], [12, 5], [8, 5], [8, 12], [4, 12], [4, 5], [0, 5]),
  corners([4, 0], [8, 0], [8, 4], [12, 4], [12, 8], [8, 8], [8, 12], [4, 12], [4, 8], [0, 8], [0, 4], [4, 4]),
  corners([0, 0], [6, 3], [12, 0], [10, 6], [12, 12], [6, 10], [0, 12], [2, 6]),
];

/** Evenly from 0 to 1; `fc.double` would be even over the doubles there are, most of which are next to 0. */
const share = fc.nat(9999).map((n) => n / 10_000);

/** The checker that lays sides on each other within 1/128 in takes both sides of a sliver for one. */
const withoutSlivers = ({ patches }: Arrangement): boolean => patches.every(({ depth }) => depth > 1 / 32);

/** A point of the outline: so far along the whole way round. */
function border(outline: readonly Point[], s: number): Point {
  const i = Math.floor(s * outline.length);
  return lerp(outline[i]!, outline[(i + 1) % outline.length]!, s * outline.length - i);
}

/** Lines between points of the outline, and lines that end on an earlier one. */
const crossedDrawings = fc
  .tuple(
    fc.constantFrom(...OUTLINES),
    fc.array(fc.tuple(share, share, fc.nat(), fc.boolean()), { minLength: 6, maxLength: 12 }),
  )
  .map(([outline, drawn]) => {
    const lines: Segment[] = [];
    for (const [s, t, pick, stub] of drawn) {
      const target = lines[pick % Math.max(1, lines.length)];
      const end = stub && target !== undefined ? lerp(target.a, target.b, t) : border(outline, t);
      lines.push({ a: border(outline, s), b: end });
    }
    return arranged(outline, lines);
  })
  .filter(withoutSlivers);

/**
 * A square from which one patch after the other is cut off by a line right across what is left: good on one foundation,
 * whatever the lines. Where the rest has become so small that ends snap together it is another drawing; left out.
 */
const offcuts = (least: number, most: number): fc.Arbitrary<Arrangement> =>
  fc
    .array(fc.tuple(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 })), {
      minLength: least - 1,
      maxLength: most - 1,
      size: 'max',
    })
    .map((cuts) => {
      let left: readonly Point[] = square(60);
      const segments: Segment[] = [];
      for (const [first, steps, s, t] of cuts) {
        const n = left.length;
        const i = first % n;
        const j = (i + 1 + (steps % (n - 1))) % n;
        const a = lerp(left[i]!, left[(i + 1) % n]!, s / 8);
        const b = lerp(left[j]!, left[(j + 1) % n]!, t / 8);
        const from = (k: number, to: number) =>
          Array.from({ length: (to - k + n) % n }, (_, m) => left[(k + 1 + m) % n]!);
        const parts = [
          [a, ...from(i, j), b],
          [b, ...from(j, i), a],
        ] as const;
        segments.push({ a, b });
        left = area(parts[0]) > area(parts[1]) ? parts[0] : parts[1];
      }
      return arranged(square(60), segments);
    })
    .filter((arrangement) => arrangement.findings.length === 0 && withoutSlivers(arrangement));

/** Whole blocks of so many patches that are good on one foundation. */
export const oneFoundation = (least: number, most: number): fc.Arbitrary<SomePatches> =>
  fc.noBias(offcuts(least, most)).map(wholeBlock);

/** Up to `most` patches of a block that hang together, grown from one of them; good on one foundation or not. */
export const somePatches = (most: number): fc.Arbitrary<SomePatches> =>
  // Without a bias to the small, which would make most of them of two or three patches.
  fc
    .noBias(
      fc.tuple(
        fc.oneof(crossedDrawings, offcuts(most, 2 * most)),
        fc.nat(),
        fc.array(fc.nat(), { maxLength: most - 1, size: 'max' }),
      ),
    )
    .map(([arrangement, start, picks]) => {
      const { patches, edges } = arrangement;
      const region = new Set([start % patches.length]);
      for (const pick of picks) {
        const beside = edges.flatMap(({ left, right }) =>
          left >= 0 && right >= 0 && region.has(left) !== region.has(right)
            ? [region.has(left) ? right : left]
            : [],
        );
        if (beside.length === 0) break;
        region.add(beside[pick % beside.length]!);
      }
      return { arrangement, region: [...region].sort((p, q) => p - q) };
    })
    .filter(({ arrangement, region }) => !hasHoles(arrangement, new Set(region)));

function hasHoles(arrangement: Arrangement, region: ReadonlySet<number>): boolean {
  const border = arrangement.edges.filter(({ left, right }) => region.has(left) !== region.has(right));
  return boundaryRing(arrangement, region).length !== border.length;
}
