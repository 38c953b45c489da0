import { Growths } from '../../../scripts/bench/growth.ts';
import { measureArranging } from './arranging.ts';
import { measureDiagnosing } from './diagnosing.ts';
import {
  atticWindows,
  grid,
  needles,
  stars,
  stripedWindmill,
  strips,
  stubs,
  upTo,
  windmills,
} from './drawings.ts';
import { measureSectioning } from './sectioning.ts';

/**
 * How long it takes to find the fewest foundations, to say what stands in the way and to arrange a drawing, as blocks grow; beside
 * the last, a reference library on the same drawings. Run: `npm run bench -- sewing`, which takes peeling.bench.ts with it.
 */
const growths = new Growths();
measureSectioning({ grids: grid, 'Ohio stars': stars, stubs }, [10, 20, 50, 100, 200, 500, 1000, 2000, 5000]);
measureDiagnosing(
  {
    windmills,
    'striped windmill': stripedWindmill,
    'attic windows': upTo(25_000, atticWindows),
    needles,
  },
  growths,
);
measureArranging({ strips, grids: grid, windmills, stubs }, growths);
growths.print();
