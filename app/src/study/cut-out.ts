import {
  asCloth,
  type BlockOfCloth,
  type Cloth,
  type CutOut,
  type CutRules,
  PLAIN_RULES,
  type PlanRules,
} from '@seamwright/cloth';
import type { LengthUnit, Problem } from '@seamwright/geometry';
import { type Block, fabricIn } from '@seamwright/pattern';
import type { SewingPlan } from '@seamwright/sewing';
import { create } from 'zustand';
import { isLeftOut } from '../store/blocks-to-sew.ts';
import { type CuttingHabits, useCuttingHabits } from '../store/cutting-habits.ts';
import { fabricsOf } from '../store/fabrics.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentColourway, pattern, printingOf, useWork, type Work } from '../store/work.ts';
import { type Computing, Ended, whenAsked } from './computing.ts';
import type { CutOutWorker } from './cut-out.worker.ts';
import { OtherBlocks, toPlan } from './other-blocks.ts';
import type { PlannedBlock } from './planned.ts';
import { startCutting } from './start-cutting.ts';
import type { Study } from './study.ts';

/** A block of the pattern in one of its sizes. */
export interface PatternBlock extends BlockOfCloth {
  readonly plan: SewingPlan;
  readonly blockId: string;
  readonly title: string;
}

/** What is to be worked out. */
export interface CuttingQuestion {
  /** The study of the open block. */
  readonly study: Study;
  /** All that is cut: the open block, or those of the pattern, in each size that is asked for at Paper. */
  readonly blocks: readonly PatternBlock[];
  /** The open block in each of its sizes, cut or not, as its pieces are looked at; none where it cannot be sewn. */
  readonly open: readonly PatternBlock[];
  /** The names of blocks that were to be cut, and cannot be sewn. */
  readonly unsewable: readonly string[];
  readonly cloths: readonly Cloth[];
  readonly cut: CutRules;
  readonly plan: PlanRules;
}

/** What to cut and what to buy, as the worker found it last. */
interface Cutting {
  readonly question: CuttingQuestion | null;
  readonly answer: CutOut | null;
  readonly problem: Problem | null;
  /** Something else is asked for by now than what was found. */
  readonly isDue: boolean;
}

/** Apart from the work: it follows from it, and is worked out only while the Cloth station is open. */
export const useCutting = create<Cutting>()(() => ({
  question: null,
  answer: null,
  problem: null,
  isDue: true,
}));

/** What is said where the program itself fails; it is tried again at the next change. */
const FAILED: Problem = {
  what: 'What to cut could not be worked out',
  where: '',
  remedy: 'Reload the page and try again; the pattern is kept',
};

/** Milliseconds of quiet before it is worked out: not at every patch that a brush goes over. */
const QUIET = 150;

const others = new OtherBlocks();

/** Keeps {@link useCutting} up to date until the function that it gives back is called. */
export function startCuttingOut(): () => void {
  const worker = whenAsked(startCutting);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy = false;
  const ask = async () => {
    if (busy) return;
    busy = true;
    try {
      while (await answerNext(worker));
    } catch (error) {
      // The station was left.
      if (error instanceof Ended) return;
      worker.end();
      useCutting.setState({ answer: null, problem: FAILED });
      reportError(error);
    } finally {
      busy = false;
      noteDue();
    }
  };
  const later = () => {
    noteDue();
    clearTimeout(timer);
    timer = setTimeout(() => void ask(), QUIET);
  };
  const stops = [useWork.subscribe(later), useSettings.subscribe(later), useCuttingHabits.subscribe(later)];
  noteDue();
  void ask();
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
    worker.end();
  };
}

function noteDue(): void {
  const work = useWork.getState();
  const question = questionOf(work);
  const isDue = question === null || unplanned(work) !== undefined || !isAnswered(question);
  if (useCutting.getState().isDue !== isDue) useCutting.setState({ isDue });
}

/** Works out what is asked for next; false: nothing is. */
async function answerNext({ ask }: Computing<CutOutWorker>): Promise<boolean> {
  const block = unplanned(useWork.getState());
  if (block !== undefined) {
    others.learn(block, await ask((worker) => worker.planBlock(toPlan(block))));
    return true;
  }
  const question = waiting();
  if (question === null) return false;
  const { blocks, cloths, cut, plan } = question;
  const found = await ask((worker) => worker.cutOut(blocks, cloths, { cut, plan }));
  useCutting.setState(
    found.ok
      ? { question, answer: found.value, problem: null }
      : { question, answer: null, problem: found.problem },
  );
  return true;
}

/** The question that has no answer yet; null when there is none, or nothing to cut. */
function waiting(): CuttingQuestion | null {
  const question = questionOf(useWork.getState());
  return question === null || isAnswered(question) ? null : question;
}

function isAnswered(question: CuttingQuestion): boolean {
  const { question: known, problem } = useCutting.getState();
  return known !== null && problem !== FAILED && same(question, known);
}

/** The blocks that are cut for, or would be if they could be sewn. */
function wanted(work: Work): readonly Block[] {
  if (useCuttingHabits.getState().scope === 'block') return [currentBlock(work)];
  return pattern(work).blocks.filter(({ id }) => !isLeftOut(work, id));
}

/** One of them of which it has to be worked out yet how it is sewn; the open one is studied anyway. */
const unplanned = (work: Work): Block | undefined =>
  wanted(work).find((block) => block !== currentBlock(work) && others.planOf(block) === undefined);

function questionOf(work: Work): CuttingQuestion | null {
  const { study } = work;
  if (study === null || study.stale || !study.refined) return null;
  const habits = useCuttingHabits.getState();
  const { allowance } = useSettings.getState();
  const open = currentBlock(work);
  const { arrangement, plan, records } = study;
  const isSewable = arrangement !== null && plan !== null && plan.verdict !== 'not sewable';
  const opened = isSewable ? { arrangement, plan, records } : null;
  const blocks = wanted(work);
  const plans = blocks.map((block) => (block === open ? opened : (others.planOf(block) ?? null)));
  const isNamed = plans.filter((planned) => planned !== null).length > 1;
  return {
    study,
    blocks: blocks.flatMap((block, i) => sizesOf(work, block, plans[i]!, isNamed)),
    open: sizesOf(work, open, opened, false),
    unsewable: blocks.filter((_, i) => plans[i] === null).map(({ name }) => name),
    cloths: fabricsOf(work).map((fabric) => asCloth(fabric, habits.usableWidth)),
    ...rulesOf(habits, allowance, pattern(work).unit),
  };
}

/** A block in each of its sizes, in the colourway that is in hand. */
function sizesOf(
  work: Work,
  { id: blockId, name: title, patches }: Block,
  planned: PlannedBlock | null,
  isNamed: boolean,
): readonly PatternBlock[] {
  if (planned === null) return [];
  const { arrangement, plan, records } = planned;
  const colourway = currentColourway(work);
  const recordOf = new Map(patches.map((record) => [record.id, record]));
  const fabrics = records.map(({ id }) => {
    const record = recordOf.get(id);
    return (record === undefined ? undefined : fabricIn(record, colourway)) ?? null;
  });
  return printingOf(work, blockId).sizes.map(({ copies, mirrored = 0, scale }) => ({
    ...{ blockId, title, arrangement, plan, fabrics, copies, mirrored, scale },
    ...(isNamed && { name: title }),
  }));
}

const rulesOf = (
  habits: CuttingHabits,
  allowance: number,
  unit: LengthUnit,
): Pick<CuttingQuestion, 'cut' | 'plan'> => ({
  cut: { allowance, spare: habits.spare, turn: habits.turn, roundUpTo: habits.roundUpTo[unit] },
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
  const all = ({ blocks, open }: CuttingQuestion) => [...blocks, ...open];
  const stated = (question: CuttingQuestion) => {
    const { study: _, open: __, blocks: ___, ...others } = question;
    return JSON.stringify([
      question.blocks.length,
      all(question).map(({ arrangement: _, plan: __, ...block }) => block),
      others,
    ]);
  };
  const [before, after] = [all(a), all(b)];
  const studied =
    before.length === after.length &&
    before.every(
      ({ arrangement, plan }, i) => arrangement === after[i]!.arrangement && plan === after[i]!.plan,
    );
  return studied && a.study.blockId === b.study.blockId && stated(a) === stated(b);
}
