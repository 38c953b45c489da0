import type { Drawing, PointId } from '@seamwright/arrangement';
import { addRepeated, drawnLines, type RunTo, splitSquareTo, splitThrough } from '@seamwright/drafting';
import { PencilRuler } from 'lucide-react';
import { memo, useState } from 'react';
import { AngleField } from '../../../ui/angle-field.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { currentSymmetry } from '../hand.ts';
import { EditButton } from './edit-button.tsx';
import { LineChoice } from './line-choice.tsx';
import type { MakeEdit } from './make.ts';
import styles from './panel.module.css';

interface PointLinesProps {
  readonly id: PointId;
  readonly drawing: Drawing;
}

/** New lines from a point: at a typed angle, or square to another line. */
export const PointLines = memo(function PointLines({ id, drawing }: PointLinesProps) {
  return (
    <Foldable id="point lines" title="Draw a line from it" more="">
      <AtAngle id={id} />
      <SquareTo id={id} drawing={drawing} />
    </Foldable>
  );
});

const repeated = (edit: MakeEdit) => (before: Drawing) => addRepeated(before, edit, currentSymmetry());

/** What is known of the place of a point that is there. */
const placed = ({ points }: Drawing, id: PointId) => {
  const { x, y } = points[id]!;
  return { at: { x, y }, point: id };
};

function AtAngle({ id }: { readonly id: PointId }) {
  const [angle, setAngle] = useState(45);
  const [ways, setWays] = useState<'both' | 'ahead'>('ahead');
  const [to, setTo] = useState<RunTo>('line');
  return (
    <div className={styles.fields} data-fields>
      <AngleField
        label="Angle"
        hint="0 is level to the right, 90 straight up."
        value={angle}
        onChange={setAngle}
      />
      <Choice
        label="It runs"
        value={ways}
        options={[
          { value: 'ahead', label: 'One way' },
          { value: 'both', label: 'Both ways' },
        ]}
        onChange={setWays}
      />
      <Choice
        label="As far as"
        value={to}
        options={[
          { value: 'line', label: 'The next line' },
          { value: 'edge', label: 'The edge' },
        ]}
        onChange={setTo}
      />
      <div className={styles.row}>
        <EditButton
          step="Draw a line at an angle"
          icon={PencilRuler}
          edit={repeated((drawing) => splitThrough(drawing, placed(drawing, id), angle, to, ways))}
        >
          Draw at this angle
        </EditButton>
      </div>
    </div>
  );
}

function SquareTo({ id, drawing }: PointLinesProps) {
  const [chosen, setChosen] = useState<string | null>(null);
  // A line that ends here is no goal for a line from here.
  const lines = [...drawnLines(drawing).values()]
    .filter(({ from, to }) => from.id !== id && to.id !== id)
    .map((line) => line.id);
  const line = chosen !== null && lines.includes(chosen) ? chosen : lines[0];
  if (line === undefined) return null;
  return (
    <div className={styles.fields}>
      <LineChoice label="Square to" drawing={drawing} lines={lines} value={line} onChange={setChosen} />
      <div className={styles.row}>
        <EditButton
          step="Draw a line square to another"
          icon={PencilRuler}
          edit={repeated((before) => splitSquareTo(before, placed(before, id), line))}
        >
          Draw square to it
        </EditButton>
      </div>
    </div>
  );
}
