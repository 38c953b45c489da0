import { arrange, carryPatches } from '@seamwright/arrangement';
import { LastAssembly, type PlanOptions, shapeFindings } from '@seamwright/sewing';
import { aslant } from './aslant.ts';
import { nothing, tooManyPatches } from './limits.ts';
import { planned } from './planned.ts';
import type { StudyAnswer, StudyQuestion } from './study.ts';

/** What the quick answer may look at, in the solver's count: some milliseconds. */
const QUICK_EFFORT = 30_000;

/**
 * Quick answers: they take the drawing apart and plan its sewing, without looking long for the best plan. The worker has
 * one of these, and the page has one for blocks that take it no longer than it has between two frames.
 */
export class QuickStudies {
  /** Most quick answers are about a drawing in which only places have changed since the one before. */
  private readonly last = new LastAssembly();

  /** The same for practice: what an answer says does not depend on how long there was to practise. */
  private readonly lastPractised = new LastAssembly();
  private practising: { readonly question: StudyQuestion; times: number } | null = null;

  answer(question: StudyQuestion): StudyAnswer {
    return studied(question, { last: this.last })!;
  }

  /** The same where there are at most so many patches; otherwise null, and sooner. */
  answerWithin(most: number, question: StudyQuestion): StudyAnswer | null {
    return studied(question, { last: this.last }, most);
  }

  /** Studies what was asked once more, in turn in the ways in which the moves of a drag are studied. */
  practise(question: StudyQuestion): void {
    if (this.practising?.question !== question) this.practising = { question, times: 0 };
    const last = this.lastPractised;
    const ways = [
      () => this.answer(question),
      () => studied(question, {}),
      () => studied({ ...question, drawing: aslant(question.drawing) }, { last }),
      () => studied(question, { last }),
    ];
    ways[this.practising.times % ways.length]!();
    this.practising.times += 1;
  }
}

function studied(
  { drawing, records, named, wishes, limits }: StudyQuestion,
  how: Pick<PlanOptions, 'last'>,
  most = Number.POSITIVE_INFINITY,
): StudyAnswer | null {
  const arranged = arrange(drawing);
  if (!arranged.ok) return nothing(arranged.problem, records);
  const arrangement = arranged.value;
  if (arrangement.patches.length > most) return null;
  const problem = tooManyPatches(arrangement.patches.length);
  if (problem !== null) return nothing(problem, records);
  const carried = carryPatches(records, arrangement, named);
  const question = { records: carried, wishes };
  return {
    arrangement,
    problem: null,
    plan: planned(question, arrangement, wishes.choice, { effort: QUICK_EFFORT, ...how }),
    shapes: shapeFindings(arrangement, limits),
    records: carried,
  };
}
