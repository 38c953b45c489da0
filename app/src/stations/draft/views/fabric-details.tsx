import { formatLength } from '@seamwright/geometry';
import { FABRIC_WIDTH_RANGE, type Fabric, SWATCH_WIDTH_RANGE } from '@seamwright/pattern';
import { ImagePlus } from 'lucide-react';
import { useState } from 'react';
import { useCuttingHabits } from '../../../store/cutting-habits.ts';
import { describeFabric } from '../../../store/fabric-details.ts';
import { useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Field } from '../../../ui/field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { addPhoto } from './fabric-photo.ts';
import styles from './fabrics.module.css';

const GRAINS = [
  { value: '', label: 'Each along its sew line' },
  { value: 'straight', label: 'Along the block’s upright, either way up' },
  { value: 'one way', label: 'One-way print: its top at the block’s top' },
] as const;

/** What cutting has to know of a fabric, and how it really looks. */
export function FabricDetails({ fabric }: { readonly fabric: Fabric }) {
  const { id, name, width, grain, swatch } = fabric;
  const usual = useCuttingHabits(({ usableWidth }) => usableWidth);
  const unit = useWork((work) => work.history.present.unit);
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <div className={styles.details}>
      <LengthField
        label="Usable width"
        value={width ?? usual}
        range={FABRIC_WIDTH_RANGE}
        hint="From selvedge to selvedge, without them"
        onChange={(inches) => describeFabric(`Width of ${name}`, id, { width: inches })}
      />
      {width !== undefined && (
        <Button look="quiet" onClick={() => describeFabric(`Usual width of ${name}`, id, { width: null })}>
          {`The usual width, ${formatLength(usual, unit)}`}
        </Button>
      )}
      <Field label="How its pieces lie">
        {(control) => (
          <select
            {...control}
            value={grain ?? ''}
            onChange={({ target }) =>
              describeFabric(`How ${name} lies`, id, {
                grain: GRAINS.find(({ value }) => value === target.value)?.value || null,
              })
            }
          >
            {GRAINS.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        )}
      </Field>
      {swatch !== undefined && (
        <LengthField
          label="The photo shows, across"
          value={swatch.width}
          range={SWATCH_WIDTH_RANGE}
          hint="Inches or centimetres of fabric from its left edge to its right"
          onChange={(inches) =>
            describeFabric(`Scale of the photo of ${name}`, id, { swatch: { ...swatch, width: inches } })
          }
        />
      )}
      <div className={styles.row}>
        <Button icon={ImagePlus} onClick={() => addPhoto(fabric, setProblem)}>
          {swatch === undefined ? 'A photo of it…' : 'Another photo…'}
        </Button>
        {swatch !== undefined && (
          <Button look="quiet" onClick={() => describeFabric(`No photo of ${name}`, id, { swatch: null })}>
            Take the photo away
          </Button>
        )}
      </div>
      {problem !== null && (
        <p className={styles.problem} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
