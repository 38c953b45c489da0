import { boundingBox, distance, type Point } from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mark } from '../src/index.ts';
import { type Block, block, pinwheel, rectangle, usual, windmill } from './blocks.ts';
import { boxOf } from './boxes.ts';
import { laid } from './laid.ts';
import { feetOf, ticksSaid } from './match-said.ts';
import { moorings, pilings, randomRepeated, star, whirl } from './repeated.ts';

/** What pages are held to: 0.01 mm, in inches. */
const TRUE = 0.01 / 25.4;

const nine = block(rectangle(6, 6), [
  [2, 0, 2, 6],
  [4, 0, 4, 6],
  [0, 2, 6, 2],
  [0, 4, 6, 4],
]);

const BLOCKS: readonly (readonly [string, Block])[] = [
  ['a nine-patch', nine],
  ['a pinwheel', pinwheel(4)],
  ['a star', star(7)],
  ['a whirl', whirl()],
  ['moorings', moorings()],
  ['pilings', pilings(4)],
];

/**
 * Where the ticks of a section, which lies upright and has a foundation of its own, come to lie when the finished section
 * is put back in the block: the mirror image of the print, at the section's place. By number.
 */
function backInBlock(marks: readonly Mark[], section: Section): ReadonlyMap<number, Point> {
  const own = marks.filter((mark) => mark.section === section.letter);
  const drawn = boxOf(own.find(({ role }) => role === 'finished-outline')!);
  const { minX, minY } = boundingBox(section.outline);
  const { letter } = section;
  return new Map(
    ticksSaid(own, [letter]).map(({ foot, numbers }) => [
      numbers.get(letter)!,
      { x: minX + (drawn.maxX - foot.x) / 72, y: minY + (foot.y - drawn.minY) / 72 },
    ]),
  );
}

/** On paper so large that nothing is turned. */
const marksOf = (of: Block): readonly Mark[] =>
  laid(usual(of, 'Match', { paper: 'tabloid' })).sheets.flatMap((sheet) => sheet.marks);

/** How many numbers stand on two sections, after having looked whether they fall on each other. */
function expectTogether(of: Block): number {
  const marks = marksOf(of);
  const placed = of.plan.sections.map((section) => backInBlock(marks, section));
  let shared = 0;
  placed.forEach((p, i) => {
    for (const q of placed.slice(i + 1))
      for (const [number, at] of p) {
        const other = q.get(number);
        if (other === undefined) {
          // What is at the same place has the same number.
          for (const point of q.values()) expect(distance(point, at)).toBeGreaterThan(TRUE);
          continue;
        }
        shared++;
        expect(distance(at, other)).toBeLessThan(TRUE);
      }
  });
  return shared;
}

describe('match marks with equal numbers fall on each other in the block', () => {
  test.each(BLOCKS)('%s', (_, of) => {
    expect(expectTogether(of)).toBeGreaterThan(0);
  });

  test('random blocks of repeated units', () => {
    let shared = 0;
    let ticks = 0;
    let numbered = 0;
    fc.assert(
      fc.property(
        randomRepeated.filter(({ plan }) => plan.sections.length > 1),
        (of) => {
          // Numbers need room: where seams end closer than they are wide, some may be left out, as is counted below.
          fc.pre(farApart(of));
          shared += expectTogether(of);
          const marks = marksOf(of);
          for (const { letter } of of.plan.sections) {
            const own = marks.filter(({ section }) => section === letter);
            ticks += feetOf(own).length;
            numbered += ticksSaid(own, [letter]).length;
          }
        },
      ),
      { numRuns: 40, seed: 20261201 },
    );
    expect(shared).toBeGreaterThan(20);
    expect(numbered / ticks).toBeGreaterThan(0.95);
  });

  test('each foundation has its match points numbered from 1 through the block, none left out', () => {
    for (const [, of] of BLOCKS) {
      const marks = marksOf(of);
      const numbers = new Set(of.plan.sections.flatMap((section) => [...backInBlock(marks, section).keys()]));
      for (const { letter } of of.plan.sections) {
        const own = marks.filter(({ section }) => section === letter);
        expect(ticksSaid(own, [letter])).toHaveLength(feetOf(own).length);
      }
      expect([...numbers].sort((p, q) => p - q)).toEqual(Array.from(numbers, (_, i) => i + 1));
    }
  });

  test('prints for several sections say the number that each has alone', () => {
    for (const [, of] of BLOCKS) {
      const alone = marksOf(of);
      const shared = laid(usual(of, 'Match', { shareTemplates: true })).sheets;
      const said = new Map<string, number[]>();
      for (const { sections, printedFor, marks } of shared)
        sections.forEach((key, i) => {
          const letters = printedFor?.[i] ?? [key];
          for (const { numbers } of ticksSaid(
            marks.filter(({ section }) => section === key),
            letters,
          ))
            for (const [letter, number] of numbers) said.set(letter, [...(said.get(letter) ?? []), number]);
        });
      for (const section of of.plan.sections)
        expect([...(said.get(section.letter) ?? [])].sort()).toEqual(
          [...backInBlock(alone, section).keys()].sort(),
        );
    }
  });
});

test('a corner has the number of the point that it meets inside another section’s edge', () => {
  const of = windmill(6);
  const marks = marksOf(of);
  const numbersOn = (letter: string) =>
    marks
      .filter(({ section, role, kind }) => section === letter && role === 'label' && kind === 'text')
      .flatMap((mark) => (mark.kind === 'text' && /^\d+$/.test(mark.content) ? [Number(mark.content)] : []));
  const all = of.plan.sections.flatMap(({ letter }) => numbersOn(letter));
  // Four points at which an arm of the windmill ends on the next one's edge: on that edge, and at the corners of two.
  expect(new Set(all)).toEqual(new Set([1, 2, 3, 4]));
  for (const number of [1, 2, 3, 4]) expect(all.filter((one) => one === number)).toHaveLength(3);
});

/** Whether no two corners of patches are nearer to each other than a number is wide with what is kept free round it: 1/4 in. */
const farApart = ({ arrangement }: Block): boolean =>
  arrangement.vertices.every(({ at }, i) =>
    arrangement.vertices.slice(i + 1).every((other) => distance(at, other.at) >= 0.25),
  );
