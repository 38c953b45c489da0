import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cover, type CoverOrder, cover, type Leaning, type Obstacles } from './tile-grid.ts';

const CLEAR: Obstacles = { labels: [], ticks: [], lines: [] };

const place = fc.double({ min: 0, max: 8700, noNaN: true });
const span = fc
  .record({ from: place, size: fc.double({ min: 2, max: 40, noNaN: true }) })
  .map(({ from, size }) => ({ from, to: from + size }));

/** What is to be covered, by sheets of 300 to 1100 points (4 to 15 in). */
const task: fc.Arbitrary<{ length: number; order: CoverOrder }> = fc.record({
  length: fc.double({ min: 10, max: 8700, noNaN: true }),
  order: fc.record({
    most: fc.double({ min: 300, max: 1100, noNaN: true }),
    overlap: fc.constantFrom(18, 36, 72, 100),
    leaning: fc.constantFrom<Leaning>('even', 'early', 'late'),
    obstacles: fc.record({
      labels: fc.array(span, { maxLength: 12 }),
      ticks: fc.array(span, { maxLength: 6 }),
      lines: fc.array(place, { maxLength: 12 }),
    }),
  }),
});

test('tiles cover the length, fit in the room, and overlap as was asked, half on each side of a join', () => {
  fc.assert(
    fc.property(task, ({ length, order }) => {
      const { spans, joins } = cover(length, order);
      expect(spans[0]!.from).toBeLessThanOrEqual(0);
      expect(spans.at(-1)!.to).toBeGreaterThanOrEqual(length);
      expect(joins).toHaveLength(spans.length - 1);
      for (const { from, to } of spans) expect(to - from).toBeLessThanOrEqual(order.most + 1e-4);
      joins.forEach((join, i) => {
        expect(spans[i]!.to - join).toBeCloseTo(order.overlap / 2, 9);
        expect(join - spans[i + 1]!.from).toBeCloseTo(order.overlap / 2, 9);
      });
      // Each tile has something of its own between its two joins.
      for (let i = 1; i < joins.length; i++)
        expect(joins[i]! - joins[i - 1]!).toBeGreaterThanOrEqual(order.overlap - 1e-4);
    }),
    { seed: 11, numRuns: 500 },
  );
});

test('there are no more tiles than the room needs', () => {
  fc.assert(
    fc.property(task, ({ length, order }) => {
      const fewer = cover(length, order).spans.length - 1;
      // One tile fewer would not reach.
      if (fewer > 0) expect(fewer * order.most - (fewer - 1) * order.overlap).toBeLessThan(length);
    }),
    { seed: 12, numRuns: 500 },
  );
});

test('a join runs through a label only where every place that it could have runs through one', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 320, max: 560, noNaN: true }),
      fc.array(span, { maxLength: 40 }),
      (length, labels) => {
        const order = { most: 300, overlap: 36, obstacles: { ...CLEAR, labels } };
        const { joins, crossed } = cover(length, order);
        expect(joins).toHaveLength(1);
        const through = (join: number) => labels.filter(({ from, to }) => join > from && join < to).length;
        if (crossed === 0) expect(through(joins[0]!)).toBe(0);
        else
          for (let join = length - 282; join <= 282; join += 0.5)
            // 2 points are kept on either side, places are 1.5 points apart.
            expect(labels.some(({ from, to }) => join > from - 3.5 && join < to + 3.5)).toBe(true);
      },
    ),
    { seed: 13, numRuns: 300 },
  );
});

describe('a join of two tiles of at most 576 points over 756', () => {
  const joinOf = (obstacles: Partial<Obstacles>, leaning: Leaning = 'even'): number => {
    const { joins }: Cover = cover(756, {
      most: 576,
      overlap: 36,
      obstacles: { ...CLEAR, ...obstacles },
      leaning,
    });
    expect(joins).toHaveLength(1);
    return joins[0]!;
  };

  test('is in the middle, or leaves the first or the last tile full', () => {
    expect(joinOf({})).toBe(378);
    expect(joinOf({}, 'early')).toBe(576 - 18);
    expect(joinOf({}, 'late')).toBe(756 - 576 + 18);
  });

  test('moves off a seam that runs through the middle', () => {
    expect(Math.abs(joinOf({ lines: [378] }) - 378)).toBeGreaterThanOrEqual(16);
  });

  test('lies on a seam rather than in a label', () => {
    const labels = [
      { from: 190, to: 370 },
      { from: 390, to: 570 },
    ];
    const join = joinOf({ labels, lines: [380] });
    expect(join).toBeGreaterThan(370);
    expect(join).toBeLessThan(390);
  });

  test('leaves room for what is written beside a match mark', () => {
    expect(Math.abs(joinOf({ ticks: [{ from: 378, to: 378 }] }) - 378)).toBeGreaterThanOrEqual(12);
  });
});
