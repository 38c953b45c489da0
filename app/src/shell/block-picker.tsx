import { ArrowDown, ArrowUp, Blocks, ChevronDown, Copy, FileInput, Pencil, Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { chooseFile } from '../keeping/choose-file.ts';
import { deleteBlock, duplicateBlock, moveBlock, newBlock, renameBlock } from '../store/blocks.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { Action, ActionList } from '../ui/action-list.tsx';
import { NameDialog } from '../ui/name-dialog.tsx';
import { Popover } from '../ui/popover.tsx';
import { BlockList } from './block-list.tsx';
import styles from './block-picker.module.css';
import { openShelf } from './shelf.tsx';
import { sizeWords } from './size-words.ts';

/** The open block's name and size; opens the list of the pattern's blocks and what can be done with them. */
export function BlockPicker() {
  const block = useWork(currentBlock);
  const unit = useWork((work) => work.history.present.unit);
  const [naming, setNaming] = useState(false);
  return (
    <div className={styles.place}>
      <Popover
        label="Blocks of the pattern"
        buttonClass={styles.button}
        button={
          <>
            <span className="heard">Block: </span>
            <span className={styles.name} title={block.name}>
              {block.name}
            </span>
            <span className={styles.size}>{sizeWords(block.drawing, unit)}</span>
            <ChevronDown aria-hidden="true" size={16} />
          </>
        }
      >
        {(close) => <BlockPanel close={close} rename={() => setNaming(true)} />}
      </Popover>
      <NameDialog
        title="Rename block"
        label="Name of the block"
        name={block.name}
        open={naming}
        onClose={() => setNaming(false)}
        onName={renameBlock}
      />
    </div>
  );
}

function BlockPanel({ close, rename }: { readonly close: () => void; readonly rename: () => void }) {
  const blocks = useWork((work) => work.history.present.blocks);
  const open = useWork(currentBlock);
  const at = blocks.indexOf(open);
  const after = (act: () => void) => () => {
    close();
    act();
  };
  return (
    <>
      <BlockList close={close} />
      <ActionList label="What to do with blocks">
        <Action icon={Plus} onClick={after(newBlock)}>
          New block
        </Action>
        <Action icon={Blocks} onClick={after(openShelf)}>
          Start from a traditional block…
        </Action>
        <Action icon={FileInput} onClick={after(chooseFile)}>
          Bring in an SVG drawing…
        </Action>
        <Action icon={Pencil} onClick={after(rename)}>
          Rename “{open.name}”…
        </Action>
        <Action icon={Copy} onClick={after(duplicateBlock)}>
          Copy this block
        </Action>
        {blocks.length > 1 && (
          <>
            <Action icon={ArrowUp} disabled={at === 0} onClick={() => moveBlock(open.id, at - 1)}>
              Move it earlier
            </Action>
            <Action
              icon={ArrowDown}
              disabled={at === blocks.length - 1}
              onClick={() => moveBlock(open.id, at + 1)}
            >
              Move it later
            </Action>
            <Action icon={Trash2} onClick={after(deleteBlock)}>
              Delete this block
            </Action>
          </>
        )}
      </ActionList>
    </>
  );
}
