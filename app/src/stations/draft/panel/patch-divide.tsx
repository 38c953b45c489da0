import { addRepeated, divideInBands, divideInFan, MOST_PARTS } from '@seamwright/drafting';
import { distance, edgesOf, midpoint, type Point, type Polygon, type Segment } from '@seamwright/geometry';
import { Rows3, Sun } from 'lucide-react';
import { useState } from 'react';
import { useWork } from '../../../store/work.ts';
import { CountField } from '../../../ui/count-field.tsx';
import { Field } from '../../../ui/field.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { lengthWords, placeWords } from '../../../ui/measures.ts';
import { usePointing } from '../../../ui/use-pointing.ts';
import { currentSymmetry } from '../hand.ts';
import { beforehand, EditButton } from './edit-button.tsx';
import type { MakeEdit } from './make.ts';
import styles from './panel.module.css';
import { towards } from './towards.ts';

interface PatchDivideProps {
  /** Clockwise on the screen, inches. */
  readonly polygon: Polygon;
  readonly heart: Point;
  /** Where places are measured from. */
  readonly origin: Point;
  /** Carries out an edit if the patch is still what it was. */
  readonly guarded: (edit: MakeEdit) => MakeEdit;
}

/** Divides a patch into bands, or by a fan of rays. */
export function PatchDivide(props: PatchDivideProps) {
  return (
    <Foldable id="patch divide" title="Divide it" more="">
      <Bands {...props} />
      <Fan {...props} />
    </Foldable>
  );
}

const repeated =
  (edit: MakeEdit): MakeEdit =>
  (before) =>
    addRepeated(before, edit, currentSymmetry());

function Bands({ polygon, guarded }: PatchDivideProps) {
  const unit = useWork((work) => work.history.present.unit);
  const [chosen, setSide] = useState(0);
  const [count, setCount] = useState(3);
  const sides = edgesOf(polygon);
  const side = sides[chosen] === undefined ? 0 : chosen;
  const edit = guarded(repeated((before) => divideInBands(before, polygon, count, side)));
  // What the canvas shows while one chooses: the bands that would come.
  const pointing = usePointing(() => beforehand(edit));
  return (
    <div className={styles.fields} data-fields>
      <CountField label="Equal bands" value={count} least={2} most={MOST_PARTS} onChange={setCount} />
      <Field label="Along">
        {(control) => (
          <select
            {...control}
            {...pointing}
            value={side}
            onChange={(event) => setSide(Number(event.target.value))}
          >
            {sides.map((one, i) => (
              <option key={`${one.a.x} ${one.a.y}`} value={i}>
                {sideName(one)}, {lengthWords(distance(one.a, one.b), unit)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className={styles.row}>
        <EditButton step="Divide a patch in bands" icon={Rows3} edit={edit}>
          Divide into {count} bands
        </EditButton>
      </div>
    </div>
  );
}

/** The inside lies to the right hand, so a side faces the way to the left hand. */
const sideName = ({ a, b }: Segment): string => towards({ x: b.y - a.y, y: a.x - b.x });

function Fan({ polygon, heart, origin, guarded }: PatchDivideProps) {
  const unit = useWork((work) => work.history.present.unit);
  const [chosen, setFrom] = useState(0);
  const [rays, setRays] = useState(2);
  const hubs = [
    ...polygon.map((at) => ({ at, name: `corner at ${placeWords(at, origin, unit)}` })),
    ...edgesOf(polygon).map((side) => ({
      at: midpoint(side.a, side.b),
      name: `middle of ${sideName(side)}`,
    })),
    { at: heart, name: 'the middle, rays all round' },
  ];
  const from = hubs[chosen] === undefined ? 0 : chosen;
  const edit = guarded(repeated((before) => divideInFan(before, polygon, hubs[from]!.at, rays)));
  const pointing = usePointing(() => beforehand(edit));
  return (
    <div className={styles.fields} data-fields>
      <CountField label="Rays of a fan" value={rays} least={1} most={MOST_PARTS} onChange={setRays} />
      <Field label="From">
        {(control) => (
          <select
            {...control}
            {...pointing}
            value={from}
            onChange={(event) => setFrom(Number(event.target.value))}
          >
            {hubs.map(({ name }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: corners, then sides, then the heart
              <option key={i} value={i}>
                {name}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className={styles.row}>
        <EditButton step="Divide a patch by a fan" icon={Sun} edit={edit}>
          Draw {rays === 1 ? 'the ray' : `${rays} rays`}
        </EditButton>
      </div>
    </div>
  );
}
