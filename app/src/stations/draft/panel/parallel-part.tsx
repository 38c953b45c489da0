import type { Drawing, LineId } from '@seamwright/arrangement';
import { addRepeated, type DrawnLine, drawnLines, type Ends, parallelCopy } from '@seamwright/drafting';
import {
  normalize,
  ok,
  type Point,
  type Result,
  SAME_COORDINATE,
  SIZE_RANGE,
  subtract,
} from '@seamwright/geometry';
import { CopyPlus } from 'lucide-react';
import { memo, useState } from 'react';
import { Choice } from '../../../ui/choice.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { currentSymmetry } from '../hand.ts';
import { EditButton } from './edit-button.tsx';
import styles from './panel.module.css';
import { towards } from './towards.ts';

interface ParallelPartProps {
  readonly id: LineId;
  readonly drawing: Drawing;
}

/** Copies of a line beside it, at a distance that is typed. */
export const ParallelPart = memo(function ParallelPart({ id, drawing }: ParallelPartProps) {
  const line = drawnLines(drawing).get(id);
  if (line === undefined) return null;
  return (
    <Foldable id="line parallel" title="Parallel copies" more="">
      <Copies line={line} />
    </Foldable>
  );
});

/** The most copies that are made at once; more would be a mistyped number. */
const MOST = 60;

function Copies({ line }: { readonly line: DrawnLine }) {
  const [by, setBy] = useState(1);
  const [count, setCount] = useState(1);
  const [ends, setEnds] = useState<Ends>('run');
  const copy = (side: 1 | -1) => (before: Drawing) =>
    addRepeated(before, (drawing) => copies(drawing, line.id, side * by, count, ends), currentSymmetry());
  // The block lies to the right hand of its edges.
  const sides = line.kind === 'edge' ? ([1] as const) : leftFirst(line);
  return (
    <div className={styles.fields} data-fields>
      <div className={styles.pair}>
        <LengthField label="Distance" value={by} range={SIZE_RANGE} onChange={setBy} />
        <CountField label="How many" value={count} least={1} most={MOST} onChange={setCount} />
      </div>
      <Choice
        label="Their ends"
        value={ends}
        options={[
          { value: 'run', label: 'Run to the lines there' },
          { value: 'held', label: 'As this line’s' },
        ]}
        onChange={setEnds}
      />
      <div className={styles.row}>
        {sides.map((side) => (
          <EditButton
            key={side}
            step={count === 1 ? 'Copy a line beside it' : 'Copy a line several times'}
            icon={CopyPlus}
            edit={copy(side)}
          >
            To {towards(sideOf(line, side))}
          </EditButton>
        ))}
      </div>
    </div>
  );
}

function copies(drawing: Drawing, id: LineId, by: number, count: number, ends: Ends): Result<Drawing> {
  let next = drawing;
  for (let k = 1; k <= count; k++) {
    const result = parallelCopy(next, id, k * by, ends);
    if (!result.ok) return result;
    next = result.value;
  }
  return ok(next);
}

/** The sides of a line in the order in which one reads: left or top first, whichever way it was drawn. */
function leftFirst(line: DrawnLine): readonly (1 | -1)[] {
  const { x, y } = sideOf(line, 1);
  return x < -SAME_COORDINATE || (x <= SAME_COORDINATE && y < 0) ? [1, -1] : [-1, 1];
}

/** The unit vector to the right hand of who walks along a line (side 1), or to the left (−1). */
function sideOf({ from, to }: DrawnLine, side: 1 | -1): Point {
  const { x, y } = normalize(subtract(to, from));
  return { x: -y * side, y: x * side };
}
