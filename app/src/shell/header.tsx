import { CircleHelp, Redo2, Undo2 } from 'lucide-react';
import { redo, showIn, undo } from '../store/changes.ts';
import { useWork } from '../store/work.ts';
import { IconButton } from '../ui/button.tsx';
import { Choice } from '../ui/choice.tsx';
import { keyName } from '../ui/shortcuts.ts';
import styles from './header.module.css';
import { HistoryList } from './history-list.tsx';
import { PatternMenu } from './pattern-menu.tsx';
import { StationsPath } from './stations-path.tsx';

const UNITS = [
  { value: 'in', label: 'in', name: 'Inches' },
  { value: 'cm', label: 'cm', name: 'Centimetres' },
] as const;

/** The program's edge: the pattern, the path of the work, undo and redo, the unit, help. */
export function Header({ onHelp }: { readonly onHelp: () => void }) {
  return (
    <header className={styles.header}>
      <div className={styles.pattern}>
        <PatternMenu />
      </div>
      <div className={styles.path}>
        <StationsPath />
      </div>
      <div className={styles.tools}>
        <UndoButtons />
        <HistoryList />
        <UnitSwitch />
        <IconButton label="Keys and help" icon={CircleHelp} keys="?" onClick={onHelp} />
      </div>
    </header>
  );
}

function UndoButtons() {
  const last = useWork((work) => work.history.past.at(-1)?.label);
  const next = useWork((work) => work.history.future[0]?.label);
  return (
    <>
      <IconButton
        label={last === undefined ? 'Undo' : `Undo: ${last}`}
        icon={Undo2}
        keys={keyName('Mod+z')}
        disabled={last === undefined}
        onClick={undo}
      />
      <IconButton
        label={next === undefined ? 'Redo' : `Redo: ${next}`}
        icon={Redo2}
        keys={keyName('Mod+Shift+z')}
        disabled={next === undefined}
        onClick={redo}
      />
    </>
  );
}

function UnitSwitch() {
  const unit = useWork((work) => work.history.present.unit);
  return <Choice label="Lengths in" bare value={unit} options={UNITS} onChange={showIn} />;
}
