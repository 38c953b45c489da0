import { POINTS_PER_INCH } from '@seamwright/geometry';
import { timed } from '../../../scripts/bench/clock.ts';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import { boxesOnSheets } from '../src/packing/box-packing.ts';
import { leastSheets, once } from '../src/packing/least-sheets.ts';
import { packSheets } from '../src/packing/pack.ts';
import { PAPERS, type PaperName } from '../src/sheet/paper.ts';
import { regionsOf } from '../src/sheet/sheet-frame.ts';
import { USUAL_GAP } from '../src/sheet/usual.ts';
import { MAKERS, type Maker, shapes } from './shapes.ts';

const { squares, rectangles, triangles } = MAKERS;
const SETS: Readonly<Record<string, readonly Maker[]>> = {
  squares: [squares],
  rectangles: [rectangles],
  triangles: [triangles],
  'odd polygons': [MAKERS['odd polygons']],
  mixed: Object.values(MAKERS),
};

/** Sheets against what the foundations' area would fill without any waste, and against the proved bound. Run: `npm run bench -- density`. */
function measureDensity(): void {
  const gap = USUAL_GAP * POINTS_PER_INCH;
  const table = new Table(
    `Sheets for shapes of 1.5 to 8 in a gap of ${USUAL_GAP} in apart, without words; “boxes”: their rectangles, unturned`,
    [
      'set',
      'paper',
      'shapes',
      'by area',
      'at least',
      'boxes',
      'quick',
      '÷ area',
      'ms',
      'thorough',
      '÷ area',
      '÷ least',
      'ms',
    ],
  );
  const row = (name: string, paper: PaperName, count: number, seed: number) => {
    const regions = regionsOf(PAPERS[paper]);
    const fitting = shapes(SETS[name]!, count, [1.5, 8], seed, gap).map((shape) => ({
      ...shape,
      ways: shape.ways.filter(({ width, height }) =>
        [regions.wide, regions.tall].some(
          ({ minX, minY, maxX, maxY }) => width <= maxX - minX && height <= maxY - minY,
        ),
      ),
    }));
    const list = fitting.filter(({ ways }) => ways.length > 0);
    const whole = list.map(({ outline }) => once(outline));
    const { atLeast, byArea } = leastSheets({ whole, cutUp: [] }, regions, gap / 2);
    const boxes = boxesOnSheets(list, regions, gap).length;
    const packed = (['quick', 'thorough'] as const).map((effort) => {
      const { ms: time, result } = timed(() => packSheets(list, { regions, gap, atLeast, effort }));
      return { time, sheets: result.length };
    });
    const [quick, thorough] = [packed[0]!, packed[1]!];
    table.row(
      name,
      paper,
      list.length,
      byArea.toFixed(2),
      atLeast,
      boxes,
      quick.sheets,
      factor(quick.sheets / byArea),
      ms(quick.time),
      thorough.sheets,
      factor(thorough.sheets / byArea),
      factor(thorough.sheets / atLeast),
      ms(thorough.time),
    );
  };
  for (const name of Object.keys(SETS)) row(name, 'letter', 300, 1);
  for (const seed of [2, 3]) row('mixed', 'letter', 600, seed);
  for (const paper of ['a4', 'tabloid', 'a3'] as const) row('mixed', paper, 600, 2);
}

measureDensity();
