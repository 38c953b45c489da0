import { History as HistoryIcon } from 'lucide-react';
import { type KeyboardEvent, useRef } from 'react';
import { goToStep } from '../store/changes.ts';
import { useWork } from '../store/work.ts';
import button from '../ui/button.module.css';
import { Popover } from '../ui/popover.tsx';
import { rove } from '../ui/roving.ts';
import { useCurrentInSight } from '../ui/use-current-in-sight.ts';
import styles from './history-list.module.css';

/** Opens the list of what was done; each line goes to how things were after it. */
export function HistoryList() {
  return (
    <Popover
      label="What was done"
      buttonLabel="What was done, step by step"
      buttonClass={`${button.button} ${button.quiet} ${button.icon}`}
      button={<HistoryIcon aria-hidden="true" size={18} strokeWidth={1.75} />}
    >
      {() => <Steps />}
    </Popover>
  );
}

function Steps() {
  const past = useWork((work) => work.history.past);
  const future = useWork((work) => work.history.future);
  const list = useRef<HTMLOListElement>(null);
  const present = past.length;
  useCurrentInSight(list, present);
  if (past.length + future.length === 0)
    return <p className={styles.empty}>Nothing is done yet. Every change will stand here, to go back to.</p>;
  const steps = ['Before these steps', ...[...past, ...future].map(({ label }) => label)];
  return (
    <>
      <h2 className={styles.heading}>What was done</h2>
      <ol
        ref={list}
        className={styles.list}
        aria-label="Steps, the earliest first"
        onKeyDown={(event: KeyboardEvent<HTMLElement>) => rove(event)}
      >
        {steps.map((label, count) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is known by its number
          <li key={count}>
            <button
              type="button"
              data-stop
              data-first={count === present || undefined}
              tabIndex={count === present ? 0 : -1}
              className={styles.step}
              data-undone={count > present}
              aria-current={count === present ? 'step' : undefined}
              onClick={() => goToStep(count)}
            >
              <span>{label}</span>
              {count === present && <span className={styles.word}>now</span>}
              {count > present && <span className={styles.word}>undone</span>}
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
