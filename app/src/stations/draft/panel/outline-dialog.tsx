import { replaceOutline, sizeOf, WEDGES } from '@seamwright/drafting';
import { ok, sentence } from '@seamwright/geometry';
import { type MouseEvent, useState } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { BlockThumbnail } from '../../../shell/block-thumbnail.tsx';
import { sizeWords } from '../../../shell/size-words.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { PictureChoice } from '../../../ui/picture-choice.tsx';
import { takeUp } from '../hand.ts';
import { goToWrongField } from './edit-button.tsx';
import { make } from './make.ts';
import styles from './outline-dialog.module.css';
import {
  type Asked,
  OUTLINE_SHAPES,
  type OutlineShape,
  rangeOf,
  type ShapeSizes,
  sizesFor,
} from './outline-shapes.ts';

interface OutlineDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Chooses the block's outline; what was drawn stays. */
export function OutlineDialog({ open, onClose }: OutlineDialogProps) {
  return (
    <Dialog title="Outline of the block" open={open} onClose={onClose}>
      <OutlineChoice onClose={onClose} />
    </Dialog>
  );
}

function OutlineChoice({ onClose }: { readonly onClose: () => void }) {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const unit = useWork((work) => work.history.present.unit);
  const start = sizeOf(corners(drawing));
  const [shape, setShape] = useState<OutlineShape>(OUTLINE_SHAPES[0]!);
  const [sizes, setSizes] = useState(() => sizesFor(start.width, start.height));
  const made = shape.make(sizes);

  const use = (event: MouseEvent<HTMLElement>) => {
    if (!made.ok || goToWrongField(event.currentTarget)) return;
    make(`Outline: ${shape.name.toLowerCase()}`, (before) =>
      before.splits.length === 0 ? ok(made.value) : replaceOutline(before, corners(made.value)),
    );
    onClose();
  };
  const drawIt = () => {
    takeUp('outline');
    onClose();
  };
  return (
    <div className={styles.dialog} data-fields>
      <PictureChoice
        label="Shape"
        options={OUTLINE_SHAPES}
        value={shape}
        onChange={setShape}
        picture={(one) => <Picture shape={one} />}
      />
      <div className={styles.sizes}>
        {shape.asks.map((asked) => (
          <SizeField
            key={`${shape.name} ${asked.size}`}
            asked={asked}
            sizes={sizes}
            onChange={(value) => setSizes({ ...sizes, [asked.size]: value })}
          />
        ))}
      </div>
      <p className={styles.result} role="status">
        {made.ok ? `Finished size ${sizeWords(made.value, unit)}.` : sentence(made.problem)}
        {drawing.splits.length > 0 && ' The lines that you have drawn stay where they are.'}
      </p>
      <div className={styles.actions}>
        <Button onClick={drawIt}>Draw it corner by corner</Button>
        <Button look="main" onClick={use} disabled={!made.ok}>
          Use this outline
        </Button>
      </div>
    </div>
  );
}

interface SizeFieldProps {
  readonly asked: Asked;
  readonly sizes: ShapeSizes;
  readonly onChange: (value: number) => void;
}

function SizeField({ asked: { size, label, hint }, sizes, onChange }: SizeFieldProps) {
  const about = { label, ...(hint !== undefined && { hint }), value: sizes[size], onChange };
  return size === 'count' ? (
    <CountField {...about} {...WEDGES} />
  ) : (
    <LengthField {...about} range={rangeOf(size)} />
  );
}

/** Inches, for the pictures: wide shapes and high ones are told apart. */
const PICTURED = { ...sizesFor(4, 3), side: 4, height: 3, radius: 4, inner: 1 };

function Picture({ shape }: { readonly shape: OutlineShape }) {
  const made = shape.make(PICTURED);
  return made.ok ? <BlockThumbnail drawing={made.value} /> : null;
}
