import {
  asCloth,
  type BlockOfCloth,
  type Cloth,
  type CutOut,
  type CutRules,
  PLAIN_RULES,
  type PlanRules,
} from '@seamwright/cloth';
import type { Problem } from '@seamwright/geometry';
import { fabricIn } from '@seamwright/pattern';
import { type Remote, wrap } from 'comlink';
import { create } from 'zustand';
import { type CuttingHabits, useCuttingHabits } from '../store/cutting-habits.ts';
import { fabricsOf } from '../store/fabrics.ts';
import { warn } from '../store/notices.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentColourway, currentPrinting, useWork, type Work } from '../store/work.ts';
import type { CutOutWorker } from './cut-out.worker.ts';
import type { Study } from './study.ts';

/** What is to be worked out. */
export interface CuttingQuestion {
  /** The study whose patches the pieces are for. */
  readonly study: Study;
  /** The block in each size that is asked for at Paper; pieces are looked at closely in the first. */
  readonly blocks: readonly [BlockOfCloth, ...BlockOfCloth[]];
  readonly cloths: readonly Cloth[];
  readonly cut: CutRules;
  readonly plan: PlanRules;
}

/** What to cut for the open block and what to buy, as the worker found it last. */
interface Cutting {
  readonly question: CuttingQuestion | null;
  readonly answer: CutOut | null;
  readonly problem: Problem | null;
}

/** Apart from the work: it follows from it, and is worked out only while the Cloth station is open. */
export const useCutting = create<Cutting>()(() => ({ question: null, answer: null, problem: null }));

/** Milliseconds of quiet before it is worked out: not at every patch that a brush goes over. */
const QUIET = 150;

/** Keeps {@link useCutting} up to date until the function that it gives back is called. */
export function startCuttingOut(): () => void {
  const worker = new Worker(new URL('./cut-out.worker.ts', import.meta.url), {
    type: 'module',
    name: 'cutting',
  });
  const remote = wrap<CutOutWorker>(worker);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy = false;
  const ask = async () => {
    if (busy) return;
    busy = true;
    for (let question = waiting(); question !== null; question = waiting()) await answerTo(question, remote);
    busy = false;
  };
  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void ask(), QUIET);
  };
  const stops = [useWork.subscribe(later), useSettings.subscribe(later), useCuttingHabits.subscribe(later)];
  worker.addEventListener('error', () =>
    warn('What to cut could not be worked out. Reload the page and try again; the pattern is kept.'),
  );
  void ask();
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
    worker.terminate();
  };
}

async function answerTo(question: CuttingQuestion, remote: Remote<CutOutWorker>): Promise<void> {
  const { blocks, cloths, cut, plan } = question;
  const found = await remote.cutOut(blocks, cloths, { cut, plan });
  useCutting.setState(
    found.ok
      ? { question, answer: found.value, problem: null }
      : { question, answer: null, problem: found.problem },
  );
}

/** The question that has no answer yet; null when there is none, or nothing to cut. */
function waiting(): CuttingQuestion | null {
  const question = questionOf(useWork.getState());
  const known = useCutting.getState().question;
  return question === null || (known !== null && same(question, known)) ? null : question;
}

function questionOf(work: Work): CuttingQuestion | null {
  const { study } = work;
  if (study === null || study.stale || !study.refined) return null;
  const { arrangement, plan } = study;
  if (arrangement === null || plan === null) return null;
  const habits = useCuttingHabits.getState();
  const { allowance } = useSettings.getState();
  const colourway = currentColourway(work);
  const recordOf = new Map(currentBlock(work).patches.map((record) => [record.id, record]));
  const fabrics = study.records.map(({ id }) => {
    const record = recordOf.get(id);
    return (record === undefined ? undefined : fabricIn(record, colourway)) ?? null;
  });
  const [first, ...others] = currentPrinting(work).sizes.map(
    ({ copies, mirrored = 0, scale }): BlockOfCloth => ({
      arrangement,
      plan,
      fabrics,
      copies,
      mirrored,
      scale,
    }),
  );
  return {
    study,
    blocks: [first!, ...others],
    cloths: fabricsOf(work).map((fabric) => asCloth(fabric, habits.usableWidth)),
    ...rulesOf(habits, allowance),
  };
}

const rulesOf = (habits: CuttingHabits, allowance: number): Pick<CuttingQuestion, 'cut' | 'plan'> => ({
  cut: { allowance, spare: habits.spare, turn: habits.turn, roundUpTo: habits.roundUpTo },
  plan: {
    ...PLAIN_RULES,
    usableWidth: habits.usableWidth,
    trim: habits.trim,
    spareOfLargest: habits.spareOfLargest,
    shrinkage: habits.shrinkage,
    safety: habits.safety,
    partsOfYard: habits.quarterYards ? 4 : PLAIN_RULES.partsOfYard,
    moreOnTheLine: habits.moreOnTheLine,
  },
});

/** What was studied by identity, all else by value: it is put together anew each time. */
function same(a: CuttingQuestion, b: CuttingQuestion): boolean {
  const stated = ({ blocks, cloths, cut, plan: rules }: CuttingQuestion) =>
    JSON.stringify([blocks.map(({ arrangement: _, plan: __, ...block }) => block), cloths, cut, rules]);
  const [{ arrangement, plan }] = a.blocks;
  const studied = arrangement === b.blocks[0].arrangement && plan === b.blocks[0].plan;
  return studied && stated(a) === stated(b);
}
