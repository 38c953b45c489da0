import { fail, ok, type Point, type Result } from '@seamwright/geometry';
import type { Element } from '@xmldom/xmldom';
import svgpath from 'svgpath';
import { parseNumbers, parsePx } from './numbers.ts';
import { type Sheet, shortened } from './viewport.ts';

type UserPoint = Point<'screen'>;

/** Corners joined by straight lines, in the shape's own user units. */
export interface Run {
  readonly points: readonly UserPoint[];
  /** Whether the last is joined to the first. */
  readonly closed: boolean;
}

/** What can be read of one element. */
export interface Shape {
  readonly runs: readonly Run[];
  /** Where its curves begin. */
  readonly curves: readonly UserPoint[];
}

type Reader = (element: Element, sheet: Sheet) => Result<Shape>;

/** The elements that draw lines, each with what reads it. Other elements draw none. */
export const SHAPES: Readonly<Record<string, Reader>> = {
  line: readLine,
  polyline: (element) => readPoints(element, false),
  polygon: (element) => readPoints(element, true),
  rect: readRect,
  path: readPath,
  circle: readRound,
  ellipse: readRound,
};

/** "line 12": where an element starts in the file. */
export const placeOf = (element: Element): string => `line ${element.lineNumber ?? 0}`;

const straight = (...runs: Run[]): Result<Shape> => ok({ runs, curves: [] });

function readLine(element: Element, sheet: Sheet): Result<Shape> {
  const numbers = readLengths(element, ['x1', 'y1', 'x2', 'y2'], sheet);
  if (!numbers.ok) return numbers;
  const [x1, y1, x2, y2] = numbers.value as [number, number, number, number];
  return straight({
    points: [
      { x: x1, y: y1 },
      { x: x2, y: y2 },
    ],
    closed: false,
  });
}

function readPoints(element: Element, closed: boolean): Result<Shape> {
  const text = element.getAttribute('points') ?? '';
  const numbers = parseNumbers(text);
  if (numbers === null) return unreadable(element, 'points', text);
  if (numbers.length % 2 === 1) {
    return fail(
      'The points of a shape have an x without its y',
      placeOf(element),
      'Add the coordinate that is missing',
    );
  }
  const points: UserPoint[] = [];
  for (let i = 0; i < numbers.length; i += 2) points.push({ x: numbers[i]!, y: numbers[i + 1]! });
  return straight({ points, closed });
}

function readRect(element: Element, sheet: Sheet): Result<Shape> {
  const numbers = readLengths(element, ['x', 'y', 'width', 'height'], sheet);
  if (!numbers.ok) return numbers;
  const [x, y, width, height] = numbers.value as [number, number, number, number];
  if (width < 0 || height < 0) {
    return fail('A rectangle has a width or height below 0', placeOf(element), 'Give it sizes above 0');
  }
  // SVG draws no rectangle without a width or a height.
  if (width === 0 || height === 0) return straight();
  const corners = readCornerRadii(element, sheet, width, height);
  if (!corners.ok) return corners;
  const { rx, ry } = corners.value;
  const [right, bottom] = [x + width, y + height];
  if (rx === 0) {
    return straight({
      points: [
        { x, y },
        { x: right, y },
        { x: right, y: bottom },
        { x, y: bottom },
      ],
      closed: true,
    });
  }
  const sides: readonly [UserPoint, UserPoint][] = [
    [
      { x: x + rx, y },
      { x: right - rx, y },
    ],
    [
      { x: right, y: y + ry },
      { x: right, y: bottom - ry },
    ],
    [
      { x: right - rx, y: bottom },
      { x: x + rx, y: bottom },
    ],
    [
      { x, y: bottom - ry },
      { x, y: y + ry },
    ],
  ];
  return ok({
    runs: sides.map((points) => ({ points, closed: false })),
    curves: sides.map(([, end]) => end),
  });
}

/** Rounded corners, as SVG 2 has them (section 10.2): one radius stands for both, neither is more than half the side. */
function readCornerRadii(
  element: Element,
  sheet: Sheet,
  width: number,
  height: number,
): Result<{ rx: number; ry: number }> {
  const given = ['rx', 'ry'].filter(
    (name) => element.hasAttribute(name) && element.getAttribute(name) !== 'auto',
  );
  const numbers = readLengths(element, given, sheet);
  if (!numbers.ok) return numbers;
  const [first = 0, second = first] = numbers.value;
  const rx = Math.min(first, width / 2);
  const ry = Math.min(second, height / 2);
  return ok(rx > 0 && ry > 0 ? { rx, ry } : { rx: 0, ry: 0 });
}

function readRound(element: Element, sheet: Sheet): Result<Shape> {
  const numbers = readLengths(element, ['cx', 'cy'], sheet);
  if (!numbers.ok) return numbers;
  const [x, y] = numbers.value as [number, number];
  return ok({ runs: [], curves: [{ x, y }] });
}

function readPath(element: Element): Result<Shape> {
  const text = element.getAttribute('d') ?? '';
  // The library's types leave its error out.
  const path = svgpath(text).abs() as ReturnType<typeof svgpath> & { readonly err: string };
  if (path.err !== '')
    return unreadable(element, 'd', text, Number(/\(at pos (\d+)\)/.exec(path.err)?.[1] ?? 0));

  const runs: Run[] = [];
  const curves: UserPoint[] = [];
  let current: UserPoint[] = [];
  // Since the last M: only a subpath without curves can be closed.
  let start: UserPoint = { x: 0, y: 0 };
  let curved = false;
  const finish = (closed: boolean) => {
    if (current.length > 1) runs.push({ points: current, closed });
  };
  path.iterate((segment, _index, x, y) => {
    if (current.length === 0) current = [{ x, y }];
    switch (segment[0]) {
      case 'M':
        finish(false);
        start = { x: segment[1], y: segment[2] };
        current = [start];
        curved = false;
        break;
      case 'L':
        current.push({ x: segment[1], y: segment[2] });
        break;
      case 'H':
        current.push({ x: segment[1], y });
        break;
      case 'V':
        current.push({ x, y: segment[1] });
        break;
      case 'Z':
      case 'z':
        if (curved) current.push(start);
        finish(!curved);
        current = [start];
        curved = false;
        break;
      default: {
        finish(false);
        const [endX, endY] = segment.slice(-2) as [number, number];
        curves.push({ x, y });
        current = [{ x: endX, y: endY }];
        curved = true;
      }
    }
  });
  finish(false);
  return ok({ runs, curves });
}

/** Attributes that are lengths, in user units; 0 where one is not there. */
function readLengths(element: Element, names: readonly string[], sheet: Sheet): Result<number[]> {
  const lengths: number[] = [];
  for (const name of names) {
    const text = element.getAttribute(name) ?? '0';
    const px = parsePx(text, /^(width|c?x|x[12]|rx)$/.test(name) ? sheet.width : sheet.height);
    if (px === null) return unreadable(element, name, text);
    lengths.push(px);
  }
  return ok(lengths);
}

function unreadable(element: Element, attribute: string, text: string, from = 0) {
  const what = `The ${attribute} "${shortened(text)}" of a ${element.localName} cannot be read`;
  return fail(
    from === 0 ? what : `${what} from character ${from + 1} on`,
    placeOf(element),
    'Mend the numbers there, or save the drawing as SVG again',
  );
}
