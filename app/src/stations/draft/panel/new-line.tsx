import { addSplit, placeExactly, snapScene } from '@seamwright/drafting';
import type { Point } from '@seamwright/geometry';
import { useState } from 'react';
import { change } from '../../../store/changes.ts';
import { announce } from '../../../store/notices.ts';
import { Button } from '../../../ui/button.tsx';
import styles from './panel.module.css';
import { PlaceFields } from './place-fields.tsx';

const NOWHERE: Point = { x: 0, y: 0 };

/** Draws a line by typing where its ends are: exact, and without a pointer. */
export function NewLine() {
  const [from, setFrom] = useState(NOWHERE);
  const [to, setTo] = useState(NOWHERE);
  const draw = () => {
    const result = change('Draw a line', (drawing) => {
      const scene = snapScene(drawing);
      return addSplit(drawing, placeExactly(from, scene), placeExactly(to, scene));
    });
    if (!result.ok) return;
    announce('Line drawn');
    setFrom(to);
  };
  return (
    <section className={styles.newLine}>
      <h3>A line by its ends</h3>
      <PlaceFields of="First end" at={from} onChange={setFrom} />
      <PlaceFields of="Second end" at={to} onChange={setTo} />
      <Button onClick={draw}>Draw this line</Button>
    </section>
  );
}
