import { distance, midpoint, type Point, transformPoint } from '@seamwright/geometry';
import { pictureToBlock, type Tracing } from '@seamwright/pattern';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Text.js';
import { Circle, Group, Line, Text } from 'react-konva/lib/ReactKonvaCore.js';
import { flat } from '../../../canvas/outline-shape.tsx';
import { FACE, useTheme } from '../../../canvas/theme.ts';
import { useFlip, useScale } from '../../../canvas/view-context.ts';
import { useWork } from '../../../store/work.ts';
import { lengthWords } from '../../../ui/measures.ts';
import { BesidePointer } from '../layers/beside-pointer.tsx';
import { Crosshair } from '../layers/preview.tsx';
import { usePlacing } from './placing.ts';
import { currentTracing } from './tracing-edits.ts';

/** What is seen of the hand on the picture: its frame, the two points, how far apart they are. */
export function TracingMarks({ width }: { readonly width: number }) {
  const tracing = useWork(currentTracing);
  const { kind, points, under, crosshair, preview } = usePlacing();
  if (tracing === undefined || kind === 'rest') return null;
  const lies = preview ?? tracing;
  const t = pictureToBlock(lies, lies.picture);
  const places = points.map((point) => transformPoint(t, point));
  return (
    <>
      <Frame tracing={lies} />
      {kind === 'pointing' && <TwoPoints places={places} width={width} />}
      {under !== null && <Crosshair at={under} />}
      {crosshair !== null && <Crosshair at={crosshair} />}
    </>
  );
}

function Frame({ tracing }: { readonly tracing: Tracing }) {
  const theme = useTheme();
  const { width, height } = tracing.picture;
  const t = pictureToBlock(tracing, tracing.picture);
  const corners: readonly Point<'picture'>[] = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return (
    <Line
      points={flat(corners.map((corner) => transformPoint(t, corner)))}
      closed
      stroke={theme.accent}
      strokeWidth={1.5}
      dash={[7, 5]}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
}

function TwoPoints({ places, width }: { readonly places: readonly Point[]; readonly width: number }) {
  const theme = useTheme();
  const unit = useWork((work) => work.history.present.unit);
  const [first, second] = places;
  return (
    <>
      {first !== undefined && second !== undefined && (
        <>
          <Line
            points={flat([first, second])}
            stroke={theme.accent}
            strokeWidth={2}
            strokeScaleEnabled={false}
            perfectDrawEnabled={false}
          />
          <BesidePointer
            at={midpoint(first, second)}
            words={[`${lengthWords(distance(first, second), unit)} apart`]}
            above={false}
            width={width}
          />
        </>
      )}
      {places.map((place, i) => (
        <Numbered key={i === 0 ? 'first' : 'second'} at={place} number={i + 1} />
      ))}
    </>
  );
}

/** CSS pixels. */
const RADIUS = 6;
const SIZE = 13;

/** A ring round the very point, its number beside it. */
function Numbered({ at, number }: { readonly at: Point; readonly number: number }) {
  const theme = useTheme();
  const scale = useScale();
  const flip = useFlip();
  const look = { perfectDrawEnabled: false };
  return (
    <Group x={at.x} y={at.y} scaleX={flip / scale} scaleY={1 / scale}>
      <Circle {...look} radius={RADIUS} stroke={theme.sheet} strokeWidth={5} />
      <Circle {...look} radius={RADIUS} stroke={theme.accent} strokeWidth={2.5} />
      <Circle {...look} radius={1.5} fill={theme.accent} />
      <Circle {...look} x={-16} y={-14} radius={9} fill={theme.accent} />
      <Text
        {...look}
        x={-25}
        y={-14 - SIZE / 2}
        width={18}
        align="center"
        text={`${number}`}
        fontFamily={FACE}
        fontSize={SIZE}
        fontStyle="600"
        fill={theme['on-accent']}
      />
    </Group>
  );
}
