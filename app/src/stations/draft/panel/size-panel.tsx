import { resizeDrawing, sizeOf } from '@seamwright/drafting';
import { SIZE_RANGE } from '@seamwright/geometry';
import { FileInput, Shapes } from 'lucide-react';
import { lazy, useState } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { chooseFile } from '../../../keeping/choose-file.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import { LazyDialog } from '../../../ui/lazy-dialog.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { resizeBlock } from '../tracing/resize-block.ts';
import styles from './panel.module.css';

const OutlineDialog = lazy(async () => ({ default: (await import('./outline-dialog.tsx')).OutlineDialog }));

/** The block's outline: another shape, another size. */
export function SizePanel() {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const { width, height } = sizeOf(corners(drawing));
  const [keep, setKeep] = useState(true);
  const [choosing, setChoosing] = useState(false);
  const resize = (next: { readonly width: number } | { readonly height: number }) =>
    resizeBlock((before) => resizeDrawing(before, keep ? next : { width, height, ...next }));
  return (
    <section className={styles.part} aria-labelledby="draft-size">
      <h2 id="draft-size">Finished size</h2>
      <div className={styles.pair}>
        <LengthField
          label="Width"
          value={width}
          range={SIZE_RANGE}
          onChange={(inches) => resize({ width: inches })}
        />
        <LengthField
          label="Height"
          value={height}
          range={SIZE_RANGE}
          onChange={(inches) => resize({ height: inches })}
        />
      </div>
      <CheckBox label="Keep the proportions" checked={keep} onChange={(isChecked) => setKeep(isChecked)} />
      <div className={styles.row}>
        <Button icon={Shapes} onClick={() => setChoosing(true)}>
          Another outline…
        </Button>
        <Button icon={FileInput} onClick={chooseFile}>
          Bring in an SVG…
        </Button>
      </div>
      <LazyDialog of={OutlineDialog} open={choosing} onClose={() => setChoosing(false)} />
    </section>
  );
}
