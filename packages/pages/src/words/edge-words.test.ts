import { edgesOf, type Point, segmentCrossing } from '@seamwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CAP_HEIGHT, textWidth } from '../marks/metrics.ts';
import { placeWord } from './edge-words.ts';

const ROOM = { minX: -400, minY: -400, maxX: 400, maxY: 400 };
const SIZE = 7;

/** Regular polygons of three to nine corners, turned as it comes, clockwise on the screen. */
const outline = fc
  .record({
    corners: fc.integer({ min: 3, max: 9 }),
    radius: fc.double({ min: 40, max: 300, noNaN: true }),
    turn: fc.double({ min: 0, max: 6, noNaN: true }),
  })
  .map(({ corners, radius, turn }): readonly Point<'page'>[] =>
    Array.from({ length: corners }, (_, i) => {
      const angle = turn + (i * 2 * Math.PI) / corners;
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
    }),
  );

const obstacle = fc
  .tuple(...Array.from({ length: 4 }, () => fc.double({ min: -320, max: 320, noNaN: true })))
  .map(([x1, y1, x2, y2]) => ({ a: { x: x1!, y: y1! }, b: { x: x2!, y: y2! } }));

test('a placed word is upright, outside, parallel to an edge and clear of everything', () => {
  let placedWords = 0;
  fc.assert(
    fc.property(
      outline,
      fc.array(obstacle, { maxLength: 10 }),
      fc.constantFrom('outside' as const, 'inside' as const),
      (polygon, obstacles, side) => {
        const edges = edgesOf<'page'>(polygon);
        const placed = placeWord({
          word: 'cut',
          size: SIZE,
          edges,
          side,
          gap: 2.5,
          obstacles: [...edges, ...obstacles],
          room: ROOM,
        });
        if (placed === null) return;
        placedWords++;
        const angle = placed.look.angle!;
        expect(Math.abs(angle)).toBeLessThanOrEqual(90);
        const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
        const width = textWidth('cut', SIZE, 'regular');
        const corner = (u: number, v: number): Point<'page'> => ({
          x: placed.at.x + u * cos + v * sin,
          y: placed.at.y + u * sin - v * cos,
        });
        const box = [
          corner(0, 0),
          corner(width, 0),
          corner(width, CAP_HEIGHT * SIZE),
          corner(0, CAP_HEIGHT * SIZE),
        ];
        for (const { a, b } of edgesOf<'page'>(box))
          for (const line of [...edges, ...obstacles])
            expect(segmentCrossing<'page'>(a, b, line.a, line.b)).toBeNull();
        const parallel = edges.some(({ a, b }) => Math.abs((b.x - a.x) * sin - (b.y - a.y) * cos) < 1e-6);
        expect(parallel).toBe(true);
      },
    ),
    { seed: 31, numRuns: 300 },
  );
  expect(placedWords).toBeGreaterThan(200);
});

test('where nothing is free there is no place', () => {
  const edges = edgesOf<'page'>([
    { x: 0, y: 0 },
    { x: 30, y: 0 },
    { x: 30, y: 30 },
  ]);
  const wall = edges.map(({ a, b }) => ({ a: { x: a.x, y: a.y - 4 }, b: { x: b.x, y: b.y - 4 } }));
  expect(
    placeWord({
      word: 'a word longer than any edge',
      size: SIZE,
      edges,
      side: 'outside',
      gap: 2.5,
      obstacles: wall,
      room: ROOM,
    }),
  ).toBeNull();
});
