import type { Point, Polygon, Segment, Space, Tag } from './point.ts';

declare const fromTag: unique symbol;
declare const toTag: unique symbol;

/**
 * An affine map from the space `From` to the space `To`: x′ = a·x + c·y + e, y′ = b·x + d·y + f, the letters as
 * in SVG's and PDF's `matrix(a b c d e f)`.
 *
 * The spaces are part of the type, so the compiler follows a change of space: `compose(blockToPrint,
 * printToPage)` is a `Transform<'block', 'page'>`, and the wrong order does not compile.
 */
export interface Transform<From extends Space = 'block', To extends Space = From> {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
  /** Never there when the program runs. */
  readonly [fromTag]?: Tag<From>;
  readonly [toTag]?: Tag<To>;
}

/** Leaves every number as it is; with two spaces named, it says that both have the same origin and scale. */
export const identity = <From extends Space = 'block', To extends Space = From>(): Transform<From, To> => ({
  a: 1,
  b: 0,
  c: 0,
  d: 1,
  e: 0,
  f: 0,
});

/** Moves by dx to the right and dy down. */
export const translation = <From extends Space = 'block', To extends Space = From>(
  dx: number,
  dy: number,
): Transform<From, To> => ({ a: 1, b: 0, c: 0, d: 1, e: dx, f: dy });

/** Turns by `degrees` clockwise on the screen, about `about` (default: the origin). Quarter turns are exact. */
export function rotation<From extends Space = 'block', To extends Space = From>(
  degrees: number,
  about: { readonly x: number; readonly y: number } = { x: 0, y: 0 },
): Transform<From, To> {
  const [cos, sin] = cosineAndSine(degrees);
  return {
    a: cos,
    b: sin,
    c: -sin,
    d: cos,
    e: about.x - cos * about.x + sin * about.y,
    f: about.y - sin * about.x - cos * about.y,
  };
}

/** Math.cos(π/2) is 6e-17, not 0: quarter turns take whole numbers instead, so that a turned page stays square. */
function cosineAndSine(degrees: number): readonly [number, number] {
  const quarters = degrees / 90;
  if (Number.isInteger(quarters)) {
    const exact = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const;
    return exact[((quarters % 4) + 4) % 4]!;
  }
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** The mirror image across the upright line x = `axis`: left and right change places, up stays up. */
export const reflection = <From extends Space = 'block', To extends Space = From>(
  axis: number,
): Transform<From, To> => ({ a: -1, b: 0, c: 0, d: 1, e: 2 * axis, f: 0 });

/** The mirror image across the line of a segment. Throws a RangeError when its ends are one point. */
export function reflectionAcross<S extends Space = 'block'>({ a, b }: Segment<S>): Transform<S> {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const squared = dx * dx + dy * dy;
  if (squared === 0) throw new RangeError('One point is no line to mirror across');
  const [cos, sin] = [(dx * dx - dy * dy) / squared, (2 * dx * dy) / squared];
  return {
    a: cos,
    b: sin,
    c: sin,
    d: -cos,
    e: a.x - cos * a.x - sin * a.y,
    f: a.y - sin * a.x + cos * a.y,
  };
}

/** Makes everything kx times as wide and ky times as high, from the origin; ky is kx when left out. */
export const scaling = <From extends Space = 'block', To extends Space = From>(
  kx: number,
  ky: number = kx,
): Transform<From, To> => ({ a: kx, b: 0, c: 0, d: ky, e: 0, f: 0 });

/** The transform that does `first`, then `second`. */
export const compose = <From extends Space, Via extends Space, To extends Space>(
  first: Transform<From, Via>,
  second: Transform<Via, To>,
): Transform<From, To> => ({
  a: second.a * first.a + second.c * first.b,
  b: second.b * first.a + second.d * first.b,
  c: second.a * first.c + second.c * first.d,
  d: second.b * first.c + second.d * first.d,
  e: second.a * first.e + second.c * first.f + second.e,
  f: second.b * first.e + second.d * first.f + second.f,
});

/** By how much areas grow; negative when the transform mirrors. */
export const determinant = <From extends Space, To extends Space>(t: Transform<From, To>): number =>
  t.a * t.d - t.b * t.c;

/** The way back. Throws a RangeError on a transform that flattens the plane (a scale of 0), which has none. */
export function inverse<From extends Space, To extends Space>(t: Transform<From, To>): Transform<To, From> {
  const size = determinant(t);
  if (size === 0 || !Number.isFinite(size)) throw new RangeError('This transform has no inverse');
  return {
    a: t.d / size,
    b: -t.b / size,
    c: -t.c / size,
    d: t.a / size,
    e: (t.c * t.f - t.d * t.e) / size,
    f: (t.b * t.e - t.a * t.f) / size,
  };
}

export const transformPoint = <From extends Space, To extends Space>(
  t: Transform<From, To>,
  p: Point<From>,
): Point<To> => ({ x: t.a * p.x + t.c * p.y + t.e, y: t.b * p.x + t.d * p.y + t.f });

export const transformSegment = <From extends Space, To extends Space>(
  t: Transform<From, To>,
  s: Segment<From>,
): Segment<To> => ({ a: transformPoint(t, s.a), b: transformPoint(t, s.b) });

/**
 * The polygon's image, running the same way round as before.
 *
 * A mirror image turns clockwise into anticlockwise, and the program's polygons are clockwise; so where the
 * transform mirrors, the corners come in the opposite order, the first one staying first: corner i becomes corner
 * (n − i) mod n, and the edge that starts at corner i becomes the edge that starts at corner n − 1 − i.
 */
export function transformPolygon<From extends Space, To extends Space>(
  t: Transform<From, To>,
  polygon: Polygon<From>,
): Polygon<To> {
  const image = polygon.map((p) => transformPoint(t, p));
  return determinant(t) < 0 ? [...image.slice(0, 1), ...image.slice(1).reverse()] : image;
}
