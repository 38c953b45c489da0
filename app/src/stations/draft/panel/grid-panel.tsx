import { formatLength, type LengthUnit, SAME_COORDINATE } from '@seamwright/geometry';
import { changeBlock } from '../../../store/changes.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Field } from '../../../ui/field.tsx';
import { useHand } from '../hand.ts';
import styles from './panel.module.css';

const CM = 1 / 2.54;

/** Inches between the grid's lines, as they are offered. */
const STEPS: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1, 1.5, 2, 3],
  cm: [0.1 * CM, 0.25 * CM, 0.5 * CM, CM, 2 * CM, 2.5 * CM, 5 * CM],
};

/** The drawing grid: how wide, and whether ends keep to it. */
export function GridPanel() {
  const grid = useWork((work) => currentBlock(work).grid);
  const id = useWork((work) => currentBlock(work).id);
  const unit = useWork((work) => work.history.present.unit);
  const toGrid = useHand((hand) => hand.toGrid);
  const offered = STEPS[unit];
  const known = offered.find((step) => Math.abs(step - grid) <= SAME_COORDINATE);
  const steps = known === undefined ? [...offered, grid].sort((a, b) => a - b) : offered;
  return (
    <section className={styles.part} aria-labelledby="draft-grid">
      <h2 id="draft-grid">Grid</h2>
      <div className={styles.pair}>
        <Field label="A line every">
          {(control) => (
            <select
              {...control}
              value={known ?? grid}
              onChange={(event) =>
                changeBlock('Change the grid', id, (block) => ({
                  ...block,
                  grid: Number(event.target.value),
                }))
              }
            >
              {steps.map((step) => (
                <option key={step} value={step}>
                  {formatLength(step, unit)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <label className={styles.check}>
          <input
            type="checkbox"
            checked={toGrid}
            onChange={(event) => useHand.setState({ toGrid: event.target.checked })}
          />
          Ends keep to it
        </label>
      </div>
    </section>
  );
}
