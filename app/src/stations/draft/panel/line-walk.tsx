import type { Drawing, LineId } from '@seamwright/arrangement';
import {
  cutSplit,
  type DrawnLine,
  drawnLines,
  eraseSymmetric,
  extendSplit,
  joinableWith,
  joinSplits,
  meetingsOn,
  type RunTo,
  type Symmetry,
  trimSplit,
} from '@seamwright/drafting';
import { distance, midpoint, type Point } from '@seamwright/geometry';
import { MoveRight, Scissors, Slice, Spline } from 'lucide-react';
import { Fragment, memo, type ReactNode, useState } from 'react';
import { useWork } from '../../../store/work.ts';
import { Choice } from '../../../ui/choice.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { lengthWords, originOf, placeWords } from '../../../ui/measures.ts';
import { counted, listed } from '../../../ui/plural.ts';
import { currentSymmetry, useHand } from '../hand.ts';
import { namesOf } from '../names.ts';
import { EditButton } from './edit-button.tsx';
import styles from './panel.module.css';

interface LineWalkProps {
  readonly id: LineId;
  readonly drawing: Drawing;
}

/** Along the line from end to end: what meets it and the stretches between, each with what can be done there. */
export const LineWalk = memo(function LineWalk({ id, drawing }: LineWalkProps) {
  const line = drawnLines(drawing).get(id);
  if (line === undefined) return null;
  const stretches = meetingsOn(drawing, line).length + 1;
  return (
    <Foldable id="line along" title="Trim, cut, extend" more={counted(stretches, 'stretch', 'stretches')}>
      <Walk line={line} drawing={drawing} />
    </Foldable>
  );
});

function Walk({ line, drawing }: { readonly line: DrawnLine; readonly drawing: Drawing }) {
  const unit = useWork((work) => work.history.present.unit);
  const [to, setTo] = useState<RunTo>('line');
  const repeats = useHand(({ symmetry }) => isRepeated(symmetry));
  const names = namesOf(drawing);
  const origin = originOf(drawing);
  const meetings = meetingsOn(drawing, line);
  const stops: readonly Point[] = [line.from, ...meetings.map(({ at }) => at), line.to];
  const place = (at: Point) => placeWords(at, origin, unit);

  const end = (which: 'from' | 'to') => (
    <Stop
      name={names.points.get(line[which].id)!}
      words={place(line[which])}
      action={
        extendSplit(drawing, line.id, which, to).ok && (
          <EditButton
            step="Extend a line"
            icon={MoveRight}
            name={`Extend at ${names.points.get(line[which].id)}, ${place(line[which])}`}
            edit={(before) => extendSplit(before, line.id, which, to)}
          >
            Extend
          </EditButton>
        )
      }
    />
  );
  const stretch = (from: Point, until: Point) => (
    <Stop
      name={lengthWords(distance(from, until), unit)}
      isStretch
      action={
        meetings.length > 0 && (
          <EditButton
            step="Trim a line"
            icon={Scissors}
            name={`Trim away from ${place(from)} to ${place(until)}`}
            edit={(before) => trim(before, line.id, from, until)}
          >
            Trim
          </EditButton>
        )
      }
    />
  );
  return (
    <>
      <ol className={styles.walk} aria-label="Along the line">
        {end('from')}
        {stretch(stops[0]!, stops[1]!)}
        {meetings.map(({ at, lines }, i) => (
          <Fragment key={`${at.x} ${at.y}`}>
            <Stop
              name={listed(lines.map((one) => names.lines.get(one)!))}
              words={place(at)}
              action={
                <EditButton
                  step="Cut a line"
                  icon={Slice}
                  name={`Cut at ${place(at)}`}
                  edit={(before) => cutSplit(before, line.id, at)}
                >
                  Cut
                </EditButton>
              }
            />
            {stretch(stops[i + 1]!, stops[i + 2]!)}
          </Fragment>
        ))}
        {end('to')}
      </ol>
      <Choice
        label="Extending runs"
        value={to}
        options={[
          { value: 'line', label: 'To the next line' },
          { value: 'edge', label: 'To the edge' },
        ]}
        onChange={setTo}
      />
      <Joins id={line.id} drawing={drawing} />
      {repeats && (
        <p className={styles.hint}>
          Trimming is repeated about the centre as drawing is; cutting, extending and joining are not.
        </p>
      )}
    </>
  );
}

function Joins({ id, drawing }: { readonly id: LineId; readonly drawing: Drawing }) {
  const names = namesOf(drawing);
  const others = joinableWith(drawing, id);
  if (others.length === 0) return null;
  return (
    <div className={styles.row}>
      {others.map((other) => (
        <EditButton
          key={other}
          step="Join two lines"
          icon={Spline}
          edit={(before) => joinSplits(before, id, other)}
        >
          Join with {names.lines.get(other)!.toLowerCase()}
        </EditButton>
      ))}
    </div>
  );
}

/** With repeating on, the images of the stretch go too. */
function trim(before: Drawing, id: LineId, from: Point, until: Point) {
  const symmetry = currentSymmetry();
  return isRepeated(symmetry)
    ? eraseSymmetric(before, [{ a: from, b: until }], symmetry)
    : trimSplit(before, id, midpoint(from, until));
}

const isRepeated = ({ turns, mirrors }: Symmetry): boolean => turns > 1 || mirrors.length > 0;

interface StopProps {
  readonly name: string;
  readonly words?: string;
  readonly isStretch?: boolean;
  readonly action: ReactNode;
}

function Stop({ name, words, isStretch = false, action }: StopProps) {
  return (
    <li className={isStretch ? styles.stretch : styles.meeting}>
      <span>
        {name} {words !== undefined && <span className={styles.quiet}>{words}</span>}
      </span>
      {action}
    </li>
  );
}
