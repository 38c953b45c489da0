import {
  type BlockOfCloth,
  type Cloth,
  type CutRules,
  type LoadSolver,
  type PlanRules,
  workOut,
} from '@seamwright/cloth';
import { expose } from 'comlink';
import solverAddress from 'highs/runtime?url';
import { bulkOf, type CurveSubject, curveOf, shadeWishes } from './look-ahead.ts';
import { planBlock } from './planned.ts';

/** The solver comes with the first fabric whose strips are not proved the least without it. */
let solver: ReturnType<LoadSolver> | undefined;
const load: LoadSolver = () => {
  solver ??= import('highs').then(({ default: start }) => start({ locateFile: () => solverAddress }));
  return solver;
};

/** What is worked out of fabrics, off the page's thread. */
const worker = {
  planBlock,
  cutOut: (
    blocks: readonly BlockOfCloth[],
    cloths: readonly Cloth[],
    rules: { readonly cut: CutRules; readonly plan: PlanRules },
  ) => workOut(blocks, cloths, rules, load),
  shadeWishes,
  bulkOf,
  curveOf: (subject: CurveSubject) => curveOf(subject, load),
};

export type CutOutWorker = typeof worker;
expose(worker);
