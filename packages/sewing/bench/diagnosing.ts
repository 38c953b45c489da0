import { timed } from '../../../scripts/bench/clock.ts';
import type { Growths } from '../../../scripts/bench/growth.ts';
import { factor, ms, Table } from '../../../scripts/bench/table.ts';
import { planSewing, sewingReport, shapeFindings } from '../src/index.ts';
import type { Family } from './drawings.ts';
import { ofSizes } from './sizes.ts';

/** Why a block cannot be sewn, what is awkward about its shapes, and writing it all down. */
export function measureDiagnosing(families: Readonly<Record<string, Family>>, growths: Growths): void {
  const table = new Table('Diagnosis: what stands in the way', [
    'drawing',
    'patches',
    'verdict ms',
    'growth',
    'findings',
    'shapes ms',
    'growth',
    'findings',
    'report ms',
    'growth',
  ]);
  for (const [name, family] of Object.entries(families)) {
    const planning = growths.begin('verdict', name);
    const looking = growths.begin('shapes', name);
    const writing = growths.begin('report', name);
    for (const { arrangement, patches } of ofSizes(family)) {
      const plan = timed(() => planSewing(arrangement));
      const shapes = timed(() => shapeFindings(arrangement));
      const report = timed(() => sewingReport(arrangement, plan.result, shapes.result));
      table.row(
        name,
        patches,
        ms(plan.ms),
        factor(planning.add(patches, plan.ms)),
        plan.result.findings.length,
        ms(shapes.ms),
        factor(looking.add(patches, shapes.ms)),
        shapes.result.length,
        ms(report.ms),
        factor(writing.add(patches, report.ms)),
      );
    }
  }
}
