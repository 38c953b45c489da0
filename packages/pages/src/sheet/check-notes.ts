import { QUIET, STROKES, segmentMark, textMark } from '../marks/marks.ts';
import { textWidth } from '../marks/metrics.ts';
import type { Mark } from '../marks/model.ts';

const WORDS = { size: 8.5, weight: 'regular' } as const;

/** Points from rule to rule: room to write. */
const ROW = 24;

/** Points: the least that a measure takes when it is written by hand. */
const LEAST_COLUMN = 40;

/**
 * Lines on which the maker writes what was measured, across and down, its top left corner at (0, 0). The ruler across has
 * no length down, nor the other one across; where there is no room to write there are no lines.
 *
 * @param names two squares, the ruler across, the ruler down
 */
export function noteTable(names: readonly [string, string, string, string], width: number): readonly Mark[] {
  const first = Math.max(...names.map((name) => textWidth(name, WORDS.size, WORDS.weight))) + 14;
  const gap = 12;
  const column = Math.min(90, (width - first - gap) / 2);
  if (column < LEAST_COLUMN) return [];
  const columns = [first, first + column + gap];
  const marks: Mark[] = [
    textMark('footer', undefined, 'Measured', { x: 0, y: 9 }, { size: 10, weight: 'semibold' }),
    ...['across', 'down'].map((word, i) =>
      textMark('footer', undefined, word, { x: columns[i]!, y: 9 }, WORDS),
    ),
  ];
  names.forEach((name, row) => {
    const y = 12 + (row + 1) * ROW;
    marks.push(textMark('footer', undefined, name, { x: 0, y: y - 2 }, { ...WORDS, ink: QUIET }));
    columns.forEach((x, i) => {
      const hasLength = row < 2 || row - 2 === i;
      if (hasLength)
        marks.push(segmentMark('footer', undefined, { a: { x, y }, b: { x: x + column, y } }, STROKES.rule));
    });
  });
  return marks;
}
