import type { Sketch } from './sketch.ts';

const ROUNDS = 3;
const STRIP = 1;
const CENTRE = 3;
const SIZE = CENTRE + 2 * ROUNDS * STRIP;

type Table<T> = Record<string, T>;

/**
 * A plain block: strips laid round a square, light on two sides and dark on the other two, as round a reading
 * lamp. 9 × 9 in.
 *
 * From the edge inwards each round is a west, a north, an east and a south strip; each ends on the one before it.
 */
function readingLamp(): Sketch {
  const points: Table<[number, number, ...string[]]> = {
    nw: [0, 0],
    ne: [SIZE, 0],
    se: [SIZE, SIZE],
    sw: [0, SIZE],
  };
  const splits: Table<[string, string]> = {};
  const notes: [string, number, number][] = [['lamp', SIZE / 2, SIZE / 2]];
  // The lines that now bound the square still to be filled.
  let [north, east, south, west] = ['edge:nw', 'edge:ne', 'edge:se', 'edge:sw'];
  for (let round = 1; round <= ROUNDS; round++) {
    const near = round * STRIP;
    const far = SIZE - near;
    const outer = near - STRIP;
    const middle = STRIP / 2;
    const draw = (side: string, from: [number, number, string], to: [number, number, string]) => {
      const id = `${side}-${round}`;
      points[`${id}-from`] = from;
      points[`${id}-to`] = to;
      splits[id] = [`${id}-from`, `${id}-to`];
      return id;
    };
    west = draw('west', [near, outer, north], [near, SIZE - outer, south]);
    notes.push(['dark', near - middle, SIZE / 2]);
    north = draw('north', [near, near, west], [SIZE - outer, near, east]);
    notes.push(['light', SIZE / 2, near - middle]);
    east = draw('east', [far, near, north], [far, SIZE - outer, south]);
    notes.push(['light', far + middle, SIZE / 2]);
    south = draw('south', [near, far, west], [far, far, east]);
    notes.push(['dark', SIZE / 2, far + middle]);
  }
  return {
    id: 'reading-lamp',
    name: 'Reading lamp',
    points,
    outline: ['nw', 'ne', 'se', 'sw'],
    splits,
    notes,
  };
}

export const READING_LAMP: Sketch = readingLamp();
