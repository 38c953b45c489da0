import { describe, expect, it } from 'vitest';
import { arrange } from '../src/arrange.ts';
import type { Drawing } from '../src/drawing.ts';
import { drawingFromSegments } from '../src/from-segments.ts';
import { plainWords } from '../src/message.ts';
import { areas, arranged, kinds, line, rectangle, SQUARE } from './drawings.ts';

describe('splits that meet as they should say nothing', () => {
  it('no split: the block is one patch', () => {
    const block = arranged(SQUARE, []);
    expect(areas(block)).toEqual([36]);
    expect(block.patches[0]!.polygon).toEqual(SQUARE);
    expect(block.patches[0]!.heart).toEqual({ x: 3, y: 3 });
    expect(block.findings).toEqual([]);
  });

  it('crossing: four patches round one vertex with two lines', () => {
    const block = arranged(SQUARE, [line(2, 0, 2, 6), line(0, 3, 6, 3)]);
    expect(areas(block)).toEqual([6, 6, 12, 12]);
    const crossing = block.vertices.find(({ at }) => at.x === 2 && at.y === 3)!;
    expect(crossing.lines).toHaveLength(2);
    expect(block.findings).toEqual([]);
  });

  const touches: Record<string, ReturnType<typeof line>> = {
    'with its start': line(3, 2, 3, 6),
    'with its end': line(3, 6, 3, 2),
  };
  for (const [name, stem] of Object.entries(touches)) {
    for (const flipped of [false, true]) {
      for (const stemFirst of [false, true]) {
        it(`touching the middle ${name}${flipped ? ', bar backwards' : ''}${stemFirst ? ', stem first' : ''}`, () => {
          const bar = flipped ? line(6, 2, 0, 2) : line(0, 2, 6, 2);
          const block = arranged(SQUARE, stemFirst ? [stem, bar] : [bar, stem]);
          expect(areas(block)).toEqual([12, 12, 12]);
          expect(block.findings).toEqual([]);
          // The bar is one line though a seam ends on it: the patch above has four corners.
          const above = block.patches.find((patch) => patch.polygon.some(({ y }) => y === 0))!;
          expect(above.polygon).toHaveLength(4);
          expect(above.ring).toHaveLength(5);
        });
      }
    }
  }

  it('ends on a corner of the outline and on another end', () => {
    const block = arranged(SQUARE, [line(0, 0, 3, 3), line(3, 3, 6, 0), line(3, 3, 3, 6)]);
    expect(areas(block)).toEqual([9, 13.5, 13.5]);
    expect(block.findings).toEqual([]);
  });

  it('collinear splits, touching or apart, are one line', () => {
    const apart = arranged(SQUARE, [line(0, 2, 2, 2), line(4, 2, 6, 2), line(2, 0, 2, 6), line(4, 0, 4, 6)]);
    const lines = new Set(
      apart.edges
        .filter(({ from, to }) => apart.vertices[from]!.at.y === 2 && apart.vertices[to]!.at.y === 2)
        .map((edge) => edge.line),
    );
    expect(lines.size).toBe(1);
    expect(apart.patches).toHaveLength(5);

    const touching = arranged(SQUARE, [line(0, 2, 3, 2), line(3, 2, 6, 2)]);
    expect(areas(touching)).toEqual([12, 24]);
    // Nothing else meets where they touch, so there is no vertex.
    expect(touching.vertices.some(({ at }) => at.x === 3 && at.y === 2)).toBe(false);
    expect(touching.edges.find(({ drawn }) => drawn.includes('s1'))!.drawn).toEqual(['s1', 's2']);
  });

  it.each([
    [0.0078, 3, 1],
    [0.0078, 4.5, 1],
    [-0.0078, 1, 1],
    [0.0079, 3, 2],
  ])('a seam in two splits that is %d in off one line, at %d of 6 in, is %d line', (bend, x, lines) => {
    // 1/128 in, to which a sewer calls a seam straight, is 0.0078125 in.
    const block = arranged(SQUARE, [
      line(0, 3, x, 3 + bend),
      line(x, 3 + bend, 6, 3),
      line(x, 3 + bend, x, 6),
    ]);
    expect(block.patches).toHaveLength(3);
    const across = block.edges.filter(
      ({ from, to }) =>
        Math.abs(block.vertices[from]!.at.y - 3) < 0.1 && Math.abs(block.vertices[to]!.at.y - 3) < 0.1,
    );
    expect(across).toHaveLength(2);
    expect(new Set(across.map((edge) => edge.line)).size).toBe(lines);
  });

  it('a split in line with an edge of a concave outline is one line with it', () => {
    const ell = [
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 2, y: 2 },
      { x: 6, y: 2 },
      { x: 6, y: 6 },
      { x: 0, y: 6 },
    ];
    const block = arranged(ell, [line(2, 2, 0, 2)]);
    expect(areas(block)).toEqual([4, 24]);
    expect(block.patches.every((patch) => patch.polygon.length === 4)).toBe(true);
    expect(block.findings).toEqual([]);
  });
});

describe('many lines through one point', () => {
  // Twelve lines at odd angles through a point with no short decimal: exact signs alone see many crossings here.
  for (const scale of [0.5, 1, 7.3, 100]) {
    it(`twelve lines make 24 patches at size ${scale}`, () => {
      const center = { x: scale * 0.4637, y: scale * 0.5371 };
      const outline = rectangle(scale, scale);
      const splits = Array.from({ length: 12 }, (_, k) => {
        const angle = 0.1 + (k * Math.PI) / 12;
        const reach = scale * 2;
        return line(
          center.x - reach * Math.cos(angle),
          center.y - reach * Math.sin(angle),
          center.x + reach * Math.cos(angle),
          center.y + reach * Math.sin(angle),
        );
      });
      const block = arranged(outline, splits);
      expect(block.patches).toHaveLength(24);
      const total = block.patches.reduce((sum, { area }) => sum + area, 0);
      expect(total).toBeCloseTo(scale * scale, 9);
    });
  }
});

/** A square in the middle of the block. */
const ISLAND = [line(2, 2, 4, 2), line(4, 2, 4, 4), line(4, 4, 2, 4), line(2, 4, 2, 2)];

describe('splits that do not meet as they should', () => {
  it('repeated: counts once, said once', () => {
    const block = arranged(SQUARE, [line(3, 0, 3, 6), line(3, 6, 3, 0)]);
    expect(areas(block)).toEqual([18, 18]);
    expect(kinds(block)).toEqual(['repeated-split']);
  });

  it('repeated by an unsteady hand: counts once', () => {
    const block = arranged(SQUARE, [line(3, 0, 3, 6), line(3.01, 0, 2.992, 6)]);
    expect(areas(block, 1)).toEqual([18, 18]);
    expect(kinds(block)).toContain('repeated-split');
  });

  it('overlapping: the stretch in common counts once', () => {
    const block = arranged(SQUARE, [line(0, 2, 4, 2), line(3, 2, 6, 2)]);
    expect(areas(block)).toEqual([12, 24]);
    expect(kinds(block)).toEqual(['overlapping-splits']);
  });

  it('along the edge: divides nothing', () => {
    const block = arranged(SQUARE, [line(1, 0, 5, 0), line(3, 0, 3, 6)]);
    expect(areas(block)).toEqual([18, 18]);
    expect(kinds(block)).toEqual(['along-edge']);
  });

  it('dangling: an error with its place, and a repair that removes it', () => {
    const splits = [line(0, 3, 6, 3), line(2, 0, 2, 1.5)];
    const block = arranged(SQUARE, splits);
    expect(areas(block)).toEqual([18, 18]);
    expect(block.findings).toHaveLength(1);
    const [loose] = block.findings;
    expect(loose).toMatchObject({
      kind: 'loose-end',
      severity: 'error',
      at: [{ x: 2, y: 1.5 }],
      lines: ['s2'],
    });
    expect(plainWords(loose!.message)).toContain('(2, 1½)');
    expect(loose!.repairs[0]!.splits).toEqual([
      [
        { x: 2, y: 1.5 },
        { x: 2, y: 3 },
      ],
    ]);
    const [a, b] = loose!.repairs[0]!.splits[0]!;
    const mended = arranged(SQUARE, [...splits, { a, b }]);
    expect(mended.findings).toEqual([]);
    expect(areas(mended)).toEqual([6, 12, 18]);
  });

  it('loose at both ends: two findings', () => {
    expect(kinds(arranged(SQUARE, [line(2, 2, 4, 4)]))).toEqual(['loose-end', 'loose-end']);
  });

  it('runs past the line it meets: the tail divides nothing and is said to be too long', () => {
    const block = arranged(SQUARE, [line(0, 3, 6, 3), line(2, 0, 2, 3.25)]);
    expect(areas(block)).toEqual([6, 12, 18]);
    expect(kinds(block)).toEqual(['loose-end']);
    expect(plainWords(block.findings[0]!.message)).toContain('runs ¼ in past');
  });

  it('beyond the outline: cut off, in part or altogether', () => {
    const partly = arranged(SQUARE, [line(-1, 3, 7, 3)]);
    expect(areas(partly)).toEqual([18, 18]);
    expect(kinds(partly)).toEqual(['beyond-outline']);
    const altogether = arranged(SQUARE, [line(7, 0, 9, 6)]);
    expect(areas(altogether)).toEqual([36]);
    expect(kinds(altogether)).toEqual(['outside-outline']);
  });

  it('leaves a concave outline and comes in again: both parts inside count', () => {
    const you = [
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 2, y: 4 },
      { x: 4, y: 4 },
      { x: 4, y: 0 },
      { x: 6, y: 0 },
      { x: 6, y: 6 },
      { x: 0, y: 6 },
    ];
    const block = arranged(you, [line(0, 2, 6, 2)]);
    expect(areas(block)).toEqual([4, 4, 20]);
    expect(kinds(block)).toEqual(['beyond-outline']);
  });

  it('stops short or runs past by up to 1/64 in: meets, and one finding says so', () => {
    for (const end of [2 - 1 / 80, 2 + 1 / 80]) {
      const block = arranged(SQUARE, [line(0, 2, 6, 2), line(3, 6, 3.5, end)]);
      expect(block.patches).toHaveLength(3);
      expect(kinds(block)).toEqual(['snapped-ends']);
      expect(block.findings[0]!.at).toEqual([{ x: 3.5, y: end }]);
      // The end moved along its own line on to the other: neither line is bent.
      const met = block.vertices.find(({ at }) => Math.abs(at.x - 3.5) < 0.01 && Math.abs(at.y - 2) < 1e-12)!;
      expect((met.at.x - 3) * (end - 6) - (met.at.y - 6) * 0.5).toBeCloseTo(0, 12);
    }
  });

  it.each([
    [
      2 - 2e-6,
      'One line end misses the line or corner beside it by less than 1/64 in; it is taken to meet it.',
    ],
    [
      2 - 1 / 80,
      'One line end misses the line or corner beside it by less than 1/64 in; it is taken to meet it.',
    ],
    [
      2 - 1 / 64,
      'One line end misses the line or corner beside it by no more than 1/64 in; it is taken to meet it.',
    ],
  ])('an end at %d beside a line at 2: how far off it is, in marks of a ruler', (end, message) => {
    const block = arranged(SQUARE, [line(0, 2, 6, 2), line(3, 6, 3, end)]);
    expect(block.findings.map(({ message }) => plainWords(message))).toEqual([message]);
  });

  it('an end that slides along its own line is off by more, and several are told of at once', () => {
    // Going down by 1/80 in, it goes 1/40 in to the side: 0.028 in in all.
    const slanting = [line(0, 2, 6, 2), line(1, 4 + 1 / 80, 5, 2 + 1 / 80)];
    const two = [line(0, 4, 6, 4), ...slanting];
    expect(arranged(SQUARE, two).findings.map(({ message }) => plainWords(message))).toEqual([
      '2 line ends miss the lines or corners beside them by no more than 1/32 in; they are taken to meet them.',
    ]);
  });

  it('misses by more than 1/64 in: a loose end', () => {
    const block = arranged(SQUARE, [line(0, 2, 6, 2), line(3, 6, 3, 2 + 1 / 60)]);
    expect(areas(block)).toEqual([12, 24]);
    expect(kinds(block)).toEqual(['loose-end']);
  });

  it('an island: an error, the patch round it has a hole', () => {
    const block = arranged(SQUARE, ISLAND);
    expect(areas(block)).toEqual([4, 32]);
    expect(kinds(block)).toEqual(['island']);
    expect(block.patches.find(({ area }) => area === 32)!.holes).toHaveLength(1);
  });

  it('an island on a single line is still an island', () => {
    const block = arranged(SQUARE, [...ISLAND, line(0, 3, 2, 3)]);
    expect(areas(block)).toEqual([4, 32]);
    expect(kinds(block)).toEqual(['island']);
    // One line was drawn, and it is as it was: two are asked for, which the next one is.
    expect(plainWords(block.findings[0]!.message)).toContain(
      'Draw at least two lines from it, each to the edge or to another line.',
    );
    const cut = arranged(SQUARE, [...ISLAND, line(0, 3, 2, 3), line(4, 3, 6, 3)]);
    expect(areas(cut)).toEqual([4, 16, 16]);
    expect(kinds(cut)).not.toContain('island');
  });

  it('too short to be a seam: left out', () => {
    const block = arranged(SQUARE, [line(3, 0, 3, 6), line(1, 1, 1.005, 1)]);
    expect(areas(block)).toEqual([18, 18]);
    expect(kinds(block)).toEqual(['too-short']);
  });

  it('a thousand loose ends are not told one by one', () => {
    const strokes = Array.from({ length: 100 }, (_, i) => line(1 + i * 0.04, 1, 1 + i * 0.04, 2));
    const block = arranged(SQUARE, strokes);
    expect(block.findings).toHaveLength(51);
    expect(plainWords(block.findings.at(-1)!.message)).toContain('150 more');
  });
});

describe('outlines that cannot be used', () => {
  const cases: Record<string, [readonly { x: number; y: number }[], RegExp]> = {
    'crosses itself': [
      [
        { x: 0, y: 0 },
        { x: 6, y: 6 },
        { x: 6, y: 0 },
        { x: 0, y: 6 },
      ],
      /cross/i,
    ],
    'two corners': [
      [
        { x: 0, y: 0 },
        { x: 6, y: 6 },
      ],
      /three corners/i,
    ],
    'no area': [
      [
        { x: 0, y: 0 },
        { x: 3, y: 0 },
        { x: 6, y: 0 },
      ],
      /./,
    ],
  };
  for (const [name, [outline, message]] of Object.entries(cases)) {
    it(name, () => {
      const result = arrange(drawingFromSegments(outline, []));
      expect(result.ok).toBe(false);
      if (!result.ok) expect(result.problem.what).toMatch(message);
    });
  }

  it('a split whose end does not exist', () => {
    const drawing = drawingFromSegments(SQUARE, []);
    const broken: Drawing = { ...drawing, splits: [{ id: 's1', from: 'p1', to: 'nowhere' }] };
    expect(arrange(broken)).toMatchObject({ ok: false, problem: { where: 'point nowhere' } });
  });
});

describe('facts of the drawing', () => {
  it('a point put on a line lies on it, whatever its rounded coordinates say', () => {
    const base = drawingFromSegments(SQUARE, [line(0, 1, 6, 3.7)]);
    const t = 1 / 3;
    const drawing: Drawing = {
      ...base,
      points: {
        ...base.points,
        q: { id: 'q', x: 6 * t, y: 1 + 2.7 * t, on: ['s1'] },
        r: { id: 'r', x: 6 * t, y: 6, on: ['edge:p3'] },
      },
      splits: [...base.splits, { id: 's2', from: 'q', to: 'r' }],
    };
    const result = arrange(drawing);
    if (!result.ok) throw new Error(result.problem.what);
    expect(result.value.patches).toHaveLength(3);
    const vertex = result.value.vertices.find(({ points }) => points.includes('q'))!;
    expect(vertex.lines).toHaveLength(2);
    expect(vertex.at).toEqual({ x: 6 * t, y: 1 + 2.7 * t });
    expect(result.value.findings).toEqual([]);
  });
});
