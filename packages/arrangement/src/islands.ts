import { area, boundingBox, contains, type Point } from '@seamwright/geometry';
import { indexBoxes } from './boxes.ts';

/** For each inner face, the outer walks of the islands that lie directly in it. */
export function placeIslands(
  inner: readonly number[],
  islands: readonly number[],
  polygonOf: (face: number) => readonly Point[],
): Map<number, number[]> {
  const holesOf = new Map<number, number[]>();
  if (islands.length === 0) return holesOf;
  const polygons = inner.map(polygonOf);
  const index = indexBoxes(polygons.map(boundingBox));
  for (const island of islands) {
    const boundary = polygonOf(island);
    const { minX, minY, maxX, maxY } = boundingBox(boundary);
    const holders = index
      .search(minX, minY, maxX, maxY)
      .filter((i) => boundary.every((p) => contains(polygons[i]!, p) === 'inside'));
    const size = (i: number) => area(polygons[i]!);
    // In the order of the faces, so that the first of two of one size is taken.
    holders.sort((i, j) => size(i) - size(j) || i - j);
    const [holder] = holders;
    if (holder === undefined) continue;
    const face = inner[holder]!;
    const holes = holesOf.get(face);
    if (holes === undefined) holesOf.set(face, [island]);
    else holes.push(island);
  }
  return holesOf;
}
