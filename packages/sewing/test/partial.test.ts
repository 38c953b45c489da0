import type { Arrangement } from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import type { Joinery } from '../src/assemble.ts';
import { touching as touchingOf } from '../src/contact.ts';
import { crossingsOf } from '../src/crossings.ts';
import { planSewing, type ReplayedReport, replay, type SewingPlan, sewingReport } from '../src/index.ts';
import { assembleWithPartialSeams } from '../src/partial/assemble-partial.ts';
import { setInFindings } from '../src/partial/set-in.ts';
import { writePartialPlan } from '../src/partial/write-partial.ts';
import { NO_WILL } from '../src/will.ts';
import { arrangedIn, rectangle } from './grid-block.ts';
import { grownSeams } from './grown-seams.ts';
import { knownDrawings } from './read-drawings.ts';
import { cellsOf, levelBetween, nestedWindmills, randomFrom, windmill } from './windmills.ts';

const SIZE = 12;
const SQUARE = rectangle(SIZE, SIZE);
const WHOLE = { left: 0, top: 0, right: SIZE, bottom: SIZE };

const arranged = (segments: readonly Segment[], outline: readonly Point[] = SQUARE): Arrangement =>
  arrangedIn(outline, segments);

/** The plan with partial seams; null where they do not suffice. */
function partialPlan(arrangement: Arrangement): SewingPlan | null {
  const touching = touchingOf(arrangement);
  const joinery: Joinery = { arrangement, touching, crossings: crossingsOf(arrangement) };
  const made = assembleWithPartialSeams(
    joinery,
    arrangement.patches.map(({ index }) => index),
  );
  if (made === null) return null;
  const { sections, joins, stuck } = writePartialPlan(joinery, made, NO_WILL, new Map());
  expect(stuck).toEqual([]);
  const straight = planSewing(arrangement, { effort: 0 });
  const verdict = straight.verdict === 'not sewable' ? 'partial seams' : straight.verdict;
  return { ...straight, verdict, sections, joins, unheld: [] };
}

const partialJoins = ({ joins }: SewingPlan) => joins.filter(({ partial }) => partial);

const cycleOfFive = () => {
  const { outline, segments } = knownDrawings().find(({ name }) => name === 'cycle-of-five')!;
  return arranged(segments, outline);
};

describe('partial seams', () => {
  it('sew four oblongs round a square: one seam half-way, round, and closed last', () => {
    const arrangement = cycleOfFive();
    const plan = partialPlan(arrangement)!;
    expect(plan.sections).toHaveLength(5);
    expect(plan.joins.map(({ partial }) => partial)).toEqual([true, false, false, false]);
    expect(plan.joins[0]!.open!.closedAfter).toBe(3);
    expect(replay(sewingReport(arrangement, plan))).toEqual([]);
  });

  it('sew every one of 500 windmills in larger blocks, with one', () => {
    for (let seed = 1; seed <= 500; seed += 1) {
      const random = randomFrom(seed);
      const k = 3 + Math.floor(random() * 4);
      const { cells, lines } = cellsOf(1 + Math.floor(random() * 3), 1 + Math.floor(random() * 3), SIZE);
      const cell = cells[Math.floor(random() * cells.length)]!;
      const arrangement = arranged([...lines, ...windmill(k, cell, random).seams]);
      const plan = partialPlan(arrangement);
      expect(plan, `seed ${seed}`).not.toBeNull();
      expect(partialJoins(plan!), `seed ${seed}`).toHaveLength(1);
      expect(replay(sewingReport(arrangement, plan!)), `seed ${seed}`).toEqual([]);
    }
  });

  it('sew windmills side by side and one inside the other, with one for each', () => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const { segments, mills } = nestedWindmills(SIZE, randomFrom(1000 + seed));
      const arrangement = arranged(segments);
      const plan = partialPlan(arrangement);
      expect(plan, `seed ${seed}`).not.toBeNull();
      expect(partialJoins(plan!), `seed ${seed}`).toHaveLength(mills.length);
      expect(replay(sewingReport(arrangement, plan!)), `seed ${seed}`).toEqual([]);
    }
  });

  it('sew whatever seams stop at each other in T-junctions only', () => {
    const seen = { none: 0, one: 0, more: 0 };
    for (let seed = 1; seed <= 400; seed += 1) {
      const random = randomFrom(seed);
      const arrangement = arranged(grownSeams(3 + Math.floor(random() * 18), WHOLE, random));
      const plan = partialPlan(arrangement);
      expect(plan, `seed ${seed}`).not.toBeNull();
      const { length } = partialJoins(plan!);
      seen[length === 0 ? 'none' : length === 1 ? 'one' : 'more'] += 1;
      const straight = planSewing(arrangement, { effort: 0 }).verdict !== 'not sewable';
      expect(length === 0, `seed ${seed}`).toBe(straight);
      expect(replay(sewingReport(arrangement, plan!)), `seed ${seed}`).toEqual([]);
    }
    expect(Math.min(seen.none, seen.one, seen.more)).toBeGreaterThan(50);
  });
});

it('partial seams sew windmills whose middle or arms other lines cross', () => {
  let partial = 0;
  for (let seed = 1; seed <= 200; seed += 1) {
    const random = randomFrom(9000 + seed);
    const mill = windmill(3 + Math.floor(random() * 4), WHOLE, random);
    const y = mill.centre.y + mill.radius * (random() - 0.5);
    const middle = levelBetween(mill.seams, mill.centre.x, y);
    const outside = [
      { a: { x: 0, y }, b: middle.a },
      { a: middle.b, b: { x: SIZE, y } },
    ];
    const column = random() * SIZE;
    const across = { a: { x: column, y: 0 }, b: { x: column, y: SIZE } };
    const more = [[middle], outside, [{ a: middle.a, b: { x: SIZE, y } }], [across], [across, ...outside]];
    const arrangement = arranged([...mill.seams, ...more[seed % more.length]!]);
    const plan = partialPlan(arrangement);
    expect(plan, `seed ${seed}`).not.toBeNull();
    if (partialJoins(plan!).length > 0) partial += 1;
    expect(replay(sewingReport(arrangement, plan!)), `seed ${seed}`).toEqual([]);
  }
  expect(partial).toBeGreaterThan(100);
});

describe('seams that would have to be set in', () => {
  const l = (x1: number, y1: number, x2: number, y2: number) => ({
    a: { x: x1, y: y1 },
    b: { x: x2, y: y2 },
  });
  const all = (arrangement: Arrangement) => [arrangement.patches.map(({ index }) => index)];
  const hexagon = Array.from({ length: 6 }, (_, i) => ({
    x: 3 * Math.cos((i * Math.PI) / 3),
    y: 3 * Math.sin((i * Math.PI) / 3),
  }));
  const drawings: Record<string, Arrangement> = {
    'three diamonds in a hexagon': arranged(
      [0, 2, 4].map((i) => ({ a: { x: 0, y: 0 }, b: hexagon[i]! })),
      hexagon,
    ),
    'a mitred attic window': arranged([l(3, 0, 3, 9), l(3, 9, 12, 9), l(3, 9, 0, 12)]),
    'a patch let into the corner of another': arranged([l(4, 0, 4, 4), l(4, 4, 0, 4)]),
  };

  for (const [name, arrangement] of Object.entries(drawings)) {
    it(`are named, not sewn: ${name}`, () => {
      expect(partialPlan(arrangement)).toBeNull();
      const findings = setInFindings(arrangement, touchingOf(arrangement), all(arrangement));
      expect(findings.map(({ kind, at }) => [kind, at.length])).toEqual([['set-in-seam', 1]]);
    });
  }

  it('are not named where partial seams do', () => {
    const arrangement = cycleOfFive();
    expect(setInFindings(arrangement, touchingOf(arrangement), all(arrangement))).toEqual([]);
  });

  it('are named beside windmills that partial seams would sew', () => {
    const segments = windmill(4, { left: 0, top: 0, right: SIZE, bottom: 6 }, randomFrom(5)).seams;
    const arrangement = arranged([...segments, l(0, 6, 12, 6), l(4, 6, 4, 9), l(4, 9, 0, 9)]);
    expect(partialPlan(arrangement)).toBeNull();
    const findings = setInFindings(arrangement, touchingOf(arrangement), all(arrangement));
    expect(findings.map(({ at }) => at)).toEqual([[{ x: 4, y: 9 }]]);
  });
});

describe('the checker finds what is wrong with partial seams', () => {
  const arrangement = cycleOfFive();
  const report: ReplayedReport = sewingReport(arrangement, partialPlan(arrangement)!);
  type Joins = {
    -readonly [K in keyof ReplayedReport['joins'][number]]: ReplayedReport['joins'][number][K];
  }[];
  const changed = (change: (joins: Joins) => unknown) => {
    const joins = structuredClone(report.joins) as Joins;
    change(joins);
    return replay({ ...report, joins });
  };
  const first = report.joins[0]!;
  const { seam, closedAfter } = first.open!;

  it('nothing wrong with the report as it is', () => {
    expect(replay(report)).toEqual([]);
  });

  it('a verdict that the joins do not bear out', () => {
    const fault = (verdict: string) => `the verdict is ${verdict}, and the joins say otherwise`;
    expect(replay({ ...report, verdict: 'several foundations' })).toEqual([fault('several foundations')]);
    const pane = arranged([{ a: { x: 0, y: 6 }, b: { x: 12, y: 6 } }]);
    const straight = sewingReport(pane, planSewing(pane));
    expect(replay({ ...straight, verdict: 'partial seams' })).toEqual([fault('partial seams')]);
  });

  it('a seam closed before all is there, or never', () => {
    for (const early of [0, 1, 2, 4, -1]) {
      const faults = changed((joins) => {
        joins[0]!.open = { seam, closedAfter: early };
      });
      expect(faults, `after ${early}`).not.toEqual([]);
    }
    expect(closedAfter).toBe(3);
  });

  it('an open stretch that starts at the seam’s end, stops short, goes elsewhere, or is not told', () => {
    const [from, to] = seam;
    const part = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    const aside = [to[0] + (to[1] - from[1]) / 4, to[1] + (to[0] - from[0]) / 4] as const;
    for (const other of [
      [first.seam[1], to],
      [first.seam[0], to],
      [from, part],
      [from, aside],
      [to, from],
    ] as const) {
      const faults = changed((joins) => {
        joins[0]!.open = { seam: other, closedAfter };
      });
      expect(faults).not.toEqual([]);
    }
    expect(
      changed((joins) => {
        delete joins[0]!.open;
      }),
    ).not.toEqual([]);
    expect(
      changed((joins) => {
        joins[0]!.partial = false;
      }),
    ).not.toEqual([]);
  });

  it('a foundation that holds both sides of an open seam', () => {
    const both = report.joins.at(-1)!.units;
    const letters = report.foundations.map(({ letter }) => letter);
    const pairs = letters.flatMap((a, i) => letters.slice(i + 1).map((b) => [a, b] as const));
    expect(both.some((unit) => letters.includes(unit))).toBe(true);
    // The two oblongs that the open seam lies between, put on one foundation.
    const faults = pairs.map(([a, b]) => {
      const rename = (name: string) => (name === `${b}1` ? `${a}2` : name);
      return replay({
        ...report,
        pieces: report.pieces.map((piece) => ({ ...piece, name: rename(piece.name) })),
        foundations: report.foundations
          .filter(({ letter }) => letter !== b)
          .map(({ letter, order }) => ({ letter, order: letter === a ? [...order, `${a}2`] : order })),
      });
    });
    expect(faults.flat().filter((fault) => fault.includes('lies across an open seam'))).toHaveLength(2);
  });
});
