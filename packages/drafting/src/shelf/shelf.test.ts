import { distance } from '@seamwright/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../../test/drawings.ts';
import { expectSound } from '../../test/sound.ts';
import { outlineOf } from '../checks.ts';
import { movePoint } from '../edits/index.ts';
import { drawnLines } from '../lines.ts';
import { sizeOf } from '../size.ts';
import { startingPoints } from './index.ts';

const byId = (id: string) => startingPoints.find((start) => start.id === id)!;

const valuesOf = (start: (typeof startingPoints)[number]) =>
  fc.record(
    Object.fromEntries(
      start.parameters.map(({ id, kind, least, most }) => [
        id,
        kind === 'count'
          ? fc.integer({ min: least, max: most })
          : fc.integer({ min: 0, max: 100 }).map((n) => least + ((most - least) * n) / 100),
      ]),
    ),
  );

describe.each(startingPoints.map((start) => [start.name, start] as const))('%s', (_, start) => {
  it('is a sound drawing whose points know the lines that they are on', () => {
    fc.assert(
      fc.property(valuesOf(start), (values) => {
        const drawing = must(start.build(values));
        expectSound(drawing);
        const corners = outlineOf(drawing);
        expect(Math.min(...corners.map(({ x }) => x))).toBe(0);
        expect(Math.min(...corners.map(({ y }) => y))).toBe(0);
        for (const point of Object.values(drawing.points)) {
          if (drawing.outline.includes(point.id)) continue;
          for (const { id, from, to } of drawnLines(drawing).values()) {
            if (from.id === point.id || to.id === point.id) continue;
            // A point lies between two others where the way by it is no longer than the straight one.
            const detour = distance(from, point) + distance(point, to) - distance(from, to);
            if (detour > 1e-12) continue;
            expect(point.on?.includes(id) || point.on?.length === 2, `${point.id} on ${id}`).toBe(true);
          }
        }
      }),
      { seed: 131, numRuns: 15 },
    );
  });

  it('refuses values out of range by name', () => {
    for (const { id, label, kind, least, most } of start.parameters) {
      for (const value of [least - 1, most + 1, NaN, ...(kind === 'count' ? [least + 0.5] : [])]) {
        const result = start.build({ [id]: value });
        expect(result).toMatchObject({ ok: false, problem: { what: expect.stringContaining(label) } });
      }
    }
  });
});

describe('sizes', () => {
  it('are the ones that were asked for', () => {
    expect(sizeOf(outlineOf(must(byId('ohio-star').build({ side: 7.5 }))))).toEqual({
      width: 7.5,
      height: 7.5,
    });
    expect(sizeOf(outlineOf(must(byId('flying-geese').build({ width: 3, height: 1.5, geese: 5 }))))).toEqual({
      width: 3,
      height: 7.5,
    });
    const web = sizeOf(outlineOf(must(byId('spider-web-octagon').build({ across: 9 }))));
    expect(web.width).toBeCloseTo(9, 9);
    expect(web.height).toBeCloseTo(9, 9);
  });
});

describe('facts', () => {
  it('keep a log cabin whole when a log is made wider', () => {
    const cabin = must(byId('log-cabin').build({ side: 12, rounds: 2, centre: 0.2 }));
    const longest = cabin.splits[0]!;
    const end = cabin.points[longest.from]!;
    expect(end.on).toHaveLength(1);
    const moved = must(movePoint(cabin, longest.from, { at: { x: end.x + 0.5, y: end.y }, on: end.on! }));
    expectSound(moved);
    // What ended on that log's seam still does.
    const [from, to] = [moved.points[longest.from]!, moved.points[longest.to]!];
    const ends = Object.values(moved.points).filter((point) => point.on?.includes(longest.id));
    expect(ends.length).toBeGreaterThan(0);
    for (const point of ends)
      expect(distance(from, point) + distance(point, to) - distance(from, to)).toBeLessThan(1e-9);
  });
});
