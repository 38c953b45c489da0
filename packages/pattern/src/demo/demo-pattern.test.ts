import { arrange, edgeId } from '@seamwright/arrangement';
import { distanceToLine, SAME_COORDINATE } from '@seamwright/geometry';
import { describe, expect, it } from 'vitest';
import { checkDrawing } from '../check-drawing.ts';
import { parsePattern } from '../parse-pattern.ts';
import { writePattern } from '../write-pattern.ts';
import { demoPattern } from './demo-pattern.ts';
import { blockOf } from './sketch.ts';
import { WINDOW_PANES } from './window-panes.ts';

describe('the demo pattern', () => {
  it('is the same on every call and reads back', () => {
    expect(demoPattern()).toEqual(demoPattern());
    expect(parsePattern(writePattern(demoPattern()))).toEqual({
      ok: true,
      value: { pattern: demoPattern(), notes: [] },
    });
  });

  describe.each(demoPattern().blocks.map((block) => [block.name, block] as const))(
    '%s',
    (_name, { drawing, patches }) => {
      it('is drawn without anything to be said of it, and says what each patch is and is cut from', () => {
        expect(checkDrawing(drawing)).toEqual({ ok: true, value: drawing });
        const arranged = arrange(drawing);
        if (!arranged.ok) throw new Error(arranged.problem.what);
        expect(arranged.value.findings).toEqual([]);
        expect(patches.map(({ signature }) => signature)).toEqual(
          arranged.value.patches.map(({ signature }) => signature),
        );
        expect(patches.every(({ note, fabric }) => note !== '' && fabric !== undefined)).toBe(true);
      });

      it('has every point exactly on the lines that it was placed on, and every split end placed on something', () => {
        const { points, outline, splits } = drawing;
        const ends = new Map(splits.map(({ id, from, to }) => [id, [from, to]]));
        outline.forEach((corner, i) => {
          ends.set(edgeId(corner), [corner, outline[(i + 1) % outline.length]!]);
        });
        for (const point of Object.values(points)) {
          for (const line of point.on ?? []) {
            const [from, to] = ends.get(line)!.map((end) => points[end]!);
            expect(distanceToLine(point, from!, to!)).toBeLessThanOrEqual(SAME_COORDINATE);
          }
          expect(outline.includes(point.id) || (point.on ?? []).length > 0).toBe(true);
        }
      });
    },
  );

  it('is not built from a sketch whose notes name no patch, or one patch twice', () => {
    expect(() => blockOf({ ...WINDOW_PANES, notes: [['sky', 9, 9]] })).toThrow('sky');
    expect(() =>
      blockOf({
        ...WINDOW_PANES,
        notes: [
          ['a', 1, 1],
          ['b', 2, 2],
        ],
      }),
    ).toThrow('b');
  });
});
