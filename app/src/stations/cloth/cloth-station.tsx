import { Palette } from 'lucide-react';
import { useEffect, useState } from 'react';
import { followSteps } from '../../store/colourway-of-step.ts';
import { useWork } from '../../store/work.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { FabricsDialog } from '../draft/views/fabrics-dialog.tsx';
import frame from '../frame.module.css';
import { ClothCanvas } from './cloth-canvas.tsx';
import styles from './cloth-station.module.css';
import { ColourwaysPart } from './colourways-part.tsx';
import { ContrastPart } from './contrast-part.tsx';
import { CuttingPanel } from './cutting/cutting-panel.tsx';
import { ExchangePart } from './exchange-part.tsx';
import { FabricsAtHand } from './fabrics-at-hand.tsx';
import { PaintedPatches } from './painted-patches.tsx';
import { useShade } from './shades.ts';

type Side = 'fabrics' | 'cutting';

const SIDES = [
  { value: 'fabrics', label: 'Choose fabrics' },
  { value: 'cutting', label: 'Cut and buy' },
] as const satisfies readonly { value: Side; label: string }[];

/** Where patches get their fabrics, and the fabrics their cutting chart. */
export default function ClothStation() {
  const [side, setSide] = useState<Side>('fabrics');
  const shade = useShade();
  useEffect(followSteps, []);
  return (
    <div className={`${frame.station} ${frame.narrow} ${styles.station}`}>
      <div className={frame.canvas}>
        <ClothCanvas shade={shade} paints={side === 'fabrics'} />
      </div>
      <section className={`${frame.panel} ${frame.parts}`} aria-label="Fabrics and cutting">
        <div className={styles.part}>
          <Choice
            label="What is done with the fabrics"
            bare
            value={side}
            options={SIDES}
            onChange={setSide}
          />
        </div>
        {side === 'fabrics' ? <FabricsPanel /> : <CuttingPanel />}
      </section>
    </div>
  );
}

function FabricsPanel() {
  const study = useWork((work) => work.study);
  const shade = useShade();
  const [changing, setChanging] = useState(false);
  return (
    <>
      <div className={styles.part}>
        <FabricsAtHand />
        <Button icon={Palette} onClick={() => setChanging(true)}>
          Change the fabrics…
        </Button>
        <FabricsDialog open={changing} onClose={() => setChanging(false)} />
      </div>
      <div className={styles.part}>
        <ColourwaysPart study={study} shade={shade} />
      </div>
      {study !== null && <ContrastPart study={study} />}
      <ExchangePart />
      {study !== null && (
        <div className={styles.part}>
          <PaintedPatches study={study} />
        </div>
      )}
    </>
  );
}
