import { setting, useSettings } from '../store/settings.ts';
import { Dialog } from '../ui/dialog.tsx';
import { keyName, useShortcutList } from '../ui/shortcuts.ts';
import styles from './help-dialog.module.css';

/** What the canvas does by itself, on every station. */
const CANVAS: readonly (readonly [keys: string, does: string])[] = [
  ['+', 'Zoom in'],
  ['-', 'Zoom out'],
  ['0', 'Show the whole block'],
  ['← → ↑ ↓', 'Move the view, where no crosshair is'],
  ['Wheel', 'Zoom about the pointer'],
  ['Two fingers', 'Zoom and move the view'],
  ['Space, drag', 'Move the view; the middle button does too'],
];

/** Everything that keys do here and now. */
export function HelpDialog({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) {
  return (
    <Dialog title="Keys" open={open} onClose={onClose}>
      <HelpContent />
    </Dialog>
  );
}

function HelpContent() {
  const registered = useShortcutList((list) => list.registered);
  const singleKeys = useSettings((settings) => settings.singleKeys);
  const groups = [...new Set(registered.map((one) => one.group))];
  return (
    <div className={styles.help}>
      {groups.map((group) => (
        <Keys
          key={group}
          heading={group}
          keys={registered
            .filter((one) => one.group === group)
            .flatMap((one) => one.shortcuts.map(({ keys, does }) => [keyName(keys), does] as const))}
        />
      ))}
      <Keys heading="On a canvas that has the focus" keys={CANVAS} />
      <label className={styles.option}>
        <input
          type="checkbox"
          checked={singleKeys}
          onChange={(event) => setting({ singleKeys: event.target.checked })}
        />
        Letters and signs alone work as keys
      </label>
      <p className={styles.hint}>
        Switch it off if you dictate, or if keys slip. Keys with Ctrl or Alt stay.
      </p>
    </div>
  );
}

interface KeysProps {
  readonly heading: string;
  readonly keys: readonly (readonly [keys: string, does: string])[];
}

function Keys({ heading, keys }: KeysProps) {
  return (
    <section>
      <h3>{heading}</h3>
      <dl className={styles.keys}>
        {keys.map(([key, does]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
