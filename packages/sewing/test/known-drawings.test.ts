import { arrange } from '@seamwright/arrangement';
import type { Point, Segment } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { planSewing, replay, type SewingReport, sewingReport } from '../src/index.ts';
import { drawingOf, knownDrawings } from './read-drawings.ts';

function study(
  outline: readonly Point[],
  segments: readonly Segment[],
): { patches: number; report: SewingReport } {
  const result = arrange(drawingOf({ outline, segments }));
  if (!result.ok) throw new Error(result.problem.what);
  return {
    patches: result.value.patches.length,
    report: sewingReport(result.value, planSewing(result.value)),
  };
}

/** The same drawing, drawn otherwise: the answer must not change. */
const VARIANTS: Record<
  string,
  { point?: (p: Point) => Point; lines?: (s: readonly Segment[]) => Segment[] }
> = {
  'as drawn': {},
  'a quarter turn': { point: ({ x, y }) => ({ x: -y, y: x }) },
  'a half turn': { point: ({ x, y }) => ({ x: -x, y: -y }) },
  'three quarter turns': { point: ({ x, y }) => ({ x: y, y: -x }) },
  mirrored: { point: ({ x, y }) => ({ x: -x, y }) },
  'turned by 17°': {
    point: ({ x, y }) => ({
      x: x * Math.cos(0.3) - y * Math.sin(0.3),
      y: x * Math.sin(0.3) + y * Math.cos(0.3),
    }),
  },
  'twice the size': { point: ({ x, y }) => ({ x: 2 * x, y: 2 * y }) },
  'lines backwards': { lines: (s) => s.map(({ a, b }) => ({ a: b, b: a })) },
  'last line first': { lines: (s) => [...s].reverse() },
  'every other line first': {
    lines: (s) => [...s.filter((_, i) => i % 2 === 1), ...s.filter((_, i) => i % 2 === 0)],
  },
};

for (const { name, outline, segments, expected } of knownDrawings()) {
  describe(name, () => {
    for (const [
      variant,
      { point = (p: Point) => p, lines = (s: readonly Segment[]) => [...s] },
    ] of Object.entries(VARIANTS)) {
      // An imprecise drawing at twice the size is off by more than a needle's width: another drawing.
      if (name.startsWith('sloppy') && variant === 'twice the size') continue;
      it(variant, () => {
        const moved = lines(segments).map(({ a, b }) => ({ a: point(a), b: point(b) }));
        const { patches, report } = study(outline.map(point), moved);
        expect(patches).toBe(expected.patches);
        expect(report.pieces).toHaveLength(expected.patches);
        expect(report.verdict === 'one foundation').toBe(expected.oneFoundation);
        const straight = report.verdict === 'one foundation' || report.verdict === 'several foundations';
        expect(straight).toBe(expected.straightSeams);
        if (straight) {
          expect(report.foundations).toHaveLength(expected.fewestFoundations!);
          expect(report.provenLeast).toBe(true);
          expect(report.atLeast).toBe(expected.fewestFoundations);
          expect(replay(report)).toEqual([]);
        } else {
          expect(report.findings.map(({ kind }) => kind)).toContain('interlocked');
        }
      });
    }
  });
}

describe('the checker finds what is wrong', () => {
  const drawing = knownDrawings().find(({ name }) => name === 'sawtooth-star')!;
  const { report } = study(drawing.outline, drawing.segments);
  const changed = (change: (draft: { -readonly [K in keyof SewingReport]: SewingReport[K] }) => void) => {
    const draft = structuredClone(report);
    change(draft);
    return replay(draft);
  };

  it('nothing wrong with the report as it is', () => {
    expect(replay(report)).toEqual([]);
  });

  it('two pieces that change places', () => {
    const renamed = changed((draft) => {
      const [first, second] = draft.foundations[0]!.order;
      const last = draft.foundations[0]!.order.at(-1)!;
      expect(first).not.toBe(last);
      draft.foundations = [
        {
          ...draft.foundations[0]!,
          order: [last, second!, ...draft.foundations[0]!.order.slice(2, -1), first!],
        },
        ...draft.foundations.slice(1),
      ];
    });
    expect(renamed).not.toEqual([]);
  });

  it('a piece left out, a join left out, joins in the wrong order, a seam elsewhere', () => {
    expect(
      changed((d) => {
        d.pieces = d.pieces.slice(1);
      }),
    ).not.toEqual([]);
    expect(
      changed((d) => {
        d.joins = d.joins.slice(1);
      }),
    ).not.toEqual([]);
    expect(
      changed((d) => {
        d.joins = [...d.joins].reverse();
      }),
    ).not.toEqual([]);
    expect(
      changed((d) => {
        d.joins = d.joins.map((j) => ({
          ...j,
          seam: [j.seam[0], [j.seam[1][0] + 0.1, j.seam[1][1]]] as const,
        }));
      }),
    ).not.toEqual([]);
  });

  it('four squares round a point called one foundation', () => {
    const square = (x: number, y: number) =>
      [
        [x, y],
        [x + 1, y],
        [x + 1, y + 1],
        [x, y + 1],
      ] as const;
    const faults = replay({
      verdict: 'one foundation',
      outline: [
        [0, 0],
        [2, 0],
        [2, 2],
        [0, 2],
      ],
      pieces: [square(0, 0), square(1, 0), square(1, 1), square(0, 1)].map((polygon, i) => ({
        name: `A${i + 1}`,
        polygon,
      })),
      foundations: [{ letter: 'A', order: ['A1', 'A2', 'A3', 'A4'] }],
      joins: [],
    });
    expect(faults).toEqual(['A4 touches what is sewn before it on more than one line']);
  });
});
