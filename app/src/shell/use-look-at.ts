import type { Drawing } from '@seamwright/arrangement';
import { NO_WISHES } from '@seamwright/pattern';
import { useEffect, useState } from 'react';
import { useWork } from '../store/work.ts';
import { type Computing, Ended, startComputing } from '../study/computing.ts';
import type { Study } from '../study/study.ts';
import { toStudy, withPlan } from '../study/to-study.ts';
import { wantedLimits } from '../study/wanted-limits.ts';

/** Milliseconds of quiet before a better plan is looked for: not for what is only passed by. */
const QUIET = 200;

/**
 * What is to be said of a drawing that is no part of the pattern (yet), from workers of its own: a quick answer, then the
 * best. Null until it is known.
 */
export function useLookAt(drawing: Drawing | null): Study | null {
  const [quick, setQuick] = useState<Computing | null>(null);
  const [study, setStudy] = useState<Study | null>(null);
  useEffect(() => {
    const worker = startComputing();
    setQuick(worker);
    return () => worker.end();
  }, []);
  useEffect(() => {
    if (drawing === null || quick === null) return;
    let wanted = true;
    let better: Computing | null = null;
    const look = async () => {
      const asked = { drawing, wishes: NO_WISHES, limits: wantedLimits(useWork.getState()) };
      const answer = await quick.ask((worker) => worker.study({ ...asked, records: [], named: [] }));
      if (!wanted) return;
      const first = toStudy(answer, { ...asked, blockId: '' });
      setStudy(first);
      await new Promise((resolve) => setTimeout(resolve, QUIET));
      if (!wanted || first.plan === null) return;
      better = startComputing();
      await better.ask((worker) => worker.begin({ ...asked, records: answer.records }));
      const plan = await better.ask((worker) => worker.plan(NO_WISHES.choice));
      setStudy(withPlan(first, plan, NO_WISHES));
      better.end();
    };
    look().catch((error: unknown) => {
      if (!(error instanceof Ended)) reportError(error);
    });
    return () => {
      wanted = false;
      better?.end();
    };
  }, [drawing, quick]);
  return study?.drawing === drawing ? study : null;
}
