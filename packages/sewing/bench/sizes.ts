import { type Arrangement, arrange, type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import type { Family, Sketch } from './drawings.ts';

/** About 10 to 100,000 patches, each size twice the one before. */
const DOUBLINGS = Array.from({ length: 14 }, (_, i) => Math.round(100_000 / 2 ** (13 - i)));

/** A drawing that is measured. */
export interface Measurable {
  readonly sketch: Sketch;
  readonly drawing: Drawing;
  readonly arrangement: Arrangement;
  readonly patches: number;
}

/** A family's drawings, one after the other; one that comes out as the one before is left out. */
export function* ofSizes(family: Family, sizes: readonly number[] = DOUBLINGS): Generator<Measurable> {
  let lines = -1;
  for (const size of sizes) {
    const sketch = family(size);
    if (sketch.segments.length === lines) continue;
    lines = sketch.segments.length;
    const drawing = drawingFromSegments(sketch.outline, sketch.segments);
    const result = arrange(drawing);
    if (!result.ok) throw new Error(result.problem.what);
    const arrangement = result.value;
    yield { sketch, drawing, arrangement, patches: arrangement.patches.length };
  }
}
