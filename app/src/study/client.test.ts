import type { Drawing } from '@seamwright/arrangement';
import { startHistory } from '@seamwright/pattern';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { changeBlock, undo } from '../store/changes.ts';
import { freshBlock, freshPattern } from '../store/fresh.ts';
import { useWork } from '../store/work.ts';
import { studyOf } from '../test/study-of.ts';
import { startStudying } from './client.ts';
import { QuickStudies } from './quick-studies.ts';
import type { StudyAnswer, StudyQuestion } from './study.ts';

/** A worker that answers when it is told to; the page does not answer. */
const worker = vi.hoisted(() => {
  vi.stubGlobal('navigator', { language: 'en-US' });
  vi.stubGlobal('localStorage', { getItem: () => null, setItem: () => undefined });
  return { asked: [] as { question: StudyQuestion; answer: (given: StudyAnswer) => void }[], refined: 0 };
});
vi.mock('./quick.ts', () => ({
  quickAnswer: (question: StudyQuestion) =>
    new Promise<StudyAnswer>((answer) => {
      worker.asked.push({ question, answer });
    }),
  dropSlowQuestion: () => undefined,
}));
vi.mock('./refining.ts', () => ({
  refine: () => {
    worker.refined += 1;
    return Promise.resolve();
  },
  stopRefining: () => undefined,
}));
vi.mock('./in-page.ts', () => {
  throw new Error('This part of the program does not come');
});

const studies = new QuickStudies();

/** Answers the question that is out. */
async function answer(): Promise<void> {
  const { question, answer: give } = worker.asked.at(-1)!;
  give(studies.answer(question));
  await vi.advanceTimersByTimeAsync(0);
}

const draw = (drawing: Drawing) => changeBlock('Draw', 'boat', (before) => ({ ...before, drawing }));

beforeAll(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('who goes back to what was studied has its verdict at once, and the answer that comes late changes nothing', async () => {
  const [one, other] = [studyOf([[0, 2, 4, 2]]).drawing, studyOf([[1, 0, 1, 4]]).drawing];
  const block = { ...freshBlock('Boat'), id: 'boat', drawing: one };
  useWork.setState({
    history: startHistory({ ...freshPattern(), blocks: [block] }),
    blockId: 'boat',
    study: null,
  });
  startStudying();
  await answer();
  await vi.advanceTimersByTimeAsync(1000);
  expect(useWork.getState().study).toMatchObject({ drawing: one, stale: false });
  expect(worker.refined).toBe(1);

  draw(other);
  expect(worker.asked).toHaveLength(2);
  expect(useWork.getState().study).toMatchObject({ drawing: one, stale: true });
  undo();
  expect(useWork.getState().study).toMatchObject({ drawing: one, stale: false });
  // A better plan is looked for again: the edit ended the search.
  await vi.advanceTimersByTimeAsync(1000);
  expect(worker.refined).toBe(2);
  await answer();
  expect(useWork.getState().study).toMatchObject({ drawing: one, stale: false });
  expect(worker.asked).toHaveLength(2);
});
