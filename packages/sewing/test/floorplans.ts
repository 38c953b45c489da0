import type { Segment } from '@seamwright/geometry';

/** A rectangle cut into rectangles, inside the unit square. */
export interface Room {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * All mosaic floorplans of n rooms, each once, as rooms in the unit square.
 *
 * Every floorplan of n rooms comes from exactly one of n − 1 by putting a new room in the top left corner, which pushes
 * down some of the rooms along the top wall or pushes right some of those along the left wall (the reverse of deleting
 * the corner room: Hong et al., Corner block list, ICCAD 2000; Ackerman, Barequet, Pinter, A bijection between
 * permutations and floorplans, Discrete Applied Mathematics 154, 2006; both from memory).
 */
export function floorplans(n: number): Room[][] {
  if (n === 1) return [[{ left: 0, top: 0, right: 1, bottom: 1 }]];
  return floorplans(n - 1).flatMap((rooms) => [
    ...insertions(rooms),
    ...insertions(rooms.map(transposed)).map((plan) => plan.map(transposed)),
  ]);
}

/** A new corner room above the first k rooms of the top wall, for every k. */
function insertions(rooms: readonly Room[]): Room[][] {
  const lowered = rooms.map((room) => ({ ...room, top: (1 + room.top) / 2, bottom: (1 + room.bottom) / 2 }));
  const ends = rooms
    .filter(({ top }) => top === 0)
    .map(({ right }) => right)
    .sort((a, b) => a - b);
  return ends.map((end) => [
    { left: 0, top: 0, right: end, bottom: 0.5 },
    // Rooms of the top wall that are not pushed down still reach it.
    ...lowered.map((room, i) => (rooms[i]!.top === 0 && room.left >= end ? { ...room, top: 0 } : room)),
  ]);
}

const transposed = ({ left, top, right, bottom }: Room): Room => ({
  left: top,
  top: left,
  right: bottom,
  bottom: right,
});

/** The walls of a floorplan, blown up to `size` inches. Walls of two rooms are there twice, in part or in whole. */
export function wallsOf(rooms: readonly Room[], size: number): Segment[] {
  return rooms.flatMap(({ left, top, right, bottom }) => {
    const corner = (x: number, y: number) => ({ x: x * size, y: y * size });
    const walls: Segment[] = [];
    if (right < 1) walls.push({ a: corner(right, top), b: corner(right, bottom) });
    if (bottom < 1) walls.push({ a: corner(left, bottom), b: corner(right, bottom) });
    return walls;
  });
}

/** All ways to cut a grid of `columns` × `rows` unit squares into rectangles with whole sides. */
export function gridDissections(columns: number, rows: number): Room[][] {
  const taken = new Uint8Array(columns * rows);
  const found: Room[][] = [];
  const rooms: Room[] = [];
  const place = () => {
    const free = taken.indexOf(0);
    if (free < 0) {
      found.push([...rooms]);
      return;
    }
    const left = free % columns;
    const top = Math.floor(free / columns);
    for (let right = left + 1; right <= columns && taken[top * columns + right - 1] === 0; right += 1) {
      for (let bottom = top + 1; bottom <= rows; bottom += 1) {
        fill(left, top, right, bottom, 1);
        rooms.push({ left, top, right, bottom });
        place();
        rooms.pop();
        fill(left, top, right, bottom, 0);
      }
    }
  };
  const fill = (left: number, top: number, right: number, bottom: number, value: number) => {
    for (let y = top; y < bottom; y += 1) taken.fill(value, y * columns + left, y * columns + right);
  };
  place();
  return found;
}
