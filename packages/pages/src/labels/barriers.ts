import { boundingBox, CLEAR_OF_LINE, type Point, type Segment } from '@seamwright/geometry';
import { cornersOf, meets, type Plate } from './plate.ts';

/**
 * Where the plate's centre may be for the plate to keep `gap` points clear of the barriers, the nearest first; its own place where it is
 * clear already. None only where barriers stand closer together than the plate is wide.
 *
 * @param barriers upright and level lines without ends in reach: where sheets are joined
 */
export function clearCentres(
  plate: Plate,
  barriers: readonly Segment<'page'>[],
  gap: number,
): readonly Point<'page'>[] {
  const { centre } = plate;
  if (barriers.length === 0) return [centre];
  const { minX, minY, maxX, maxY } = boundingBox(cornersOf(plate));
  const [halfAcross, halfDown] = [
    (maxX - minX) / 2 + gap + CLEAR_OF_LINE,
    (maxY - minY) / 2 + gap + CLEAR_OF_LINE,
  ];
  const xs = [centre.x];
  const ys = [centre.y];
  for (const { a, b } of barriers) {
    if (a.x === b.x && Math.abs(a.x - centre.x) < halfAcross) xs.push(a.x - halfAcross, a.x + halfAcross);
    if (a.y === b.y && Math.abs(a.y - centre.y) < halfDown) ys.push(a.y - halfDown, a.y + halfDown);
  }
  const away = ({ x, y }: Point<'page'>) => Math.hypot(x - centre.x, y - centre.y);
  return xs
    .flatMap((x) => ys.map((y): Point<'page'> => ({ x, y })))
    .filter((place) => !meets({ ...plate, centre: place }, barriers, gap))
    .sort((p, q) => away(p) - away(q));
}
