import type { Finding, Repair } from '@seamwright/arrangement';
import { namedPatches } from '@seamwright/pattern';
import type { AlternativeName, SewingPlan } from '@seamwright/sewing';
import { warn } from '../store/notices.ts';
import { useSettings } from '../store/settings.ts';
import { currentBlock, currentDrawing, currentWishes, useWork, type Work } from '../store/work.ts';
import { keepRecords } from './keep-records.ts';
import { findingsToMend, withRepairs } from './mending.ts';
import { oncePerFrame } from './once-per-frame.ts';
import { dropSlowQuestion, quickAnswer } from './quick.ts';
import { refine, stopRefining } from './refining.ts';
import type { Study, StudyAnswer, StudyQuestion } from './study.ts';
import { toStudy, withPlan } from './to-study.ts';
import { wantedLimits } from './wanted-limits.ts';
import { stillToPlan, waysThatStand } from './ways.ts';

/** Milliseconds of quiet before a better plan is looked for: not at every step of a drag. */
const QUIET = 150;

/** The same while a drag pauses: what is found is gone with its next move, which it would hold up. */
const QUIET_IN_HAND = 700;

/**
 * Keeps the store's `study` up to date with the open block's drawing and with how the maker wants it sewn.
 *
 * A quick answer comes first: from the page, in the task that made the edit, where that takes no time to speak of; otherwise
 * from a worker. One question is out at a time; edits made meanwhile wait, and only the latest of them is asked next. When
 * the edits pause, a second worker looks for better plans; the next edit ends it.
 */
export function startStudying(): void {
  let busy = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const refineLater = () => {
    clearTimeout(timer);
    const quiet = useWork.getState().inHand === null ? QUIET : QUIET_IN_HAND;
    timer = setTimeout(() => void refineNow(), quiet);
  };

  const ask = async () => {
    if (busy) return;
    busy = true;
    try {
      while (!upToDate(useWork.getState())) await studyOnce();
      refineLater();
    } catch (error) {
      giveUp(error);
    } finally {
      busy = false;
    }
  };

  const answerNow = oncePerFrame(() => {
    if (upToDate(useWork.getState())) return;
    try {
      if (studyHere()) refineLater();
      else void ask();
    } catch (error) {
      giveUp(error);
    }
  });

  const changed = () => {
    if (upToDate(useWork.getState())) {
      // Back at what was studied before the question that is out, or about to be asked, was answered.
      if (markFresh()) refineLater();
      return;
    }
    stopRefining();
    page?.stopPractising();
    if (takeKnownPlan()) return;
    dropSlowQuestion();
    if (page?.isForPage(questionNow().question)) answerNow();
    else void ask();
    markStale();
  };
  useWork.subscribe(
    (work) =>
      [
        currentDrawing(work),
        currentBlock(work).id,
        currentWishes(work),
        wantedLimits(work),
        work.study,
      ] as const,
    changed,
    { equalityFn: (a, b) => a.every((part, i) => part === b[i]) },
  );
  useSettings.subscribe(changed);
  void ask();
}

function giveUp(error: unknown): void {
  warn('The drawing could not be studied. Undo the last change, or reload the page: the pattern is kept.');
  reportError(error);
}

/** Answers in the page; null until it is loaded, which is after the first answer. */
let page: typeof import('./in-page.ts') | null = null;

async function loadPage(): Promise<void> {
  try {
    page ??= await import('./in-page.ts');
  } catch {
    // Not to be had now: the worker goes on answering.
  }
}

/** How often the page has answered. */
let answersHere = 0;

/** Has the page answer; false where the worker has to. */
function studyHere(): boolean {
  const asked = questionNow();
  const answer = page?.answerInPage(asked.question) ?? null;
  if (answer === null) return false;
  answersHere += 1;
  takeAnswer(answer, asked);
  return true;
}

async function studyOnce(): Promise<void> {
  const asked = questionNow();
  const before = answersHere;
  const answer = await quickAnswer(asked.question);
  const work = useWork.getState();
  // Another block was opened meanwhile, or what is shown now is answered: this is about what is no longer shown.
  if (answer === null || currentBlock(work).id !== asked.blockId || answersHere !== before || upToDate(work))
    return;
  takeAnswer(answer, asked);
}

interface Asked {
  readonly blockId: string;
  readonly question: StudyQuestion;
}

/** What is to be answered now. */
function questionNow(): Asked {
  const work = useWork.getState();
  const block = currentBlock(work);
  const question = {
    drawing: currentDrawing(work),
    records: block.patches,
    named: namedPatches(block),
    wishes: currentWishes(work),
    limits: wantedLimits(work),
  };
  return { blockId: block.id, question };
}

function takeAnswer(answer: StudyAnswer, { blockId, question }: Asked): void {
  const before = useWork.getState().study;
  const { drawing, wishes, limits } = question;
  const fresh = toStudy(answer, { blockId, drawing, wishes, limits });
  const study = before !== null && sameSubject(before, fresh) ? keepingWays(fresh, before) : fresh;
  // Sheets of another block are not shown as this one's.
  useWork.setState(before === null || before.blockId === blockId ? { study } : { study, sheets: null });
  markStale();
  keepRecords();
  if (answer.arrangement === null) return;
  const { records } = answer;
  void loadPage().then(() => page?.practiseInPage({ ...question, records }));
}

const sameSubject = (a: Study, b: Study): boolean => a.blockId === b.blockId && a.drawing === b.drawing;

/** Other wishes for the same drawing: the plans that they do not concern stand. */
const keepingWays = (fresh: Study, before: Study): Study => ({
  ...fresh,
  ways: waysThatStand(before.ways, before.wishes, fresh.wishes),
});

/** Where only the choice among plans changed, and the chosen plan is known: no question. */
function takeKnownPlan(): boolean {
  const work = useWork.getState();
  const { study } = work;
  const wishes = currentWishes(work);
  if (study === null || !sameBlock(study, work)) return false;
  const ways = waysThatStand(study.ways, study.wishes, wishes);
  const plan = ways[wishes.choice];
  if (plan === undefined) return false;
  useWork.setState({ study: { ...withPlan(study, plan, wishes), ways, stale: false, refined: true } });
  void refineNow();
  return true;
}

/** Looks for the plans that are not known yet, the chosen one first, and then for the repairs of what it finds. */
async function refineNow(): Promise<void> {
  const { study } = useWork.getState();
  if (study === null || study.stale || study.plan === null) return;
  const { drawing, records, wishes, limits } = study;
  const missing = stillToPlan(study);
  const [first, ...others] = missing;
  const chosen = first === wishes.choice ? first : undefined;
  if (missing.length === 0 && findingsToMend(study).length === 0) return;
  try {
    await refine({ drawing, records, wishes, limits }, async (ask) => {
      const plan = async (name: AlternativeName) =>
        takePlan(study, name, await ask((worker) => worker.plan(name)));
      if (chosen !== undefined) await plan(chosen);
      const now = useWork.getState().study;
      for (const finding of now === null ? [] : findingsToMend(now)) {
        takeRepairs(study, finding, await ask((worker) => worker.repairs(finding)));
      }
      for (const name of chosen === undefined ? missing : others) await plan(name);
    });
  } catch (error) {
    giveUp(error);
  }
}

/** The study, if it is still about what was asked. */
function stillAbout(asked: Study): Study | null {
  const { study } = useWork.getState();
  const same =
    study !== null && !study.stale && study.drawing === asked.drawing && study.wishes === asked.wishes;
  return same ? study : null;
}

/** Takes in one plan of those asked for; an answer about what has changed since is let go. */
function takePlan(asked: Study, name: AlternativeName, plan: SewingPlan): void {
  const study = stillAbout(asked);
  if (study === null) return;
  const ways = { ...study.ways, [name]: plan };
  const chosen = name === study.wishes.choice;
  useWork.setState({
    study: chosen ? { ...withPlan(study, plan, study.wishes), ways, refined: true } : { ...study, ways },
  });
}

function takeRepairs(asked: Study, finding: Finding, repairs: readonly Repair[]): void {
  const study = stillAbout(asked);
  if (study !== null) useWork.setState({ study: withRepairs(study, finding, repairs) });
}

function upToDate(work: Work): boolean {
  const { study } = work;
  return study !== null && sameBlock(study, work) && study.wishes === currentWishes(work);
}

const sameBlock = (study: Study, work: Work): boolean =>
  study.drawing === currentDrawing(work) &&
  study.limits === wantedLimits(work) &&
  study.blockId === currentBlock(work).id;

/** The study is about what is shown after all; false: it was so all the time. */
function markFresh(): boolean {
  const { study } = useWork.getState();
  if (study?.stale !== true) return false;
  useWork.setState({ study: { ...study, stale: false } });
  return true;
}

function markStale(): void {
  const work = useWork.getState();
  const { study } = work;
  if (study === null || study.stale || upToDate(work)) return;
  // Another block's patches are never shown in place of this one's, not even for a moment.
  const other = study.blockId !== currentBlock(work).id;
  useWork.setState(other ? { study: null, sheets: null } : { study: { ...study, stale: true } });
}
