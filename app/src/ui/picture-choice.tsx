import { type ReactNode, useId } from 'react';
import styles from './picture-choice.module.css';

interface Named {
  /** Where two may have the same name. */
  readonly id?: string;
  readonly name: string;
}

interface PictureChoiceProps<T extends Named> {
  /** What is chosen, for the ear. */
  readonly label: string;
  readonly options: readonly T[];
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly picture: (option: T) => ReactNode;
  readonly className?: string | undefined;
}

/** One of several things by its picture. Native radio buttons: one stop of the Tab key, arrows go from one to the next. */
export function PictureChoice<T extends Named>(props: PictureChoiceProps<T>) {
  const { label, options, value, onChange, picture, className = '' } = props;
  const group = useId();
  return (
    <fieldset className={`${styles.pictures} ${className}`}>
      <legend className="heard">{label}</legend>
      {options.map((option) => (
        <label key={option.id ?? option.name} className={styles.picture}>
          <input type="radio" name={group} checked={option === value} onChange={() => onChange(option)} />
          {picture(option)}
          <span>{option.name}</span>
        </label>
      ))}
    </fieldset>
  );
}
