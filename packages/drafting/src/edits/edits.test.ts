import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allEditScripts, bareDrawings, carryOut, drawings, editScripts, must } from '../../test/drawings.ts';
import { pointAt, withLines } from '../../test/exact.ts';
import { expectSound, frozen } from '../../test/sound.ts';
import { square } from '../outlines.ts';
import { resizeDrawing } from './resize-drawing.ts';

describe('any sequence of edits', () => {
  it('keeps the drawing sound, changes nothing in place, and says why where it refuses', () => {
    const done = new Map<string, number>();
    fc.assert(
      fc.property(bareDrawings, editScripts, (bare, script) => {
        let drawing = bare;
        for (const edit of script) {
          const result = carryOut(drawing, edit);
          if (result.ok) {
            drawing = frozen(result.value);
            expectSound(drawing);
            done.set(edit.kind, (done.get(edit.kind) ?? 0) + 1);
          } else {
            expect(result.problem.what).toMatch(/^[A-Z].*[^.]$/);
            expect(result.problem.remedy).toMatch(/^[A-Z].*[^.]$/);
          }
        }
      }),
      { seed: 101, numRuns: 200 },
    );
    // Every kind of edit was really made, not refused throughout.
    for (const kind of ['split', 'move', 'delete split', 'delete point', 'add corner', 'resize', 'outline'])
      expect(done.get(kind), kind).toBeGreaterThan(50);
  });

  it('of lines, patches and several parts at once, too', () => {
    const done = new Map<string, number>();
    fc.assert(
      fc.property(bareDrawings, allEditScripts, (bare, script) => {
        let drawing = bare;
        for (const edit of script) {
          const result = carryOut(drawing, edit);
          if (!result.ok) {
            expect(result.problem.what).toMatch(/^[A-Z].*[^.]$/);
            expect(result.problem.remedy).toMatch(/^[A-Z].*[^.]$/);
            continue;
          }
          drawing = frozen(result.value);
          expectSound(drawing);
          done.set(edit.kind, (done.get(edit.kind) ?? 0) + 1);
        }
      }),
      { seed: 104, numRuns: 300 },
    );
    for (const kind of [
      ...['run', 'through', 'measure', 'square to', 'parallel', 'move line', 'bands', 'fan'],
      ...['trim', 'cut', 'extend', 'join', 'put end', 'erase', 'transform', 'copy', 'delete parts'],
    ])
      expect(done.get(kind), kind).toBeGreaterThan(10);
  });

  it('gives the same drawing for the same edits', () => {
    fc.assert(
      fc.property(bareDrawings, editScripts, (bare, script) => {
        const play = () =>
          script.reduce((drawing, edit) => {
            const result = carryOut(drawing, edit);
            return result.ok ? result.value : drawing;
          }, bare);
        expect(play()).toEqual(play());
      }),
      { seed: 102, numRuns: 50 },
    );
  });
});

describe('resizeDrawing', () => {
  it('refuses a size at which a point would lie farther out than a pattern file may say', () => {
    const inch = withLines(must(square(1)), [0.5, 0.5, 200, 0.5]);
    // 200 × 50 is as far as it may be, docs/file-format.md; 200 × 60 is not.
    expect(must(resizeDrawing(inch, { width: 50 })).points[pointAt(inch, 200, 0.5)]).toMatchObject({
      x: 10_000,
    });
    expect(resizeDrawing(inch, { width: 60 })).toMatchObject({
      ok: false,
      problem: { what: 'A line would run farther out than 10000 in' },
    });
  });

  it('puts points that a file has beside their lines onto them', () => {
    const rail = withLines(must(square(8)), [0, 4, 8, 4], [2, 4, 2, 8], [2, 6, 8, 6]);
    const [foot, far] = [pointAt(rail, 2, 4), pointAt(rail, 2, 6)];
    const beside = (id: string, x: number, y: number) => ({ [id]: { ...rail.points[id]!, x, y } });
    // 0.012 in off: less than the 1/64 in that a file may have.
    const points = { ...rail.points, ...beside(foot, 2, 4.012), ...beside(far, 2.012, 6) };
    const resized = must(resizeDrawing(frozen({ ...rail, points }), { width: 16 }));
    expectSound(resized);
    expect(resized.points[foot]).toEqual({ ...rail.points[foot], x: 4, y: 8 });
    expect(resized.points[far]!.on).toEqual(rail.points[far]!.on);
  });

  it('there and back is where it was, to 1e-9 in', () => {
    fc.assert(
      fc.property(
        drawings,
        fc.integer({ min: 500, max: 100_000 }).map((n) => n / 1000),
        fc.integer({ min: 500, max: 100_000 }).map((n) => n / 1000),
        (drawing, width, height) => {
          const there = resizeDrawing(drawing, { width, height });
          fc.pre(there.ok);
          const xs = drawing.outline.map((id) => drawing.points[id]!.x);
          const ys = drawing.outline.map((id) => drawing.points[id]!.y);
          const back = resizeDrawing(there.value, {
            width: Math.max(...xs) - Math.min(...xs),
            height: Math.max(...ys) - Math.min(...ys),
          });
          if (!back.ok) throw new Error(back.problem.what);
          expectSound(there.value);
          expect({ ...back.value, points: {} }).toEqual({ ...drawing, points: {} });
          for (const point of Object.values(drawing.points)) {
            const again = back.value.points[point.id]!;
            expect(Math.abs(again.x - point.x)).toBeLessThan(1e-9);
            expect(Math.abs(again.y - point.y)).toBeLessThan(1e-9);
            expect(again.on).toEqual(point.on);
          }
        },
      ),
      { seed: 103, numRuns: 200 },
    );
  });
});
