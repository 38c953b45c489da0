import { useEffect, useState } from 'react';
import { Button } from '../../../ui/button.tsx';
import styles from './outputs.module.css';
import { cancelOutput, useOutput } from './under-way.ts';

/** Milliseconds: what is done sooner needs no word. */
const SOON = 400;

/** How far what is being made has come, and a way to stop it. */
export function Progress() {
  const underWay = useOutput((output) => output.underWay);
  const long = useLong(underWay !== null);
  if (underWay === null || !long) return null;
  const { what, done, of } = underWay;
  return (
    <div className={styles.progress}>
      <p id="paper-progress" role="status">
        Making the {what}…
      </p>
      <progress aria-labelledby="paper-progress" {...(of > 0 && { value: done, max: of })} />
      <Button onClick={cancelOutput}>Cancel</Button>
    </div>
  );
}

/** Whether something has been going on for longer than {@link SOON}. */
function useLong(on: boolean): boolean {
  const [long, setLong] = useState(false);
  useEffect(() => {
    if (!on) return setLong(false);
    const timer = setTimeout(() => setLong(true), SOON);
    return () => clearTimeout(timer);
  }, [on]);
  return long;
}
