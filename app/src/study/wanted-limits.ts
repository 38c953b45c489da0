import { SHAPE_LIMITS, type ShapeLimits } from '@seamwright/sewing';
import { useSettings } from '../store/settings.ts';
import { currentPrinting, type Work } from '../store/work.ts';

/** From where on the shapes of the open block's patches are worth a word; the same object for the same limits. */
export function wantedLimits(work: Work): ShapeLimits {
  const { leastSize } = useSettings.getState();
  if (leastSize === 0) return SHAPE_LIMITS;
  const smallestScale = Math.min(...currentPrinting(work).sizes.map(({ scale }) => scale));
  if (latest.leastSize !== leastSize || latest.smallestScale !== smallestScale) {
    latest = { ...SHAPE_LIMITS, leastSize, smallestScale };
  }
  return latest;
}

let latest: ShapeLimits = SHAPE_LIMITS;
