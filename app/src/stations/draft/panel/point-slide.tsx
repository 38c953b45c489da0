import type { Drawing, PointId } from '@seamwright/arrangement';
import {
  type DrawnLine,
  drawnLines,
  followersOf,
  linesEndingIn,
  movePointsSymmetric,
  placeExactly,
  snapScene,
} from '@seamwright/drafting';
import { normalize, type Point, SAME_COORDINATE, SIZE_RANGE, scale, subtract } from '@seamwright/geometry';
import { MoveHorizontal } from 'lucide-react';
import { memo, useState } from 'react';
import { Foldable } from '../../../ui/foldable.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { currentSymmetry } from '../hand.ts';
import { EditButton } from './edit-button.tsx';
import { LineChoice } from './line-choice.tsx';
import styles from './panel.module.css';
import { towards } from './towards.ts';

interface PointSlideProps {
  readonly id: PointId;
  readonly drawing: Drawing;
}

/** Slides a point along a line that it is on, or that ends in it, by a typed length. */
export const PointSlide = memo(function PointSlide({ id, drawing }: PointSlideProps) {
  return (
    <Foldable id="point slide" title="Slide it along a line" more="">
      <Slide id={id} drawing={drawing} />
    </Foldable>
  );
});

function Slide({ id, drawing }: PointSlideProps) {
  const [by, setBy] = useState(1 / 4);
  const [chosen, setChosen] = useState<string | null>(null);
  const lines = [...(drawing.points[id]!.on ?? []), ...linesEndingIn(drawing, id).map((line) => line.id)];
  const line = drawnLines(drawing).get(chosen !== null && lines.includes(chosen) ? chosen : lines[0]!);
  if (line === undefined) return null;
  return (
    <div className={styles.fields} data-fields>
      <LineChoice label="Along" drawing={drawing} lines={lines} value={line.id} onChange={setChosen} />
      <LengthField label="By" value={by} range={SIZE_RANGE} onChange={setBy} />
      <div className={styles.row}>
        {([-1, 1] as const).map((way) => (
          <EditButton
            key={way}
            step="Slide a point"
            icon={MoveHorizontal}
            edit={(before) => slide(before, id, scale(directionOf(line), way * by))}
          >
            To {towards(scale(directionOf(line), way))}
          </EditButton>
        ))}
      </div>
    </div>
  );
}

/** From left to right, or down an upright line: whichever way it was drawn. */
function directionOf({ from, to }: DrawnLine): Point {
  const way = normalize(subtract(to, from));
  return way.x < -SAME_COORDINATE || (way.x <= SAME_COORDINATE && way.y < 0) ? scale(way, -1) : way;
}

function slide(before: Drawing, id: PointId, by: Point) {
  const { x, y } = before.points[id]!;
  const target = placeExactly({ x: x + by.x, y: y + by.y }, snapScene(before, followersOf(before, id)));
  return movePointsSymmetric(before, new Map([[id, target]]), currentSymmetry());
}
