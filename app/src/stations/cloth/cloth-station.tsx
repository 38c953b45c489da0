import { Palette } from 'lucide-react';
import { useState } from 'react';
import { useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { FabricsDialog } from '../draft/views/fabrics-dialog.tsx';
import { ClothCanvas } from './cloth-canvas.tsx';
import styles from './cloth-station.module.css';
import { FabricsAtHand } from './fabrics-at-hand.tsx';
import { PaintedPatches } from './painted-patches.tsx';

const asItIs = (colour: string): string => colour;

/** Where patches get their fabrics. */
export default function ClothStation() {
  const study = useWork((work) => work.study);
  const [changing, setChanging] = useState(false);
  return (
    <div className={styles.station}>
      <div className={styles.canvas}>
        <ClothCanvas shade={asItIs} />
      </div>
      <section className={styles.panel} aria-label="Fabrics and patches">
        <div className={styles.part}>
          <FabricsAtHand />
          <Button icon={Palette} onClick={() => setChanging(true)}>
            Change the fabrics…
          </Button>
          <FabricsDialog open={changing} onClose={() => setChanging(false)} />
        </div>
        {study !== null && (
          <div className={styles.part}>
            <PaintedPatches study={study} />
          </div>
        )}
      </section>
    </div>
  );
}
