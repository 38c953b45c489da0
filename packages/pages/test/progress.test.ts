import { expect, test } from 'vitest';
import { layFoundations, type Progress, writePdf } from '../src/index.ts';
import { usual } from './blocks.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { star } from './repeated.ts';

const sizes = Array.from({ length: 12 }, (_, i) => ({ scale: 0.4 + i / 20, copies: 1 }));
const job = usual(star(6), 'Harbour star', { sizes });

/** A report that keeps what it is told, in steps `done/of`. */
function listener(): { report: Progress; told: Map<string, string[]> } {
  const told = new Map<string, string[]>();
  const report: Progress = (done, of, what) => {
    told.set(what, [...(told.get(what) ?? []), `${done}/${of}`]);
    expect(done).toBeGreaterThanOrEqual(0);
    expect(done).toBeLessThanOrEqual(of);
  };
  return { report, told };
}

test('whoever lays out and writes many foundations is told how far it is, step by step', async () => {
  const { report, told } = listener();
  const result = layFoundations(job, report);
  expect(result).toEqual(layFoundations(job));
  const foundations = sizes.length * job.plan.sections.length;
  expect(told.get('drawing')).toEqual(Array.from({ length: foundations }, (_, i) => `${i}/${foundations}`));
  expect(told.get('packing')!.at(-1)).toBe(`${foundations}/${foundations}`);
  const plan = laid(job);
  expect(await writePdf(plan, pageFonts, report)).toEqual(await writePdf(plan, pageFonts));
  const { length } = plan.sheets;
  expect(told.get('writing')).toEqual(Array.from({ length }, (_, i) => `${i}/${length}`));
});

test.each(['drawing', 'packing', 'saving sheets', 'writing'] as const)(
  'a report that throws ends the job: %s',
  async (when) => {
    let after = 0;
    const report: Progress = (_, __, what) => {
      if (what !== when) return;
      after++;
      throw new Error('cancelled');
    };
    await expect(async () => {
      const result = layFoundations(job, report);
      if (result.ok) await writePdf(result.value, pageFonts, report);
    }).rejects.toThrow('cancelled');
    expect(after).toBe(1);
  },
);

test('the plan tells how many sheets there must be at least, and how full they are', () => {
  const { sheets, packing } = laid(job);
  expect(packing!.sheets).toBe(sheets.length);
  expect(packing!.atLeast).toBeLessThanOrEqual(sheets.length);
  expect(packing!.atLeast).toBeGreaterThan(sheets.length / 2);
  expect(packing!.areaShare).toBeGreaterThan(0.5);
  expect(packing!.areaShare).toBeLessThanOrEqual(1);
});

test('a wider gap is kept, and what is to stay upright is not turned', () => {
  const wide = laid({ ...job, gap: 0.5 });
  expect(wide.sheets.length).toBeGreaterThanOrEqual(laid(job).sheets.length);
  // The arrow to the block's top: its shaft runs from foot to head.
  const shafts = (plan: typeof wide) =>
    plan.sheets
      .flatMap(({ marks }) => marks)
      .flatMap((mark) =>
        mark.kind === 'path' && mark.role === 'caption' && mark.points.length === 2 && !mark.closed
          ? [mark.points]
          : [],
      );
  const upright = shafts(laid({ ...job, keepUpright: true }));
  expect(upright.length).toBeGreaterThan(sizes.length);
  for (const [foot, head] of upright) expect(head!.y).toBeLessThan(foot!.y);
  expect(layFoundations({ ...job, gap: 0 })).toMatchObject({
    ok: false,
    problem: { where: 'gap between foundations' },
  });
});
