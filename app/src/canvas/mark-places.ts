/** A point on the screen, CSS pixels. */
interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Something on the screen: its middle, and half its width and height, CSS pixels. */
export interface Area extends Spot {
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** Where a mark stands, and where the line begins that leads to it from its point; null where it stands there. */
export interface Stand extends Spot {
  readonly from: Spot | null;
}

/** CSS pixels: half of what a mark takes up, whichever its sign. */
const HALF = 13;

/** The distances to which a mark is moved, the nearest first, CSS pixels; farther off, it would seem to mean another place. */
const STEPS = [27, 36, 46];

/** Beside it first, as notes stand beside a text; slanting last. */
const WAYS: readonly Spot[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: 0.7, y: -0.7 },
  { x: -0.7, y: -0.7 },
  { x: 0.7, y: 0.7 },
  { x: -0.7, y: 0.7 },
];

/** With more marks than these the drawing has one reason for them all, and they are left where they are. */
const MOST_MOVED = 200;

/**
 * Where marks stand so that they cover neither names nor each other: each on its own point where that is free, else near it
 * on the block; on the point all the same where nothing near it is free.
 *
 * @param points of the marks in their order: the first has the first choice
 * @param block what marks are not moved beyond: past it the canvas may end
 */
export function markPlaces(points: readonly Spot[], names: readonly Area[], block: Area): readonly Stand[] {
  const taken = [...names];
  const isFree = (spot: Spot) => !taken.some((one) => meets(spot, one, HALF));
  return points.map((point, index) => {
    const { x, y } = point;
    if (index >= MOST_MOVED) return { x, y, from: null };
    const moved = isFree(point)
      ? undefined
      : near(point).find((spot) => meets(spot, block, 0) && isFree(spot));
    const stand = moved ?? point;
    taken.push({ x: stand.x, y: stand.y, halfWidth: HALF, halfHeight: HALF });
    return { x: stand.x, y: stand.y, from: moved === undefined ? null : leaving(point, moved, names) };
  });
}

/** Where a mark may stand instead, the best first. */
const near = ({ x, y }: Spot): readonly Spot[] =>
  STEPS.flatMap((step) => WAYS.map((way) => ({ x: x + step * way.x, y: y + step * way.y })));

const meets = (spot: Spot, { x, y, halfWidth, halfHeight }: Area, room: number): boolean =>
  Math.abs(spot.x - x) < room + halfWidth && Math.abs(spot.y - y) < room + halfHeight;

/** The point itself or, where it lies in a name, where the way from the name's middle comes out of it. */
function leaving(point: Spot, stand: Spot, names: readonly Area[]): Spot {
  const name = names.find((one) => meets(point, one, 0));
  if (name === undefined) return point;
  const [dx, dy] = [stand.x - name.x, stand.y - name.y];
  const share = Math.min(1, name.halfWidth / Math.abs(dx), name.halfHeight / Math.abs(dy));
  return { x: name.x + share * dx, y: name.y + share * dy };
}
