import { type Arrangement, drawingFromSegments, type Finding, plainWords } from '@seamwright/arrangement';
import type { Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { type RepairKind, repairsFor, shapeFindings, withRepairs } from '../src/index.ts';
import { grownSeams } from './grown-seams.ts';
import {
  arranged,
  expectBestFirst,
  expectKept,
  expectMendedInTheEnd,
  expectWindmillMended,
  interlocked,
  SQUARE,
  WHOLE,
  withLines,
} from './repairing.ts';
import { randomFrom } from './windmills.ts';

describe('repairs of interlocked patches', () => {
  it('500 windmills of three to six seams in larger blocks are mended, by every repair that is offered', () => {
    let offered = 0;
    for (let seed = 1; seed <= 500; seed += 1) offered += expectWindmillMended(seed);
    expect(offered).toBeGreaterThan(2000);
  });

  it('one after the other they mend any drawing', () => {
    let mended = 0;
    for (let seed = 1; seed <= 12; seed += 1) mended += expectMendedInTheEnd(seed, 10);
    expect(mended).toBeGreaterThan(10);
  });

  it('are the same every time, and say each what it alone does', () => {
    const random = randomFrom(3);
    const drawing = drawingFromSegments(SQUARE, grownSeams(12, WHOLE, random));
    const arrangement = arranged(drawing);
    const [finding] = interlocked(arrangement);
    const repairs = repairsFor(drawing, arrangement, finding!);
    expect(repairsFor(drawing, arrangement, finding!)).toEqual(repairs);
    expect(new Set(repairs.map(({ message }) => plainWords(message))).size).toBe(repairs.length);
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
          plainWords(repair.message),
        ).toBeLessThan(count(before, (f) => f.kind === kind));
        // A line that frees one island may reach another, whose corners are then told of as what they are.
        const unsewn = ({ severity }: Finding) => severity === 'error';
        expect(count(after, unsewn), plainWords(repair.message)).toBeLessThanOrEqual(count(before, unsewn));
        if (repair.splits.length > 0) {
          const added = arranged(withLines(segments, repair));
          expect(
            count(added, (f) => f.kind === kind),
            plainWords(repair.message),
          ).toBeLessThan(count(before, (f) => f.kind === kind));
        }
        return repair.kind;
      });
    });
  }

  const edge = l(0, 6, 12, 6);

  it('loose ends: trim them, or let them run on', () => {
    // One that stops short of the next line was meant to be there: it runs on, before it is taken away.
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 5)])).toEqual(['extend', 'trim']);
    // One that runs a little past the line it meets stays, without its tail; one that runs on for more than it lacks runs on.
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 6.5)])).toEqual(['trim', 'extend']);
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 10)])).toEqual(['extend', 'trim']);
    // Two stretches of one line, one of them loose.
    expect(repairsOf('loose-end', [edge, l(4, 0, 4, 6), l(4, 6, 4, 8)])).toEqual(['extend', 'trim']);
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
    expect(repairsOf('sharp-point', [l(0, 0, 12, 2)])).toEqual(['slide', 'merge']);
  });

  it('of many that keep all lines not all are told: there is room for one that takes a line away', () => {
    const fan = [5, 6, 7, 8, 9, 10].map((y) => l(0, y, 3, 12));
    const [least, ...others] = repairsOf('sharp-point', [l(0, 0, 12, 2), ...fan]).reverse();
    expect(least).toBe('merge');
    expect(others).toEqual(['slide', 'slide', 'slide', 'slide', 'slide']);
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
