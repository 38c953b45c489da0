import {
  boundingBox,
  determinant,
  distance,
  edgesOf,
  inverse,
  type Point,
  type Polygon,
  transformPoint,
} from '@seamwright/geometry';
import type { Section } from '@seamwright/sewing';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  type DrawnPage,
  type DrawnPath,
  finishedOutlines,
  hasPoppler,
  readPdf,
  type Spot,
  straightLines,
} from '../../../e2e/support/pdf.ts';
import {
  type FoundationJob,
  type Mark,
  PAPERS,
  type PagePlan,
  type PathMark,
  type TextMark,
  writePdf,
  writeSvg,
} from '../src/index.ts';
import { leastGap } from './apart.ts';
import { type Block, house, lantern, pinwheel, type Unusual, usual } from './blocks.ts';
import { boxOf, overlap, ROUNDING } from './boxes.ts';
import { pageFonts } from './fonts.ts';
import { laid } from './laid.ts';
import { seamEndsOnJoins } from './match-points.ts';
import { awayFrom, besideMatches, legendOf, ticksSaid } from './match-said.ts';
import { QUARTERS, turnedBy } from './quarters.ts';
import { moorings, pilings, randomRepeated, star, whirl } from './repeated.ts';

/** What pages are held to: 0.01 mm, in points. */
const TRUE = (0.01 / 25.4) * 72;

const sharing = (of: Block, title: string, more: Unusual = {}): FoundationJob =>
  usual(of, title, { shareTemplates: true, ...more });

/** One foundation and all that is sewn on prints of it, the one that is laid out first. */
type Alike = readonly Section[];

/** The sections that share, read off the plan alone: who is a copy of whom, and mirrored or not. */
function setsOf({ plan }: Block): readonly Alike[] {
  const sets = new Map<string, Section[]>();
  for (const section of plan.sections) {
    const key = `${section.copyOf?.letter ?? section.letter} ${section.copyOf?.mirrored ?? false}`;
    sets.set(key, [...(sets.get(key) ?? []), section]);
  }
  return [...sets.values()];
}

/** A point of `from` as it lies on `to`, a section of the same set. */
function carried(from: Section, to: Section, p: Point): Point {
  const back = from.copyOf === undefined ? p : transformPoint(inverse(from.copyOf.transform), p);
  return to.copyOf === undefined ? back : transformPoint(to.copyOf.transform, back);
}

/** Where marks must be on the foundation of a set, block coordinates of its first section, and for which letters. */
function wantedMarks(of: Block, set: Alike): readonly { at: Point; letters: readonly string[] }[] {
  const [first] = set;
  const wanted: { at: Point; letters: string[] }[] = [];
  for (const { letter, points } of seamEndsOnJoins(of)) {
    const section = set.find((one) => one.letter === letter);
    for (const p of section === undefined ? [] : points) {
      const at = carried(section!, first!, p);
      const known = wanted.find((mark) => distance(mark.at, at) < 1e-6);
      if (known) known.letters.push(letter);
      else wanted.push({ at, letters: [letter] });
    }
  }
  return wanted;
}

const onPaper = ({ x, y }: Spot, scale: number): Spot => ({ x: -x * 72 * scale, y: y * 72 * scale });

/** From the block to the sheet, so that the section comes to lie on its drawn outline. */
function placing(
  drawn: readonly Spot[],
  outline: Polygon,
  scale: number,
  inside: { readonly drawn: readonly Spot[]; readonly wanted: readonly Spot[] } = { drawn: [], wanted: [] },
): (p: Spot) => Spot {
  for (const quarters of QUARTERS) {
    const print = (p: Spot): Spot => turnedBy(onPaper(p, scale), quarters);
    const [from, to] = [boundingBox<'page'>(outline.map(print)), boundingBox<'page'>(drawn)];
    const place = (p: Spot): Spot => {
      const { x, y } = print(p);
      return { x: x - from.minX + to.minX, y: y - from.minY + to.minY };
    };
    const lies = (p: Spot, on: readonly Spot[]) => on.some((q) => distance<'page'>(q, place(p)) < TRUE);
    if (outline.every((p) => lies(p, drawn)) && inside.wanted.every((p) => lies(p, inside.drawn)))
      return place;
  }
  throw new Error('The drawn outline is not that of the section');
}

/** Ends of sew lines, as drawn and as wanted: a square may lie in four ways, and they tell in which it does. */
const sewn = (plan: PagePlan, { letter, sewLines }: Section) => ({
  drawn: marksOf(plan, letter).flatMap((mark) =>
    mark.kind === 'path' && mark.role === 'sew-line' ? mark.points : [],
  ),
  wanted: sewLines.flatMap(({ a, b }) => [a, b]),
});

/**
 * How far the drawn outline is from the mirror image of the section's when it is turned by any angle to lie on it;
 * points. Walked the same way round, so what would have to be turned over does not fit.
 */
function turnedMisfit(drawn: readonly Spot[], outline: Polygon, scale: number): number {
  const wanted = outline.map((p) => onPaper(p, scale)).reverse();
  if (drawn.length !== wanted.length) return Infinity;
  const n = drawn.length;
  const heading = (p: Spot, q: Spot) => Math.atan2(q.y - p.y, q.x - p.x);
  const clockwise = (ring: readonly Spot[]) =>
    ring.reduce((sum, p, i) => sum + p.x * ring[(i + 1) % n]!.y - ring[(i + 1) % n]!.x * p.y, 0) > 0;
  const ring = clockwise(drawn) === clockwise(wanted) ? drawn : [...drawn].reverse();
  const misfits = ring.map((start, shift) => {
    const at = (i: number) => ring[(i + shift) % n]!;
    const turn = heading(wanted[0]!, wanted[1]!) - heading(start, at(1));
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return Math.max(
      ...wanted.map((p, i) => {
        const [dx, dy] = [at(i).x - start.x, at(i).y - start.y];
        const moved = { x: wanted[0]!.x + cos * dx - sin * dy, y: wanted[0]!.y + sin * dx + cos * dy };
        return distance<'page'>(moved, p);
      }),
    );
  });
  return Math.min(...misfits);
}

/** Where the match marks of a drawn outline start: the ends on it of heavy straight lines. */
const feetOf = (page: DrawnPage, { points: outline }: DrawnPath): readonly Spot[] =>
  straightLines(page)
    .filter(({ width }) => Math.abs(width - 1.5) < 0.01)
    .flatMap(({ points }) => points.filter((p) => awayFrom(p, outline) < TRUE));

/** Block, and its sets by letter: known from how the block was made. */
const BLOCKS: readonly (readonly [title: string, of: Block, sets: readonly string[]])[] = [
  ['Pinwheel', pinwheel(4), ['AB']],
  ['Star', star(7), ['AC', 'B']],
  ['Whirl', whirl(), ['ABCD']],
  ['Moorings', moorings(), ['AD', 'BC']],
  ['Pilings', pilings(3), ['ABC']],
  ['Many pilings', pilings(12, 1), ['ABCDEFGHIJKL']],
];

describe.skipIf(!hasPoppler)('one foundation for sections that are alike, measured by Poppler', () => {
  for (const [title, of, sets] of BLOCKS)
    for (const more of [{ copies: 3 }, { paper: 'a4', scale: 0.75, allowance: 0.375 }] as const) {
      const job = sharing(of, title, more);
      describe(`${title}, ${JSON.stringify(more)}`, () => {
        let pages: readonly DrawnPage[] = [];
        beforeAll(async () => {
          pages = readPdf(await writePdf(laid(job), pageFonts));
        });
        /** The outlines with their pages, in the order of the sets: found by their shape and place in the plan. */
        const drawnSets = () =>
          setsOf(of).map((set) => {
            const all = pages.flatMap((page) => finishedOutlines(page).map((outline) => ({ page, outline })));
            const marks = laid(job).sheets.flatMap(({ marks: m }, i) => m.map((mark) => ({ mark, i })));
            const { mark, i } = marks.find(
              ({ mark: m }) => m.role === 'finished-outline' && m.section === set[0]!.letter,
            )!;
            const [corner] = (mark as PathMark).points;
            const found = all.find(
              ({ page, outline }) =>
                page === pages[i] && outline.points.some((p) => distance<'page'>(p, corner!) < TRUE),
            )!;
            return { set, ...found };
          });

        test('there is one for each set, and the sets are those that the block was made of', () => {
          expect(setsOf(of).map((set) => set.map(({ letter }) => letter).join(''))).toEqual(sets);
          expect(pages.flatMap(finishedOutlines)).toHaveLength(sets.length);
        });

        test('every section of the set fits its outline, turned and never turned over', () => {
          for (const { set, outline } of drawnSets())
            for (const section of set)
              expect(turnedMisfit(outline.points, section.outline, job.sizes[0]!.scale)).toBeLessThan(TRUE);
        });

        test('every match point of every section is marked, and nothing else', () => {
          let marked = 0;
          for (const { set, page, outline } of drawnSets()) {
            const place = placing(outline.points, set[0]!.outline, job.sizes[0]!.scale);
            const wanted = wantedMarks(of, set).map(({ at }) => place(at));
            const feet = feetOf(page, outline);
            expect(feet).toHaveLength(wanted.length);
            for (const p of wanted)
              expect(Math.min(...feet.map((foot) => distance<'page'>(foot, p)))).toBeLessThan(TRUE);
            marked += feet.length;
          }
          expect(marked).toBeGreaterThan(0);
        });

        test('the pages say for which sections, how many to print, and whose numbers and top they show', () => {
          // Long lists of letters run over several lines.
          const text = pages.map((page) => page.text.replaceAll(/\s+/g, ' ')).join('\n');
          for (const set of setsOf(of)) {
            const letters = set.map(({ letter }) => letter);
            expect(text).toContain(letters.join(', '));
            expect(text).toContain(`Print ${job.sizes[0]!.copies * letters.length}`);
            const [first, second] = letters;
            for (const k of set[0]!.order.keys()) expect(text).toMatch(new RegExp(`\\b${first}${k + 1}\\b`));
            if (second === undefined) continue;
            expect(text).toContain(`${first}1 stands for ${second}1`);
            expect(text).toContain(`top of block for ${first}`);
            // The copies' own numbers are nowhere but in that line.
            for (const other of letters.slice(1)) expect(text).not.toMatch(new RegExp(`\\b${other}2\\b`));
          }
        });
      });
    }

  test('a mirrored copy is said to be one', async () => {
    const [page] = readPdf(await writePdf(laid(sharing(moorings(), 'Moorings')), pageFonts));
    expect(page!.text).toMatch(/A, D[\s\S]*B, C[\s\S]*mirrored copy of A/);
    expect(page!.text.match(/mirrored copy/g)).toHaveLength(1);
    const [plain] = readPdf(await writePdf(laid(usual(moorings(), 'Moorings')), pageFonts));
    expect(plain!.text).not.toContain('mirrored copy');
  });
});

const marksOf = (plan: PagePlan, letter: string): readonly Mark[] =>
  plan.sheets.flatMap(({ marks }) => marks).filter(({ section }) => section === letter);

const isText = (mark: Mark): mark is TextMark => mark.kind === 'text';

describe('marks that are for some of the sections only', () => {
  test.each(BLOCKS.map(([title, of]) => [title, of] as const))(
    '%s: the letters are the right ones',
    (title, of) => {
      for (const allowance of [0, 0.125, 0.25]) {
        const plan = laid(sharing(of, title, { allowance }));
        for (const set of setsOf(of)) {
          const drawn = marksOf(plan, set[0]!.letter).find(
            ({ role }) => role === 'finished-outline',
          ) as PathMark;
          const place = placing(drawn.points, set[0]!.outline, 1, sewn(plan, set[0]!));
          const all = set.map(({ letter }) => letter);
          const said = ticksSaid(marksOf(plan, all[0]!), all);
          const wanted = wantedMarks(of, set);
          expect(said).toHaveLength(wanted.length);
          for (const { at, letters } of wanted) {
            const tick = said.find(({ foot }) => distance<'page'>(foot, place(at)) < TRUE);
            expect([...tick!.numbers.keys()]).toEqual(letters);
          }
        }
      }
    },
  );

  test('a row has none at its two ends', () => {
    const plan = laid(sharing(pilings(4), 'Pilings'));
    const said = [...legendOf(marksOf(plan, 'A')).values()].map((numbers) => [...numbers.keys()].join(''));
    expect(said.sort()).toEqual(['ABC', 'ABC', 'BCD', 'BCD']);
  });

  test('where a point is the same for all sections it has its number, and nobody is told of any name', () => {
    const marks = marksOf(laid(sharing(pinwheel(4), 'Alike')), 'A');
    expect([...legendOf(marks)]).toEqual([]);
    expect(besideMatches(marks).map(({ content }) => content)).toEqual(['1']);
    expect(
      marks
        .filter(isText)
        .map(({ content }) => content)
        .join(' '),
    ).not.toContain('match numbers');
  });

  test('numbers and names stand on nothing else', () => {
    for (const of of [pilings(4), pilings(12, 1), pilings(2, 1)])
      for (const allowance of [0, 0.125, 0.25]) {
        const marks = marksOf(laid(sharing(of, 'Pilings', { allowance })), 'A');
        const letters = besideMatches(marks);
        expect(letters.length).toBeGreaterThan(0);
        for (const text of letters) {
          const box = boxOf(text);
          for (const other of marks.filter((mark) => mark !== text && mark.kind === 'text'))
            expect(overlap(box, boxOf(other))).toBe(false);
          for (const path of marks.filter((mark) => mark.kind === 'path'))
            expect(crosses(path as PathMark, box)).toBe(false);
        }
      }
  });
});

/** Whether any stretch of the path has a point in the box; looked at point by point. */
function crosses({ points, closed }: PathMark, box: ReturnType<typeof boxOf>): boolean {
  const stretches = edgesOf<'page'>(points).slice(0, closed ? undefined : -1);
  return stretches.some(({ a, b }) =>
    Array.from({ length: 2001 }, (_, i) => i / 2000).some((t) => {
      const [x, y] = [a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)];
      return x > box.minX && x < box.maxX && y > box.minY && y < box.maxY;
    }),
  );
}

describe('random blocks of repeated units', () => {
  test('one foundation for each set; every match point of every section, for the right letters', () => {
    let lettered = 0;
    let mirrored = 0;
    fc.assert(
      fc.property(randomRepeated, fc.constantFrom(0.125, 0.25), (of, allowance) => {
        const plan = laid(sharing(of, 'Repeated', { allowance }));
        const sets = setsOf(of);
        expect(
          plan.sheets.flatMap(({ marks }) => marks).filter(({ role }) => role === 'finished-outline'),
        ).toHaveLength(sets.length);
        expect(
          plan.sheets
            .flatMap(({ sections, printedFor }) => printedFor ?? sections.map((letter) => [letter]))
            .sort(),
        ).toEqual(sets.map((set) => set.map(({ letter }) => letter)).sort());
        for (const set of sets) {
          mirrored += set[0]!.copyOf?.mirrored ? 1 : 0;
          const drawn = marksOf(plan, set[0]!.letter).find(
            ({ role }) => role === 'finished-outline',
          ) as PathMark;
          const place = placing(drawn.points, set[0]!.outline, 1, sewn(plan, set[0]!));
          const feet = marksOf(plan, set[0]!.letter)
            .filter(({ role }) => role === 'match-mark')
            .map((mark) => (mark as PathMark).points.find((p) => awayFrom(p, drawn.points) < TRUE)!);
          const wanted = wantedMarks(of, set);
          expect(feet).toHaveLength(wanted.length);
          for (const { at } of wanted)
            expect(Math.min(...feet.map((foot) => distance<'page'>(foot, place(at))))).toBeLessThan(TRUE);
          // As often as marks are for some only, the caption says so.
          const some = wanted
            .filter(({ letters }) => letters.length < set.length)
            .map(({ letters }) => letters.join());
          const said = [...legendOf(marksOf(plan, set[0]!.letter)).values()]
            .filter(({ size }) => size < set.length)
            .map((numbers) => [...numbers.keys()].join());
          // The names of corners are among them.
          for (const letters of some) expect(said.splice(said.indexOf(letters), 1)).toEqual([letters]);
          lettered += some.length;
        }
      }),
      { numRuns: 70, seed: 20240110 },
    );
    expect(lettered).toBeGreaterThan(20);
    expect(mirrored).toBeGreaterThan(10);
  });

  test('everything keeps the margin and its distance, whole and in tiles', () => {
    fc.assert(
      fc.property(
        randomRepeated,
        fc.constantFrom(1, 1, 4),
        fc.constantFrom('letter' as const, 'a4' as const),
        (of, scale, paper) => {
          const plan = laid(sharing(of, 'A row of pilings, repeated', { scale, paper }));
          const { width, height } = PAPERS[paper];
          for (const sheet of plan.sheets) {
            for (const mark of sheet.marks) {
              const { minX, minY, maxX, maxY } = boxOf(mark);
              // 1/4 in is safe: printer manuals, common practice.
              expect(Math.min(minX, minY, width - maxX, height - maxY)).toBeGreaterThanOrEqual(18 - ROUNDING);
            }
            expect(leastGap(sheet)).toBeGreaterThanOrEqual(18 - ROUNDING);
            const frame = sheet.marks.filter(({ section }) => section === undefined).map(boxOf);
            for (const box of sheet.marks.filter(({ section }) => section !== undefined).map(boxOf))
              for (const other of frame) expect(overlap(box, other)).toBe(false);
          }
        },
      ),
      { numRuns: 40, seed: 20240111 },
    );
  });
});

describe('a shared foundation in tiles', () => {
  const plan = laid(sharing(pilings(3, 12), 'Pilings'));

  test('every tile says for which sections it is, and its caption stands clear of the lines', () => {
    expect(plan.sheets.length).toBeGreaterThan(1);
    for (const { marks, sections, printedFor } of plan.sheets) {
      expect([sections, printedFor]).toEqual([['A'], [['A', 'B', 'C']]]);
      const texts = marks.filter(isText).map(({ content }) => content);
      expect(texts).toEqual(
        expect.arrayContaining(['for A, B, C', 'Print 3', 'A1 stands for B1 and C1, too']),
      );
      const captions = marks.filter(({ role }) => role === 'caption');
      const lines = marks.filter(({ role, section }) => section === 'A' && role !== 'caption').map(boxOf);
      const covered = {
        minX: Math.min(...lines.map(({ minX }) => minX)),
        minY: Math.min(...lines.map(({ minY }) => minY)),
        maxX: Math.max(...lines.map(({ maxX }) => maxX)),
        maxY: Math.max(...lines.map(({ maxY }) => maxY)),
      };
      for (const caption of captions) expect(overlap(boxOf(caption), covered)).toBe(false);
    }
    expect(plan.outline.map(({ title }) => title)).toEqual(['Foundation A, B, C']);
    expect(plan.outline[0]!.children[0]!.title).toBe('A r1 c1');
  });

  test('the name of each tick is on a tile, and what it stands for on every one', () => {
    const names = new Set(
      plan.sheets.flatMap(({ marks }) => besideMatches(marks).map(({ content }) => content)),
    );
    expect(names.size).toBe(4);
    for (const { marks } of plan.sheets) expect(new Set(legendOf(marks).keys())).toEqual(names);
  });
});

describe('what stays as it is', () => {
  test('without the option each section has its foundation, though it be a copy', () => {
    for (const [title, of] of BLOCKS) {
      const plan = laid(usual(of, title));
      expect(plan).toEqual(laid(sharing(of, title, { shareTemplates: false })));
      expect(plan.outline).toHaveLength(of.plan.sections.length);
      for (const sheet of plan.sheets) expect(sheet).not.toHaveProperty('printedFor');
    }
  });

  test('with it, a block without copies comes out the same', () => {
    for (const of of [house(), lantern(4), lantern(12)])
      expect(laid(sharing(of, 'Alone'))).toEqual(laid(usual(of, 'Alone')));
  });

  test('in an SVG the foundation is the group of its first letter', () => {
    const svg = writeSvg(laid(sharing(whirl(), 'Whirl')), 0);
    expect([...svg.matchAll(/<g id="(section-[^"]*)">/g)].map(([, id]) => id)).toEqual(['section-A']);
  });
});

test('the plan’s transforms of copies that share a print turn, and never turn over', () => {
  for (const [, of] of BLOCKS)
    for (const { copyOf } of of.plan.sections)
      if (copyOf) expect(determinant(copyOf.transform)).toBeCloseTo(copyOf.mirrored ? -1 : 1, 9);
});
