import { addSymmetric, placeByMeasure, placeExactly, snapScene } from '@seamwright/drafting';
import { LARGEST_SIZE, type Point } from '@seamwright/geometry';
import { type MouseEvent, useState } from 'react';
import { currentBlock, useWork } from '../../../store/work.ts';
import { AngleField } from '../../../ui/angle-field.tsx';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { originOf } from '../../../ui/measures.ts';
import { currentSymmetry } from '../hand.ts';
import { goToWrongField } from './edit-button.tsx';
import { make } from './make.ts';
import styles from './panel.module.css';
import { PlaceFields } from './place-fields.tsx';

const LENGTHS = { least: 0, most: 2 * LARGEST_SIZE };

/** Draws a line by typing where its ends are, or where it begins, how long and how steep it is: without a pointer. */
export function NewLine() {
  const [by, setBy] = useState<'ends' | 'measure'>('ends');
  const [from, setFrom] = useState<Point>(() => originOf(currentBlock(useWork.getState()).drawing));
  const [to, setTo] = useState(from);
  const [length, setLength] = useState(1);
  const [angle, setAngle] = useState(0);
  const draw = (event: MouseEvent<HTMLElement>) => {
    if (goToWrongField(event.currentTarget)) return;
    const end = by === 'ends' ? to : placeByMeasure(from, length, angle);
    const result = make('Draw a line', (drawing) => {
      const scene = snapScene(drawing);
      return addSymmetric(drawing, placeExactly(from, scene), placeExactly(end, scene), currentSymmetry());
    });
    if (result.ok) setFrom(end);
  };
  return (
    <section className={styles.newLine} data-fields>
      <h3>A new line</h3>
      <Choice
        label="Given by"
        value={by}
        options={[
          { value: 'ends', label: 'Its ends' },
          { value: 'measure', label: 'Length and angle' },
        ]}
        onChange={setBy}
      />
      <PlaceFields of="First end" at={from} onChange={setFrom} />
      {by === 'ends' ? (
        <PlaceFields of="Second end" at={to} onChange={setTo} />
      ) : (
        <div className={styles.pair}>
          <LengthField label="Length" value={length} range={LENGTHS} onChange={setLength} />
          <AngleField label="Angle" value={angle} onChange={setAngle} />
        </div>
      )}
      <Button onClick={draw}>Draw this line</Button>
    </section>
  );
}
