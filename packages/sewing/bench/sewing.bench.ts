import { arrange, drawingFromSegments } from '@seamwright/arrangement';
import { bench, describe } from 'vitest';
import { planSewing } from '../src/index.ts';
import {
  type Family,
  geese,
  grid,
  logCabin,
  stars,
  stripedWindmill,
  strips,
  stubs,
  windmills,
} from './drawings.ts';

/**
 * How long arranging and planning take as blocks grow. Run: `pnpm bench sewing`; figures are only to be compared within
 * one run.
 */
const FAMILIES: Record<string, readonly [Family, readonly number[]]> = {
  strips: [strips, [10, 100, 1000]],
  'log cabins': [logCabin, [10, 100, 1000]],
  geese: [geese, [10, 100, 1000]],
  lattices: [grid, [16, 100, 196]],
  'rows of stars': [stars, [17, 68, 153]],
  stubs: [stubs, [10, 40, 80]],
  'windmills, which cannot be sewn': [windmills, [20, 100]],
  'a striped windmill, which cannot be sewn': [stripedWindmill, [20, 100]],
};

for (const [name, [family, sizes]] of Object.entries(FAMILIES)) {
  describe(name, () => {
    for (const size of sizes) {
      const { outline, segments } = family(size);
      const drawing = drawingFromSegments(outline, segments);
      const result = arrange(drawing);
      if (!result.ok) throw new Error(result.problem.what);
      const { length } = result.value.patches;
      bench(`arrange ${length} patches`, () => void arrange(drawing), { time: 200 });
      bench(`plan ${length} patches`, () => void planSewing(result.value), { time: 200 });
    }
  });
}
