import type { Drawing } from '@seamwright/arrangement';
import { NO_WISHES } from '@seamwright/pattern';
import { useEffect, useRef, useState } from 'react';
import { useWork } from '../store/work.ts';
import { type Computing, Ended, startComputing } from '../study/computing.ts';
import type { Study } from '../study/study.ts';
import { toStudy } from '../study/to-study.ts';
import { wantedLimits } from '../study/wanted-limits.ts';

/**
 * What is to be said of a drawing that is no part of the pattern (yet), from a worker of its own, which ends with the
 * component. Null until it is known.
 */
export function useLookAt(drawing: Drawing | null): Study | null {
  const worker = useRef<Computing | null>(null);
  const [study, setStudy] = useState<Study | null>(null);
  useEffect(
    () => () => {
      worker.current?.end();
      worker.current = null;
    },
    [],
  );
  useEffect(() => {
    if (drawing === null) return;
    let wanted = true;
    worker.current ??= startComputing();
    const limits = wantedLimits(useWork.getState());
    worker.current
      .ask((asked) => asked.study({ drawing, records: [], wishes: NO_WISHES, limits }))
      .then(
        (answer) => wanted && setStudy(toStudy(answer, { blockId: '', drawing, wishes: NO_WISHES, limits })),
        (error) => {
          if (!(error instanceof Ended)) reportError(error);
        },
      );
    return () => {
      wanted = false;
    };
  }, [drawing]);
  return study?.drawing === drawing ? study : null;
}
