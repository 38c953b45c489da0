import type { Touching } from '../contact.ts';
import { someCut } from '../cuts.ts';
import { peel } from '../peel.ts';
import type { Region } from '../region.ts';
import { NO_WILL } from '../will.ts';

/**
 * The parts of a connected region that straight seams cannot sew: no patch comes off them and no straight cut divides
 * them. Empty when straight seams suffice.
 *
 * Every way of taking the region apart leads to the same parts, up to patches that come off them: what is interlocked is
 * never cut (Search in search.ts says why any cut is safe).
 */
export function stuckParts(touching: Touching, region: Region): Region[] {
  const found: Region[] = [];
  const open = [region];
  for (let part = open.pop(); part !== undefined; part = open.pop()) {
    const core = peel(touching, part);
    if (core.length === 1) continue;
    const cut = someCut(touching, core, () => false, NO_WILL);
    if (cut === null) found.push(core);
    else open.push(...cut.parts);
  }
  return found.sort((a, b) => a[0]! - b[0]!);
}
