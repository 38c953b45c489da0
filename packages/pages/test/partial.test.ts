import {
  boundingBox,
  distance,
  distanceToSegment,
  edgesOf,
  type Point,
  type Segment,
} from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FoundationJob, Mark, PathMark, Sheet, TextMark } from '../src/index.ts';
import { leastGap } from './apart.ts';
import { type Block, pinwheel, ringOfFour, turningLamp, usual, windmill } from './blocks.ts';
import { boxOf, ROUNDING } from './boxes.ts';
import { laid } from './laid.ts';

/** Points: what pages are held to, 0.01 mm. */
const TRUE = (0.01 / 25.4) * 72;

/** Points: the two ticks of a pair are 1/16 in apart, the stop between them. */
const PAIR = 72 / 16;

const marksOf = (sheets: readonly Sheet[], letter: string): readonly Mark[] =>
  sheets.flatMap(({ marks }) => marks).filter(({ section }) => section === letter);

const texts = (marks: readonly Mark[]): readonly TextMark[] => marks.filter((mark) => mark.kind === 'text');

const centreOf = (mark: Mark): Point<'page'> => {
  const { minX, minY, maxX, maxY } = boxOf(mark);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};

/** From the block to where the section is printed upright and in one piece: mirrored, its outline on the drawn one. */
function placeOf(marks: readonly Mark[], { outline }: Section, { sizes }: FoundationJob) {
  const { scale } = sizes[0]!;
  const printed = ({ x, y }: Point): Point<'page'> => ({ x: -x * scale * 72, y: y * scale * 72 });
  const from = boundingBox<'page'>(outline.map(printed));
  const to = boxOf(marks.find(({ role }) => role === 'finished-outline')!);
  expect([to.maxX - to.minX, to.maxY - to.minY]).toEqual([
    expect.closeTo(from.maxX - from.minX, 6),
    expect.closeTo(from.maxY - from.minY, 6),
  ]);
  return (p: Point): Point<'page'> => {
    const { x, y } = printed(p);
    return { x: x - from.minX + to.minX, y: y - from.minY + to.minY };
  };
}

/** How far a point is from the section's outline, inches on the block. */
const fromOutline = (p: Point, { outline }: Section): number =>
  Math.min(...edgesOf(outline).map(({ a, b }) => distanceToSegment(p, a, b)));

/** The only partial join of a block. */
function partialJoin({ plan }: Block) {
  const partial = plan.joins.filter((join) => join.partial);
  expect(partial).toHaveLength(1);
  return { ...partial[0]!, open: partial[0]!.open! };
}

/** Feet of the match marks, two and two where they are a pair. */
function pairsOf(marks: readonly Mark[]): readonly Point<'page'>[] {
  const feet = marks
    .filter((mark): mark is PathMark => mark.role === 'match-mark')
    .map(({ points }) => points[0]!);
  return feet.flatMap((p, i) =>
    feet
      .slice(i + 1)
      .filter((q) => Math.abs(distance<'page'>(p, q) - PAIR) < TRUE)
      .map((q) => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 })),
  );
}

const BLOCKS: readonly (readonly [what: string, of: Block, scale: number])[] = [
  ['a windmill', windmill(6), 1.25],
  ['a lamp whose arms lean', turningLamp(), 1],
  ['a ring off the middle', ringOfFour({ width: 7, height: 5, xs: [1.5, 4.5], ys: [2.25, 3.5] }), 0.9],
];

describe.each(BLOCKS)('partial seams on the page: %s', (what, of, scale) => {
  const job = usual(of, what, { scale, keepUpright: true });
  const { sheets } = laid(job);
  const { open } = partialJoin(of);

  test('two ticks, side by side, where the sewing stops, on both sections that are sewn there and no other', () => {
    const paired: string[] = [];
    for (const section of of.plan.sections) {
      const marks = marksOf(sheets, section.letter);
      const pairs = pairsOf(marks);
      if (pairs.length > 0) paired.push(section.letter);
      for (const pair of pairs)
        expect(distance<'page'>(pair, placeOf(marks, section, job)(open.seam.a))).toBeLessThan(TRUE);
    }
    const joined = of.plan.sections.filter((section) => fromOutline(open.seam.a, section) < 1 / 128);
    expect(joined).toHaveLength(2);
    expect(paired).toEqual(joined.map(({ letter }) => letter));
  });

  test('what stays open says until when, along it and on no other edge', () => {
    let said = 0;
    for (const section of of.plan.sections) {
      const marks = marksOf(sheets, section.letter);
      const label = texts(marks).filter(
        ({ role, content }) => role === 'label' && content.startsWith('open'),
      );
      // Somewhere between its ends, as sections on either side have only a part of it.
      const along = Array.from({ length: 99 }, (_, i) => (i + 1) / 100).filter(
        (t) => fromOutline(lerp(open.seam, t), section) < 1 / 128,
      );
      expect(label).toHaveLength(along.length > 0 ? 1 : 0);
      if (along.length === 0) continue;
      said += 1;
      const place = placeOf(marks, section, job);
      const [from, to] = [along[0]!, along.at(-1)!].map((t) => place(lerp(open.seam, t)));
      // Within the band of the allowance beside it, or as far inside.
      expect(distanceToSegment<'page'>(centreOf(label[0]!), from!, to!)).toBeLessThan(18);
      const [unit] = /(?<=^open until )\w+(?= is on$)/.exec(label[0]!.content)!;
      const closing = of.plan.joins[open.closedAfter]!;
      expect(closing.units).toContain(unit);
      expect(unit).not.toContain(section.letter);
    }
    expect(said).toBe(3);
  });

  test('is told above the foundation', () => {
    for (const section of of.plan.sections) {
      const marks = marksOf(sheets, section.letter);
      const caption = texts(marks).filter(({ role }) => role === 'caption');
      const words = caption.map(({ content }) => content).join(' ');
      const opened = texts(marks).some(({ content }) => content.startsWith('open until'));
      if (pairsOf(marks).length > 0)
        expect(words).toMatch(
          /partial seam with \w+: sew up to the double tick only, and close the rest when \w+ is on/,
        );
      else if (opened)
        expect(words).toMatch(/leave the edge marked open unsewn, and close it when \w+ is on/);
      else expect(words).not.toMatch(/partial|open/);
    }
  });
});

const lerp = ({ a, b }: Segment, t: number): Point => ({
  x: a.x + t * (b.x - a.x),
  y: a.y + t * (b.y - a.y),
});

describe('partial seams of any size', () => {
  const share = fc.double({ min: 0.1, max: 0.45, noNaN: true });
  const rings = fc
    .record({
      width: fc.double({ min: 1, max: 12, noNaN: true }),
      height: fc.double({ min: 1, max: 12, noNaN: true }),
      shares: fc.tuple(share, share, share, share),
    })
    .map(({ width, height, shares: [l, r, t, b] }) =>
      ringOfFour({ width, height, xs: [l * width, (1 - r) * width], ys: [t * height, (1 - b) * height] }),
    );

  test('keep what is printed on the paper, legible and apart', () => {
    let labels = 0;
    fc.assert(
      fc.property(
        rings,
        fc.constantFrom('letter' as const, 'a4' as const),
        fc.constantFrom(0.125, 0.25, 0.5),
        (of, paper, allowance) => {
          const { sheets } = laid(usual(of, 'Ring', { paper, allowance }));
          for (const sheet of sheets) {
            const page = paper === 'letter' ? { x: 612, y: 792 } : { x: 595.275591, y: 841.889764 };
            for (const mark of sheet.marks) {
              const box = boxOf(mark);
              expect(Math.min(box.minX, box.minY)).toBeGreaterThanOrEqual(18 - ROUNDING);
              expect(box.maxX).toBeLessThanOrEqual(page.x - 18 + ROUNDING);
              expect(box.maxY).toBeLessThanOrEqual(page.y - 18 + ROUNDING);
              if (mark.kind === 'text') expect(mark.size).toBeGreaterThanOrEqual(5.5);
            }
            expect(leastGap(sheet)).toBeGreaterThanOrEqual(18 - ROUNDING);
          }
          for (const { letter } of of.plan.sections)
            labels += texts(marksOf(sheets, letter)).filter(
              ({ role, content }) => role === 'label' && content.startsWith('open'),
            ).length;
        },
      ),
      { numRuns: 60, seed: 20240301 },
    );
    // Three sections of each ring have part in its open seam; on tiles it may be said more than once.
    expect(labels).toBeGreaterThanOrEqual(3 * 60);
  });

  test('the smallest say `open`, and `sew` never stands at an edge that is left open', () => {
    const of = windmill(1.5);
    const job = usual(of, 'Ring', { keepUpright: true });
    const { sheets } = laid(job);
    const { open } = partialJoin(of);
    for (const section of of.plan.sections) {
      const marks = marksOf(sheets, section.letter);
      const place = placeOf(marks, section, job);
      const label = texts(marks).find(({ role, content }) => role === 'label' && content.startsWith('open'));
      const [stop, end] = [place(open.seam.a), place(open.seam.b)];
      const sew = texts(marks).find(({ role, content }) => role === 'label' && content.startsWith('sew'))!;
      if (label !== undefined) {
        expect(distanceToSegment<'page'>(centreOf(label), stop, end)).toBeLessThan(9);
        expect(distanceToSegment<'page'>(centreOf(sew), stop, end)).toBeGreaterThan(9);
      }
    }
    expect(
      sheets
        .flatMap(({ marks }) => texts(marks))
        .filter(({ role, content }) => role === 'label' && content.startsWith('open')),
    ).toHaveLength(3);
  });

  test('are whole on tiles: the pair of ticks and the words stand on some tile of each', () => {
    const of = windmill(30);
    const { sheets } = laid(usual(of, 'Ring'));
    const tilesWith = (holds: (mark: Mark) => boolean) =>
      new Set(sheets.filter(({ marks }) => marks.some(holds)).flatMap(({ sections }) => sections));
    const labelled = tilesWith(
      (mark) => mark.kind === 'text' && mark.role === 'label' && mark.content.startsWith('open until'),
    );
    const paired = of.plan.sections.filter(({ letter }) =>
      sheets.some((sheet) => pairsOf(marksOf([sheet], letter)).length > 0),
    );
    expect(labelled.size).toBe(3);
    expect(paired).toHaveLength(2);
    for (const { letter } of paired) expect(labelled).toContain(letter);
  });
});

test('sections beside a partial seam share no foundation, the others do', () => {
  const of = windmill(6);
  const { open } = partialJoin(of);
  const beside = of.plan.sections.filter((section) =>
    [0.01, 0.3, 0.6, 0.99].some((t) => fromOutline(lerp(open.seam, t), section) < 1 / 128),
  );
  const { sheets } = laid(usual(of, 'Windmill', { shareTemplates: true }));
  const printed = sheets.flatMap((sheet) => sheet.printedFor ?? sheet.sections.map((letter) => [letter]));
  for (const { letter } of beside) expect(printed).toContainEqual([letter]);
  const others = of.plan.sections.filter((section) => !beside.includes(section));
  expect(others).toHaveLength(2);
  expect(printed).toContainEqual(others.map(({ letter }) => letter));
});

test('a block with straight seams says nothing of partial ones', () => {
  const words = laid(usual(pinwheel(4), 'Pinwheel')).sheets.flatMap(({ marks }) => texts(marks));
  expect(words.filter(({ content }) => /partial|open|double/.test(content))).toEqual([]);
});
