import { SNAP_KINDS } from '@seamwright/drafting';
import { ANGLE_STEPS, setting, useSettings } from '../../../store/settings.ts';
import { Button } from '../../../ui/button.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Field } from '../../../ui/field.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { catchKind } from '../catching.ts';
import { lookAgain } from '../hand.ts';
import { KindMark } from './kind-mark.tsx';
import styles from './panel.module.css';

/** What ends of lines are caught by: each kind with the mark that it has on the drawing. */
export function CatchPanel() {
  const notCaught = useSettings((settings) => settings.notCaught);
  const angleStep = useSettings((settings) => settings.angleStep);
  const kinds = SNAP_KINDS.length;
  const caught = kinds - notCaught.length;
  const all = () => {
    setting({ notCaught: [] });
    lookAgain();
  };
  return (
    <Foldable
      id="catching"
      title="What catches"
      more={caught === kinds ? 'all of it' : `${caught} of ${kinds}`}
    >
      <ul className={styles.kinds} aria-label="What catches">
        {SNAP_KINDS.map(({ kind, name }) => (
          <li key={kind}>
            <CheckBox
              label={
                <>
                  <KindMark kind={kind} />
                  {name}
                </>
              }
              checked={!notCaught.includes(kind)}
              onChange={(isChecked) => catchKind(kind, isChecked)}
            />
          </li>
        ))}
      </ul>
      <Field label="Angle steps">
        {(control) => (
          <select
            {...control}
            value={angleStep}
            disabled={notCaught.includes('angle')}
            onChange={(event) => {
              setting({ angleStep: Number(event.target.value) });
              lookAgain();
            }}
          >
            {ANGLE_STEPS.map((step) => (
              <option key={step} value={step}>
                every {step}°
              </option>
            ))}
          </select>
        )}
      </Field>
      <p className={`${styles.hint} ${styles.fine}`}>While Shift is held down nothing pulls from afar.</p>
      {notCaught.length > 0 && (
        <div className={styles.row}>
          <Button onClick={all}>Let everything catch</Button>
        </div>
      )}
    </Foldable>
  );
}
