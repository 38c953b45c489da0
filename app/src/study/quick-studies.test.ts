import type { Drawing } from '@seamwright/arrangement';
import { drawnLines, putLineEnd } from '@seamwright/drafting';
import { NO_WISHES, namedPatches, type PinRecord, type SewingWishes } from '@seamwright/pattern';
import { LastAssembly, type SewingPlan, SHAPE_LIMITS } from '@seamwright/sewing';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { freshBlock } from '../store/fresh.ts';
import { EDITS, script } from '../test/any-edits.ts';
import { answerInPage, practiseInPage } from './in-page.ts';
import { QuickStudies } from './quick-studies.ts';
import type { StudyAnswer, StudyQuestion } from './study.ts';
import type { StudyWorker } from './study.worker.ts';

/** What the worker's thread offers to the page. */
const worker = vi.hoisted(() => ({ offered: null as unknown }));
vi.mock('comlink', () => ({
  expose: (offered: unknown) => {
    worker.offered = offered;
  },
}));

beforeAll(() => void vi.useFakeTimers());
afterAll(() => void vi.useRealTimers());

/** Patches: drawings with more take long, and show no more. */
const MANY = 40;

/** How far the end of a line is dragged, inches, move by move. */
const away = fc.double({ min: -0.4, max: 0.4, noNaN: true });
const drag = fc.record({
  line: fc.nat(1000),
  moves: fc.array(fc.tuple(away, away), { minLength: 1, maxLength: 5 }),
});

/** Pins on the patches by their place in the list, as soon as there are so many. */
const pins = fc.array(
  fc.record({
    kind: fc.constantFrom('first' as const, 'together' as const, 'apart' as const),
    of: fc.tuple(fc.nat(5), fc.nat(5)).filter(([a, b]) => a !== b),
  }),
  { maxLength: 2 },
);

const wished = fc.record({
  partialSeams: fc.boolean(),
  choice: fc.constantFrom('fewest foundations', 'most repetition', 'small sections'),
  mostPatches: fc.constantFrom(3, 8),
});

/** A maker's work on one block: edits and drags in turn. */
const work = fc.record({
  wished,
  pins,
  parts: fc.array(fc.tuple(script, drag), { minLength: 1, maxLength: 3 }),
});

type Work = typeof work extends fc.Arbitrary<infer T> ? T : never;

/** Asks about every drawing that comes up, with the records of the answer to the one before. */
function asking(
  { wished: wanted, pins: pinned, parts }: Work,
  ask: (question: StudyQuestion) => StudyAnswer,
) {
  let { drawing } = freshBlock('Harbour');
  let records: StudyQuestion['records'] = [];
  const study = (of: Drawing) => {
    const wishes: SewingWishes = { ...NO_WISHES, ...wanted, pins: pinsOn(records, pinned) };
    return ask({
      drawing: of,
      records,
      named: namedPatches({ sewing: wishes }),
      wishes,
      limits: SHAPE_LIMITS,
    });
  };
  const done = (now: Drawing) => {
    drawing = now;
    ({ records } = study(now));
  };
  for (const [steps, { line, moves }] of parts) {
    for (const step of steps) {
      const edited = EDITS[step.kind](drawing, step);
      if (edited.ok && records.length < MANY) done(edited.value);
    }
    const lines = [...drawnLines(drawing).values()];
    const { id, to } = lines[line % lines.length]!;
    for (const [index, [x, y]] of moves.entries()) {
      const moved = putLineEnd(drawing, id, 'to', { x: to.x + x, y: to.y + y });
      if (!moved.ok) continue;
      if (index === moves.length - 1) done(moved.value);
      else study(moved.value);
    }
  }
}

const pinsOn = (records: StudyQuestion['records'], pinned: Work['pins']): readonly PinRecord[] =>
  pinned.flatMap(({ kind, of }): PinRecord[] => {
    const [a, b] = of.map((index) => records[index]?.id);
    if (a === undefined || b === undefined) return [];
    return [kind === 'first' ? { kind, patch: a } : { kind, patches: [a, b] }];
  });

/** What a recalled plan has to have in common with one of its own; see {@link LastAssembly}. */
const essence = ({
  verdict,
  sections,
  provenLeast,
  figures,
  conflict,
  undecided,
  findings,
  unheld,
}: SewingPlan) => ({
  verdict,
  foundations: sections.length,
  provenLeast,
  matchPoints: figures.matchPoints,
  patches: sections.map(({ order }) => order.toSorted((a, b) => a - b).join()).toSorted(),
  conflict,
  undecided,
  findings,
  unheld,
});

it('what is recalled while a maker draws is as good as what is worked out afresh', () => {
  const recall = vi.spyOn(LastAssembly.prototype, 'recall');
  let recalled = 0;
  let others = 0;
  fc.assert(
    fc.property(work, (done) => {
      const studies = new QuickStudies();
      asking(done, (question) => {
        recall.mockClear();
        const answer = studies.answer(question);
        const isRecalled = recall.mock.results.some(({ value }) => value !== null);
        const fresh = new QuickStudies().answer(question);
        expect({ ...answer, plan: null }).toEqual({ ...fresh, plan: null });
        if (isRecalled) {
          recalled += 1;
          expect(essence(answer.plan!)).toEqual(essence(fresh.plan!));
        } else {
          others += 1;
          expect(answer.plan).toEqual(fresh.plan);
        }
        return answer;
      });
    }),
    { seed: 20_261_129, numRuns: 40 },
  );
  recall.mockRestore();
  expect(recalled).toBeGreaterThan(100);
  expect(others).toBeGreaterThan(200);
});

it('the page and the worker give the same answers, however much the page has practised', async () => {
  await import('./study.worker.ts');
  const there = worker.offered as StudyWorker;
  let answered = 0;
  fc.assert(
    fc.property(work, fc.infiniteStream(fc.nat(3)), (done, pauses) => {
      asking(done, (question) => {
        const here = answerInPage(question)!;
        // As it arrives: what crosses to the worker and back is copied.
        const copy = structuredClone(there.study(structuredClone(question)));
        expect(structuredClone(here)).toEqual(copy);
        answered += 1;
        if (here.arrangement !== null && pauses.next().value === 0) {
          practiseInPage({ ...question, records: here.records });
          vi.advanceTimersByTime(1000);
        }
        return here;
      });
    }),
    { seed: 20_261_129, numRuns: 20 },
  );
  expect(answered).toBeGreaterThan(200);
});
