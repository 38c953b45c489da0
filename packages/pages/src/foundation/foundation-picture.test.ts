import { expect, test } from 'vitest';
import { lantern, pinwheel, usual } from '../../test/blocks.ts';
import { textCorners } from '../marks/metrics.ts';
import type { PagePlan } from '../marks/model.ts';
import { foundationPicture } from './foundation-picture.ts';

function pictured(...[job, key]: Parameters<typeof foundationPicture>): PagePlan {
  const picture = foundationPicture(job, key);
  if (!picture.ok) throw new Error(picture.problem.what);
  return picture.value;
}

/** Width and height, points, of the closed paths of a role. */
function sideOf({ sheets }: PagePlan, role: 'cutting-line' | 'finished-outline'): readonly [number, number] {
  const points = sheets[0]!.marks.flatMap((mark) =>
    mark.kind === 'path' && mark.role === role ? mark.points : [],
  );
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

test('a foundation that takes several sheets is whole in its picture, true and without a window', () => {
  const job = { ...usual(lantern(12), 'Lantern'), printer: { name: 'Galley', across: 0.973, down: 0.989 } };
  const picture = pictured(job, 'A');
  for (const side of sideOf(picture, 'finished-outline')) expect(side).toBeCloseTo(12 * 72, 6);
  for (const side of sideOf(picture, 'cutting-line')) expect(side).toBeCloseTo(12.5 * 72, 6);
  expect(picture.sheets[0]!.marks.every((mark) => mark.kind === 'text' || mark.window === undefined)).toBe(
    true,
  );
});

test('the picture holds that foundation and nothing else, to its edges', () => {
  const { paper, sheets, prints } = pictured(usual(pinwheel(6), 'Pinwheel'), 'B');
  expect(prints.map(({ key }) => key)).toEqual(['B']);
  expect(sheets[0]!.marks.length).toBeGreaterThan(10);
  for (const mark of sheets[0]!.marks) {
    expect(mark.section).toBe('B');
    for (const { x, y } of mark.kind === 'path' ? mark.points : textCorners(mark)) {
      expect(Math.min(x, y)).toBeGreaterThan(8.9);
      expect(x).toBeLessThan(paper.width - 8.9);
      expect(y).toBeLessThan(paper.height - 8.9);
    }
  }
});

test('a foundation beyond any sheet, and one that there is not', () => {
  expect(foundationPicture(usual(lantern(118), 'Lantern'), 'A').ok).toBe(false);
  expect(() => foundationPicture(usual(lantern(6), 'Lantern'), 'Q')).toThrow(RangeError);
});
