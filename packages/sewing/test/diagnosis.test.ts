import { type Arrangement, type Finding, plainWords } from '@seamwright/arrangement';
import { distance, distanceToSegment, type Point, type Segment, SNAP_DISTANCE } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { touching as touchingOf } from '../src/contact.ts';
import { planSewing } from '../src/index.ts';
import { interlockedFindings } from '../src/interlock.ts';
import { floorplans, wallsOf } from './floorplans.ts';
import { arrangedIn, rectangle } from './grid-block.ts';
import { grownSeams } from './grown-seams.ts';
import { smallestInterlockedSets } from './interlocked-by-definition.ts';
import { cellsOf, levelBetween, nestedWindmills, patchAt, randomFrom, windmill } from './windmills.ts';

const SIZE = 12;
const SQUARE = rectangle(SIZE, SIZE);
const WHOLE = { left: 0, top: 0, right: SIZE, bottom: SIZE };

const arranged = (segments: readonly Segment[], outline: readonly Point[] = SQUARE): Arrangement =>
  arrangedIn(outline, segments);

const diagnosed = (arrangement: Arrangement): readonly Finding[] =>
  interlockedFindings(arrangement, touchingOf(arrangement), [arrangement.patches.map(({ index }) => index)]);

/** That a finding's ring is one: every seam ends on the next, between that one's ends, or all end in one place. */
function expectRing({ ring = [], at }: Finding): void {
  expect(ring.length).toBeGreaterThanOrEqual(2);
  if (at.length === 1) {
    for (const { b } of ring) expect(distance(b, at[0]!)).toBeLessThan(1e-9);
    return;
  }
  expect(ring.length).toBeGreaterThanOrEqual(3);
  ring.forEach(({ b }, i) => {
    const next = ring[(i + 1) % ring.length]!;
    expect(distance(b, at[i]!)).toBeLessThan(1e-9);
    expect(distanceToSegment(b, next.a, next.b)).toBeLessThan(SNAP_DISTANCE);
    expect(distance(b, next.a)).toBeGreaterThan(SNAP_DISTANCE);
    expect(distance(b, next.b)).toBeGreaterThan(SNAP_DISTANCE);
  });
}

describe('windmills in larger blocks', () => {
  it('500 of three to six seams are found, with the patches that hold each other and the ring of seams', () => {
    const seen = [0, 0, 0, 0];
    for (let seed = 1; seed <= 500; seed += 1) {
      const random = randomFrom(seed);
      const k = 3 + Math.floor(random() * 4);
      seen[k - 3]! += 1;
      const { cells, lines } = cellsOf(1 + Math.floor(random() * 3), 1 + Math.floor(random() * 3), SIZE);
      const cell = cells[Math.floor(random() * cells.length)]!;
      const mill = windmill(k, cell, random);
      const arrangement = arranged([...lines, ...mill.seams]);
      const findings = diagnosed(arrangement);
      const where = `seed ${seed}`;
      expect(findings, where).toHaveLength(1);
      const [finding] = findings;
      // Known from where the seams were put, not from the solver.
      const beside = mill.beside.map((p) => patchAt(arrangement, p)).sort((p, q) => p - q);
      expect(finding!.patches, where).toEqual(beside);
      expect(plainWords(finding!.message), where).not.toContain('Perhaps');
      expect(finding!.ring, where).toHaveLength(k);
      for (const corner of mill.corners) {
        expect(Math.min(...finding!.at.map((p) => distance(p, corner))), where).toBeLessThan(SNAP_DISTANCE);
      }
      expectRing(finding!);
    }
    expect(Math.min(...seen)).toBeGreaterThan(80);
  });

  it('each of several is a finding of its own, side by side and one inside the other', () => {
    for (let seed = 1; seed <= 100; seed += 1) {
      const { segments, mills } = nestedWindmills(SIZE, randomFrom(1000 + seed));
      const arrangement = arranged(segments);
      const findings = diagnosed(arrangement);
      const sets = findings.map(({ patches }) => patches!.join(' ')).sort();
      const expected = mills.map(({ beside }) =>
        beside
          .map((p) => patchAt(arrangement, p))
          .sort((p, q) => p - q)
          .join(' '),
      );
      expect(sets, `seed ${seed}`).toEqual(expected.sort());
      findings.forEach(expectRing);
    }
  });
});

describe('corners', () => {
  const hexagon = Array.from({ length: 6 }, (_, i) => ({
    x: 3 * Math.cos((i * Math.PI) / 3),
    y: 3 * Math.sin((i * Math.PI) / 3),
  }));

  it('three diamonds in a hexagon', () => {
    const centre = { x: 0, y: 0 };
    const arrangement = arranged(
      [0, 2, 4].map((i) => ({ a: centre, b: hexagon[i]! })),
      hexagon,
    );
    const findings = diagnosed(arrangement);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ kind: 'interlocked', severity: 'error', patches: [0, 1, 2] });
    expect(plainWords(findings[0]!.message)).toContain('3 seams meet');
    expect(findings[0]!.at.map(({ x, y }) => Math.hypot(x, y) < 1e-9)).toEqual([true]);
    findings.forEach(expectRing);
  });

  it('a mitred attic window', () => {
    const l = (x1: number, y1: number, x2: number, y2: number) => ({
      a: { x: x1, y: y1 },
      b: { x: x2, y: y2 },
    });
    const arrangement = arranged([l(3, 0, 3, 9), l(3, 9, 12, 9), l(3, 9, 0, 12)]);
    const findings = diagnosed(arrangement);
    expect(findings.map(({ patches }) => patches)).toEqual([[0, 1, 2]]);
    expect(findings[0]!.at).toEqual([{ x: 3, y: 9 }]);
  });

  it('one patch let into the corner of another', () => {
    const l = (x1: number, y1: number, x2: number, y2: number) => ({
      a: { x: x1, y: y1 },
      b: { x: x2, y: y2 },
    });
    const arrangement = arranged([l(4, 0, 4, 4), l(4, 4, 0, 4)]);
    const findings = diagnosed(arrangement);
    expect(findings.map(({ patches }) => patches)).toEqual([[0, 1]]);
    expect(plainWords(findings[0]!.message)).toContain('turns a corner');
  });
});

describe('the smallest interlocked set, against trying every set', () => {
  function expectSmallest(arrangement: Arrangement, where: string): 'sewable' | 'interlocked' {
    const smallest = smallestInterlockedSets(arrangement);
    const findings = diagnosed(arrangement);
    expect(planSewing(arrangement, { effort: 0 }).verdict === 'not sewable', where).toBe(smallest.length > 0);
    if (smallest.length === 0) {
      expect(findings, where).toEqual([]);
      return 'sewable';
    }
    findings.forEach(expectRing);
    const least = Math.min(...findings.map(({ patches }) => patches!.length));
    expect(least, where).toBe(smallest[0]!.length);
    for (const { patches, message } of findings) {
      if (patches!.length > least) continue;
      expect(smallest, where).toContainEqual(patches);
      expect(plainWords(message), where).not.toContain('Perhaps');
    }
    return 'interlocked';
  }

  it('every floorplan of five and six rooms', () => {
    for (const n of [5, 6]) {
      const seen = floorplans(n).map((rooms, i) =>
        expectSmallest(arranged(wallsOf(rooms, SIZE)), `${n}, ${i}`),
      );
      // All less those that straight seams sew: OEIS A001181 less A006318.
      expect(seen.filter((answer) => answer === 'interlocked')).toHaveLength(n === 5 ? 92 - 90 : 422 - 394);
    }
  });

  it('seams that stop at each other everywhere', () => {
    let interlocked = 0;
    for (let seed = 1; seed <= 600; seed += 1) {
      const random = randomFrom(seed);
      const seams = grownSeams(3 + Math.floor(random() * 7), WHOLE, random);
      if (expectSmallest(arranged(seams), `seed ${seed}`) === 'interlocked') interlocked += 1;
    }
    expect(interlocked).toBeGreaterThan(150);
  });

  it('the same with lines right across, and pieces of one line on both sides', () => {
    let interlocked = 0;
    for (let seed = 1; seed <= 300; seed += 1) {
      const random = randomFrom(7000 + seed);
      const mill = windmill(3 + Math.floor(random() * 3), WHOLE, random);
      const y = mill.centre.y + mill.radius * (random() - 0.5);
      const across = random() * 3;
      const middle = levelBetween(mill.seams, mill.centre.x, y);
      const outside: Segment[] = [
        { a: { x: 0, y }, b: middle.a },
        { a: middle.b, b: { x: SIZE, y } },
      ];
      const seams = across < 1 ? [middle] : across < 2 ? outside : [{ a: middle.a, b: { x: SIZE, y } }];
      if (expectSmallest(arranged([...mill.seams, ...seams]), `seed ${seed}`) === 'interlocked')
        interlocked += 1;
    }
    expect(interlocked).toBeGreaterThan(200);
  });
});
