import {
  type Arrangement,
  type Finding,
  inches,
  type Message,
  type Patch,
  placeOn,
  say,
  thePatches,
  toldOneByOne,
} from '@seamwright/arrangement';
import { cross, dot, type Point, subtract } from '@seamwright/geometry';
import { SHAPE_LIMITS, type ShapeLimits } from './limits.ts';
import { nearLineUps } from './line-ups.ts';
import { narrowestPlace, widestCircle } from './width.ts';

/**
 * What is to be said of the shapes of a block's patches: slivers, points too sharp to sew, lines that nearly line up, patches
 * too small when printed. Cautions all of them: such a block can be sewn.
 */
export const shapeFindings = (
  arrangement: Arrangement,
  limits: ShapeLimits = SHAPE_LIMITS,
): readonly Finding[] =>
  [slivers, sharpPoints, nearLineUps, smallPatches].flatMap((collect) =>
    toldOneByOne(collect(arrangement, limits)),
  );

const caution = (kind: string, message: Message, more: Partial<Finding>): Finding => ({
  kind,
  severity: 'caution',
  message,
  at: [],
  lines: [],
  repairs: [],
  ...more,
});

function slivers(arrangement: Arrangement, { narrowest }: ShapeLimits): Finding[] {
  if (narrowest <= 0) return [];
  return arrangement.patches.flatMap((patch) => {
    const place = narrowestPlace(arrangement, patch, narrowest);
    if (place === null) return [];
    const { width, at } = place;
    const where = placeOn(at, arrangement.outline);
    return caution(
      'sliver',
      say`${thePatches([patch.index])} is only ${inches(width)} wide at ${where}: less than ${inches(narrowest)} is lost in its own seam allowances. Move a line, or take one away.`,
      { at: [at], patches: [patch.index], lines: linesRound(arrangement, patch) },
    );
  });
}

function sharpPoints(arrangement: Arrangement, { sharpest }: ShapeLimits): Finding[] {
  const { vertices, patches, outline } = arrangement;
  const drawnAt = drawnAtVertices(arrangement);
  const sharp = new Map<number, { patch: number; angle: number }[]>();
  for (const patch of patches) {
    for (const { corner, angle } of cornersOf(patch)) {
      // As it is told, to a tenth: one of exactly the limit is not sharper, whatever is rounded.
      if (toTenth(angle) >= sharpest) continue;
      const vertex = patch.ring.find(
        (v) => vertices[v]!.at.x === corner.x && vertices[v]!.at.y === corner.y,
      )!;
      const here = sharp.get(vertex);
      if (here === undefined) sharp.set(vertex, [{ patch: patch.index, angle }]);
      else here.push({ patch: patch.index, angle });
    }
  }
  return [...sharp]
    .sort(([v], [w]) => v - w)
    .map(([vertex, corners]) => {
      const { at } = vertices[vertex]!;
      const least = Math.min(...corners.map(({ angle }) => angle));
      const sharpened = thePatches(corners.map(({ patch }) => patch));
      const what =
        corners.length === 1
          ? say`${sharpened} comes to a point of ${degrees(least)}`
          : say`${sharpened} come to points of ${degrees(least)} and more`;
      return caution(
        'sharp-point',
        say`${what} at ${placeOn(at, outline)}: sharper than ${degrees(sharpest)} is hard to sew and thick with seam allowances. Open the angle, or let the point end on another line.`,
        {
          at: [at],
          patches: corners.map(({ patch }) => patch),
          lines: [...new Set(drawnAt[vertex]!)].sort(),
        },
      );
    });
}

/** A polygon's corners with their angles inside, degrees. */
function cornersOf({ polygon }: Patch): { corner: Point; angle: number }[] {
  return polygon.map((corner, i) => {
    const before = subtract(polygon[(i + polygon.length - 1) % polygon.length]!, corner);
    const after = subtract(polygon[(i + 1) % polygon.length]!, corner);
    const turned = Math.atan2(cross(after, before), dot(after, before));
    return { corner, angle: ((turned < 0 ? turned + 2 * Math.PI : turned) * 180) / Math.PI };
  });
}

const toTenth = (angle: number): number => Math.round(angle * 10) / 10;

const degrees = (angle: number): string => `${toTenth(angle)}°`;

function smallPatches(arrangement: Arrangement, { leastSize, smallestScale }: ShapeLimits): Finding[] {
  if (leastSize <= 0) return [];
  return arrangement.patches.flatMap((patch) => {
    const printed = widestCircle(patch) * smallestScale;
    if (printed >= leastSize) return [];
    const where = placeOn(patch.heart, arrangement.outline);
    return caution(
      'small-patch',
      say`${thePatches([patch.index])} at ${where} is ${inches(printed)} across at the smallest size to be printed, less than ${inches(leastSize)}. Join it to a neighbour, or print the block larger.`,
      { at: [patch.heart], patches: [patch.index], lines: linesRound(arrangement, patch) },
    );
  });
}

const linesRound = ({ edges }: Arrangement, { border }: Patch): string[] =>
  [...new Set(border.flatMap((edge) => edges[edge]!.drawn))].sort();

/** For each vertex, the drawn lines of its edges. */
function drawnAtVertices({ vertices, edges }: Arrangement): string[][] {
  const drawnAt: string[][] = vertices.map(() => []);
  for (const { from, to, drawn } of edges) {
    drawnAt[from]!.push(...drawn);
    drawnAt[to]!.push(...drawn);
  }
  return drawnAt;
}
