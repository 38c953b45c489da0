import { describe, expect, it } from 'vitest';
import { arrange } from '../src/arrange.ts';
import type { Drawing } from '../src/drawing.ts';
import { drawingFromSegments } from '../src/from-segments.ts';
import { carryPatches, type PatchRecord } from '../src/identity.ts';
import type { Arrangement } from '../src/types.ts';
import { line, SQUARE } from './drawings.ts';

const of = (drawing: Drawing): Arrangement => {
  const result = arrange(drawing);
  if (!result.ok) throw new Error(result.problem.what);
  return result.value;
};

/** A boat under way: sky over a mast line, sea below a waterline. */
const BOAT = drawingFromSegments(SQUARE, [line(0, 4, 6, 4), line(3, 0, 3, 4), line(0, 5, 6, 5)]);

const moved = (drawing: Drawing, x: number, y: number, dx: number, dy: number): Drawing => ({
  ...drawing,
  points: Object.fromEntries(
    Object.entries(drawing.points).map(([id, p]) => [
      id,
      p.x === x && p.y === y ? { ...p, x: p.x + dx, y: p.y + dy } : p,
    ]),
  ),
});

const noted = (records: readonly PatchRecord[], arrangement: Arrangement): PatchRecord[] =>
  records.map((record, i) => ({ ...record, note: `area ${arrangement.patches[i]!.area}` }));

const noteAt = (records: readonly PatchRecord[], arrangement: Arrangement, x: number, y: number): string =>
  records[
    arrangement.patches.findIndex(({ polygon }) => {
      const xs = polygon.map((p) => p.x);
      const ys = polygon.map((p) => p.y);
      return Math.min(...xs) < x && x < Math.max(...xs) && Math.min(...ys) < y && y < Math.max(...ys);
    })
  ]!.note;

describe('patches keep their identity', () => {
  const first = of(BOAT);
  const records = noted(carryPatches([], first, []), first);

  it('every patch begins with an id of its own', () => {
    expect(new Set(records.map(({ id }) => id)).size).toBe(4);
  });

  it('while a line elsewhere moves, however far', () => {
    // The mast slides right across where the other patch had its heart.
    const later = of(moved(moved(BOAT, 3, 0, 2.5, 0), 3, 4, 2.5, 0));
    const carried = carryPatches(records, later, []);
    expect(carried.map(({ id }) => id).sort()).toEqual(records.map(({ id }) => id).sort());
    expect(noteAt(carried, later, 4, 2)).toBe(noteAt(records, first, 1, 2));
    expect(noteAt(carried, later, 5.8, 2)).toBe(noteAt(records, first, 4, 2));
    expect(noteAt(carried, later, 3, 5.5)).toBe(noteAt(records, first, 3, 5.5));
  });

  it('when a line divides one of them, the part that holds its heart goes on', () => {
    const divided = of(
      drawingFromSegments(SQUARE, [line(0, 4, 6, 4), line(3, 0, 3, 4), line(0, 5, 6, 5), line(0, 1, 3, 1)]),
    );
    const carried = carryPatches(records, divided, []);
    expect(noteAt(carried, divided, 1, 3)).toBe('area 12');
    expect(noteAt(carried, divided, 1, 0.5)).toBe('');
    expect(new Set(carried.map(({ id }) => id)).size).toBe(5);
    const fresh = carried.filter(({ id }) => !records.some((record) => record.id === id));
    expect(fresh).toHaveLength(1);
  });

  it('with the fabric that it is cut from', () => {
    const cut = records.map((record, i) => ({
      ...record,
      fabric: `fabric${i}`,
      fabrics: { night: `dark${i}` },
    }));
    const later = of(moved(moved(BOAT, 3, 0, 1, 0), 3, 4, 1, 0));
    const fabricOf = new Map(cut.map(({ id, fabric }) => [id, fabric]));
    const darkOf = new Map(cut.map(({ id, fabrics }) => [id, fabrics]));
    for (const { id, fabric, fabrics } of carryPatches(cut, later, [])) {
      expect(fabric).toBe(fabricOf.get(id));
      expect(fabrics).toBe(darkOf.get(id));
    }
    expect(carryPatches(records, later, []).every((record) => !('fabric' in record))).toBe(true);
  });

  it('when a line goes, the patch with a fabric goes on', () => {
    const plain = carryPatches([], first, []);
    const merged = of(drawingFromSegments(SQUARE, [line(0, 4, 6, 4), line(0, 5, 6, 5)]));
    for (const chosen of plain) {
      const cut = plain.map((record) => (record === chosen ? { ...record, fabric: 'blue' } : record));
      expect(carryPatches(cut, merged, []).filter(({ fabric }) => fabric === 'blue')).toMatchObject([
        { id: chosen.id },
      ]);
    }
  });

  it('when a line goes, the patch with a note goes on', () => {
    const merged = of(drawingFromSegments(SQUARE, [line(0, 4, 6, 4), line(0, 5, 6, 5)]));
    const oneNote = records.map((record, i) => ({ ...record, note: i === 1 ? 'sail' : '' }));
    const carried = carryPatches(oneNote, merged, []);
    expect(carried).toHaveLength(3);
    expect(noteAt(carried, merged, 3, 2)).toBe('sail');
    expect(carried.find(({ note }) => note === 'sail')!.id).toBe(records[1]!.id);
  });

  it('of several patches with notes that become one, the oldest goes on', () => {
    const merged = of(drawingFromSegments(SQUARE, [line(0, 4, 6, 4), line(0, 5, 6, 5)]));
    const [older, younger] = [
      { ...records[0]!, note: 'older' },
      { ...records[1]!, note: 'younger' },
    ];
    for (const both of [
      [older, younger],
      [younger, older],
    ]) {
      const carried = carryPatches([...both, ...records.slice(2)], merged, []);
      expect(noteAt(carried, merged, 3, 2)).toBe('older');
      expect(carried.find(({ note }) => note === 'older')!.id).toBe(older.id);
    }
  });

  it('an id that the document still names is not given to another patch', () => {
    // Three rows; the lowest goes, and with it its patch; then the uppermost is divided.
    const rows = of(drawingFromSegments(SQUARE, [line(0, 2, 6, 2), line(0, 4, 6, 4)]));
    const divided = of(drawingFromSegments(SQUARE, [line(0, 2, 6, 2), line(3, 0, 3, 2)]));
    const two = of(drawingFromSegments(SQUARE, [line(0, 2, 6, 2)]));
    const three = carryPatches([], rows, []);
    const left = carryPatches(three, two, []);
    const [gone] = three.filter(({ id }) => !left.some((record) => record.id === id));
    const ids = carryPatches(left, divided, [gone!.id, 'sail']).map(({ id }) => id);
    expect(ids).not.toContain(gone!.id);
    expect(new Set(ids).size).toBe(3);
  });

  it('nothing changed: nothing changes', () => {
    expect(carryPatches(records, first, [])).toEqual(records);
  });
});
