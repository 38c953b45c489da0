/*
 * The quick study in the page itself. All of this is loaded after the start: until then the worker answers.
 */

import { useWork } from '../store/work.ts';
import { Pace } from './pace.ts';
import { ENOUGH, type Later, Practice } from './practice.ts';
import { QuickStudies } from './quick-studies.ts';
import type { StudyAnswer, StudyQuestion } from './study.ts';

/**
 * Milliseconds that a study in the page may be expected to take: two of sixty frames in a second. What takes a worker more than
 * one of them is painted three frames late or later, so the page takes that on, at the price of longer frames; beyond two,
 * a pointer that follows the hand is worth more.
 */
const MOST_TIME = 33;

/** Milliseconds that are no hindrance: with showing the move, a study is done by the next frame, or not much later. */
const SMOOTH = 12;

/** Patches: of larger blocks even a fast computer's page leaves the study to the worker, for showing them takes longer, too. */
const MOST_PATCHES = 400;

/** Patches: if a study still takes long after so many, it is not for want of practice. */
const NO_USE = 4 * ENOUGH;

/** Milliseconds: that much has to be free before a study is practised that may take longer. */
const FREE = 25;

const studies = new QuickStudies();
/** Patches of what is practised on. */
let subject = 0;

/** Patches that the page has studied up to now. */
let studied = 0;

const pace = new Pace();

/** In the pauses between what the browser has to do, where one is long enough. */
const whenIdle: Later = (task) => {
  if (globalThis.requestIdleCallback === undefined) {
    const timer = setTimeout(task, FREE);
    return () => clearTimeout(timer);
  }
  let handle = 0;
  const wait = () => {
    handle = requestIdleCallback((pause) => {
      const needed = Math.min(pace.expected(subject), FREE);
      if (pause.timeRemaining() < needed) wait();
      else task();
    });
  };
  wait();
  return () => cancelIdleCallback(handle);
};

const practice = new Practice({
  later: whenIdle,
  // Once in each of the ways that moves are studied.
  least: 4,
  most: 60,
  isEnough: (studied) => studied >= ENOUGH && (pace.expected(subject) <= SMOOTH || studied >= NO_USE),
});

/**
 * Whether the page itself is to answer: where that takes it so little time that the answer is painted with the move that is
 * asked about; and as long as it may take long only for want of practice, for a first drag is no place to wait for that.
 * How many patches there are is guessed by the records of those there were.
 */
export function isForPage({ records, drawing }: StudyQuestion): boolean {
  const patches = records.length;
  if (patches > MOST_PATCHES || drawing.splits.length > MOST_PATCHES) return false;
  return studied < ENOUGH || pace.expected(patches) <= MOST_TIME;
}

/** The quick answer, as the worker gives it; null where there are too many patches after all. */
export function answerInPage(question: StudyQuestion): StudyAnswer | null {
  const begun = performance.now();
  const answer = studies.answerWithin(MOST_PATCHES, question);
  const patches = answer?.arrangement?.patches.length;
  if (patches !== undefined) note(patches, begun);
  return answer;
}

/**
 * Called at each answer, whoever gave it: the page practises on it for the next question.
 *
 * @param question with the records of all its patches
 */
export function practiseInPage(question: StudyQuestion): void {
  // Not while the maker draws.
  if (useWork.getState().inHand !== null) return;
  const patches = question.records.length;
  subject = patches;
  practice.after(patches, () => {
    const begun = performance.now();
    studies.practise(question);
    note(patches, begun);
  });
}

/** @param begun when a study of so many patches was, by the page's clock */
function note(patches: number, begun: number): void {
  studied += patches;
  pace.note(patches, performance.now() - begun);
}

/** Called at each question. */
export const stopPractising = (): void => practice.stop();
