import { arrange, type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import { expect, it } from 'vitest';
import { aslant } from './aslant.ts';

const arranged = (drawing: Drawing) => {
  const result = arrange(drawing);
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
};

it('keeps who meets whom, and makes every patch another shape', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 6, y: 0 },
    { x: 6, y: 6 },
    { x: 0, y: 6 },
  ];
  const lines = [2, 4].flatMap((at) => [
    { a: { x: at, y: 0 }, b: { x: at, y: 6 } },
    { a: { x: 0, y: at }, b: { x: 6, y: at } },
  ]);
  const ending = { a: { x: 3, y: 0 }, b: { x: 3, y: 2 } };
  const drawing = drawingFromSegments(corners, [...lines, ending]);
  const [before, after] = [arranged(drawing), arranged(aslant(drawing))];
  const signatures = ({ patches }: typeof before) => patches.map(({ signature }) => signature).sort();
  expect(signatures(after)).toEqual(signatures(before));
  expect(after.findings).toEqual([]);
  expect(new Set(after.patches.map(({ area }) => area.toFixed(6))).size).toBe(after.patches.length);
});
