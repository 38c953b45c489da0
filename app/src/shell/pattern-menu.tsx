import { ChevronDown, Download, FilePlus, FolderOpen, Library, Pencil, Ship } from 'lucide-react';
import { useState } from 'react';
import { useKeeping } from '../keeping/autosave.ts';
import { chooseFile } from '../keeping/choose-file.ts';
import { savePattern } from '../keeping/files.ts';
import { openDemo, openFresh } from '../keeping/open.ts';
import { renamePattern } from '../store/blocks.ts';
import { useWork } from '../store/work.ts';
import { Action, ActionList } from '../ui/action-list.tsx';
import { NameDialog } from '../ui/name-dialog.tsx';
import { Popover } from '../ui/popover.tsx';
import { keyName } from '../ui/shortcuts.ts';
import { KeptDialog } from './kept-dialog.tsx';
import styles from './pattern-menu.module.css';

/** The pattern's title; opens what can be done with patterns: begin, open, save, rename. */
export function PatternMenu() {
  const title = useWork((work) => work.history.present.title);
  const [naming, setNaming] = useState(false);
  const [shelf, setShelf] = useState(false);
  return (
    <>
      <Popover
        label="Pattern"
        buttonClass={styles.button}
        button={
          <>
            <h1 className={styles.words}>
              <span className={styles.program}>Seamwright</span>
              <span className="heard">, pattern: </span>
              <span className={styles.title}>{title}</span>
            </h1>
            <ChevronDown aria-hidden="true" size={16} />
          </>
        }
      >
        {(close) => (
          <PatternPanel close={close} rename={() => setNaming(true)} shelf={() => setShelf(true)} />
        )}
      </Popover>
      <NameDialog
        title="Rename pattern"
        label="Title of the pattern"
        name={title}
        open={naming}
        onClose={() => setNaming(false)}
        onName={renamePattern}
      />
      <KeptDialog open={shelf} onClose={() => setShelf(false)} />
    </>
  );
}

interface PanelProps {
  readonly close: () => void;
  readonly rename: () => void;
  readonly shelf: () => void;
}

function PatternPanel({ close, rename, shelf }: PanelProps) {
  const after = (act: () => void) => () => {
    close();
    act();
  };
  return (
    <>
      <ActionList label="This pattern">
        <Action icon={Pencil} onClick={after(rename)}>
          Rename the pattern…
        </Action>
        <Action icon={Download} keys={keyName('Mod+s')} onClick={after(savePattern)}>
          Save a pattern file
        </Action>
      </ActionList>
      <ActionList label="Other patterns">
        <Action icon={FilePlus} onClick={after(() => void openFresh())}>
          New pattern
        </Action>
        <Action icon={FolderOpen} keys={keyName('Mod+o')} onClick={after(chooseFile)}>
          Open a pattern file or an SVG drawing…
        </Action>
        <Action icon={Library} onClick={after(shelf)}>
          Patterns kept in this browser…
        </Action>
        <Action icon={Ship} onClick={after(() => void openDemo())}>
          Open the demo pattern
        </Action>
      </ActionList>
      <KeptWord />
    </>
  );
}

function KeptWord() {
  const state = useKeeping((keeping) => keeping.state);
  const words = {
    nothing: 'What you draw is kept in this browser.',
    waiting: 'Being kept in this browser…',
    kept: 'Kept in this browser. A pattern file keeps it anywhere else.',
    failed: 'Not kept in this browser: save a pattern file before you leave.',
  };
  return <p className={styles.kept}>{words[state]}</p>;
}
