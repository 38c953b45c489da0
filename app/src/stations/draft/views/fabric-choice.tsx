import { fabricIn } from '@seamwright/pattern';
import { Palette } from 'lucide-react';
import { useId, useState } from 'react';
import { addPlainFabrics, fabricsOf, paintPatches } from '../../../store/fabrics.ts';
import { currentBlock, currentColourway, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import styles from './fabrics.module.css';
import { FabricsDialog } from './fabrics-dialog.tsx';

/** What the patches in hand are cut from. */
export function FabricChoice() {
  const chosen = useWork((work) => work.selection.patches);
  const records = useWork((work) => currentBlock(work).patches);
  const fabrics = useWork(fabricsOf);
  const name = useId();
  const [changing, setChanging] = useState(false);
  const colourway = useWork(currentColourway);
  const worn = new Set(
    records.filter(({ id }) => chosen.includes(id)).map((record) => fabricIn(record, colourway) ?? null),
  );
  const [only] = worn;
  const isOnly = (id: string | null) => worn.size === 1 && only === id;
  return (
    <div className={styles.choice}>
      <fieldset className={styles.swatches}>
        <legend>{chosen.length > 1 ? `Fabric of these ${chosen.length} patches` : 'Fabric'}</legend>
        {fabrics.map((fabric) => (
          <label key={fabric.id} className={styles.option}>
            <input
              type="radio"
              className="pressed-through"
              name={name}
              checked={isOnly(fabric.id)}
              onChange={() => paintPatches(chosen, fabric)}
            />
            <span className={styles.swatch} style={{ background: fabric.colour }} />
            <span className={styles.name}>{fabric.name}</span>
          </label>
        ))}
        <label className={styles.option}>
          <input
            type="radio"
            className="pressed-through"
            name={name}
            checked={isOnly(null)}
            onChange={() => paintPatches(chosen, null)}
          />
          <span className={`${styles.swatch} ${styles.bare}`} />
          <span className={styles.name}>None yet</span>
        </label>
      </fieldset>
      {worn.size > 1 && <p className={styles.hint}>They are cut from different fabrics.</p>}
      <div className={styles.row}>
        <Button icon={Palette} onClick={() => setChanging(true)}>
          Change the fabrics…
        </Button>
        {fabrics.length === 0 && <Button onClick={addPlainFabrics}>Take some plain ones</Button>}
      </div>
      <FabricsDialog open={changing} onClose={() => setChanging(false)} />
    </div>
  );
}
