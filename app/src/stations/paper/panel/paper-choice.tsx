import { POINTS_PER_INCH } from '@seamwright/geometry';
import { PAPER_RANGE, PAPERS, type PaperName } from '@seamwright/pages';
import { setting, useSettings } from '../../../store/settings.ts';
import { Field } from '../../../ui/field.tsx';
import { LengthField } from '../../../ui/length-field.tsx';
import styles from './panel.module.css';

const OWN = 'own';

/** A paper by its name, or the sides of a sheet of one's own. */
export function PaperChoiceField() {
  const paper = useSettings((settings) => settings.paper);
  const own = typeof paper !== 'string';
  const choose = (value: string) =>
    setting({
      paper: value === OWN ? sidesOf(typeof paper === 'string' ? paper : 'letter') : (value as PaperName),
    });
  return (
    <div className={styles.paper}>
      <Field label="Paper">
        {(control) => (
          <select {...control} value={own ? OWN : paper} onChange={(event) => choose(event.target.value)}>
            {Object.entries(PAPERS).map(([name, { label }]) => (
              <option key={name} value={name}>
                {label}
              </option>
            ))}
            <option value={OWN}>A size of my own</option>
          </select>
        )}
      </Field>
      {own && (
        <div className={styles.pair}>
          <LengthField
            label="Paper width"
            value={paper.width}
            range={PAPER_RANGE}
            onChange={(width) => setting({ paper: { ...paper, width } })}
          />
          <LengthField
            label="Paper height"
            value={paper.height}
            range={PAPER_RANGE}
            onChange={(height) => setting({ paper: { ...paper, height } })}
          />
        </div>
      )}
    </div>
  );
}

function sidesOf(name: PaperName): { readonly width: number; readonly height: number } {
  const { width, height } = PAPERS[name];
  return { width: width / POINTS_PER_INCH, height: height / POINTS_PER_INCH };
}
