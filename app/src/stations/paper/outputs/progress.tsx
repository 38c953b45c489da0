import { type ReactNode, useEffect, useId, useState } from 'react';
import { currentBlock, useWork } from '../../../store/work.ts';
import { stopLayingOut, useLaying } from '../../../study/lay-out.ts';
import { Button } from '../../../ui/button.tsx';
import { handOn } from '../../../ui/hand-on.ts';
import styles from './outputs.module.css';
import { cancelOutput, useOutput } from './under-way.ts';

/** The id of what has the keyboard next where this was cancelled, or is over: there is one such thing at a time. */
export const NEXT = 'sheets-next';
export const handOnToNext = handOn(`#${NEXT}`);

/** Milliseconds: what is done sooner needs no word. */
const SOON = 500;

/** How far what is being made has come, and a way to stop it. */
export function MakingProgress() {
  const underWay = useOutput((output) => output.underWay);
  if (underWay === null) return null;
  const { what, done, of } = underWay;
  return (
    <Progress done={done} of={of} onCancel={cancelOutput}>
      Making the {what}…
    </Progress>
  );
}

/** How far the sheets are laid out, where it takes long. It stays where others are asked for meanwhile: nobody misses “Cancel”. */
export function LayingProgress() {
  const laying = useLaying((state) => state.laying);
  const blockId = useWork((work) => currentBlock(work).id);
  // What is laid out of another block is let go as soon as this one has been studied.
  if (laying === null || laying.blockId !== blockId) return null;
  const { done, of, what } = laying.progress ?? { done: 0, of: 0, what: 'drawing' };
  return (
    <Progress done={done} of={of} onCancel={stopLayingOut}>
      {LAYING[what]}
    </Progress>
  );
}

const LAYING = {
  drawing: 'Drawing the foundations…',
  packing: 'Placing the foundations…',
  'saving sheets': 'Looking for a way to save sheets…',
  writing: 'Writing the sheets…',
} as const;

interface ProgressProps {
  readonly done: number;
  /** 0 while it is not known. */
  readonly of: number;
  readonly onCancel: () => void;
  readonly children: ReactNode;
}

function Progress({ done, of, onCancel, children }: ProgressProps) {
  const words = useId();
  const [long, setLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), SOON);
    return () => clearTimeout(timer);
  }, []);
  if (!long) return null;
  return (
    <div className={styles.progress}>
      <p id={words} role="status">
        {children}
      </p>
      <progress aria-labelledby={words} {...(of > 0 && { value: done, max: of })} />
      <Button ref={handOnToNext} onClick={onCancel}>
        Cancel
      </Button>
    </div>
  );
}
