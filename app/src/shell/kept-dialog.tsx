import { Trash2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { openKept } from '../keeping/open.ts';
import { discard, find, type KeptTitle, titles } from '../keeping/shelf.ts';
import { warn } from '../store/notices.ts';
import { useWork } from '../store/work.ts';
import { IconButton } from '../ui/button.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { counted } from '../ui/plural.ts';
import styles from './kept-dialog.module.css';

/** The patterns that the browser keeps: open one, or give one away for good. */
export function KeptDialog({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) {
  return (
    <Dialog title="Patterns kept in this browser" open={open} onClose={onClose}>
      <KeptList onClose={onClose} />
    </Dialog>
  );
}

function KeptList({ onClose }: { readonly onClose: () => void }) {
  const [kept, setKept] = useState<readonly KeptTitle[] | null>(null);
  const here = useWork((work) => work.kept);

  useEffect(() => {
    titles().then(setKept, () => setKept([]));
  }, []);

  const openIt = async (id: string) => {
    onClose();
    const work = await find(id);
    if (work === undefined) warn('That pattern is no longer kept. It may have been deleted in another tab.');
    else await openKept(work);
  };
  const forget = async (id: string) => {
    await discard(id);
    setKept((before) => before?.filter((one) => one.id !== id) ?? null);
  };

  if (kept === null) return <p>Looking…</p>;
  if (kept.length === 0) return <p>Nothing is kept yet: draw something, or open a pattern file.</p>;
  return (
    <ul className={styles.list}>
      {kept.map((one) => (
        <KeptLine
          key={one.id}
          work={one}
          here={one.id === here}
          open={() => void openIt(one.id)}
          forget={() => void forget(one.id)}
        />
      ))}
    </ul>
  );
}

interface KeptLineProps {
  readonly work: KeptTitle;
  /** It is the one that is open. */
  readonly here: boolean;
  readonly open: () => void;
  readonly forget: () => void;
}

const day = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

function KeptLine({ work, here, open, forget }: KeptLineProps) {
  const [sure, setSure] = useState(false);
  return (
    <li className={styles.line}>
      <button type="button" className={styles.open} disabled={here} onClick={open}>
        <span className={styles.title}>{work.title}</span>
        <span className={styles.facts}>
          {here ? 'open now' : day.format(work.changed)} · {counted(work.blocks, 'block')}
        </span>
      </button>
      {!here &&
        (sure ? (
          <button
            // The button that was pressed is gone: the focus goes on to the one in its place.
            ref={(button) => button?.focus()}
            type="button"
            className={styles.sure}
            onClick={forget}
            onBlur={() => setSure(false)}
          >
            Delete for good
          </button>
        ) : (
          <IconButton label={`Delete “${work.title}”`} icon={Trash2} onClick={() => setSure(true)} />
        ))}
    </li>
  );
}
