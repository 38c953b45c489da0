import { contains, edgesOf, type Polygon, segmentCrossing } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FoundationJob, Mark, PathMark, TextMark } from '../src/index.ts';
import { type Block, block, type Line, pinwheel, rectangle, usual, windmill } from './blocks.ts';
import { boxOf, cornersOf, overlap } from './boxes.ts';
import { laid } from './laid.ts';
import { randomBlock } from './random-blocks.ts';
import { pilings } from './repeated.ts';

const isText = (mark: Mark): mark is TextMark => mark.kind === 'text';
const isPath = (mark: Mark): mark is PathMark => mark.kind === 'path';

const marksOf = (job: FoundationJob): readonly Mark[] => laid(job).sheets.flatMap(({ marks }) => marks);

const numbersIn = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.filter(isText).filter(({ role, content }) => role === 'label' && /^[A-Z]+\d+( · .+)?$/.test(content));

/** Leaders: the label's paths that have a dot. */
const leadersIn = (marks: readonly Mark[]): readonly PathMark[] =>
  marks.filter(isPath).filter(({ role, fill }) => role === 'label' && fill !== undefined);

const lineOf = ({ points: [a, b] }: PathMark) => ({ a: a!, b: b! });

const sidesCross = (p: Polygon<'page'>, q: Polygon<'page'>): boolean =>
  edgesOf<'page'>(p).some((e) =>
    edgesOf<'page'>(q).some((f) => segmentCrossing<'page'>(e.a, e.b, f.a, f.b)),
  ) ||
  contains<'page'>(p, q[0]!) === 'inside' ||
  contains<'page'>(q, p[0]!) === 'inside';

/** Rows of thin strips across a block: slivers of 1/100 to 1/4 in between wide ones. */
const slivers: fc.Arbitrary<Block> = fc
  .record({
    width: fc.integer({ min: 1, max: 4 }),
    gaps: fc.array(fc.tuple(fc.integer({ min: 8, max: 100 }), fc.integer({ min: 1, max: 25 })), {
      minLength: 1,
      maxLength: 4,
    }),
    slant: fc.integer({ min: 0, max: 20 }),
  })
  .map(({ width, gaps, slant }) => {
    let y = 0;
    const lines = gaps.flatMap(([wide, thin]) => {
      const [from, to] = [y + wide / 100, y + (wide + thin) / 100];
      y = to;
      return [
        [0, from, width, from],
        [0, to, width, to + Math.min(slant, 5) / 100],
      ] as const;
    });
    return block(rectangle(width, y + 1), lines);
  });

const blocks = fc.oneof(randomBlock(3), slivers).filter(({ plan }) => plan.verdict !== 'not sewable');
const allowance = fc.constantFrom(0, 0.125, 0.25);

describe('piece labels of random blocks, slivers among them', () => {
  test('every patch has its label once; none stands on another, or on another text', () => {
    let led = 0;
    fc.assert(
      fc.property(blocks, allowance, (of, wide) => {
        const marks = marksOf(usual(of, 'Labels', { allowance: wide }));
        const names = of.plan.sections.flatMap(({ letter, order }) =>
          order.map((_, k) => `${letter}${k + 1}`),
        );
        expect(
          numbersIn(marks)
            .map(({ content }) => content)
            .sort(),
        ).toEqual(names.sort());
        const texts = marks.filter(isText).map(cornersOf);
        texts.forEach((p, i) => {
          for (const q of texts.slice(i + 1)) expect(sidesCross(p, q)).toBe(false);
        });
        led += leadersIn(marks).length;
      }),
      { numRuns: 80, seed: 20261101 },
    );
    expect(led).toBeGreaterThan(20);
  });

  test('no label lies on a sew line, an outline or a run-on; leaders cross neither each other nor labels', () => {
    fc.assert(
      fc.property(blocks, allowance, (of, wide) => {
        const marks = marksOf(usual(of, 'Labels', { allowance: wide }));
        const lines = marks
          .filter(isPath)
          .filter(({ role }) => /sew-line|run-on|outline|cutting|match/.test(role))
          .flatMap(({ points, closed }) => edgesOf<'page'>(points).slice(0, closed ? undefined : -1));
        const labels = marks.filter(isText).filter(({ role }) => role === 'label');
        for (const text of labels)
          for (const { a, b } of edgesOf<'page'>(cornersOf(text)))
            for (const line of lines) expect(segmentCrossing<'page'>(a, b, line.a, line.b)).toBeNull();
        const leaders = leadersIn(marks).map(lineOf);
        leaders.forEach((p, i) => {
          for (const q of leaders.slice(i + 1))
            expect(segmentCrossing<'page'>(p.a, p.b, q.a, q.b)).toBeNull();
          for (const text of labels)
            for (const { a, b } of edgesOf<'page'>(cornersOf(text)))
              expect(segmentCrossing<'page'>(p.a, p.b, a, b)).toBeNull();
        });
      }),
      { numRuns: 80, seed: 20261102 },
    );
  });

  test('a label that is led out has its dot in its patch, the others stand in theirs', () => {
    let led = 0;
    fc.assert(
      fc.property(blocks, (of) => {
        const marks = marksOf(usual(of, 'Labels'));
        for (const { letter, order, outline } of of.plan.sections) {
          const own = marks.filter(({ section }) => section === letter);
          const drawn = boxOf(own.find(({ role }) => role === 'finished-outline')!);
          // Upright: a block of at most 3 in fits so. The mirror image of the leftmost point is the rightmost on paper.
          const [left, top] = [
            Math.min(...outline.map(({ x }) => x)),
            Math.min(...outline.map(({ y }) => y)),
          ];
          const place = ({ x, y }: { x: number; y: number }) => ({
            x: drawn.maxX - (x - left) * 72,
            y: drawn.minY + (y - top) * 72,
          });
          const leaders = leadersIn(own).map(lineOf);
          order.forEach((index, k) => {
            const patch = of.arrangement.patches[index]!.polygon.map(place);
            const number = numbersIn(own).find(({ content }) => content === `${letter}${k + 1}`)!;
            const corners = cornersOf(number);
            if (corners.every((corner) => contains<'page'>(patch, corner) === 'inside')) return;
            led++;
            const leader = leaders.find(({ a }) =>
              corners.some((c) => Math.hypot(c.x - a.x, c.y - a.y) < 12),
            );
            expect(leader).toBeDefined();
            expect(leaders.some(({ b }) => contains<'page'>(patch, b) === 'inside')).toBe(true);
          });
        }
      }),
      { numRuns: 60, seed: 20261103 },
    );
    expect(led).toBeGreaterThan(10);
  });
});

const FABRICS = [
  { letter: 'a', name: 'Sea blue' },
  { letter: 'b', name: 'Sail white', upright: true },
];

describe('what the job says of patches', () => {
  const two = block(rectangle(4, 4), [[0, 0.3, 4, 0.3]]);
  const job = usual(two, 'Two', {
    fabrics: two.arrangement.patches.map((_, i) => FABRICS[i % 2]),
  });
  // The first is 3/10 in high, no room for words.
  const texts = marksOf(job).filter(isText);
  const words = texts.map(({ content }) => content);

  test('the letter beside the number, its name where there is room and in the caption', () => {
    const [small, large] = two.plan.sections[0]!.order.map((i) => FABRICS[i % 2]!);
    expect(words).toEqual(expect.arrayContaining([`A1 · ${small!.letter}`, `A2 · ${large!.letter}`]));
    expect(words).not.toContain(small!.name);
    expect(words.filter((text) => text === large!.name)).toHaveLength(1);
    expect(words).toContain('a = Sea blue, b = Sail white');
  });

  test('where letters leave no free place for the numbers, the numbers stand alone and the caption has the letters', () => {
    // Seventeen patches round one another on 3/4 in.
    const sides = [0.08, 0.18, 0.28, 0.38, 0.5].map((share) => share * 0.75);
    const rings = block(
      rectangle(0.75, 0.75),
      sides.slice(0, -1).flatMap((p, i): Line[] => {
        const [c, r] = [0.375, sides[i + 1]!];
        return [
          [c - p, c - p, c - p, c + p],
          [c + p, c - p, c + p, c + p],
          [c - r, c - p, c + r, c - p],
          [c - r, c + p, c + r, c + p],
        ];
      }),
    );
    const fabrics = rings.arrangement.patches.map(() => ({ letter: 'abc', name: '' }));
    const marks = marksOf(usual(rings, 'Rings', { fabrics }));
    const said = marks.filter(isText).map(({ content }) => content);
    for (let k = 1; k <= 17; k++) expect(said.join(' ')).toContain(`A${k} · abc`);
    expect(numbersIn(marks)).toHaveLength(17);
    const labels = numbersIn(marks).map(cornersOf);
    labels.forEach((p, i) => {
      for (const q of labels.slice(i + 1)) expect(sidesCross(p, q)).toBe(false);
    });
  });

  test('a print with an up has an arrow to the block’s top, clear of the label, also where the foundation lies sideways', () => {
    const wide = block(rectangle(8.5, 2), [[3, 0, 3, 2]]);
    for (const [of, points] of [
      [two, [0, -1]],
      [wide, [1, 0]],
    ] as const) {
      const marks = marksOf(
        usual(of, 'Up', {
          fabrics: of.arrangement.patches.map(() => ({ letter: 'b', name: '', upright: true })),
        }),
      );
      const arrows = marks
        .filter(isPath)
        .filter(
          ({ role, fill, points: { length } }) => role === 'label' && fill === undefined && length === 5,
        );
      expect(arrows).toHaveLength(2);
      for (const arrow of arrows) {
        const [tail, tip] = arrow.points;
        const size = Math.hypot(tip!.x - tail!.x, tip!.y - tail!.y);
        expect([(tip!.x - tail!.x) / size, (tip!.y - tail!.y) / size]).toEqual([
          expect.closeTo(points[0], 9),
          expect.closeTo(points[1], 9),
        ]);
        for (const text of marks.filter(isText)) expect(overlap(boxOf(arrow), boxOf(text))).toBe(false);
      }
    }
  });

  test('on a print for several sections only what holds for all of them', () => {
    const panes = block(rectangle(4, 2), [
      [2, 0, 2, 2],
      [0, 1, 2, 1],
      [2, 1, 4, 1],
    ]);
    const sewn = block(
      rectangle(4, 2),
      [
        [2, 0, 2, 2],
        [0, 1, 2, 1],
        [2, 1, 4, 1],
      ],
      { largestSection: 2 },
    );
    expect(panes.arrangement.patches).toHaveLength(4);
    expect(sewn.plan.sections).toHaveLength(2);
    const fabrics = sewn.arrangement.patches.map((_, i) => ({ letter: 'abcd'[i]!, name: '' }));
    const said = marksOf(usual(sewn, 'Panes', { fabrics, shareTemplates: true }))
      .filter(isText)
      .map(({ content }) => content);
    expect(said).toContain('A1');
    expect(said.join(' ')).toContain('not alike in all sections');
  });
});

describe('lengths of seam lines', () => {
  test('none unless wanted; then as a ruler shows them, or nearly, in the job’s unit', () => {
    const of = block(rectangle(4, 4), [
      [0, 1, 4, 1],
      [0, 1, 4, 4],
    ]);
    const lengths = (more: Partial<FoundationJob>) =>
      marksOf(usual(of, 'Lengths', more))
        .filter(isText)
        .filter(({ role, content }) => role === 'label' && / (in|cm)$/.test(content))
        .map(({ content }) => content);
    expect(lengths({})).toEqual([]);
    // Two seams of 4 and 5 in, four sides of 4 in.
    expect([...lengths({ seamLengths: true })].sort()).toEqual([
      '4 in',
      '4 in',
      '4 in',
      '4 in',
      '4 in',
      '5 in',
    ]);
    expect(lengths({ seamLengths: true, unit: 'cm' })).toContain('12.7 cm');
    const slanting = block(rectangle(4, 4), [[0, 0, 4, 4]]);
    expect(
      marksOf(usual(slanting, 'Lengths', { seamLengths: true }))
        .filter(isText)
        .map(({ content }) => content),
      // 4√2 = 5.65685 lies nearer to 5 11/16 = 5.6875 than to 5 10/16 = 5.625.
    ).toContain('≈ 5 11/16 in');
  });
});

describe('light ink', () => {
  const of = randomBlock(6);
  test('the same marks in the same places, paler and thinner, still to be seen', () => {
    fc.assert(
      fc.property(of, (one) => {
        const [dark, light] = (['dark', 'light'] as const).map((ink) => marksOf(usual(one, 'Ink', { ink })));
        expect(light).toHaveLength(dark!.length);
        light!.forEach((mark, i) => {
          const other = dark![i]!;
          if (mark.kind === 'text') {
            const was = other as TextMark;
            expect([mark.content, mark.at]).toEqual([was.content, was.at]);
            expect(mark.ink).toBeLessThan(was.ink);
            expect(mark.ink).toBeGreaterThanOrEqual(0.5);
            expect(mark.weight).toBe('regular');
          } else {
            const was = other as PathMark;
            expect([mark.points, mark.stroke!.width]).toEqual([was.points, was.stroke!.width]);
            expect(mark.stroke!.ink).toBeLessThan(was.stroke!.ink);
            expect(mark.stroke!.ink).toBeGreaterThanOrEqual(0.3);
            if (mark.fill !== undefined) expect(mark.fill).toBeGreaterThanOrEqual(0.3);
          }
        });
      }),
      { numRuns: 30, seed: 20261104 },
    );
  });
});

describe('the joins in small', () => {
  const closedIn = (marks: readonly Mark[]) =>
    marks.filter(isPath).filter(({ role, closed }) => role === 'caption' && closed);

  test('above each foundation of several sections: all sections, as seen from the printed side, its own shaded', () => {
    const of = windmill(6);
    const marks = marksOf(usual(of, 'Windmill'));
    for (const { letter } of of.plan.sections) {
      const shapes = closedIn(marks.filter(({ section }) => section === letter));
      expect(shapes).toHaveLength(5);
      const shaded = shapes.filter(({ fill }) => fill !== undefined);
      expect(shaded).toHaveLength(1);
      const all = boxesOf(shapes);
      const scale = (all.maxX - all.minX) / 6;
      // Under 1/2 in: no check square.
      expect(all.maxX - all.minX).toBeLessThan(36);
      const { outline } = of.plan.sections.find((section) => section.letter === letter)!;
      const wanted = outline.map(({ x, y }) => ({ x: all.maxX - x * scale, y: all.minY + y * scale }));
      for (const { x, y } of shaded[0]!.points)
        expect(Math.min(...wanted.map((p) => Math.hypot(p.x - x, p.y - y)))).toBeLessThan(0.001);
    }
  });

  test('of very many sections only its own, in the block’s outline', () => {
    const of = pilings(30, 1);
    expect(of.plan.sections.length).toBeGreaterThan(25);
    const shapes = closedIn(
      marksOf(usual(of, 'Pilings', { joinsDiagram: true })).filter(({ section }) => section === 'A'),
    );
    expect(shapes.map(({ fill }) => fill !== undefined)).toEqual([true, false]);
    const [own, rim] = shapes.map(boxOf);
    expect((rim!.maxX - rim!.minX) / (own!.maxX - own!.minX)).toBeCloseTo(30, 6);
  });

  test('a print for two has both shaded; none where there is one section, or it is not wanted', () => {
    const shared = closedIn(marksOf(usual(pinwheel(4), 'Pinwheel', { shareTemplates: true })));
    expect(shared.map(({ fill }) => fill !== undefined)).toEqual([true, true]);
    expect(closedIn(marksOf(usual(block(rectangle(4, 4), [[0, 1, 4, 1]]), 'One')))).toEqual([]);
    expect(closedIn(marksOf(usual(pinwheel(4), 'Pinwheel', { joinsDiagram: false })))).toEqual([]);
  });
});

function boxesOf(shapes: readonly Mark[]): ReturnType<typeof boxOf> {
  const boxes = shapes.map(boxOf);
  return {
    minX: Math.min(...boxes.map(({ minX }) => minX)),
    minY: Math.min(...boxes.map(({ minY }) => minY)),
    maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
    maxY: Math.max(...boxes.map(({ maxY }) => maxY)),
  };
}

test('no number of a match mark reads as the first word of what is done on a line', () => {
  /** From where to where along its own base line, and how far from the page's corner that lies. */
  const alongBase = (text: TextMark) => {
    const radians = (text.angle * Math.PI) / 180;
    const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
    const corners = cornersOf(text);
    const along = corners.map(({ x, y }) => x * cos + y * sin);
    return { from: Math.min(...along), to: Math.max(...along), base: text.at.y * cos - text.at.x * sin };
  };
  let beside = 0;
  fc.assert(
    fc.property(randomBlock(4), (drawn) => {
      const labels = marksOf(usual(drawn, 'Pier'))
        .filter(isText)
        .filter(({ role }) => role === 'label');
      const numbers = labels.filter(({ content }) => /^\d+$/.test(content));
      for (const words of labels.filter(({ content }) => /^(sew|cut)/.test(content)))
        for (const number of numbers.filter(
          ({ section, angle }) => section === words.section && angle === words.angle,
        )) {
          const [one, other] = [alongBase(words), alongBase(number)];
          if (Math.abs(one.base - other.base) > 3) continue;
          beside++;
          expect(Math.max(other.from - one.to, one.from - other.to)).toBeGreaterThan(5);
        }
    }),
    { numRuns: 80, seed: 3 },
  );
  // Else none would have been tried.
  expect(beside).toBeGreaterThan(5);
});
