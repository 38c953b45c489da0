import { type Drawing, drawingFromSegments, type Finding } from '@seamwright/arrangement';
import {
  area,
  boundingBox,
  distance,
  fail,
  ok,
  type Point,
  type Polygon,
  PX_PER_INCH,
  type Result,
  SAME_COORDINATE,
  type Segment,
} from '@seamwright/geometry';
import type { Element } from '@xmldom/xmldom';
import { checkDrawing } from '../check-drawing.ts';
import { MOST_CORNERS, MOST_SPLITS } from '../limits.ts';
import { type Collected, collect, type DrawnRun } from './collect.ts';
import { caution, findingsOf } from './unread.ts';
import { readViewport } from './viewport.ts';
import { isSvg, parseSvg } from './xml.ts';

export interface SvgDrawing {
  /** Inches, with its origin at the top left of the outline's bounding box. Ids are the same for the same file. */
  readonly drawing: Drawing;
  /** The drawing's own title, when it has one. */
  readonly name?: string;
  /** What the file holds that was not read, and how its size was guessed. */
  readonly findings: readonly Finding[];
}

/**
 * Reads an SVG drawing as a block: the closed shape of the largest area is the outline, every other straight line is
 * a split, styles say nothing. What is read and what is not is written down in docs/file-format.md.
 *
 * Nothing is run or fetched. Lines outside the outline are left in: the arrangement cuts them off and says so.
 */
export function readSvgDrawing(text: string): Result<SvgDrawing> {
  const root = parseSvg(text);
  if (!root.ok) return root;
  const viewport = readViewport({
    width: root.value.getAttribute('width'),
    height: root.value.getAttribute('height'),
    viewBox: root.value.getAttribute('viewBox'),
    preserveAspectRatio: root.value.getAttribute('preserveAspectRatio'),
  });
  if (!viewport.ok) return viewport;
  const collected = collect(root.value, viewport.value);
  if (!collected.ok) return collected;
  const read = toDrawing(collected.value);
  if (!read.ok) return read;

  const { drawing, origin } = read.value;
  const passed = collected.value.passed.map((each) =>
    each.at === undefined ? each : { ...each, at: { x: each.at.x - origin.x, y: each.at.y - origin.y } },
  );
  const noSize = caution(
    'svg-no-size',
    `The drawing does not say how large it is, so ${PX_PER_INCH} units were taken for an inch. Give its svg element a width and a height, such as 12in.`,
  );
  const name = titleOf(root.value);
  return ok({
    drawing,
    ...(name !== '' && { name }),
    findings: [...(viewport.value.sized ? [] : [noSize]), ...findingsOf(passed)],
  });
}

function toDrawing({ runs, passed }: Collected): Result<{ drawing: Drawing; origin: Point }> {
  const shapes = runs.map(closedIfItComesBack);
  const outline = largestClosed(shapes);
  if (outline === null) {
    const curved = passed.some(({ kind }) => kind === 'curve');
    return fail(
      'The drawing has no closed shape of straight sides, so there is no outline',
      curved ? 'its curves are not read' : '',
      'Draw the block’s outline as a polygon, a rectangle or a closed path',
    );
  }
  if (outline.points.length > MOST_CORNERS) {
    return fail(
      `The outline has ${outline.points.length} corners, and no more than ${MOST_CORNERS} are read`,
      outline.where,
      'Draw it with straight sides',
    );
  }
  const box = boundingBox(outline.points);
  const origin = { x: box.minX, y: box.minY };
  const corners: Polygon = outline.points.map((p) => relativeTo(origin, p));
  const segments = shapes
    .filter((shape) => shape !== outline)
    .flatMap(segmentsOf)
    .map(({ a, b }) => ({ a: relativeTo(origin, a), b: relativeTo(origin, b) }));
  const drawing = withoutRepeats(drawingFromSegments(corners, segments));
  if (drawing.splits.length > MOST_SPLITS) {
    return fail(
      `The drawing has ${drawing.splits.length} lines, and no more than ${MOST_SPLITS} are read`,
      '',
      'Leave out what are no seams',
    );
  }
  const checked = checkDrawing(drawing);
  if (checked.ok) return ok({ drawing, origin });
  const { what, where, remedy } = checked.problem;
  return fail(what, where === 'outline' ? outline.where : `${outline.where}, ${where}`, remedy);
}

const relativeTo = (origin: Point, { x, y }: Point): Point => ({ x: x - origin.x, y: y - origin.y });

const isSamePlace = (a: Point, b: Point): boolean => distance(a, b) <= SAME_COORDINATE;

/** Without neighbours in one place; and closed also where an open run ends at its own start. */
function closedIfItComesBack({ points, closed, where }: DrawnRun): DrawnRun {
  const apart = points.filter((p, i) => i === 0 || !isSamePlace(p, points[i - 1]!));
  const comesBack = apart.length > 1 && isSamePlace(apart[0]!, apart.at(-1)!);
  const corners = comesBack ? apart.slice(0, -1) : apart;
  // There and back again is a line, not a shape.
  return { points: corners, closed: closed || (comesBack && corners.length > 2), where };
}

/** The first of them where several are equally large. */
function largestClosed(shapes: readonly DrawnRun[]): DrawnRun | null {
  const closed = shapes.filter(({ closed, points }) => closed && points.length > 0);
  const areas = closed.map((shape) => area(shape.points));
  return closed[areas.indexOf(Math.max(...areas))] ?? null;
}

function segmentsOf({ points, closed }: DrawnRun): Segment[] {
  const open = points.slice(1).map((b, i) => ({ a: points[i]!, b }));
  return closed && points.length > 2 ? [...open, { a: points.at(-1)!, b: points[0]! }] : open;
}

/**
 * Where patches are drawn as shapes of their own, each line between two of them is there twice: whoever draws like that
 * need not be told. Lines that repeat others only in part are left for the arrangement.
 */
function withoutRepeats(drawing: Drawing): Drawing {
  const { points, outline } = drawing;
  const key = (from: string, to: string) => [from, to].sort().join(' ');
  const seen = new Set(outline.map((corner, i) => key(corner, outline[(i + 1) % outline.length]!)));
  const splits = drawing.splits.filter(
    ({ from, to }) => from !== to && seen.size < seen.add(key(from, to)).size,
  );
  return { points, outline, splits: splits.map(({ from, to }, i) => ({ id: `s${i + 1}`, from, to })) };
}

function titleOf(root: Element): string {
  for (let child = root.firstChild; child !== null; child = child.nextSibling) {
    if (child.nodeType === child.ELEMENT_NODE && isSvg(child as Element, 'title')) {
      return (child.textContent ?? '').replace(/\s+/g, ' ').trim();
    }
  }
  return '';
}
