import type { Drawing } from '@seamwright/arrangement';
import {
  diamond,
  equilateralTriangle,
  rectangle,
  regularHexagon,
  replaceOutline,
  rightTriangle,
  sizeOf,
  square,
} from '@seamwright/drafting';
import { ok, type Result, SIZE_RANGE, sentence } from '@seamwright/geometry';
import { useId, useState } from 'react';
import { corners } from '../../../canvas/bounds.ts';
import { BlockThumbnail } from '../../../shell/block-thumbnail.tsx';
import { sizeWords } from '../../../shell/size-words.ts';
import { change } from '../../../store/changes.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { takeUp } from '../hand.ts';
import styles from './outline-dialog.module.css';

interface Shape {
  readonly name: string;
  /** What is asked for: one side, or width and height. */
  readonly asks: 'side' | 'both';
  readonly make: (width: number, height: number) => Result<Drawing>;
}

const SHAPES: readonly Shape[] = [
  { name: 'Square', asks: 'side', make: (side) => square(side) },
  { name: 'Rectangle', asks: 'both', make: rectangle },
  { name: 'Hexagon', asks: 'side', make: (side) => regularHexagon(side) },
  { name: 'Triangle, equal sides', asks: 'side', make: (side) => equilateralTriangle(side) },
  { name: 'Triangle, right angle', asks: 'both', make: rightTriangle },
  { name: 'Diamond, 60°', asks: 'side', make: (side) => diamond(side, 60) },
  { name: 'Diamond, 45°', asks: 'side', make: (side) => diamond(side, 45) },
];

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
  const name = useId();
  const [shape, setShape] = useState<Shape>(SHAPES[0]!);
  const [width, setWidth] = useState(start.width);
  const [height, setHeight] = useState(start.height);
  const made = shape.make(width, height);

  const use = () => {
    if (!made.ok) return;
    change(`Outline: ${shape.name.toLowerCase()}`, (before) =>
      before.splits.length === 0 ? ok(made.value) : replaceOutline(before, corners(made.value)),
    );
    onClose();
  };
  const drawIt = () => {
    takeUp('outline');
    onClose();
  };
  return (
    <div className={styles.dialog}>
      <fieldset className={styles.shapes}>
        <legend className="heard">Shape</legend>
        {SHAPES.map((one) => (
          <label key={one.name} className={styles.shape}>
            <input type="radio" name={name} checked={one === shape} onChange={() => setShape(one)} />
            <Picture shape={one} />
            <span>{one.name}</span>
          </label>
        ))}
      </fieldset>
      <div className={styles.sizes}>
        <LengthField
          label={shape.asks === 'side' ? 'Side' : 'Width'}
          value={width}
          range={SIZE_RANGE}
          onChange={setWidth}
        />
        {shape.asks === 'both' && (
          <LengthField label="Height" value={height} range={SIZE_RANGE} onChange={setHeight} />
        )}
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

function Picture({ shape }: { readonly shape: Shape }) {
  const made = shape.make(4, 3);
  return made.ok ? <BlockThumbnail drawing={made.value} /> : null;
}
