import { lerp, type Point, type Polygon, type Segment } from '@seamwright/geometry';
import { below, squareOf, upTo } from './drawn.ts';
import { count, inches, SIDE, share, startingPoint } from './starting-point.ts';

/** Six or eight equal corners round the middle of their bounding box, from the origin. */
function corners(sides: 6 | 8, across: number): Polygon {
  const radius = across / 2;
  // A hexagon stands on its sides, an octagon on its flats.
  const first = sides === 6 ? 0 : Math.PI / 8;
  const reach = sides === 6 ? radius : radius / Math.cos(Math.PI / 8);
  const shape = below(sides).map((k): Point => {
    const angle = first + (2 * Math.PI * k) / sides;
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  });
  const [left, top] = [Math.min(...shape.map(({ x }) => x)), Math.min(...shape.map(({ y }) => y))];
  return shape.map(({ x, y }) => ({ x: x - left, y: y - top }));
}

function web(outline: Polygon, rings: number): readonly Segment[] {
  const half = outline.length / 2;
  const rays = below(half).map((k) => ({ a: outline[k]!, b: outline[k + half]! }));
  const middle = lerp(outline[0]!, outline[half]!, 0.5);
  const threads = upTo(rings).flatMap((ring) =>
    outline.map((corner, i) => {
      const next = outline[(i + 1) % outline.length]!;
      const share = ring / (rings + 1);
      return { a: lerp(middle, corner, share), b: lerp(middle, next, share) };
    }),
  );
  return [...rays, ...threads];
}

const spiderWeb = startingPoint({
  id: 'spider-web',
  name: 'Spider web',
  about: 'A hexagon of six wedges, each in strips.',
  parameters: [inches('across', 'From point to point', 3, 36, 12), count('rings', 'Rings', 1, 7, 3)],
  draw: ({ across, rings }) => {
    const outline = corners(6, across);
    return { outline, splits: web(outline, rings) };
  },
});

const octagonWeb = startingPoint({
  id: 'spider-web-octagon',
  name: 'Spider web, eight-sided',
  about: 'An octagon of eight wedges, each in strips.',
  parameters: [inches('across', 'From flat to flat', 3, 36, 12), count('rings', 'Rings', 1, 7, 3)],
  draw: ({ across, rings }) => {
    const outline = corners(8, across);
    return { outline, splits: web(outline, rings) };
  },
});

const fan = startingPoint({
  id: 'fan',
  name: 'Fan',
  about: 'Blades with straight ends, spread from one corner of a square.',
  parameters: [
    SIDE,
    count('blades', 'Blades', 3, 9, 6),
    share('reach', 'Length of the blades, of the side', 0.6, 0.95, 0.85),
    share('handle', 'Handle, of the side', 0.15, 0.4, 0.3),
  ],
  draw: ({ side, blades, reach, handle }) => {
    // Seen from the bottom left corner: `away` from it, in the direction of a ray.
    const onRay = (angle: number, away: number): Point => ({
      x: away * Math.cos(angle),
      y: side - away * Math.sin(angle),
    });
    const angles = below(blades + 1).map((k) => (Math.PI / 2) * (k / blades));
    const rays = angles.slice(1, -1).map((angle) => ({
      a: onRay(angle, (side * handle) / (Math.cos(angle) + Math.sin(angle))),
      b: onRay(angle, side / Math.max(Math.cos(angle), Math.sin(angle))),
    }));
    // The outer rays are edges of the block, where cos and sin of a right angle must not leave a rounding.
    const tips = angles.map((angle, k) =>
      k === 0
        ? { x: side * reach, y: side }
        : k === blades
          ? { x: 0, y: side * (1 - reach) }
          : onRay(angle, side * reach),
    );
    return {
      outline: squareOf(side),
      splits: [
        { a: { x: side * handle, y: side }, b: { x: 0, y: side * (1 - handle) } },
        ...rays,
        ...below(blades).map((k) => ({ a: tips[k]!, b: tips[k + 1]! })),
      ],
    };
  },
});

export const WEBS = [fan, spiderWeb, octagonWeb];
