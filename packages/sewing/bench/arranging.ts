import { arrange } from '@seamwright/arrangement';
import { timed } from '../../../scripts/bench/clock.ts';
import type { Growths } from '../../../scripts/bench/growth.ts';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import type { Family } from './drawings.ts';
import { forReference, referenceFaces } from './reference.ts';
import { ofSizes } from './sizes.ts';

/** Milliseconds: once the reference has taken so long, it is not asked for larger drawings of the family. */
const PATIENCE = 2000;

/** From lines to patches; beside it, the reference library on the same drawings. */
export function measureArranging(families: Readonly<Record<string, Family>>, growths: Growths): void {
  const table = new Table(
    `Arranging: from lines to patches. Reference: jsts, noding and polygonizer; not asked again after ${PATIENCE / 1000} s`,
    ['drawing', 'lines', 'patches', 'ms', 'growth', 'reference ms', 'growth', 'reference / own'],
  );
  for (const [name, family] of Object.entries(families)) {
    const own = growths.begin('arranging', name);
    const reference = growths.begin('reference', name);
    let patience = true;
    for (const { sketch, drawing, patches } of ofSizes(family)) {
      const taken = timed(() => arrange(drawing)).ms;
      const row = [name, sketch.segments.length, patches, ms(taken), factor(own.add(patches, taken))];
      if (!patience) {
        table.row(...row, 'too long', '', '');
        continue;
      }
      const lines = forReference(sketch);
      const by = timed(() => referenceFaces(lines));
      if (by.result === patches)
        table.row(...row, ms(by.ms), factor(reference.add(patches, by.ms)), factor(by.ms / taken));
      else table.row(...row, by.result === null ? 'gives up' : `${by.result} faces`, '', '');
      patience = by.ms < PATIENCE;
    }
  }
}
