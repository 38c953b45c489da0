import { describe, expect, test } from 'vitest';
import { convexPolygon, randomNumbers, regularPolygon, shape } from '../test/random-polygons.ts';
import { checkSimple } from './check-simple.ts';
import type { Polygon } from './point.ts';
import { reversed } from './polygon.ts';
import { sentence } from './result.ts';
import { SAME_COORDINATE } from './tolerance.ts';
import { reflection, rotation, transformPolygon } from './transform.ts';

function complaint(polygon: Polygon): string {
  const result = checkSimple(polygon);
  return result.ok ? 'none' : sentence(result.problem);
}

describe('refuses, naming the corners', () => {
  test.each<[string, Polygon, string]>([
    ['no corners', [], 'The shape has fewer than three corners (it has none). Draw at least three corners.'],
    [
      'two corners',
      shape([0, 0], [1, 0]),
      'The shape has fewer than three corners (it has two). Draw at least three corners.',
    ],
    [
      'a coordinate that is not a number',
      shape([0, 0], [Number.NaN, 0], [1, 1]),
      'A coordinate is not a number (corner 2). Give this corner a place again.',
    ],
    [
      'an endless coordinate',
      shape([0, 0], [1, 0], [1, Infinity]),
      'A coordinate is not a number (corner 3). Give this corner a place again.',
    ],
    [
      'neighbouring corners in one place',
      shape([0, 0], [1, 0], [1, SAME_COORDINATE / 2], [1, 1]),
      'Two corners lie in the same place (corners 2 and 3). Move or remove one of them.',
    ],
    [
      'the first corner repeated at the end',
      shape([0, 0], [1, 0], [1, 1], [0, 0]),
      'Two corners lie in the same place (corners 4 and 1). Move or remove one of them.',
    ],
    [
      'corners on one line',
      shape([0, 0], [1, 1], [3, 3], [2, 2]),
      'The shape has no area (all corners lie on one line). Move a corner off this line.',
    ],
    [
      'a bow tie',
      shape([0, 0], [2, 2], [2, 0], [0, 2]),
      'The shape crosses itself (the edge from corner 1 to corner 2 crosses the edge from corner 3 to corner 4). Move one of these corners.',
    ],
    [
      'a corner on an edge',
      shape([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]),
      'The shape touches itself (corner 4 lies on the edge from corner 1 to corner 2). Move this corner off the edge.',
    ],
    [
      'a corner visited twice',
      shape([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4]),
      'The shape comes back to a corner that it has already passed (corners 2 and 5). Move one of them.',
    ],
    [
      'an edge folded back on itself',
      shape([0, 0], [4, 0], [4, 4], [4, 2], [0, 4]),
      'The shape touches itself (corner 4 lies on the edge from corner 2 to corner 3). Move this corner off the edge.',
    ],
  ])('%s', (_, polygon, expected) => {
    expect(complaint(polygon)).toBe(expected);
  });

  test('every bad shape at every turn, mirrored, and from every first corner', () => {
    const bad = [
      shape([0, 0], [2, 2], [2, 0], [0, 2]),
      shape([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]),
      shape([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4]),
      shape([0, 0], [4, 0], [4, 4], [4, 2], [0, 4]),
      shape([0, 0], [1, 1], [3, 3], [2, 2]),
    ];
    for (const polygon of bad) {
      for (const degrees of [0, 17, 90, 180, 270]) {
        const turned = polygon.map((p) => transformPolygon(rotation(degrees), [p])[0]!);
        for (let start = 0; start < turned.length; start++) {
          const moved = [...turned.slice(start), ...turned.slice(0, start)];
          expect(checkSimple(moved).ok).toBe(false);
          expect(checkSimple(transformPolygon(reflection(0), moved)).ok).toBe(false);
        }
      }
    }
  });
});

describe('accepts', () => {
  test('gives the very polygon back', () => {
    const ell = shape([0, 0], [3, 0], [3, 1], [1, 1], [1, 3], [0, 3]);
    const result = checkSimple(ell);
    expect(result.ok && result.value).toBe(ell);
    expect(checkSimple(reversed(ell)).ok).toBe(true);
  });

  test('corners on straight runs, and gaps above the tolerance', () => {
    expect(complaint(shape([0, 0], [1, 0], [2, 0], [2, 2], [0, 2]))).toBe('none');
    expect(complaint(shape([0, 0], [4, 0], [4, 4], [2, 3 * SAME_COORDINATE], [0, 4]))).toBe('none');
  });

  test('random convex polygons and regular ones of many sides', () => {
    const random = randomNumbers(21);
    for (let k = 0; k < 300; k++) expect(complaint(convexPolygon(random))).toBe('none');
    expect(complaint(regularPolygon(300, 0.1))).toBe('none');
  });
});
