import {
  distance,
  formatLength,
  type Point,
  parseLength,
  sentence,
  transformPoint,
} from '@seamwright/geometry';
import { pictureToBlock, pixelAt, scaleByTwo, straighten, type Tracing } from '@seamwright/pattern';
import { useEffect, useRef, useState } from 'react';
import { announce } from '../../../store/notices.ts';
import { currentBlock, pattern, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { lengthWords, originOf } from '../../../ui/measures.ts';
import { focusDrawing } from '../crosshair.ts';
import { MeasureField } from '../panel/measure-field.tsx';
import panel from '../panel/panel.module.css';
import { PlaceFields } from '../panel/place-fields.tsx';
import { previewPlacing, usePlacing } from './placing.ts';
import { putPoint } from './put-point.ts';
import styles from './tracing.module.css';
import { changeTracing } from './tracing-edits.ts';

/** Two points of the picture, pressed or typed: scales the picture by their distance, or makes them level. */
export function TwoPointsPart({ tracing }: { readonly tracing: Tracing }) {
  const [first, second] = usePlacing((placing) => placing.points);
  return (
    <div className={styles.two}>
      {first !== undefined && second !== undefined ? (
        <KnownDistance key={keyOf(first, second)} tracing={tracing} two={[first, second]} />
      ) : (
        <p className={panel.hint}>
          Press on two points of the picture whose distance you know: the ends of a ruler, the foot and the
          top of a door.
        </p>
      )}
      <TypedPoints tracing={tracing} />
    </div>
  );
}

const keyOf = (a: Point<'picture'>, b: Point<'picture'>): string => `${a.x} ${a.y} ${b.x} ${b.y}`;

/** Where the points are in numbers: exact, and without a pointer. */
function TypedPoints({ tracing }: { readonly tracing: Tracing }) {
  const points = usePlacing((placing) => placing.points);
  const origin = originOf(useWork(currentBlock).drawing);
  const toBlock = pictureToBlock(tracing, tracing.picture);
  const places = points.map((point) => transformPoint(toBlock, point));
  // The next point begins at the block's corner; typing either number puts it down.
  const shown = places.length < 2 ? [...places, origin] : places;
  return (
    <details className={styles.typed}>
      <summary>Type where the points are</summary>
      {shown.map((at, index) => (
        <PlaceFields
          key={index === 0 ? 'first' : 'second'}
          of={index === 0 ? 'First point' : 'Second point'}
          at={at}
          onChange={(to) => putPoint(pixelAt(tracing, tracing.picture, to), index, false)}
        />
      ))}
    </details>
  );
}

interface KnownDistanceProps {
  readonly tracing: Tracing;
  readonly two: readonly [Point<'picture'>, Point<'picture'>];
}

function KnownDistance({ tracing, two }: KnownDistanceProps) {
  const unit = useWork((work) => pattern(work).unit);
  const [typed, setTyped] = useState<number | undefined>();
  const [problem, setProblem] = useState<string | null>(null);
  const { picture } = tracing;
  const part = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!usePlacing.getState().asks) return;
    usePlacing.setState({ asks: false });
    part.current?.querySelector('input')?.focus();
  }, []);
  const toBlock = pictureToBlock(tracing, picture);
  const apart = distance(transformPoint(toBlock, two[0]), transformPoint(toBlock, two[1]));

  const show = (inches: number | undefined) => {
    setTyped(inches);
    const scaled = inches === undefined ? undefined : scaleByTwo(tracing, picture, two, inches, unit);
    setProblem(scaled?.ok === false ? sentence(scaled.problem) : null);
    previewPlacing(scaled?.ok === true ? scaled.value : null);
  };
  const scale = () => {
    if (typed === undefined) return;
    const scaled = scaleByTwo(tracing, picture, two, typed, unit);
    if (!scaled.ok) return;
    previewPlacing(null);
    changeTracing('Scale the picture', () => scaled.value);
    announce(`Scaled: the two points are ${lengthWords(typed, unit)} apart`);
    setTyped(undefined);
    focusDrawing();
  };
  const make = (wanted: 'level' | 'upright') => () => {
    const turned = straighten(tracing, picture, two, wanted);
    setProblem(turned.ok ? null : sentence(turned.problem));
    if (!turned.ok) return;
    previewPlacing(null);
    changeTracing('Turn the picture', () => turned.value);
    announce(wanted === 'level' ? 'The two points are level' : 'The two points are upright');
  };
  return (
    <div ref={part} className={styles.distance}>
      <MeasureField
        label="Distance between them"
        value={typed}
        shown={(inches) => formatLength(inches, unit)}
        now={`${lengthWords(apart, unit)} now`}
        read={(text) => {
          const read = parseLength(text, unit);
          return read.ok ? read : { problem: sentence(read.problem) };
        }}
        onChange={show}
        onEnter={scale}
        onLeave={focusDrawing}
      />
      {problem !== null && (
        <p className={panel.wrong} role="alert">
          {problem}
        </p>
      )}
      <div className={panel.row}>
        <Button look="main" disabled={typed === undefined || problem !== null} onClick={scale}>
          Scale the picture
        </Button>
        <Button onClick={make('level')}>Make level</Button>
        <Button onClick={make('upright')}>Make upright</Button>
      </div>
    </div>
  );
}
