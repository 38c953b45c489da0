import type { Block } from '@seamwright/pattern';
import { GripVertical } from 'lucide-react';
import { type KeyboardEvent, useRef } from 'react';
import { moveBlock } from '../store/blocks.ts';
import { openBlock } from '../store/places.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { rove } from '../ui/roving.ts';
import { keyName } from '../ui/shortcuts.ts';
import { useCurrentInSight } from '../ui/use-current-in-sight.ts';
import styles from './block-list.module.css';
import { BlockThumbnail } from './block-thumbnail.tsx';
import { sizeWords } from './size-words.ts';
import { type Dragged, useRowDrag } from './use-row-drag.ts';

/** The pattern's blocks in their order: to open one, or to put it elsewhere by dragging it, or by keys. */
export function BlockList({ close }: { readonly close: () => void }) {
  const blocks = useWork((work) => work.history.present.blocks);
  const open = useWork(currentBlock);
  const list = useRef<HTMLUListElement>(null);
  const { dragged, grip } = useRowDrag(list, moveBlock);
  useCurrentInSight(list, open.id);
  return (
    <>
      <ul
        ref={list}
        className={styles.list}
        aria-label="Blocks"
        onKeyDown={(event: KeyboardEvent<HTMLElement>) => {
          if (!event.altKey) rove(event);
        }}
      >
        {blocks.map((block, at) => (
          <li key={block.id} className={styles.row} data-drop={dropAt(dragged, block.id, at)}>
            <BlockLine
              block={block}
              at={at}
              current={block === open}
              choose={() => {
                openBlock(block.id);
                close();
              }}
            />
            {blocks.length > 1 && (
              <span className={styles.grip} {...grip(block.id, at)}>
                <GripVertical aria-hidden="true" size={18} />
              </span>
            )}
          </li>
        ))}
      </ul>
      {blocks.length > 1 && (
        <p className={styles.hint}>
          Drag by the dots to change the order{' '}
          <span className={styles.keys}>
            or press {keyName('Alt+ArrowUp')}, {keyName('Alt+ArrowDown')}
          </span>
        </p>
      )}
    </>
  );
}

/** Where a dragged row would come: above or below this one; or that this one is dragged. */
function dropAt(dragged: Dragged | null, id: string, at: number): string | undefined {
  if (dragged === null) return undefined;
  if (dragged.id === id) return 'dragged';
  if (dragged.to !== at) return undefined;
  return dragged.to < dragged.from ? 'above' : 'below';
}

interface BlockLineProps {
  readonly block: Block;
  readonly at: number;
  readonly current: boolean;
  readonly choose: () => void;
}

function BlockLine({ block, at, current, choose }: BlockLineProps) {
  const unit = useWork((work) => work.history.present.unit);
  const button = useRef<HTMLButtonElement>(null);
  const keyDown = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowUp' ? -1 : event.key === 'ArrowDown' ? 1 : 0;
    if (!event.altKey || by === 0) return;
    event.preventDefault();
    moveBlock(block.id, at + by);
    // A row that was moved in the list has lost the focus.
    setTimeout(() => button.current?.focus());
  };
  return (
    <button
      ref={button}
      type="button"
      data-stop
      data-first={current || undefined}
      tabIndex={current ? 0 : -1}
      className={styles.open}
      aria-current={current ? 'true' : undefined}
      onClick={choose}
      onKeyDown={keyDown}
    >
      <BlockThumbnail drawing={block.drawing} size={40} />
      <span className={styles.words}>
        <span className={styles.name} title={block.name}>
          {block.name}
        </span>
        <span className={styles.size}> {sizeWords(block.drawing, unit)}</span>
      </span>
    </button>
  );
}
