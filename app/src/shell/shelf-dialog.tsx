import type { Drawing } from '@seamwright/arrangement';
import { type StartingPoint, startingPoints } from '@seamwright/drafting';
import { useState } from 'react';
import { addDrawing } from '../store/blocks.ts';
import { announce } from '../store/notices.ts';
import { goTo } from '../store/places.ts';
import { Button } from '../ui/button.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { Field } from '../ui/field.tsx';
import { PictureChoice } from '../ui/picture-choice.tsx';
import { counted } from '../ui/plural.ts';
import { BlockThumbnail } from './block-thumbnail.tsx';
import { ShelfDetails } from './shelf-details.tsx';
import styles from './shelf-dialog.module.css';

interface ShelfDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Traditional blocks to start from: their pictures and names, and the one that is looked at with its measures. */
export function ShelfDialog({ open, onClose }: ShelfDialogProps) {
  return (
    <Dialog title="Starting points" wide open={open} onClose={onClose}>
      <Choosing onClose={onClose} />
    </Dialog>
  );
}

function Choosing({ onClose }: { readonly onClose: () => void }) {
  const [looked, setLooked] = useState('');
  const [chosen, setChosen] = useState<StartingPoint>(startingPoints[0]!);
  const found = startingPoints.filter((start) => answers(start, looked));
  // What is not among those found is not ready to be taken; it is looked at again once it is.
  const start = found.includes(chosen) ? chosen : found[0];
  const take = ({ name }: StartingPoint, drawing: Drawing) => {
    onClose();
    goTo('draft');
    addDrawing(`Start from ${name}`, name, drawing);
    announce(`${name} is a block of the pattern`);
    // What opened the dialog may be gone: once it is closed, the work has the focus.
    setTimeout(() => document.getElementById('station')?.focus());
  };
  return (
    <div className={styles.shelf}>
      <div className={styles.choice}>
        <Field label="Look for">
          {(control) => (
            <input
              {...control}
              type="search"
              value={looked}
              autoComplete="off"
              onChange={(event) => setLooked(event.target.value)}
            />
          )}
        </Field>
        <p className="heard" role="status">
          {looked.trim() === '' ? '' : `${counted(found.length, 'starting point')} found`}
        </p>
        {start === undefined ? (
          <div className={styles.none}>
            <p>No starting point is called, or described as, “{looked.trim()}”.</p>
            <Button onClick={() => setLooked('')}>Show them all</Button>
          </div>
        ) : (
          <PictureChoice
            label="Starting point"
            options={found}
            value={start}
            onChange={setChosen}
            picture={(one) => <Picture start={one} />}
            className={styles.pictures}
          />
        )}
      </div>
      {start !== undefined && (
        <ShelfDetails key={start.id} start={start} take={(drawing) => take(start, drawing)} />
      )}
    </div>
  );
}

/** Whether every word that is looked for stands in its name or in what is said of it. */
function answers({ name, about }: StartingPoint, looked: string): boolean {
  const text = `${name} ${about}`.toLowerCase();
  return looked
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** Built when it is first shown, and once. */
const built = new Map<string, Drawing>();

function Picture({ start }: { readonly start: StartingPoint }) {
  let drawing = built.get(start.id);
  if (drawing === undefined) {
    const made = start.build();
    if (!made.ok) return null;
    drawing = made.value;
    built.set(start.id, drawing);
  }
  return <BlockThumbnail drawing={drawing} size={72} />;
}
