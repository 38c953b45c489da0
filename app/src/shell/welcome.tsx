import { Blocks, FolderOpen, Ship, X } from 'lucide-react';
import { useState } from 'react';
import { chooseFile } from '../keeping/choose-file.ts';
import { openDemo } from '../keeping/open.ts';
import { useWork } from '../store/work.ts';
import { Button, IconButton } from '../ui/button.tsx';
import { useAtRest } from '../ui/use-at-rest.ts';
import { openShelf } from './shelf.tsx';
import styles from './welcome.module.css';

/** For someone who comes to an empty block: what to do first. Gone with the first edit. */
export function Welcome() {
  const empty = useAtRest(useWork((work) => work.origin === 'fresh' && work.history.past.length === 0));
  const [closed, setClosed] = useState(false);
  if (!empty || closed) return null;
  return (
    <aside className={styles.welcome} aria-label="To begin with">
      <p>Here is an empty block: draw a line from edge to edge. Or</p>
      <div className={styles.choices}>
        <Button icon={Blocks} onClick={openShelf}>
          Start from a traditional block
        </Button>
        <Button icon={Ship} onClick={() => void openDemo()}>
          Look at the demo pattern
        </Button>
        <Button icon={FolderOpen} onClick={chooseFile}>
          Open a file
        </Button>
      </div>
      <IconButton label="Close" icon={X} onClick={() => setClosed(true)} />
    </aside>
  );
}
