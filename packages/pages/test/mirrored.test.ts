import type { Polygon, Segment } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foundationsOf } from '../src/foundation/foundation.ts';
import { wantedFoundations } from '../src/foundation/wanted.ts';
import { type FoundationJob, type Print, printsOf } from '../src/index.ts';
import { checkJob } from '../src/job.ts';
import { type Block, block, house, rectangle, usual, windmill } from './blocks.ts';
import { laid } from './laid.ts';
import { randomBlock } from './random-blocks.ts';
import { moorings, star, whirl } from './repeated.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A shape with lines in it, all of it as points: corners of the outline, then both ends of each line in order. */
interface Figure {
  readonly outline: readonly Spot[];
  readonly lines: readonly (readonly [Spot, Spot])[];
}

/** Two shapes of one printed line's width may differ by as much. */
const CLOSE = 1 / 64;

const near = (p: Spot, q: Spot): boolean => Math.hypot(p.x - q.x, p.y - q.y) < CLOSE;

/** Whether one figure can be laid on the other by turning and moving it alone, line k on line k. */
function laysOn(from: Figure, to: Figure): boolean {
  const n = from.outline.length;
  if (to.outline.length !== n || to.lines.length !== from.lines.length) return false;
  const [a, b] = [from.outline[0]!, from.outline[1]!];
  return to.outline.some((p, shift) => {
    const q = to.outline[(shift + 1) % n]!;
    const turn = Math.atan2(q.y - p.y, q.x - p.x) - Math.atan2(b.y - a.y, b.x - a.x);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const carried = ({ x, y }: Spot): Spot => ({
      x: p.x + cos * (x - a.x) - sin * (y - a.y),
      y: p.y + sin * (x - a.x) + cos * (y - a.y),
    });
    return (
      from.outline.every((corner, i) => near(carried(corner), to.outline[(shift + i) % n]!)) &&
      from.lines.every(([u, v], k) => {
        const [s, t] = to.lines[k]!;
        const [cu, cv] = [carried(u), carried(v)];
        return (near(cu, s) && near(cv, t)) || (near(cu, t) && near(cv, s));
      })
    );
  });
}

/** What has to be printed to sew a section of a block as drawn, or of its mirror image: the mirror image of that. */
function needed({ outline, sewLines }: Section, mirroredBlock: boolean): Figure {
  const on = ({ x, y }: Spot): Spot => ({ x: mirroredBlock ? x : -x, y });
  const corners = outline.map(on);
  return {
    outline: mirroredBlock ? corners : corners.reverse(),
    lines: sewLines.map(({ a, b }) => [on(a), on(b)]),
  };
}

const figureOf = (outline: Polygon<'print'>, lines: readonly Segment<'print'>[]): Figure => ({
  outline,
  lines: lines.map(({ a, b }) => [a, b]),
});

/** Sections that a foundation says it is for, as letter and face. */
const usesOf = ({ letters, mirrored }: Print) =>
  letters.map((label) => {
    const [letter, other] = label.split(' ');
    return { letter: letter!, mirroredBlock: mirrored !== (other === '(mirrored)') };
  });

/** Every section of every block has its print, of its own shape, and there are as many prints as that takes. */
function expectEnough(job: FoundationJob): readonly Print[] {
  const { prints } = laid(job);
  const checked = checkJob(job);
  if (!checked.ok) throw new Error(checked.problem.what);
  const foundations = wantedFoundations(checked.value).map((wanted) => foundationsOf(checked.value)(wanted));
  const { copies, mirrored = 0 } = job.sizes[0]!;
  const uses = prints.flatMap((print, i) => usesOf(print).map((use) => ({ ...use, print, i })));
  const counted = prints.map(() => 0);
  for (const section of job.plan.sections)
    for (const [mirroredBlock, blocks] of [
      [false, copies],
      [true, mirrored],
    ] as const) {
      const own = uses.filter((use) => use.letter === section.letter && use.mirroredBlock === mirroredBlock);
      expect(own).toHaveLength(blocks === 0 ? 0 : 1);
      for (const { i } of own) {
        counted[i]! += blocks;
        const { outline, sewLines } = foundations[i]!;
        expect(laysOn(needed(section, mirroredBlock), figureOf(outline, sewLines))).toBe(true);
      }
    }
  expect(prints.map(({ count }) => count)).toEqual(counted);
  return prints;
}

/** Planks one above the other: the mirror image of each is itself. */
const planks = (): Block =>
  block(rectangle(4, 3), [
    [0, 0.5, 4, 0.5],
    [0, 1.75, 4, 1.75],
  ]);

const counts = (prints: readonly Print[]) =>
  prints.map(({ key, letters, count }) => `${key}: ${letters.join(', ')} × ${count}`);

const sized = (of: Block, copies: number, mirrored: number, shareTemplates: boolean): FoundationJob =>
  usual(of, 'Harbour', { sizes: [{ scale: 1, copies, mirrored }], shareTemplates });

describe('blocks of both faces', () => {
  test('each section has a mirrored foundation beside its own', () => {
    const prints = expectEnough(sized(whirl(), 2, 3, false));
    expect(counts(prints)).toEqual([
      'A: A × 2',
      'B: B × 2',
      'C: C × 2',
      'D: D × 2',
      'A-mirrored: A × 3',
      'B-mirrored: B × 3',
      'C-mirrored: C × 3',
      'D-mirrored: D × 3',
    ]);
    expect(prints.map(({ mirrored }) => mirrored)).toEqual([...Array(4).fill(false), ...Array(4).fill(true)]);
  });

  test('what is alike shares, on each face', () => {
    expect(counts(expectEnough(sized(whirl(), 2, 3, true)))).toEqual([
      'A: A, B, C, D × 8',
      'A-mirrored: A, B, C, D × 12',
    ]);
  });

  test('what is mirrored in the block itself takes the other face’s prints', () => {
    // A and D are alike, B and C their mirror images: 2 × 2 + 3 × 2 of each.
    expect(counts(expectEnough(sized(moorings(), 2, 3, true)))).toEqual([
      'A: A, D, B (mirrored), C (mirrored) × 10',
      'B: B, C, A (mirrored), D (mirrored) × 10',
    ]);
  });

  test('what is its own mirror image is printed once', () => {
    expect(counts(expectEnough(sized(planks(), 2, 3, true)))).toEqual(['A: A, A (mirrored) × 5']);
    expect(counts(expectEnough(sized(planks(), 2, 3, false)))).toEqual(['A: A × 2', 'A-mirrored: A × 3']);
  });

  test('an outline that is its own mirror image is not enough: the numbers would change places', () => {
    expect(counts(expectEnough(sized(house(), 1, 1, true)))).toEqual(['A: A × 1', 'A-mirrored: A × 1']);
  });

  test('only mirrored ones', () => {
    expect(counts(expectEnough(sized(moorings(), 0, 3, true)))).toEqual([
      'A-mirrored: A, D × 6',
      'B-mirrored: B, C × 6',
    ]);
  });

  test('beside partial seams nothing is shared', () => {
    const prints = expectEnough(sized(windmill(6), 2, 1, true));
    // The oblongs A and D are sewn on after all; they are their own mirror images.
    expect(counts(prints)).toEqual([
      'A: A, D, A (mirrored), D (mirrored) × 6',
      'B: B × 2',
      'C: C × 2',
      'E: E × 2',
      'B-mirrored: B × 1',
      'C-mirrored: C × 1',
      'E-mirrored: E × 1',
    ]);
  });

  test('random blocks', () => {
    fc.assert(
      fc.property(
        randomBlock(6),
        fc.nat(5),
        fc.integer({ min: 1, max: 5 }),
        fc.boolean(),
        (of, copies, mirrored, share) => {
          expectEnough(sized(of, copies, mirrored, share));
        },
      ),
      { numRuns: 60, seed: 5 },
    );
  });

  test('stars, of which a part is turned and a part mirrored', () => {
    for (const rays of [4, 6]) expectEnough(sized(star(rays), 2, 3, true));
  });
});

test('a sheet is printed as often as the foundation on it that is wanted most', () => {
  const plan = laid(
    usual(planks(), 'Planks', {
      sizes: [
        { scale: 0.5, copies: 2 },
        { scale: 0.75, copies: 7 },
        { scale: 4, copies: 3 },
      ],
    }),
  );
  const { times, sheets } = printsOf(plan);
  // The two small ones stand on one sheet; the large one is cut into tiles, each printed three times.
  const tiles = plan.prints[2]!.sheets.length;
  expect(tiles).toBeGreaterThan(1);
  expect([...times].sort()).toEqual([...Array(tiles).fill(3), 7]);
  expect(sheets).toBe(7 + 3 * tiles);
  const words = plan.sheets.map(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' && mark.role === 'footer' ? [mark.content] : [])),
  );
  words.forEach((said, i) => {
    expect(said).toContain(`page ${i + 1} of ${plan.sheets.length}, print ${times[i]} times`);
  });
});
