import type { Touching } from './contact.ts';
import { straightCuts } from './cuts.ts';
import { peel } from './peel.ts';
import type { Region } from './region.ts';

/**
 * A small set of patches that hold each other, inside a region that straight seams cannot sew.
 *
 * What comes off a region that cannot be sewn leaves a rest that cannot be sewn either (otherwise that patch could be
 * joined last), and of the two parts of a straight cut at least one cannot. So both may go on until neither is
 * possible.
 */
export function interlockedCore(touching: Touching, region: Region): Region {
  const { core } = peel(touching, region);
  if (core.length === 1) return core;
  for (const { parts } of straightCuts(touching, core)) {
    for (const part of parts) {
      const inner = interlockedCore(touching, part);
      if (inner.length > 1) return inner;
    }
  }
  return core;
}
