import type { Drawing } from '@seamwright/arrangement';
import {
  contains,
  distanceToSegment,
  edgesOf,
  normalize,
  type Point,
  type Segment,
  SNAP_DISTANCE,
  subtract,
  type Transform,
  transformSegment,
} from '@seamwright/geometry';
import { centreOf } from '../centre.ts';
import { outlineOf } from '../checks.ts';
import type { Ends } from '../edits/index.ts';
import { runFrom } from '../reach.ts';
import { inside } from '../stretches.ts';
import { type Symmetry, transformsOf } from './symmetry.ts';

/**
 * The images of a stretch. An outline need not have the symmetry (a square turned by an eighth has not): with ends that
 * `run`, the image of an end on the edge runs on to the edge where it falls short of it.
 */
export function imagesUnder(
  drawing: Drawing,
  transforms: readonly Transform[],
  segment: Segment,
  ends: Ends,
): readonly Segment[] {
  const images = transforms.map((transform) => transformSegment(transform, segment));
  if (ends === 'held') return images;
  const outline = outlineOf(drawing);
  const edges = edgesOf(outline);
  const isOnEdge = (p: Point) => edges.some(({ a, b }) => distanceToSegment(p, a, b) <= SNAP_DISTANCE);
  const [startsThere, endsThere] = [segment.a, segment.b].map(isOnEdge);
  const outwards = (at: Point, from: Point): Point =>
    isOnEdge(at) || contains(outline, at) !== 'inside'
      ? at
      : (runFrom(drawing, at, normalize(subtract(at, from)), 'edge')?.at ?? at);
  return images.map(({ a, b }) => ({
    a: startsThere ? outwards(a, b) : a,
    b: endsThere ? outwards(b, a) : b,
  }));
}

/** A stretch and its images as they would be drawn, cut off at the edge; itself alone where the symmetry is refused. */
export function imagesOf(
  drawing: Drawing,
  symmetry: Symmetry,
  segment: Segment,
  ends: Ends = 'held',
): readonly Segment[] {
  const transforms = transformsOf(symmetry, centreOf(drawing));
  if (!transforms.ok) return [segment];
  const outline = outlineOf(drawing);
  return imagesUnder(drawing, transforms.value, segment, ends).flatMap((image) => inside(outline, image));
}
