import { Blocks, FolderOpen, Ship, X } from 'lucide-react';
import { useState } from 'react';
import { chooseFile } from '../../../keeping/choose-file.ts';
import { openDemo } from '../../../keeping/open.ts';
import { openShelf } from '../../../shell/shelf.tsx';
import { useWork } from '../../../store/work.ts';
import { Button, IconButton } from '../../../ui/button.tsx';
import { useAtRest } from '../../../ui/use-at-rest.ts';
import panel from './panel.module.css';

/**
 * For someone who comes to an empty block: what to do first. Gone with the first edit.
 *
 * In the panel and not above the drawing, which would jump to another place and size under the hand when it goes.
 */
export function Welcome() {
  const empty = useAtRest(useWork((work) => work.origin === 'fresh' && work.history.past.length === 0));
  const [closed, setClosed] = useState(false);
  if (!empty || closed) return null;
  return (
    <section className={panel.part} aria-labelledby="welcome">
      <h2 id="welcome" className={panel.closable}>
        Here is an empty block
        <IconButton label="Close" icon={X} onClick={() => setClosed(true)} />
      </h2>
      <p>Draw a line from edge to edge, or</p>
      <div className={panel.choices}>
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
    </section>
  );
}
