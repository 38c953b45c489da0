import {
  type Arrangement,
  arrange,
  type Drawing,
  drawingFromSegments,
  type Finding,
  plainWords,
} from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { expect } from 'vitest';
import { touching as touchingOf } from '../src/contact.ts';
import { planSewing, type ReadyRepair, repairsFor, replay, sewingReport } from '../src/index.ts';
import { interlockedFindings } from '../src/interlock.ts';
import { grownSeams } from './grown-seams.ts';
import { cellsOf, randomFrom, windmill } from './windmills.ts';

const SIZE = 12;
export const SQUARE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: SIZE, y: 0 },
  { x: SIZE, y: SIZE },
  { x: 0, y: SIZE },
];
export const WHOLE = { left: 0, top: 0, right: SIZE, bottom: SIZE };

export function arranged(drawing: Drawing): Arrangement {
  const result = arrange(drawing);
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

export const interlocked = (arrangement: Arrangement): readonly Finding[] =>
  interlockedFindings(arrangement, touchingOf(arrangement), [arrangement.patches.map(({ index }) => index)]);

const errors = (arrangement: Arrangement) =>
  arrangement.findings.filter(({ severity }) => severity === 'error');

const seamLength = ({ edges, vertices }: Arrangement): number =>
  edges
    .filter(({ left, right }) => left >= 0 && right >= 0)
    .map(({ from, to }) => [vertices[from]!.at, vertices[to]!.at] as const)
    .reduce((sum, [p, q]) => sum + Math.hypot(q.x - p.x, q.y - p.y), 0);

/** That a drawing holds together: its points are there, its facts true, and no point hangs on itself. */
function expectSound({ points, outline, splits }: Drawing): void {
  const ends = new Map<string, readonly string[]>([
    ...outline.map((id, i) => [`edge:${id}`, [id, outline[(i + 1) % outline.length]!]] as const),
    ...splits.map(({ id, from, to }) => [id, [from, to]] as const),
  ]);
  expect(ends.size).toBe(outline.length + splits.length);
  const used = new Set([...ends.values()].flat());
  expect([...used].sort()).toEqual(Object.keys(points).sort());
  const hangsOnItself = (start: string): boolean => {
    const open = [start];
    const seen = new Set<string>();
    for (const id of open) {
      for (const line of points[id]!.on ?? []) {
        for (const end of ends.get(line)!) {
          if (end === start) return true;
          if (!seen.has(end)) open.push(end);
          seen.add(end);
        }
      }
    }
    return false;
  };
  for (const id of used) expect(hangsOnItself(id), id).toBe(false);
}

/** What a repair says of itself, against what the changed drawing shows. */
export function expectKept(before: Arrangement, drawing: Drawing, repair: ReadyRepair): Arrangement {
  expectSound(repair.drawing);
  const after = arranged(repair.drawing);
  expect(repair.price.patches).toBe(after.patches.length - before.patches.length);
  expect(repair.price.seamLength).toBeCloseTo(seamLength(after) - seamLength(before), 6);
  expect(repair.price.smallestPatch).toBeCloseTo(Math.min(...after.patches.map(({ area }) => area)), 9);
  expect(errors(after).length).toBeLessThanOrEqual(errors(before).length);
  expect(repair.drawing.outline).toEqual(drawing.outline);
  const left = new Set(repair.drawing.splits.map(({ id }) => id));
  const linesGone = drawing.splits.filter(({ id }) => !left.has(id)).length;
  if (repair.price.patches < 0 || linesGone > 0)
    expect(repair.takesAway, plainWords(repair.message)).toBe(true);
  if (repair.takesAway) expect(repair.splits).toEqual([]);
  return after;
}

export function expectBestFirst(repairs: readonly ReadyRepair[]): void {
  for (const [i, repair] of repairs.entries()) {
    const next = repairs[i + 1];
    if (next === undefined) return;
    const ranked = ({ takesAway, price }: ReadyRepair) => [
      Number(takesAway),
      price.patches,
      price.seamLength,
      -price.smallestPatch,
    ];
    const [p, q] = [ranked(repair), ranked(next)];
    const first = p.findIndex((v, k) => v !== q[k]);
    if (first >= 0) expect(p[first]!).toBeLessThan(q[first]!);
  }
}

/** Adds lines to a drawing as an outside program would: bare coordinates. */
export const withLines = (segments: readonly Segment[], { splits }: ReadyRepair): Drawing =>
  drawingFromSegments(SQUARE, [...segments, ...splits.map(([a, b]) => ({ a, b }))]);

/** A windmill of three to six seams in a larger block: every repair of it, each re-solved, with its lines added alone too. */
export function expectWindmillMended(seed: number): number {
  const random = randomFrom(seed);
  const k = 3 + Math.floor(random() * 4);
  const { cells, lines } = cellsOf(1 + Math.floor(random() * 3), 1 + Math.floor(random() * 3), SIZE);
  const cell = cells[Math.floor(random() * cells.length)]!;
  const segments = [...lines, ...windmill(k, cell, random).seams];
  const drawing = drawingFromSegments(SQUARE, segments);
  const before = arranged(drawing);
  const repairs = repairsFor(drawing, before, interlocked(before)[0]!);
  expect(repairs.length, `seed ${seed}`).toBeGreaterThan(0);
  expectBestFirst(repairs);
  for (const repair of repairs) {
    const after = expectKept(before, drawing, repair);
    const plan = planSewing(after, { effort: 0 });
    expect(plan.verdict, `seed ${seed}: ${plainWords(repair.message)}`).not.toBe('not sewable');
    expect(replay(sewingReport(after, plan))).toEqual([]);
    if (repair.splits.length === 0) continue;
    const added = planSewing(arranged(withLines(segments, repair)), { effort: 0 });
    expect(added.verdict, `seed ${seed}: ${plainWords(repair.message)}`).not.toBe('not sewable');
  }
  return repairs.length;
}

/** Seams that stop at each other everywhere: the best repair of the first finding, again and again, until all is sewable. */
export function expectMendedInTheEnd(seed: number, most: number): number {
  const random = randomFrom(seed);
  let drawing = drawingFromSegments(SQUARE, grownSeams(4 + Math.floor(random() * most), WHOLE, random));
  let arrangement = arranged(drawing);
  let findings = interlocked(arrangement);
  let steps = 0;
  for (; findings.length > 0; steps += 1) {
    // Rings may have been hidden behind others, but there is an end to them.
    expect(steps, `seed ${seed}`).toBeLessThan(30);
    const repairs = repairsFor(drawing, arrangement, findings[0]!);
    expect(repairs.length, `seed ${seed}: ${plainWords(findings[0]!.message)}`).toBeGreaterThan(0);
    expectBestFirst(repairs);
    const after = expectKept(arrangement, drawing, repairs[0]!);
    drawing = repairs[0]!.drawing;
    arrangement = after;
    findings = interlocked(after);
  }
  expect(planSewing(arrangement, { effort: 0 }).verdict, `seed ${seed}`).not.toBe('not sewable');
  return steps;
}
