import { boundingBox, contains } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { misfit, type Spot } from '../../../e2e/support/pdf.ts';
import type { Mark, PagePlan } from '../src/index.ts';
import { leastGap } from './apart.ts';
import { block, house, lantern, pinwheel, rectangle, usual } from './blocks.ts';
import { boxOf, overlap, ROUNDING } from './boxes.ts';
import { laid } from './laid.ts';
import { QUARTERS, type Quarters, turnedBy } from './quarters.ts';
import { randomBlock } from './random-blocks.ts';

const paper = fc.constantFrom('letter' as const, 'a4' as const);
const allowance = fc.constantFrom(0, 0.125, 0.25, 0.5);
const TITLES = [
  'Paper boat',
  'Лодка',
  '',
  'A lighthouse with a name far too long for the narrow foundation it is printed on',
];

/** Jobs of random blocks; with blocks of up to 20 in most foundations are cut into tiles. */
const randomPlan = (largest: number): fc.Arbitrary<PagePlan> =>
  fc
    .record({
      of: randomBlock(largest),
      paper,
      allowance,
      title: fc.constantFrom(...TITLES),
      copies: fc.nat(98),
    })
    .map(({ of, title, copies, ...more }) => laid(usual(of, title, { ...more, copies: copies + 1 })));

const mirrored = ({ x, y }: Spot): Spot => ({ x: -x * 72, y: y * 72 });

/** From the block to the sheet, so that the section's outline comes to lie on the drawn one. */
function onto(drawn: Mark, outline: readonly Spot[], quarters: Quarters): (p: Spot) => Spot {
  const printed = (p: Spot): Spot => turnedBy(mirrored(p), quarters);
  const [from, to] = [boundingBox<'page'>(outline.map(printed)), boxOf(drawn)];
  return (p) => {
    const { x, y } = printed(p);
    return { x: x - from.minX + to.minX, y: y - from.minY + to.minY };
  };
}

describe.each([
  ['whole and packed', 6],
  ['in tiles', 20],
])('random blocks, %s', (_, largest) => {
  test('every mark keeps the margin, every line and text can be printed and read', () => {
    fc.assert(
      fc.property(randomPlan(largest), (plan) => {
        const { width, height } = plan.paper;
        for (const mark of plan.sheets.flatMap(({ marks }) => marks)) {
          const box = boxOf(mark);
          // 1/4 in is safe: printer manuals, common practice.
          expect(Math.min(box.minX, box.minY)).toBeGreaterThanOrEqual(18 - ROUNDING);
          expect(box.maxX).toBeLessThanOrEqual(width - 18 + ROUNDING);
          expect(box.maxY).toBeLessThanOrEqual(height - 18 + ROUNDING);
          if (mark.kind === 'path') {
            expect(mark.stroke!.width).toBeGreaterThanOrEqual(0.5);
            expect(Math.min(mark.stroke!.ink, mark.fill ?? 1)).toBeGreaterThanOrEqual(0.3);
          } else {
            expect(mark.size).toBeGreaterThanOrEqual(5.5);
            expect(mark.ink).toBeGreaterThanOrEqual(0.5);
            expect(Math.abs(mark.angle)).toBeLessThanOrEqual(90);
          }
        }
      }),
      { numRuns: 60, seed: 20240101 },
    );
  });

  test('foundations on one sheet do not touch each other, nor the words and squares of the sheet', () => {
    fc.assert(
      fc.property(randomPlan(largest), (plan) => {
        for (const sheet of plan.sheets) {
          expect(leastGap(sheet)).toBeGreaterThanOrEqual(18 - ROUNDING);
          // Captions may stand in a corner of their own, so against the frame each mark is looked at alone.
          const frame = sheet.marks.filter(({ section }) => section === undefined).map(boxOf);
          for (const box of sheet.marks.filter(({ section }) => section !== undefined).map(boxOf))
            for (const other of frame) expect(overlap(box, other)).toBe(false);
        }
      }),
      { numRuns: 60, seed: 20240102 },
    );
  });

  test('every piece number stands on a sheet of its section, and every section in the outline', () => {
    fc.assert(
      fc.property(randomBlock(largest), paper, (of, name) => {
        const plan = laid(usual(of, 'Numbers', { paper: name }));
        for (const { letter, order } of of.plan.sections)
          for (let k = 1; k <= order.length; k++) {
            const sheets = plan.sheets.filter(({ marks }) =>
              marks.some((mark) => mark.kind === 'text' && mark.content === `${letter}${k}`),
            );
            expect(sheets.length).toBeGreaterThan(0);
            for (const { sections } of sheets) expect(sections).toContain(letter);
          }
        expect(plan.outline.map(({ title }) => title)).toEqual(
          of.plan.sections.map(({ letter }) => `Foundation ${letter}`),
        );
        for (const { title, sheet } of plan.outline)
          expect(plan.sheets[sheet]!.sections).toContain(title.slice('Foundation '.length));
      }),
      { numRuns: 60, seed: 20240103 },
    );
  });

  test('outlines are the mirrored sections, and each number stands in its own patch', () => {
    let measured = 0;
    fc.assert(
      fc.property(randomBlock(largest), paper, (of, name) => {
        const plan = laid(usual(of, 'Numbers', { paper: name }));
        for (const { letter, order, outline } of of.plan.sections) {
          const marks = plan.sheets
            .flatMap((sheet) => sheet.marks)
            .filter(({ section }) => section === letter);
          const drawn = marks.find(({ role }) => role === 'finished-outline');
          if (drawn?.kind !== 'path') throw new Error(`Section ${letter} has no outline`);
          expect(misfit(drawn.points, outline.map(mirrored))).toBeLessThan(ROUNDING);
          // In tiles a number may stand on another one than the outline that was found first.
          if (drawn.window !== undefined) continue;
          measured++;
          const dots = marks.flatMap((mark) =>
            mark.kind === 'path' && mark.role === 'label' && mark.fill !== undefined ? [mark.points[1]!] : [],
          );
          const numbered = (quarters: Quarters) =>
            order.every((index, k) => {
              const place = onto(drawn, outline, quarters);
              const patch = of.arrangement.patches[index]!.polygon.map(place);
              const number = marks.find(
                (mark) => mark.kind === 'text' && mark.content === `${letter}${k + 1}`,
              )!;
              const { minX, minY, maxX, maxY } = boxOf(number);
              const inside = (p: Spot) => contains<'page'>(patch, p) === 'inside';
              // A number that is led out of a patch too small for it has its leader's dot there.
              return inside({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 }) || dots.some(inside);
            });
          expect(QUARTERS.some(numbered)).toBe(true);
        }
      }),
      { numRuns: 60, seed: 20240105 },
    );
    expect(measured).toBeGreaterThan(10);
  });

  test('the same job gives the same plan', () => {
    fc.assert(
      fc.property(randomBlock(largest), paper, (of, name) => {
        expect(laid(usual(of, 'Twice', { paper: name }))).toEqual(laid(usual(of, 'Twice', { paper: name })));
      }),
      { numRuns: 20, seed: 20240104 },
    );
  });
});

const words = (plan: PagePlan): readonly string[] =>
  plan.sheets.flatMap(({ marks }) => marks).flatMap((mark) => (mark.kind === 'text' ? [mark.content] : []));

describe('what is written on the sheets', () => {
  test('name, size, copies, allowance and page number, as a quilter writes them', () => {
    const plan = laid(
      usual(house(), 'Harbour house', { copies: 4, pattern: 'Reading room quilt', scale: 0.75 }),
    );
    expect(words(plan)).toEqual(
      expect.arrayContaining([
        'A',
        'Harbour house',
        '4½ × 5¼ in finished',
        'Print 4',
        'top of block',
        'Reading room quilt – Harbour house',
        'page 1 of 1, print 4 times',
        'Print at 100 %, no scaling',
        '1 in',
        '50 mm',
      ]),
    );
    expect(words(plan).join(' ')).toContain('¼ in seam allowance');
  });

  test('metric makers read centimetres', () => {
    const plan = laid(usual(lantern(4), 'Lantern', { unit: 'cm', allowance: 0.7 / 2.54 }));
    expect(words(plan)).toContain('10.16 × 10.16 cm finished');
    expect(words(plan).join(' ')).toContain('0.7 cm seam allowance');
  });

  test('a size that no ruler has is told to the nearest sixteenth, as a ruler is read', () => {
    // 10 in × ⅔ is 6.6667: 6 and 10.67 sixteenths.
    const plan = laid(
      usual(lantern(10), 'Lantern', {
        sizes: [
          { scale: 2 / 3, copies: 1 },
          { scale: 1 / 3, copies: 1 },
        ],
      }),
    );
    expect(words(plan)).toContain('≈ 6 11/16 × 6 11/16 in finished');
    expect(plan.outline.map(({ title }) => title)).toContain('≈ 6 11/16 × 6 11/16 in');
    // A sixty-fourth has a mark.
    const exact = laid(usual(lantern(4 + 1 / 64), 'Lantern'));
    expect(words(exact)).toContain('4 1/64 × 4 1/64 in finished');
    // 4.01 cm is no mark of a ruler either, but centimetres are read to the millimetre's tenth.
    expect(words(laid(usual(lantern(10 / 3), 'Lantern', { unit: 'cm' })))).toContain(
      '8.47 × 8.47 cm finished',
    );
  });

  test('a part of a block names the whole block’s size, too', () => {
    const nine = block(rectangle(3, 3), [
      [1, 0, 1, 3],
      [2, 0, 2, 3],
      [0, 1, 3, 1],
      [0, 2, 3, 2],
    ]);
    expect(words(laid(usual(nine, 'Nine-patch')))).toContain('block 3 × 3 in');
    expect(words(laid(usual(lantern(3), 'Lantern'))).filter((text) => text.startsWith('block'))).toEqual([]);
  });

  test('without an allowance nobody is told to cut on a dashed line', () => {
    const text = words(laid(usual(lantern(4), 'Lantern', { allowance: 0 }))).join(' ');
    expect(text).toContain('no seam allowance');
    expect(text).not.toContain('dashed');
  });

  test('tiles are named, point to their neighbours, and are in the outline', () => {
    const plan = laid(usual(lantern(10), 'Lantern'));
    expect(plan.outline).toHaveLength(1);
    expect(plan.outline[0]!.children.map(({ title, sheet }) => [title, sheet])).toEqual([
      ['A r1 c1', 0],
      ['A r1 c2', 1],
      ['A r2 c1', 2],
      ['A r2 c2', 3],
    ]);
    expect(words({ ...plan, sheets: plan.sheets.slice(0, 1) })).toEqual(
      expect.arrayContaining(['A r1 c1', 'A r1 c2 joins here', 'A r2 c1 joins here']),
    );
  });

  test('an empty name is said to be one', () => {
    expect(words(laid(usual(lantern(3), ' \n ')))).toContain('Untitled block');
  });
});

describe('saving paper', () => {
  test('several foundations share a sheet, in the order of their letters', () => {
    const plan = laid(usual(pinwheel(2.5), 'Pinwheel'));
    expect(plan.sheets.map(({ sections }) => sections)).toEqual([['A', 'B']]);
  });

  test('a 7½ in block is not cut up on Letter: it is 8 in with its allowance, all that the margins leave', () => {
    expect(laid(usual(lantern(7.5), 'Lantern')).sheets).toHaveLength(1);
    expect(laid(usual(lantern(7.625), 'Lantern')).sheets.length).toBeGreaterThan(1);
  });

  test('a strip longer than the sheet is wide lies sideways, and the arrow with it', () => {
    const plan = laid(usual(block(rectangle(8.5, 2), [[2, 0, 3, 2]]), 'Quay'));
    expect(plan.sheets).toHaveLength(1);
    const outline = plan.sheets[0]!.marks.find(({ role }) => role === 'finished-outline')!;
    const { minX, minY, maxX, maxY } = boxOf(outline);
    expect([maxX - minX, maxY - minY].map((side) => side / 72)).toEqual([
      expect.closeTo(2, 9),
      expect.closeTo(8.5, 9),
    ]);
    // The shaft runs from its foot to its head: to the right, where the block's top lies.
    const shaft = plan.sheets[0]!.marks.find((mark) => mark.kind === 'path' && mark.role === 'caption');
    const [foot, head] = (shaft as Mark & { kind: 'path' }).points;
    expect(head!.y).toBeCloseTo(foot!.y, 9);
    expect(head!.x).toBeGreaterThan(foot!.x);
  });
});
