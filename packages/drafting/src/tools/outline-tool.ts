import { checkSimple, distance, fail, type Point, SNAP_DISTANCE } from '@seamwright/geometry';
import { replaceOutline } from '../edits/index.ts';
import type { CatchPlace } from '../snapping/places.ts';
import { type Snap, snap } from '../snapping/snap.ts';
import { type SnapScene, snapScene } from '../snapping/snap-scene.ts';
import {
  catching,
  type Outcome,
  type Pointing,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tool.ts';

/**
 * Draws a new outline, corner by corner. A press on the first corner closes it, so does one on the last (a double
 * press), and so does `finish`. One step back takes off one corner. The drawing's splits stay.
 */
export type OutlineState =
  | { readonly kind: 'idle' }
  /** A press is down; it puts its corner down when it ends. */
  | { readonly kind: 'pressing'; readonly corners: readonly Point[] }
  /** At least one corner is put down. */
  | { readonly kind: 'placing'; readonly corners: readonly Point[] };

type Answer = Outcome<OutlineState>;

export const outlineTool: Tool<OutlineState> = { start: { kind: 'idle' }, step };

function step(state: OutlineState, event: ToolEvent, context: ToolContext): Answer {
  const corners = state.kind === 'idle' ? [] : state.corners;
  switch (event.type) {
    case 'down':
      return show({ kind: 'pressing', corners }, caught(corners, event, context));
    case 'move':
      return show(state, caught(corners, event, context));
    case 'up':
      return state.kind === 'pressing'
        ? putDown(corners, event, context)
        : show(state, caught(corners, event, context));
    case 'press':
      return putDown(corners, event, context);
    case 'cancel':
      return show(placing(corners));
    case 'back':
      return show(placing(state.kind === 'pressing' ? corners : corners.slice(0, -1)));
    case 'finish':
      return corners.length === 0 ? { state } : close(corners, context);
    default:
      return show(state);
  }
}

const placing = (corners: readonly Point[]): OutlineState =>
  corners.length === 0 ? outlineTool.start : { kind: 'placing', corners };

function show(state: OutlineState, here?: Snap): Answer {
  const corners = state.kind === 'idle' ? [] : state.corners;
  return { state, preview: { corners, ...(here && { snap: here }) } };
}

const caught = (corners: readonly Point[], event: Pointing, context: ToolContext): Snap =>
  snap(event.at, sceneWith(corners, context), catching(event, context));

/** The drawing's scene, and the corners so far before all else. */
function sceneWith(corners: readonly Point[], { drawing }: ToolContext): SnapScene {
  const scene = snapScene(drawing);
  const own = corners.map((at, i): CatchPlace => {
    const closes = i === 0 || i === corners.length - 1;
    return { kind: 'corner', reason: closes ? 'closes the outline' : 'a corner of this outline', at };
  });
  const isOther = ({ at }: CatchPlace) => !corners.some((corner) => isSame(corner, at));
  return { ...scene, places: [...own, ...scene.places.filter(isOther)] };
}

const isSame = (one: Point, other: Point): boolean => distance(one, other) <= SNAP_DISTANCE;

function putDown(corners: readonly Point[], event: Pointing, context: ToolContext): Answer {
  const here = caught(corners, event, context);
  const [first, last] = [corners[0], corners.at(-1)];
  if (first !== undefined && last !== undefined) {
    if (isSame(here.at, last) && corners.length < 3) return show(placing(corners), here);
    if (isSame(here.at, first) || isSame(here.at, last)) return close(corners, context);
    if (corners.some((corner) => isSame(corner, here.at)))
      return {
        ...show(placing(corners), here),
        problem: fail('There is a corner of this outline already', '', 'Put the next one elsewhere').problem,
      };
  }
  return show({ kind: 'placing', corners: [...corners, here.at] }, here);
}

/** An outline that is refused stays as it is, to be mended by going back. */
function close(corners: readonly Point[], context: ToolContext): Answer {
  const simple = checkSimple(corners);
  const result = simple.ok ? replaceOutline(context.drawing, corners) : simple;
  return result.ok
    ? { state: outlineTool.start, edit: { label: 'Draw an outline', drawing: result.value } }
    : { ...show(placing(corners)), problem: result.problem };
}
