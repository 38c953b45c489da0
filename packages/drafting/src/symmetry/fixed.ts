import {
  distance,
  lerp,
  type Point,
  SNAP_DISTANCE,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';

/** The place nearest to `at` that all of a group of transforms leave where it is: on the axis, or in the centre. */
export function fixedBy(transforms: readonly Transform[], at: Point): Point {
  // The mean of all images, taken as a walk that stays exactly where it is while they are all one.
  return transforms.reduce<Point>(
    (mean, transform, k) => lerp(mean, transformPoint(transform, at), 1 / (k + 1)),
    at,
  );
}

/** Those of the transforms that leave a place where it is, when it is within {@link SNAP_DISTANCE} of axis or centre. */
export function fixing(transforms: readonly Transform[], at: Point): readonly Transform[] {
  // An image lies twice as far away as the axis. What is near two axes is near the centre, where more are near:
  // asked again from the place that those found so far agree on, until no more are found.
  let place = at;
  let group: readonly Transform[] = [];
  for (;;) {
    const near = transforms.filter((t) => distance(transformPoint(t, place), place) <= 2 * SNAP_DISTANCE);
    if (near.length <= group.length) return group;
    group = near;
    place = fixedBy(group, at);
  }
}
