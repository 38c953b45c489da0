import { formatLength, type LengthRange, SIZE_RANGE } from '@seamwright/geometry';
import type { FinishedSize } from '@seamwright/pages';
import { Minus, Plus } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { blockBounds } from '../../../canvas/bounds.ts';
import { askForSizes, changeSize, MOST_BLOCKS } from '../../../store/printing.ts';
import { currentDrawing, currentPrinting, useWork } from '../../../store/work.ts';
import { Button, IconButton } from '../../../ui/button.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import { listed } from '../../../ui/plural.ts';
import { roughLength } from '../../../ui/rough-length.ts';
import styles from './panel.module.css';
import { onlyAsDrawn, takeOff } from './take-off.ts';
import { nextSize, USUAL_WIDTHS, withUsualSizes } from './usual-sizes.ts';

/** The finished sizes that are printed in one go, and how many blocks are sewn of each. */
export function Sizes() {
  const drawing = useWork(currentDrawing);
  const unit = useWork((work) => work.history.present.unit);
  const sizes = useWork((work) => currentPrinting(work).sizes);
  const { minX, minY, maxX, maxY } = blockBounds(drawing);
  const block = { width: maxX - minX, height: maxY - minY };
  const [first] = sizes;
  const asDrawn = sizes.length === 1 && first!.scale === 1;
  const usual = withUsualSizes(sizes, block, unit);
  const list = useNewestInHand(sizes.length);
  return (
    <section className={styles.part} aria-label="Finished sizes">
      <div ref={list} className={styles.sizes}>
        {sizes.map((size, index) => (
          <SizeRow
            // biome-ignore lint/suspicious/noArrayIndexKey: a size is known by its place
            key={index}
            size={size}
            index={index}
            of={sizes.length}
            block={block}
          />
        ))}
      </div>
      <div className={styles.buttons}>
        <Button icon={Plus} onClick={() => askForSizes([...sizes, nextSize(sizes, block, unit)])}>
          Add a size
        </Button>
        {usual.length > sizes.length && (
          <Button onClick={() => askForSizes(usual)}>
            {`Add ${listed(USUAL_WIDTHS[unit].map((width) => formatLength(width, unit).replace(` ${unit}`, '')))} ${unit}`}
          </Button>
        )}
        {!asDrawn && <Button onClick={onlyAsDrawn}>Only as drawn</Button>}
      </div>
    </section>
  );
}

/** Puts the keyboard in the width of a size that was just added, and in the last where what had it has gone with the change. */
function useNewestInHand(count: number) {
  const list = useRef<HTMLDivElement>(null);
  const before = useRef(count);
  useEffect(() => {
    if (
      count === before.current + 1 ||
      (count !== before.current && document.activeElement === document.body)
    )
      list.current?.querySelector<HTMLElement>(':scope > :last-child input')?.focus();
    before.current = count;
  }, [count]);
  return list;
}

interface SizeRowProps {
  readonly size: FinishedSize;
  readonly index: number;
  readonly of: number;
  /** As drawn, inches. */
  readonly block: { readonly width: number; readonly height: number };
}

function SizeRow({ size, index, of, block }: SizeRowProps) {
  const unit = useWork((work) => work.history.present.unit);
  const { scale, copies, mirrored = 0 } = size;
  const percent = Math.round(scale * 1000) / 10;
  const high = `${roughLength(block.height * scale, unit)} high`;
  const count = (change: Partial<Pick<FinishedSize, 'copies' | 'mirrored'>>): string | undefined => {
    const next = { copies, mirrored, ...change };
    if (next.copies + next.mirrored === 0) return 'Print for one block at least, or take the size off.';
    changeSize(index, next);
    return undefined;
  };
  const name = of === 1 ? 'Size' : `Size ${index + 1}`;
  return (
    <fieldset aria-label={name} className={styles.size}>
      <LengthField
        label="Finished width"
        value={block.width * scale}
        range={widthRange(block)}
        hint={scale === 1 ? `${high}, as drawn` : `${high}, ${percent} % of the drawing`}
        onChange={(inches) => changeSize(index, { scale: inches / block.width })}
      />
      <CountField
        label="Blocks"
        value={copies}
        least={0}
        most={MOST_BLOCKS}
        onChange={(typed) => count({ copies: typed })}
      />
      <CountField
        label="Mirrored"
        value={mirrored}
        least={0}
        most={MOST_BLOCKS}
        onChange={(typed) => count({ mirrored: typed })}
      />
      {of > 1 && (
        <IconButton
          label={`Take size ${index + 1} off`}
          icon={Minus}
          onClick={() => takeOff(index, roughLength(block.width * scale, unit))}
        />
      )}
    </fieldset>
  );
}

/** The widths at which both sides are within what a block may measure. */
function widthRange({ width, height }: SizeRowProps['block']): LengthRange {
  const least = SIZE_RANGE.least * Math.max(1, width / height);
  const most = SIZE_RANGE.most * Math.min(1, width / height);
  return { least, most };
}
