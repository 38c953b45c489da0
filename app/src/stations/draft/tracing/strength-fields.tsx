import { LEAST_STRENGTH } from '@seamwright/pattern';
import { endStep } from '../../../store/changes.ts';
import { Field } from '../../../ui/field.tsx';
import { ShareField } from '../../../ui/share-field.tsx';
import styles from './tracing.module.css';
import { changeTracing } from './tracing-edits.ts';

const fade = (strength: number): void =>
  changeTracing(
    'Fade the picture',
    (before) => (before.strength === strength ? before : { ...before, strength }),
    'fade the picture',
  );

/** How strong the picture shows: by a slide, or typed. All that one drag does is one step. */
export function StrengthFields({ strength }: { readonly strength: number }) {
  return (
    <div className={styles.strength}>
      <Field label="How strong it shows">
        {(control) => (
          <input
            {...control}
            type="range"
            className={styles.slide}
            min={LEAST_STRENGTH * 100}
            max={100}
            step={1}
            value={Math.round(strength * 100)}
            aria-valuetext={`${Math.round(strength * 100)} %`}
            onChange={(event) => fade(Number(event.target.value) / 100)}
            onPointerUp={endStep}
            onBlur={endStep}
          />
        )}
      </Field>
      <ShareField
        label="Per cent"
        value={strength}
        least={LEAST_STRENGTH}
        most={1}
        onChange={(share) => {
          fade(share);
          endStep();
        }}
      />
    </div>
  );
}
