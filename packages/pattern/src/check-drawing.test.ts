import type { Drawing } from '@seamwright/arrangement';
import { sentence } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { checkDrawing } from './check-drawing.ts';

const corners = { a: [0, 0], b: [6, 0], c: [6, 6], d: [0, 6] } as const;

/** A square with points on its edges; `on` of each as given. */
const square = (
  change: Partial<Drawing> = {},
  more: Record<string, [number, number, ...string[]]> = {},
): Drawing => ({
  points: Object.fromEntries(
    Object.entries({ ...corners, ...more }).map(([id, [x, y, ...on]]) => [
      id,
      { id, x, y, ...(on.length > 0 && { on }) },
    ]),
  ),
  outline: ['a', 'b', 'c', 'd'],
  splits: [],
  ...change,
});

const problemOf = (drawing: Drawing): string | null => {
  const checked = checkDrawing(drawing);
  return checked.ok ? null : sentence(checked.problem);
};

describe('a drawing', () => {
  it('passes when it holds together, splits that cross, overlap and leave the block included', () => {
    const drawing = square(
      {
        splits: [
          { id: 's1', from: 'n', to: 's' },
          { id: 's2', from: 'a', to: 'c' },
          { id: 's3', from: 'n', to: 's' },
          { id: 's4', from: 'far', to: 'm' },
        ],
      },
      { n: [3, 0, 'edge:a'], s: [3, 6, 'edge:c'], m: [3, 3, 's1', 's2'], far: [50, -7] },
    );
    expect(checkDrawing(drawing)).toEqual({ ok: true, value: drawing });
  });

  it.each<[string, Drawing, string]>([
    [
      'has a point under another id',
      square({ points: { ...square().points, a: { id: 'z', x: 0, y: 0 } } }),
      'A point is kept under another id than its own, "z" (point "a"). Make both the same.',
    ],
    [
      'has a coordinate that is no number',
      square({}, { e: [Number.NaN, 0] }),
      'A coordinate is not a number from −10000 to 10000 (point "e"). Give the point a place on the block.',
    ],
    [
      'has a coordinate out of all reach',
      square({}, { e: [0, 1e12] }),
      'A coordinate is not a number from −10000 to 10000 (point "e"). Give the point a place on the block.',
    ],
    [
      'has a corner that is no point',
      square({ outline: ['a', 'b', 'x'] }),
      'There is no point "x" (outline). Add the point, or name one that is there.',
    ],
    [
      'has a corner named like a part of every object',
      square({ outline: ['a', 'b', 'toString'] }),
      'There is no point "toString" (outline). Add the point, or name one that is there.',
    ],
    [
      'passes a corner twice',
      square({ outline: ['a', 'b', 'c', 'b'] }),
      'The outline passes the point "b" twice (outline). Name each corner once.',
    ],
    [
      'has two corners',
      square({ outline: ['a', 'b'] }),
      'The outline has fewer than three corners (it has two). Draw at least three corners.',
    ],
    [
      'crosses itself',
      square({ outline: ['a', 'c', 'b', 'd'] }),
      'The outline crosses itself (the edge from corner 1 to corner 2 crosses the edge from corner 3 to corner 4). Move one of these corners.',
    ],
    [
      'has no area',
      square({ outline: ['a', 'b', 'e'] }, { e: [3, 0] }),
      'The outline has no area (all corners lie on one line). Move a corner off this line.',
    ],
    [
      'is too wide',
      square({}, { b: [121, 0], c: [121, 6] }),
      'The block is 121 in wide, and a block has from 1/16 in to 120 in (outline). Check the size and its unit.',
    ],
    [
      'is too low',
      square({}, { c: [6, 0.05], d: [0, 0.05] }),
      'The block is 0.05 in high, and a block has from 1/16 in to 120 in (outline). Check the size and its unit.',
    ],
    [
      'has two splits of one id',
      square({
        splits: [
          { id: 's', from: 'a', to: 'c' },
          { id: 's', from: 'b', to: 'd' },
        ],
      }),
      'Two splits have the same id (split "s"). Give one of them another.',
    ],
    [
      'has a split named like an edge',
      square({ splits: [{ id: 'edge:a', from: 'a', to: 'c' }] }),
      'A split has the id of an edge of the outline (split "edge:a"). Give it another.',
    ],
    [
      'has a split to nowhere',
      square({ splits: [{ id: 's', from: 'a', to: 'x' }] }),
      'There is no point "x" (split "s"). Add the point, or name one that is there.',
    ],
    [
      'has a split of no length',
      square({ splits: [{ id: 's', from: 'a', to: 'a' }] }),
      'A split ends where it starts (split "s"). Remove it, or give it another end.',
    ],
    [
      'has a point on three lines',
      square({}, { e: [0, 0, 'edge:a', 'edge:d', 'edge:b'] }),
      'A point is said to be on more than two lines (point "e"). Keep two.',
    ],
    [
      'has a point twice on one line',
      square({}, { e: [3, 0, 'edge:a', 'edge:a'] }),
      'A point is said to be on one line twice (point "e"). Keep one.',
    ],
    [
      'has a point on a line that is not there',
      square({}, { e: [3, 0, 'edge:x'] }),
      'A point is said to be on the line "edge:x", and there is none (point "e"). Remove it from "on".',
    ],
    [
      'has a point on a line that ends in it',
      square({ splits: [{ id: 's', from: 'e', to: 'c' }] }, { e: [3, 0, 's'] }),
      'A point is said to be on the line "s", which ends in it (point "e"). Remove it from "on".',
    ],
    [
      'has a point beside its line',
      square({}, { e: [3, 0.1, 'edge:a'] }),
      'A point is said to be on the line "edge:a", and lies beside it (point "e"). Move it there, or remove the line from "on".',
    ],
    [
      'has points that hang on each other',
      square(
        {
          splits: [
            { id: 's', from: 'e', to: 'g' },
            { id: 't', from: 'f', to: 'd' },
          ],
        },
        { e: [1, 5, 't'], f: [3, 3, 's'], g: [4, 2] },
      ),
      'A point is placed on a line that is itself placed on the point (point "e"). Remove one of these lines from "on".',
    ],
  ])('is refused when it %s', (_name, drawing, expected) => {
    expect(problemOf(drawing)).toBe(expected);
  });
});
