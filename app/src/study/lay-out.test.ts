import { ok, type Result } from '@seamwright/geometry';
import type { FoundationJob, PagePlan } from '@seamwright/pages';
import { startHistory } from '@seamwright/pattern';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { freshBlock, freshPattern } from '../store/fresh.ts';
import { useNotices } from '../store/notices.ts';
import { openBlock } from '../store/places.ts';
import { setting, useSettings } from '../store/settings.ts';
import { useWork } from '../store/work.ts';
import { studyOf } from '../test/study-of.ts';
import { Ended } from './computing.ts';
import { FAILED, layOutAgain, STOPPED, startLayingOut, stopLayingOut, useLaying } from './lay-out.ts';

/** A worker that answers when it is told to. */
const worker = vi.hoisted(() => {
  // Settings begin with what is usual where the maker lives; nothing is kept here.
  vi.stubGlobal('navigator', { language: 'en-US' });
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
  });
  type Answer = Result<PagePlan>;
  const asked: { job: FoundationJob; answer: (laid: Answer) => void; end: (why: Error) => void }[] = [];
  const layOut = (job: FoundationJob) =>
    new Promise<Answer>((answer, end) => {
      asked.push({ job, answer, end });
    });
  return { kept, asked, layOut, ended: 0 };
});

vi.mock('./computing.ts', async (original) => {
  const { Ended: Stopped } = await original<typeof import('./computing.ts')>();
  return {
    Ended: Stopped,
    pagesWorker: {
      ask: (question: (remote: object) => Promise<unknown>) => question(worker),
      end: () => {
        worker.ended += 1;
        worker.asked.at(-1)?.end(new Stopped());
      },
    },
  };
});

const LANTERN = studyOf([[0, 2, 4, 2]]);
const WHARF = studyOf([[1, 0, 1, 4]]);

/** A plan that can be told from others. */
const planOf = (title: string) => ({ title, sheets: [] }) as unknown as PagePlan;

/** What the Draft station's block was studied to be; all of it, so that it may be printed. */
const studied = (blockId: string, study: typeof LANTERN) =>
  useWork.setState({ study: { ...study, blockId, stale: false, refined: true } });

const jobs = () => worker.asked.map(({ job }) => job);

beforeAll(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
  startLayingOut();
});
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

beforeEach(async () => {
  worker.asked.length = 0;
  worker.ended = 0;
  const blocks = ['lantern', 'wharf'].map((id) => ({ ...freshBlock(id), id }));
  setting({ gap: 0.25, saveSheets: false });
  useWork.setState({
    history: startHistory({ ...freshPattern(), blocks }),
    blockId: 'lantern',
    sheets: null,
  });
  studied('lantern', LANTERN);
  await vi.advanceTimersByTimeAsync(200);
  expect(jobs()).toMatchObject([{ title: 'lantern', gap: 0.25 }]);
});

afterEach(async () => {
  // Nothing is left under way for the next test.
  useWork.setState({ study: null });
  worker.asked.at(-1)?.end(new Ended());
  await vi.advanceTimersByTimeAsync(5000);
  expect(useLaying.getState().laying).toBeNull();
});

test('sheets whose settings have changed are waited for a second, then ended, and others laid out', async () => {
  setting({ gap: 0.5 });
  await vi.advanceTimersByTimeAsync(600);
  expect(worker.ended).toBe(0);
  expect(jobs()).toHaveLength(1);
  await vi.advanceTimersByTimeAsync(600);
  expect(worker.ended).toBe(1);
  expect(jobs()).toMatchObject([{ gap: 0.25 }, { gap: 0.5 }]);
  worker.asked[1]!.answer(ok(planOf('wider apart')));
  await vi.advanceTimersByTimeAsync(0);
  expect(useWork.getState().sheets).toMatchObject({
    blockId: 'lantern',
    job: { gap: 0.5 },
    plan: { title: 'wider apart' },
  });
});

test('settings that are changed and changed back end nothing', async () => {
  setting({ gap: 0.5 });
  await vi.advanceTimersByTimeAsync(600);
  setting({ gap: 0.25 });
  await vi.advanceTimersByTimeAsync(5000);
  expect(worker.ended).toBe(0);
  worker.asked[0]!.answer(ok(planOf('as before')));
  await vi.advanceTimersByTimeAsync(200);
  expect(useWork.getState().sheets?.plan?.title).toBe('as before');
  expect(jobs()).toHaveLength(1);
});

test('sheets of a block that is no longer open are never shown, however late they are', async () => {
  openBlock('wharf');
  useWork.setState({ study: null, sheets: null });
  worker.asked[0]!.answer(ok(planOf('of the lantern')));
  await vi.advanceTimersByTimeAsync(1000);
  expect(useWork.getState().sheets).toBeNull();
  studied('wharf', WHARF);
  await vi.advanceTimersByTimeAsync(200);
  expect(jobs().map(({ title }) => title)).toEqual(['lantern', 'wharf']);
  worker.asked[1]!.answer(ok(planOf('of the wharf')));
  await vi.advanceTimersByTimeAsync(0);
  expect(useWork.getState().sheets).toMatchObject({ blockId: 'wharf', plan: { title: 'of the wharf' } });
});

test('sheets of another block are ended at once when this one’s are due', async () => {
  openBlock('wharf');
  useWork.setState({ sheets: null });
  studied('wharf', WHARF);
  await vi.advanceTimersByTimeAsync(200);
  expect(worker.ended).toBe(1);
  expect(jobs().map(({ title }) => title)).toEqual(['lantern', 'wharf']);
});

/** The value of the check box as the next visit will find it. */
const keptSaveSheets = (): unknown => JSON.parse([...worker.kept.values()].at(-1)!).saveSheets;

/** Has the first sheets laid out, and fewer looked for; what is asked of the worker then is its second job. */
async function lookLonger(): Promise<void> {
  worker.asked[0]!.answer(ok(planOf('found at once')));
  await vi.advanceTimersByTimeAsync(0);
  setting({ saveSheets: true });
  await vi.advanceTimersByTimeAsync(200);
  expect(jobs()).toMatchObject([{ effort: 'quick' }, { effort: 'thorough' }]);
  expect(keptSaveSheets()).toBe(true);
}

const isOffAndSaid = () => {
  expect(useSettings.getState().saveSheets).toBe(false);
  expect(keptSaveSheets()).toBe(false);
  expect(useNotices.getState().notice?.text).toBe(
    'Looking longer for fewer sheets was cancelled and switched off.',
  );
};

test('cancelling the search for fewer sheets has it off, and leaves the sheets that were there', async () => {
  await lookLonger();
  stopLayingOut();
  expect(worker.ended).toBe(1);
  isOffAndSaid();
  await vi.advanceTimersByTimeAsync(5000);
  expect(jobs()).toHaveLength(2);
  expect(useWork.getState().sheets).toMatchObject({
    job: { effort: 'quick' },
    plan: { title: 'found at once' },
    problem: null,
  });
});

test('where something else was changed meanwhile, sheets of that are laid out, without looking longer', async () => {
  await lookLonger();
  setting({ gap: 0.5 });
  stopLayingOut();
  isOffAndSaid();
  await vi.advanceTimersByTimeAsync(5000);
  expect(jobs().slice(2)).toMatchObject([{ effort: 'quick', gap: 0.5 }]);
  worker.asked[2]!.answer(ok(planOf('wider apart')));
  await vi.advanceTimersByTimeAsync(0);
  expect(useWork.getState().sheets).toMatchObject({ job: { gap: 0.5 }, plan: { title: 'wider apart' } });
});

test('where the first sheets were still under way when fewer were asked for, these come after the cancel', async () => {
  setting({ saveSheets: true });
  stopLayingOut();
  isOffAndSaid();
  await vi.advanceTimersByTimeAsync(5000);
  expect(jobs()).toMatchObject([{ effort: 'quick' }, { effort: 'quick' }]);
});

test('cancelling what is laid out at once leaves no sheets, and the settings as they are', async () => {
  useNotices.setState({ notice: null });
  stopLayingOut();
  await vi.advanceTimersByTimeAsync(5000);
  expect(useWork.getState().sheets).toMatchObject({ plan: null, problem: STOPPED });
  expect(jobs()).toHaveLength(1);
  expect(useNotices.getState().notice).toBeNull();
});

test('where laying out fails it is said, and asked again when the maker wants it', async () => {
  const reported = vi.fn();
  vi.stubGlobal('reportError', reported);
  const why = new Error('a part of the program could not be loaded');
  worker.asked[0]!.end(why);
  await vi.advanceTimersByTimeAsync(1000);
  expect(useWork.getState().sheets).toMatchObject({ plan: null, problem: FAILED });
  expect(reported).toHaveBeenCalledWith(why);
  // A new worker loads it anew.
  expect(worker.ended).toBe(1);
  expect(jobs()).toHaveLength(1);
  layOutAgain();
  await vi.advanceTimersByTimeAsync(200);
  expect(jobs()).toHaveLength(2);
  worker.asked[1]!.answer(ok(planOf('after all')));
  await vi.advanceTimersByTimeAsync(0);
  expect(useWork.getState().sheets?.plan?.title).toBe('after all');
});
