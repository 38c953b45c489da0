import { angleFrom, type Measure } from '@seamwright/drafting';
import {
  distance,
  formatLength,
  LARGEST_SIZE,
  parseLength,
  type Result,
  SMALLEST_SIZE,
  sentence,
} from '@seamwright/geometry';
import { setting, useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { angleWords, parseAngle } from '../../../ui/angle.ts';
import { CheckBox } from '../../../ui/check-box.tsx';
import { lengthWords } from '../../../ui/measures.ts';
import type { Reading } from '../../../ui/typed-field.tsx';
import { holdEnds } from '../catching.ts';
import { focusDrawing } from '../crosshair.ts';
import { adjustHand, useHand } from '../hand.ts';
import { drawAsTyped, LENGTH_FIELD } from '../typed-measure.ts';
import { MeasureField } from './measure-field.tsx';
import styles from './panel.module.css';

/** A line reaches from the least size of a block to beyond the corners of the largest. */
const RANGE = { least: SMALLEST_SIZE, most: 2 * LARGEST_SIZE };

/** Measures for the line that is being drawn, or that comes next, and how lines begin and end. */
export function DrawingPanel() {
  const unit = useWork((work) => work.history.present.unit);
  const measure = useHand((hand) => hand.measure);
  const line = useHand((hand) => hand.preview.line);
  const keys = { onEnter: drawAsTyped, onLeave: focusDrawing };
  return (
    <>
      <div className={styles.measures}>
        <MeasureField
          {...keys}
          id={LENGTH_FIELD}
          label="Length"
          value={measure.length}
          shown={(length) => formatLength(length, unit)}
          now={line === undefined ? 'any' : lengthWords(distance(line.a, line.b), unit)}
          read={(typed) => readingOf(parseLength(typed, unit, RANGE))}
          onChange={(length) => adjustHand({ measure: withMeasure(measure, 'length', length) })}
        />
        <MeasureField
          {...keys}
          label="Angle"
          value={measure.angle}
          shown={angleWords}
          now={line === undefined ? 'any' : angleWords(angleFrom(line.a, line.b))}
          read={(typed) => readingOf(parseAngle(typed))}
          onChange={(angle) => adjustHand({ measure: withMeasure(measure, 'angle', angle) })}
        />
      </div>
      <LineHabits />
    </>
  );
}

const readingOf = (result: Result<number>): Reading =>
  result.ok ? result : { problem: sentence(result.problem) };

function withMeasure(before: Measure, key: keyof Measure, value: number | undefined): Measure {
  const { [key]: _, ...rest } = before;
  return value === undefined ? rest : { ...rest, [key]: value };
}

function LineHabits() {
  const ends = useSettings((settings) => settings.ends);
  const chain = useSettings((settings) => settings.chain);
  return (
    <div>
      <CheckBox
        label="Ends stay where they are put"
        checked={ends === 'held'}
        onChange={(isChecked) => holdEnds(isChecked)}
      />
      <CheckBox
        label="Each line goes on from the last"
        checked={chain}
        onChange={(isChecked) => setting({ chain: isChecked })}
      />
    </div>
  );
}
