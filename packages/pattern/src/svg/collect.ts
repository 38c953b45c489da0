import {
  compose,
  FARTHEST_POINT,
  fail,
  ok,
  type Point,
  type Result,
  type Transform,
  transformPoint,
} from '@seamwright/geometry';
import type { Element } from '@xmldom/xmldom';
import { DEEPEST_NESTING } from '../limits.ts';
import { placeOf, SHAPES } from './shapes.ts';
import { parseTransform } from './transform.ts';
import type { Passed, Unread } from './unread.ts';
import { shortened, type Viewport } from './viewport.ts';
import { isOfSvg } from './xml.ts';

/** Corners joined by straight lines, inches on the sheet of the drawing. */
export interface DrawnRun {
  readonly points: readonly Point[];
  readonly closed: boolean;
  /** Where it is in the file: `line 12`. */
  readonly where: string;
}

export interface Collected {
  readonly runs: readonly DrawnRun[];
  readonly passed: readonly Passed[];
}

/** Elements whose content is drawn where it stands. */
const GROUPS = new Set(['svg', 'g', 'a', 'switch']);

/** Elements whose content is drawn only by reference, if at all: its lines are no lines of the drawing. */
const STORES = new Set(['defs', 'symbol', 'marker', 'pattern', 'clipPath', 'mask']);

const UNREAD_ELEMENTS: Readonly<Record<string, Unread>> = {
  text: 'text',
  image: 'image',
  script: 'script',
  clipPath: 'clip-path',
  mask: 'clip-path',
  use: 'copy',
  foreignObject: 'other',
  animate: 'other',
  animateMotion: 'other',
  animateTransform: 'other',
  set: 'other',
  audio: 'other',
  video: 'other',
  canvas: 'other',
  iframe: 'other',
};

/** A style that names something outside the file. */
const REACHES_OUT = /@import|url\((?!\s*['"]?\s*(#|data:))/i;

type ToInches = Transform<'screen', 'block'>;

/** All straight lines of the drawing in the order of the file, and what else it holds. */
export function collect(root: Element, { sheet, toInches }: Viewport): Result<Collected> {
  const runs: DrawnRun[] = [];
  const passed: Passed[] = [];

  /** `drawn`: whether lines found here are seen. Null when all went well. */
  function visit(
    element: Element,
    outer: ToInches,
    drawn: boolean,
    depth: number,
  ): ReturnType<typeof fail> | null {
    if (depth > DEEPEST_NESTING) {
      return fail(
        `Groups are nested more than ${DEEPEST_NESTING} deep`,
        placeOf(element),
        'Ungroup the drawing and save it again',
      );
    }
    if (!isOfSvg(element)) return null;
    const name = element.localName ?? '';
    const pass = (kind: Unread, at?: Point) =>
      passed.push({ kind, line: element.lineNumber ?? 0, ...(at && { at }) });

    for (const kind of unreadAttributes(element)) pass(kind);
    if (drawn && isHidden(element)) {
      pass('hidden');
      return null;
    }
    const own = element.getAttribute('transform') ?? '';
    const transform = parseTransform(own);
    if (transform === null) {
      return fail(
        `The transform "${shortened(own)}" cannot be read`,
        placeOf(element),
        'Save the drawing again with its transforms applied',
      );
    }
    const inner = compose(transform, outer);

    if (name === 'svg' && depth > 0) {
      if (drawn) pass('nested-drawing');
      return null;
    }
    if (name === 'style' && REACHES_OUT.test(element.textContent ?? '')) pass('external-reference');
    const unread = UNREAD_ELEMENTS[name];
    // What is kept in store and not drawn is not missed, but scripts and clip paths mostly stand there.
    if (unread !== undefined && (drawn || unread === 'script' || unread === 'clip-path')) pass(unread);

    const read = drawn ? SHAPES[name] : undefined;
    if (read !== undefined) {
      const shape = read(element, sheet);
      if (!shape.ok) return shape;
      const where = placeOf(element);
      for (const { points, closed } of shape.value.runs) {
        runs.push({ points: points.map((p) => transformPoint(inner, p)), closed, where });
        if (!runs.at(-1)!.points.every(isWithinReach)) {
          return fail(
            `A ${name} runs farther out than ${FARTHEST_POINT} in`,
            where,
            'Draw it near the block, or check the size of the drawing',
          );
        }
      }
      for (const p of shape.value.curves) pass('curve', transformPoint(inner, p));
    }
    if (!GROUPS.has(name) && !STORES.has(name)) return null;
    const childrenDrawn = drawn && GROUPS.has(name);
    for (let child = element.firstChild; child !== null; child = child.nextSibling) {
      if (child.nodeType !== child.ELEMENT_NODE) continue;
      const problem = visit(child as Element, inner, childrenDrawn, depth + 1);
      if (problem !== null) return problem;
    }
    return null;
  }

  for (const line of linesOfStyleSheets(root)) passed.push({ kind: 'external-reference', line });
  return visit(root, toInches, true, 0) ?? ok({ runs, passed });
}

/** Style sheets that are named before the outermost element (`<?xml-stylesheet href="…"?>`). */
function linesOfStyleSheets(root: Element): number[] {
  const lines: number[] = [];
  for (let node = root.previousSibling; node !== null; node = node.previousSibling) {
    if (node.nodeName === 'xml-stylesheet') lines.unshift(node.lineNumber ?? 0);
  }
  return lines;
}

const isWithinReach = ({ x, y }: Point): boolean =>
  Math.abs(x) <= FARTHEST_POINT && Math.abs(y) <= FARTHEST_POINT;

function unreadAttributes(element: Element): Unread[] {
  const found = new Set<Unread>();
  for (const { name, localName, value } of Array.from(element.attributes)) {
    if (/^on[a-z]+$/i.test(name) || /^\s*javascript:/i.test(value)) found.add('script');
    else if (localName === 'href' && !/^\s*(#|data:|$)/i.test(value)) found.add('external-reference');
    else if (!name.startsWith('xmlns') && REACHES_OUT.test(value)) found.add('external-reference');
    // A clip path in the file itself is told of where it stands.
    if (name === 'clip-path' && !/^\s*(none|url\(.*)\s*$/.test(value)) found.add('clip-path');
  }
  return [...found];
}

/** Only what an element says of itself; style sheets are not read. */
function isHidden(element: Element): boolean {
  const style = element.getAttribute('style') ?? '';
  return (
    element.getAttribute('display') === 'none' ||
    /^(hidden|collapse)$/.test(element.getAttribute('visibility') ?? '') ||
    /(^|;)\s*(display\s*:\s*none|visibility\s*:\s*(hidden|collapse))\s*(;|!|$)/i.test(style)
  );
}
