import { diamond } from '../outlines.ts';
import { cellLines, enlarged, line, rectangleOf, squareOf, upTo } from './drawn.ts';
import { pieced, seam } from './pieced.ts';
import { count, inches, SIDE, share, startingPoint } from './starting-point.ts';

const strips = startingPoint({
  id: 'strips',
  name: 'Strips',
  about: 'Strips of one width, side by side.',
  parameters: [
    inches('width', 'Finished width', 2, 36, 6),
    inches('height', 'Finished height', 2, 36, 6),
    count('strips', 'Strips', 2, 16, 6),
  ],
  draw: ({ width, height, strips: n }) => ({
    outline: rectangleOf(width, height),
    splits: upTo(n - 1).map((k) => line((width * k) / n, 0, (width * k) / n, height)),
  }),
});

const strings = startingPoint({
  id: 'strings',
  name: 'Strings',
  about: 'Strips of one width from corner to corner.',
  parameters: [{ ...SIDE, usual: 6 }, count('strings', 'Strings', 3, 15, 7)],
  draw: ({ side, strings: n }) => ({
    outline: squareOf(side),
    splits: upTo(n - 1).map((k) => {
      // The line x + y = along.
      const along = (2 * side * k) / n;
      const over = Math.max(0, along - side);
      return line(along - over, over, over, along - over);
    }),
  }),
});

const stringDiamond = startingPoint({
  id: 'string-diamond',
  name: 'String diamond',
  about: 'A diamond of 60° in strips that run along it.',
  parameters: [{ ...SIDE, usual: 6 }, count('strings', 'Strings', 2, 11, 5)],
  draw: ({ side, strings: n }) => {
    const made = diamond(side, 60);
    if (!made.ok) throw new RangeError(made.problem.what);
    const outline = made.value.outline.map((id) => made.value.points[id]!);
    const [width, height] = [outline[1]!.x, outline[2]!.y];
    return {
      outline: outline.map(({ x, y }) => ({ x, y })),
      splits: upTo(n - 1).map((k) => {
        const x = (width * k) / n;
        const reach = (height / 2) * (1 - Math.abs(1 - (2 * k) / n));
        return line(x, height / 2 - reach, x, height / 2 + reach);
      }),
    };
  },
});

const romanStripe = startingPoint({
  id: 'roman-stripe',
  name: 'Roman stripe',
  about: 'A plain triangle, and strips in the other half.',
  parameters: [SIDE, count('strips', 'Strips', 2, 10, 4)],
  draw: ({ side, strips: n }) => ({
    outline: squareOf(side),
    splits: [0, ...upTo(n - 1)].map((k) => {
      const over = (side * k) / n;
      return line(side, over, over, side);
    }),
  }),
});

const railFence = startingPoint({
  id: 'rail-fence',
  name: 'Rail fence',
  about: 'Squares of strips, every other one turned.',
  parameters: [
    SIDE,
    count('squares', 'Squares each way', 2, 4, 2),
    count('strips', 'Strips in each', 2, 6, 3),
  ],
  draw: ({ side, squares, strips: n }) => {
    const rails = upTo(squares).flatMap((column) =>
      upTo(squares).flatMap((row) =>
        upTo(n - 1).map((k) => {
          const [x, y] = [column - 1, row - 1];
          return (column + row) % 2 === 0
            ? line(x + k / n, y, x + k / n, y + 1)
            : line(x, y + k / n, x + 1, y + k / n);
        }),
      ),
    );
    return { outline: squareOf(side), splits: enlarged([...cellLines(squares), ...rails], side / squares) };
  },
});

const bricks = startingPoint({
  id: 'bricks',
  name: 'Bricks',
  about: 'Rows of oblongs, every other row moved by half.',
  parameters: [SIDE, count('rows', 'Rows', 2, 8, 4), count('bricks', 'Bricks in a row', 1, 5, 2)],
  draw: ({ side, rows, bricks: n }) => {
    const wide = side / n;
    const high = side / rows;
    const joints = upTo(rows).flatMap((row) => {
      const places = row % 2 === 1 ? upTo(n - 1) : upTo(n).map((k) => k - 0.5);
      return places.map((k) => line(k * wide, (row - 1) * high, k * wide, row * high));
    });
    return {
      outline: squareOf(side),
      splits: [...upTo(rows - 1).map((k) => line(0, k * high, side, k * high)), ...joints],
    };
  },
});

const atticWindow = startingPoint({
  id: 'attic-window',
  name: 'Attic window, straight seams',
  about: 'Panes with a sill on two sides; the sills meet in a square end, not in a mitre.',
  parameters: [
    SIDE,
    count('panes', 'Windows each way', 1, 4, 2),
    share('sill', 'Sill, of a window', 0.1, 0.4, 0.25),
  ],
  draw: ({ side, panes, sill }) => {
    const rows = upTo(panes);
    const sills = rows.map((row) => line(0, row - sill, panes, row - sill));
    const sides = rows.flatMap((row) =>
      rows.map((column) => line(column - sill, row - 1, column - sill, row - sill)),
    );
    return {
      outline: squareOf(side),
      splits: enlarged([...cellLines(panes), ...sills, ...sides], side / panes),
    };
  },
});

const geese = startingPoint({
  id: 'flying-geese',
  name: 'Flying geese',
  about: 'A strip of geese, one above the other, each with sky on both sides.',
  parameters: [
    inches('width', 'Width of a goose', 1, 12, 4),
    inches('height', 'Height of a goose', 0.5, 8, 2),
    count('geese', 'Geese', 1, 12, 4),
  ],
  draw: ({ width, height, geese: n }) => {
    const outline = rectangleOf(width, n * height);
    // From the lowest goose up: what lies above a slope is never below the goose.
    const seams = upTo(n).flatMap((k) => {
      const [top, bottom] = [(n - k) * height, (n - k + 1) * height];
      return [
        ...(k > 1 ? [seam.above(bottom)] : []),
        line(0, bottom, width / 2, top),
        line(width / 2, top, width, bottom),
      ];
    });
    return { outline, splits: pieced(outline, seams) };
  },
});

export const STRIPS = [strips, strings, stringDiamond, romanStripe, railFence, bricks, atticWindow, geese];
