import { angleFrom, drawnLines, type Snap } from '@seamwright/drafting';
import {
  type Box,
  distance,
  type LengthUnit,
  type Point,
  type Segment,
  SNAP_DISTANCE,
} from '@seamwright/geometry';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Rect.js';
import { Circle, Line, Rect } from 'react-konva/lib/ReactKonvaCore.js';
import { flat } from '../../../canvas/outline-shape.tsx';
import { useTheme } from '../../../canvas/theme.ts';
import { useScale } from '../../../canvas/view-context.ts';
import { currentBlock, currentDrawing, useWork } from '../../../store/work.ts';
import { angleWords } from '../../../ui/angle.ts';
import { lengthWords, originOf, placeWords } from '../../../ui/measures.ts';
import { useHand } from '../hand.ts';
import type { Held } from '../held.ts';
import { BesidePointer } from './beside-pointer.tsx';
import { SnapMark } from './snap-mark.tsx';

/** What moves with the pointer: the line under way, what is caught, and why. */
export function PreviewMarks({ width }: { readonly width: number }) {
  const held = useHand((hand) => hand.held);
  const preview = useHand((hand) => hand.preview);
  const finger = useHand((hand) => hand.finger);
  const crosshair = useHand((hand) => hand.crosshair);
  const unit = useWork((work) => work.history.present.unit);
  const { snap, line, drawn, frame, over } = preview;
  const block = useWork(currentBlock);
  const origin = originOf(block.drawing);
  const start = startOf(held);
  return (
    <>
      {held.tool === 'outline' && <OutlineUnderWay corners={cornersOf(held)} to={snap?.at} />}
      {drawn?.map((stretch) => (
        <Image key={flat([stretch.a, stretch.b]).join()} of={stretch} />
      ))}
      {line !== undefined && <Stretch from={line.a} to={line.b} />}
      {frame !== undefined && <Frame box={frame} />}
      {start !== undefined && <StartMark at={start.at} />}
      {over !== undefined && snap === undefined && <Over over={over} />}
      {crosshair !== null && <Crosshair at={crosshair} />}
      {snap !== undefined && <SnapMark snap={snap} />}
      {snap !== undefined && (
        <BesidePointer at={snap.at} words={wordsOf(snap, start, origin, unit)} above={finger} width={width} />
      )}
    </>
  );
}

const startOf = ({ tool, state }: Held): Snap | undefined =>
  tool === 'split' && state.kind !== 'idle' ? state.start : undefined;

const cornersOf = (held: Held & { readonly tool: 'outline' }): readonly Point[] =>
  held.state.kind === 'idle' ? [] : held.state.corners;

function wordsOf(snap: Snap, start: Snap | undefined, origin: Point, unit: LengthUnit): readonly string[] {
  const place = placeWords(snap.at, origin, unit);
  const reason = snap.reason.charAt(0).toUpperCase() + snap.reason.slice(1);
  return [reason, place, start === undefined ? '' : lineWords(start.at, snap.at, unit)].filter(
    (words) => words !== '',
  );
}

/** `4¼ in long at 45°`; nothing where there is no line yet. */
function lineWords(from: Point, to: Point, unit: LengthUnit): string {
  const long = distance(from, to);
  return long <= SNAP_DISTANCE ? '' : `${lengthWords(long, unit)} long at ${angleWords(angleFrom(from, to))}`;
}

function Stretch({ from, to }: { readonly from: Point; readonly to: Point }) {
  const theme = useTheme();
  return (
    <Line
      points={[from.x, from.y, to.x, to.y]}
      stroke={theme.accent}
      strokeWidth={2.5}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
}

/** A line that would be drawn along with the one in hand, or what it would become. */
function Image({ of: { a, b } }: { readonly of: Segment }) {
  const theme = useTheme();
  return (
    <Line
      points={[a.x, a.y, b.x, b.y]}
      stroke={theme.accent}
      strokeWidth={1.75}
      dash={[6, 4]}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
}

/** What is drawn round things to choose. */
function Frame({ box: { minX, minY, maxX, maxY } }: { readonly box: Box }) {
  const theme = useTheme();
  const place = { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
  return (
    <>
      <Rect {...place} fill={theme.accent} opacity={0.1} perfectDrawEnabled={false} />
      <Rect
        {...place}
        stroke={theme.accent}
        strokeWidth={1.5}
        dash={[6, 4]}
        strokeScaleEnabled={false}
        perfectDrawEnabled={false}
      />
    </>
  );
}

/** The end that is down already. */
function StartMark({ at }: { readonly at: Point }) {
  const theme = useTheme();
  const scale = useScale();
  return (
    <Circle
      x={at.x}
      y={at.y}
      radius={5 / scale}
      fill={theme.accent}
      stroke={theme.sheet}
      strokeWidth={1.5}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
}

function OutlineUnderWay({
  corners,
  to,
}: {
  readonly corners: readonly Point[];
  readonly to: Point | undefined;
}) {
  const theme = useTheme();
  if (corners.length === 0) return null;
  const ends = to === undefined ? corners : [...corners, to];
  return (
    <>
      <Line
        points={flat(ends)}
        stroke={theme.accent}
        strokeWidth={2.5}
        strokeScaleEnabled={false}
        perfectDrawEnabled={false}
        lineJoin="round"
      />
      {ends.length > 2 && (
        <Line
          points={flat([ends.at(-1)!, ends[0]!])}
          stroke={theme.accent}
          strokeWidth={1.5}
          dash={[6, 5]}
          strokeScaleEnabled={false}
          perfectDrawEnabled={false}
        />
      )}
      {corners.map((corner) => (
        <StartMark key={`${corner.x} ${corner.y}`} at={corner} />
      ))}
    </>
  );
}

/** What a press would take in hand. */
function Over({ over }: { readonly over: { readonly kind: 'point' | 'line'; readonly id: string } }) {
  const theme = useTheme();
  const scale = useScale();
  const drawing = useWork(currentDrawing);
  const look = { stroke: theme.accent, strokeWidth: 3, strokeScaleEnabled: false, perfectDrawEnabled: false };
  if (over.kind === 'point') {
    const point = drawing.points[over.id];
    return point === undefined ? null : <Circle {...look} x={point.x} y={point.y} radius={10 / scale} />;
  }
  const line = drawnLines(drawing).get(over.id);
  if (line === undefined) return null;
  return <Line {...look} points={[line.from.x, line.from.y, line.to.x, line.to.y]} />;
}

/** CSS pixels: the crosshair's arms. */
const ARM = 26;

export function Crosshair({ at }: { readonly at: Point }) {
  const theme = useTheme();
  const scale = useScale();
  const arm = ARM / scale;
  const gap = 5 / scale;
  const arms = [
    [at.x - arm, at.y, at.x - gap, at.y],
    [at.x + gap, at.y, at.x + arm, at.y],
    [at.x, at.y - arm, at.x, at.y - gap],
    [at.x, at.y + gap, at.x, at.y + arm],
  ];
  // A light border keeps the arms apart from lines that run along them.
  const strokes = [
    { stroke: theme.sheet, strokeWidth: 5 },
    { stroke: theme.ink, strokeWidth: 2 },
  ];
  return strokes.map((stroke) =>
    arms.map((points, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the four arms
      <Line key={i} {...stroke} points={points} strokeScaleEnabled={false} perfectDrawEnabled={false} />
    )),
  );
}
