import type { Drawing } from '@seamwright/arrangement';
import { centreOf, drawnLines, mirrorAcross, type Parts } from '@seamwright/drafting';
import {
  boundingBox,
  midpoint,
  type Point,
  rotation,
  type Transform,
  translation,
} from '@seamwright/geometry';
import { FlipHorizontal, FlipVertical, MoveDownRight, RotateCcw, RotateCw } from 'lucide-react';
import { useState } from 'react';
import { AngleField } from '../../../ui/angle-field.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { EditButton } from './edit-button.tsx';
import styles from './panel.module.css';
import { PlaceField } from './place-field.tsx';
import { type How, stepName, transformChosen } from './transform-chosen.ts';

interface TransformFieldsProps {
  readonly parts: Parts;
  readonly drawing: Drawing;
}

/** Moves, turns or mirrors what is in hand, or copies of it: by buttons and typed values. */
export function TransformFields({ parts, drawing }: TransformFieldsProps) {
  const canCopy = parts.lines.some((id) => drawnLines(drawing).get(id)?.kind === 'split');
  const [wanted, setHow] = useState<How>('move');
  const one = parts.lines.length + parts.points.length === 1;
  const how = canCopy ? wanted : 'move';
  const [about, setAbout] = useState<'block' | 'own'>('block');
  const centre = about === 'block' ? centreOf(drawing) : middleOf(drawing, parts);
  const edit = (by: Transform) => (before: Drawing) => transformChosen(before, parts, by, how);
  return (
    <div className={styles.fields} data-fields>
      {canCopy && (
        <Choice
          label="What goes there"
          value={how}
          options={[
            { value: 'move', label: one ? 'The line' : 'All of it' },
            { value: 'copy', label: one ? 'A copy of it' : 'A copy of the lines' },
          ]}
          onChange={setHow}
        />
      )}
      <Choice
        label="Mirrored and turned about"
        value={about}
        options={[
          { value: 'block', label: 'The block’s centre' },
          { value: 'own', label: one ? 'Its own middle' : 'Their own middle' },
        ]}
        onChange={setAbout}
      />
      <Mirrors centre={centre} how={how} edit={edit} />
      <Turns centre={centre} how={how} edit={edit} />
      <Moves how={how} edit={edit} />
    </div>
  );
}

interface WayProps {
  readonly how: How;
  readonly edit: (by: Transform) => Parameters<typeof EditButton>[0]['edit'];
}

function Mirrors({ centre, how, edit }: WayProps & { readonly centre: Point }) {
  const [axis, setAxis] = useState(45);
  const step = stepName('Mirror', how);
  return (
    <fieldset className={styles.of}>
      <legend className={styles.hint}>Mirror</legend>
      <div className={styles.fields}>
        <div className={styles.row}>
          <EditButton
            step={step}
            icon={FlipHorizontal}
            name="Mirror left to right"
            edit={edit(mirrorAcross(90, centre))}
          >
            Left to right
          </EditButton>
          <EditButton
            step={step}
            icon={FlipVertical}
            name="Mirror top to bottom"
            edit={edit(mirrorAcross(0, centre))}
          >
            Top to bottom
          </EditButton>
        </div>
        <div className={styles.fieldRow}>
          <AngleField label="Axis at an angle" value={axis} onChange={setAxis} />
          <EditButton step={step} name="Mirror across it" edit={edit(mirrorAcross(axis, centre))}>
            Across it
          </EditButton>
        </div>
      </div>
    </fieldset>
  );
}

function Turns({ centre, how, edit }: WayProps & { readonly centre: Point }) {
  const [angle, setAngle] = useState(90);
  const step = stepName('Turn', how);
  return (
    <div className={styles.fieldRow}>
      <AngleField label="Turn by" value={angle} onChange={setAngle} />
      <EditButton step={step} icon={RotateCcw} name="Turn to the left" edit={edit(rotation(-angle, centre))}>
        Left
      </EditButton>
      <EditButton step={step} icon={RotateCw} name="Turn to the right" edit={edit(rotation(angle, centre))}>
        Right
      </EditButton>
    </div>
  );
}

function Moves({ how, edit }: WayProps) {
  const [x, setX] = useState(1);
  const [y, setY] = useState(0);
  return (
    <div className={styles.fieldRow}>
      <PlaceField label="To the right" value={x} onChange={setX} />
      <PlaceField label="Down" value={y} onChange={setY} />
      <EditButton
        step={stepName('Move', how)}
        icon={MoveDownRight}
        name="Move by these lengths"
        edit={edit(translation(x, y))}
      >
        Move
      </EditButton>
    </div>
  );
}

/** The middle of the upright box round the parts; the block's centre where nothing is left of them. */
function middleOf(drawing: Drawing, { points, lines }: Parts): Point {
  const drawn = drawnLines(drawing);
  const ends = lines.flatMap((id) => {
    const line = drawn.get(id);
    return line === undefined ? [] : [line.from, line.to];
  });
  const places = [...points.flatMap((id) => drawing.points[id] ?? []), ...ends];
  if (places.length === 0) return centreOf(drawing);
  const { minX, minY, maxX, maxY } = boundingBox(places);
  return midpoint({ x: minX, y: minY }, { x: maxX, y: maxY });
}
