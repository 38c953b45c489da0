import type { Drawing } from '@seamwright/arrangement';
import { ChevronDown, CircleCheck, CircleDashed, OctagonAlert, TriangleAlert } from 'lucide-react';
import { lazy, Suspense, useEffect } from 'react';
import { announce } from '../store/notices.ts';
import { useWork } from '../store/work.ts';
import { type VerdictSign, verdictWords } from '../study/verdict.ts';
import { Popover } from '../ui/popover.tsx';
import styles from './verdict-bar.module.css';

/** With the stations that show it; nobody presses the verdict before. */
const FindingList = lazy(async () => ({ default: (await import('./finding-list.tsx')).FindingList }));

const SIGNS = {
  good: CircleCheck,
  caution: TriangleAlert,
  wrong: OctagonAlert,
  waiting: CircleDashed,
} as const satisfies Record<VerdictSign, unknown>;

/** Milliseconds of quiet before a changed verdict is read out: not at every step of a drag. */
const QUIET = 700;

const numbers = new WeakMap<Drawing, number>();
let given = 0;

/** Each drawing has another number, by which it shows from outside that the verdict is about another one. */
function numberOf(drawing: Drawing): number {
  const known = numbers.get(drawing);
  if (known !== undefined) return known;
  given += 1;
  numbers.set(drawing, given);
  return given;
}

/** What the solver says of the open block: one sentence, always here; pressed, it says more. */
export function VerdictBar() {
  const study = useWork((work) => work.study);
  const words = verdictWords(study);
  const Sign = SIGNS[words.sign];
  const settled = study !== null && !study.stale;

  useEffect(() => {
    if (!settled) return;
    const timer = setTimeout(() => announce(words.short), QUIET);
    return () => clearTimeout(timer);
  }, [settled, words.short]);

  return (
    <div className={styles.place}>
      <Popover
        label="Verdict"
        buttonClass={styles.button}
        button={
          <>
            <Sign aria-hidden="true" size={20} className={styles[words.sign]} />
            <span className="heard">Verdict: </span>
            <span
              className={styles.words}
              data-testid="verdict"
              data-stale={study?.stale ?? true}
              data-drawing={study === null ? undefined : numberOf(study.drawing)}
            >
              {words.short}
            </span>
            <ChevronDown aria-hidden="true" size={16} />
          </>
        }
      >
        {() => (
          <div className={styles.more}>
            {words.long.map((line) => (
              <p key={line}>{line}</p>
            ))}
            <Suspense fallback={null}>
              <FindingList />
            </Suspense>
          </div>
        )}
      </Popover>
    </div>
  );
}
