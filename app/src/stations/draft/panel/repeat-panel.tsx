import { NO_SYMMETRY, type Symmetry } from '@seamwright/drafting';
import { sentence } from '@seamwright/geometry';
import { useState } from 'react';
import { angleWords, parseAngle } from '../../../ui/angle.ts';
import { Button } from '../../../ui/button.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { focusDrawing } from '../crosshair.ts';
import { useHand } from '../hand.ts';
import { axesOf, drawOnce, repeat, repeatWords, timesOf } from '../repeating.ts';
import { MeasureField } from './measure-field.tsx';
import styles from './panel.module.css';

const TURNS: readonly Symmetry['turns'][] = [1, 2, 3, 4, 6, 8];

/** The axes that most blocks have; the diagonals by how they run from the left. */
const AXES = [
  { angle: 90, name: 'Upright' },
  { angle: 0, name: 'Level' },
  { angle: 45, name: 'Rising' },
  { angle: 135, name: 'Falling' },
] as const;

const isNamed = (angle: number): boolean => AXES.some((axis) => axis.angle === angle);

/** How what is drawn, moved and deleted is repeated about the block's centre. */
export function RepeatPanel() {
  const symmetry = useHand((hand) => hand.symmetry);
  const [problem, setProblem] = useState<string | undefined>();
  const times = timesOf(symmetry);
  const to = (change: Partial<Symmetry>) => setProblem(repeat({ ...symmetry, ...change }));
  const { turns, mirrors } = symmetry;
  const other = mirrors.find((angle) => !isNamed(angle));
  // Turns and one axis may bring others with them.
  const follows = (angle: number) => !mirrors.includes(angle) && axesOf(symmetry).includes(angle);
  const withAxis = (angle: number, on: boolean) =>
    to({ mirrors: on ? [...mirrors, angle] : mirrors.filter((one) => one !== angle) });
  return (
    <Foldable id="repeating" title="Repeat" more={times === 1 ? 'off' : `${times} times`}>
      <Choice
        label="Turned about the centre, times in a full turn"
        value={String(turns)}
        options={TURNS.map((count) => ({
          value: String(count),
          label: String(count),
          name: count === 1 ? 'Not turned' : `${count} times`,
        }))}
        onChange={(value) => to({ turns: TURNS.find((count) => String(count) === value)! })}
      />
      <fieldset className={styles.of}>
        <legend className={styles.hint}>Mirrored across</legend>
        <div className={styles.axes}>
          {AXES.map(({ angle, name }) => (
            <CheckBox
              key={angle}
              label={name}
              checked={mirrors.includes(angle) || follows(angle)}
              disabled={follows(angle)}
              onChange={(isChecked) => withAxis(angle, isChecked)}
            />
          ))}
        </div>
        <MeasureField
          label="An axis at another angle"
          value={other}
          shown={angleWords}
          now="none"
          read={(typed) => {
            const angle = parseAngle(typed);
            return angle.ok ? angle : { problem: sentence(angle.problem) };
          }}
          onChange={(angle) =>
            to({ mirrors: [...mirrors.filter(isNamed), ...(angle === undefined ? [] : [angle])] })
          }
          onEnter={focusDrawing}
          onLeave={focusDrawing}
        />
      </fieldset>
      {problem !== undefined && (
        <p className={styles.wrong} role="alert">
          {problem}
        </p>
      )}
      <p className={styles.hint}>
        {repeatWords(symmetry)}.{times > 1 && ' What is moved or deleted takes its images along.'}
      </p>
      {symmetry !== NO_SYMMETRY && times > 1 && (
        <div className={styles.row}>
          <Button onClick={drawOnce}>Draw each line once</Button>
        </div>
      )}
    </Foldable>
  );
}
