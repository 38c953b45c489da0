import type { Drawing } from '@seamwright/arrangement';
import {
  angleFrom,
  type DrawnLine,
  linesEndingIn,
  measuredEnd,
  putLineEndSymmetric,
} from '@seamwright/drafting';
import { distance, LARGEST_SIZE } from '@seamwright/geometry';
import { useState } from 'react';
import { AngleField } from '../../../ui/angle-field.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { currentSymmetry } from '../hand.ts';
import { namesOf } from '../names.ts';
import { makeTyped } from './make.ts';
import styles from './panel.module.css';

/** A line's length and angle, to be typed: one of its ends moves, the other stays. */
export function LineMeasure({ line, drawing }: { readonly line: DrawnLine; readonly drawing: Drawing }) {
  const [end, setEnd] = useState(() => freeEnd(line, drawing));
  const names = namesOf(drawing).points;
  const [staying, moving] = end === 'to' ? [line.from, line.to] : [line.to, line.from];
  const length = distance(staying, moving);
  const angle = angleFrom(staying, moving);
  const measure = (step: string, long: number, at: number) =>
    makeTyped(step, (before) => {
      const place = measuredEnd(before, line.id, end, long, at);
      return place.ok ? putLineEndSymmetric(before, line.id, end, place.value, currentSymmetry()) : place;
    });
  return (
    <>
      <div className={styles.pair}>
        <LengthField
          label="Length"
          value={length}
          range={{ least: 0, most: 2 * LARGEST_SIZE }}
          onChange={(long) => measure('Change a length', long, angle)}
        />
        <AngleField
          label="Angle"
          value={angle}
          onChange={(degrees) => measure('Change an angle', length, degrees)}
        />
      </div>
      <Choice
        label="Which end moves"
        value={end}
        options={[
          { value: 'from', label: names.get(line.from.id)! },
          { value: 'to', label: names.get(line.to.id)! },
        ]}
        onChange={setEnd}
      />
    </>
  );
}

/** The end that is on nothing else, if there is one; else the second. */
function freeEnd(line: DrawnLine, drawing: Drawing): 'from' | 'to' {
  const isFree = ({ id, on }: DrawnLine['from']) =>
    on === undefined && linesEndingIn(drawing, id).length === 1;
  return isFree(line.from) && !isFree(line.to) ? 'from' : 'to';
}
