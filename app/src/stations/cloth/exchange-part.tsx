import { fabricsWorn } from '@seamwright/pattern';
import { ArrowLeftRight, Shuffle, SwatchBook } from 'lucide-react';
import { useState } from 'react';
import { shuffleFabrics, swapFabrics } from '../../store/colourways.ts';
import { fabricsOf } from '../../store/fabrics.ts';
import { currentColourway, pattern, useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { Field } from '../../ui/field.tsx';
import { Foldable } from '../../ui/foldable.tsx';
import styles from './cloth-station.module.css';
import { PalettesDialog } from './palettes-dialog.tsx';

/** Other fabrics, or other colours, for all patches at once. */
export function ExchangePart() {
  const [choosing, setChoosing] = useState(false);
  const work = useWork(pattern);
  const colourway = useWork(currentColourway);
  const few = fabricsWorn(work, colourway).length < 2;
  return (
    <Foldable id="exchange" title="Try other fabrics" more="">
      <div className={styles.content}>
        <Swap />
        <div className={styles.row}>
          <Button icon={Shuffle} disabled={few} onClick={shuffleFabrics}>
            Shuffle the fabrics
          </Button>
          <Button icon={SwatchBook} onClick={() => setChoosing(true)}>
            Palettes…
          </Button>
        </div>
        <PalettesDialog open={choosing} onClose={() => setChoosing(false)} />
      </div>
    </Foldable>
  );
}

function Swap() {
  const fabrics = useWork(fabricsOf);
  const [chosen, setChosen] = useState<readonly [string, string]>(['', '']);
  const has = (id: string) => fabrics.some((fabric) => fabric.id === id);
  const one = has(chosen[0]) ? chosen[0] : (fabrics[0]?.id ?? '');
  const other = has(chosen[1]) ? chosen[1] : (fabrics[1]?.id ?? '');
  if (fabrics.length < 2) return null;
  const select = (label: string, value: string, choose: (id: string) => void) => (
    <Field label={label}>
      {(control) => (
        <select {...control} value={value} onChange={(event) => choose(event.target.value)}>
          {fabrics.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
  return (
    <div className={styles.swap}>
      {select('Swap', one, (id) => setChosen([id, other]))}
      {select('with', other, (id) => setChosen([one, id]))}
      <Button icon={ArrowLeftRight} disabled={one === other} onClick={() => swapFabrics(one, other)}>
        Swap
      </Button>
    </div>
  );
}
