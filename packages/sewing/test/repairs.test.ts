import {
  type Arrangement,
  arrange,
  type Drawing,
  drawingFromSegments,
  type Finding,
  type RepairPrice,
} from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { touching as touchingOf } from '../src/contact.ts';
import {
  planSewing,
  type ReadyRepair,
  type RepairKind,
  repairsFor,
  replay,
  sewingReport,
  shapeFindings,
  withRepairs,
} from '../src/index.ts';
import { interlockedFindings } from '../src/interlock.ts';
import { grownSeams } from './grown-seams.ts';
import { cellsOf, randomFrom, windmill } from './windmills.ts';

const SIZE = 12;
const SQUARE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: SIZE, y: 0 },
  { x: SIZE, y: SIZE },
  { x: 0, y: SIZE },
];
const WHOLE = { left: 0, top: 0, right: SIZE, bottom: SIZE };

function arranged(drawing: Drawing): Arrangement {
  const result = arrange(drawing);
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
}

const interlocked = (arrangement: Arrangement): readonly Finding[] =>
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
function expectKept(before: Arrangement, drawing: Drawing, repair: ReadyRepair): Arrangement {
  expectSound(repair.drawing);
  const after = arranged(repair.drawing);
  expect(repair.price.patches).toBe(after.patches.length - before.patches.length);
  expect(repair.price.seamLength).toBeCloseTo(seamLength(after) - seamLength(before), 6);
  expect(repair.price.smallestPatch).toBeCloseTo(Math.min(...after.patches.map(({ area }) => area)), 9);
  expect(errors(after).length).toBeLessThanOrEqual(errors(before).length);
  expect(repair.drawing.outline).toEqual(drawing.outline);
  return after;
}

function expectBestFirst(repairs: readonly ReadyRepair[]): void {
  for (const [i, { price }] of repairs.entries()) {
    const next = repairs[i + 1]?.price;
    if (next === undefined) return;
    const ranked = (x: RepairPrice) => [x.patches, x.seamLength, -x.smallestPatch];
    const [p, q] = [ranked(price), ranked(next)];
    const first = p.findIndex((v, k) => v !== q[k]);
    if (first >= 0) expect(p[first]!).toBeLessThan(q[first]!);
  }
}

/** Adds lines to a drawing as an outside program would: bare coordinates. */
const withLines = (segments: readonly Segment[], { splits }: ReadyRepair): Drawing =>
  drawingFromSegments(SQUARE, [...segments, ...splits.map(([a, b]) => ({ a, b }))]);

describe('repairs of interlocked patches', () => {
  it('500 windmills of three to six seams in larger blocks are mended, by every repair that is offered', () => {
    let offered = 0;
    for (let seed = 1; seed <= 500; seed += 1) {
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
        offered += 1;
        const after = expectKept(before, drawing, repair);
        const plan = planSewing(after, { effort: 0 });
        expect(plan.verdict, `seed ${seed}: ${repair.message}`).not.toBe('not sewable');
        expect(replay(sewingReport(after, plan))).toEqual([]);
        if (repair.splits.length === 0) continue;
        const added = planSewing(arranged(withLines(segments, repair)), { effort: 0 });
        expect(added.verdict, `seed ${seed}: ${repair.message}`).not.toBe('not sewable');
      }
    }
    expect(offered).toBeGreaterThan(2000);
  });

  it('one after the other they mend any drawing', () => {
    let mended = 0;
    for (let seed = 1; seed <= 30; seed += 1) {
      const random = randomFrom(seed);
      let drawing = drawingFromSegments(SQUARE, grownSeams(4 + Math.floor(random() * 20), WHOLE, random));
      let arrangement = arranged(drawing);
      let findings = interlocked(arrangement);
      for (let step = 0; findings.length > 0; step += 1) {
        // Rings may have been hidden behind others, but there is an end to them.
        expect(step, `seed ${seed}`).toBeLessThan(30);
        const repairs = repairsFor(drawing, arrangement, findings[0]!);
        expect(repairs.length, `seed ${seed}: ${findings[0]!.message}`).toBeGreaterThan(0);
        expectBestFirst(repairs);
        const after = expectKept(arrangement, drawing, repairs[0]!);
        drawing = repairs[0]!.drawing;
        arrangement = after;
        findings = interlocked(after);
        mended += 1;
      }
      expect(planSewing(arrangement, { effort: 0 }).verdict, `seed ${seed}`).not.toBe('not sewable');
    }
    expect(mended).toBeGreaterThan(40);
  });

  it('are the same every time, and say each what it alone does', () => {
    const random = randomFrom(3);
    const drawing = drawingFromSegments(SQUARE, grownSeams(12, WHOLE, random));
    const arrangement = arranged(drawing);
    const [finding] = interlocked(arrangement);
    const repairs = repairsFor(drawing, arrangement, finding!);
    expect(repairsFor(drawing, arrangement, finding!)).toEqual(repairs);
    expect(new Set(repairs.map(({ message }) => message)).size).toBe(repairs.length);
  });
});

describe('repairs of other findings', () => {
  const l = (x1: number, y1: number, x2: number, y2: number): Segment => ({
    a: { x: x1, y: y1 },
    b: { x: x2, y: y2 },
  });

  const all = (arrangement: Arrangement): readonly Finding[] => [
    ...arrangement.findings,
    ...interlocked(arrangement),
    ...shapeFindings(arrangement),
  ];

  /** Every repair of every finding of a kind, each checked against the changed drawing; their kinds. */
  function repairsOf(kind: string, segments: readonly Segment[]): RepairKind[] {
    const drawing = drawingFromSegments(SQUARE, segments);
    const before = arranged(drawing);
    const count = (arrangement: Arrangement, some: (finding: Finding) => boolean) =>
      all(arrangement).filter(some).length;
    const findings = all(before).filter((finding) => finding.kind === kind);
    expect(findings.length).toBeGreaterThan(0);
    return findings.flatMap((finding) => {
      const repairs = repairsFor(drawing, before, finding);
      expectBestFirst(repairs);
      return repairs.map((repair) => {
        const after = expectKept(before, drawing, repair);
        expect(
          count(after, (f) => f.kind === kind),
          repair.message,
        ).toBeLessThan(count(before, (f) => f.kind === kind));
        // A line that frees one island may reach another, whose corners are then told of as what they are.
        const unsewn = ({ severity }: Finding) => severity === 'error';
        expect(count(after, unsewn), repair.message).toBeLessThanOrEqual(count(before, unsewn));
        if (repair.splits.length > 0) {
          const added = arranged(withLines(segments, repair));
          expect(
            count(added, (f) => f.kind === kind),
            repair.message,
          ).toBeLessThan(count(before, (f) => f.kind === kind));
        }
        return repair.kind;
      });
    });
  }

  const edge = l(0, 6, 12, 6);

  it('loose ends: trim them, or let them run on', () => {
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 5)])).toEqual(['trim', 'extend']);
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 6.5)])).toEqual(['trim', 'extend']);
    // Two stretches of one line, one of them loose.
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 6), l(4, 6, 4, 8)])).toEqual(['trim', 'extend']);
  });

  it('islands: let their sides run on', () => {
    const box = (left: number, top: number, right: number, bottom: number) => [
      l(left, top, right, top),
      l(right, top, right, bottom),
      l(right, bottom, left, bottom),
      l(left, bottom, left, top),
    ];
    for (const drawn of [
      box(3, 3, 9, 9),
      [edge, ...box(3, 1, 9, 4)],
      [l(3, 3, 9, 4), l(9, 4, 5, 9), l(5, 9, 3, 3)],
      [...box(3, 3, 9, 9), l(3, 3, 9, 9)],
      [edge, ...box(2, 1, 5, 4), ...box(7, 2, 10, 5)],
    ]) {
      const kinds = repairsOf('island', drawn);
      expect(new Set(kinds)).toEqual(new Set(['reach']));
      expect(kinds.length).toBeGreaterThan(3);
    }
  });

  it('lines that nearly line up: line them up', () => {
    const jog = [edge, l(4, 0, 4, 6), l(4.06, 6, 4.06, 12)];
    expect(repairsOf('near-line-up', jog)).toEqual(['line-up']);
    // With a line that ends on each of the two, and comes along.
    expect(repairsOf('near-line-up', [...jog, l(0, 3, 4, 3), l(4.06, 9, 12, 9)])).toEqual(['line-up']);
    const bend = [l(0, 6, 6, 6.1), l(6, 6.1, 12, 6)];
    expect(repairsOf('near-line-up', bend)).toEqual(['line-up']);
    expect(repairsOf('near-line-up', [...bend, l(3, 0, 3, 6.05), l(6, 6.1, 6, 12)])).toEqual(['line-up']);
  });

  it('slivers, sharp points and small patches: join them to a neighbour', () => {
    expect(repairsOf('sliver', [edge, l(0, 6.1, 12, 6.1)])).toEqual(['merge', 'merge']);
    expect(repairsOf('sliver', [edge, l(0, 6.1, 12, 6.1), l(5, 0, 5, 6)])).toContain('merge');
    expect(repairsOf('sharp-point', [l(0, 0, 12, 2)])).toEqual(['merge', 'slide']);
  });

  it('what is not known to be mended stays as it is, and an effort that is spent tells nothing', () => {
    const drawing = drawingFromSegments(SQUARE, [edge, l(0, 6.1, 12, 6.1), l(4, 0, 4, 5)]);
    const arrangement = arranged(drawing);
    const findings = all(arrangement);
    expect(withRepairs(drawing, arrangement, findings, 0)).toEqual(findings);
    const mended = withRepairs(drawing, arrangement, findings);
    expect(mended.map(({ kind, repairs }) => [kind, repairs.length])).toEqual([
      ['loose-end', 2],
      ['sliver', 2],
    ]);
  });
});
