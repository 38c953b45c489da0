import type { Arrangement, Vertex } from '@seamwright/arrangement';
import { areaOfTurn, distance, STRAIGHT_WITHIN } from '@seamwright/geometry';
import { GrowingHull } from './growing-hull.ts';
import type { Piecing } from './piecing.ts';
import type { Step } from './step.ts';

type Fold = Pick<Step, 'line' | 'side'>;

/** How far a vertex lies from the whole line of a fold, inches; above 0 on the side of the new patch. */
function offset({ lines }: Arrangement, { line, side }: Fold, { at }: Vertex): number {
  const { a, b } = lines[line]!;
  return (side * areaOfTurn(a, b, at)) / distance(a, b);
}

/**
 * Whether a vertex lies beyond a fold, on the side of the new patch. One that the drawing knows to be on the line is
 * on it whatever its coordinates; so is one within {@link STRAIGHT_WITHIN}, by which no fold can be told from the next.
 */
const isBeyond = (arrangement: Arrangement, fold: Fold, vertex: Vertex): boolean =>
  offset(arrangement, fold, vertex) > STRAIGHT_WITHIN && !vertex.lines.includes(fold.line);

const verticesOf = ({ arrangement, patches }: Piecing, patch: number): Vertex[] =>
  arrangement.patches[patches[patch]!]!.ring.map((v) => arrangement.vertices[v]!);

/**
 * For every fold, the patches that reach beyond it; worked out when first asked for. What is already sewn hangs together
 * and touches the line from the near side, so the line passes through its inside exactly when one of its patches reaches
 * beyond.
 */
export class FarSides {
  private readonly known = new Map<number, readonly number[]>();

  constructor(private readonly piecing: Piecing) {}

  reachingBeyond(fold: Fold): readonly number[] {
    const key = fold.side * (fold.line + 1);
    let patches = this.known.get(key);
    if (patches === undefined) {
      const { piecing } = this;
      const reaches = (vertex: Vertex) => isBeyond(piecing.arrangement, fold, vertex);
      patches = piecing.all.filter((p) => verticesOf(piecing, p).some(reaches));
      this.known.set(key, patches);
    }
    return patches;
  }
}

/** One order of any length as it is sewn; the time for all its folds grows little faster than its length. */
export class SewnSoFar {
  private readonly hull = new GrowingHull<Vertex>(({ at }) => at);
  private readonly vertices: Vertex[] = [];

  constructor(private readonly piecing: Piecing) {}

  add(patch: number): void {
    const vertices = verticesOf(this.piecing, patch);
    this.hull.add(vertices);
    for (const vertex of vertices) this.vertices.push(vertex);
  }

  isCrossedBy(fold: Fold): boolean {
    const { arrangement } = this.piecing;
    const { a, b } = arrangement.lines[fold.line]!;
    // Square to the line, towards the new patch.
    const farthest = this.hull.farthest({ x: fold.side * (a.y - b.y), y: fold.side * (b.x - a.x) });
    if (farthest === undefined || offset(arrangement, fold, farthest) <= STRAIGHT_WITHIN) return false;
    // Badly drawn, the farthest may be on the line all the same, and hide another that is not.
    return this.vertices.some((vertex) => isBeyond(arrangement, fold, vertex));
  }
}
