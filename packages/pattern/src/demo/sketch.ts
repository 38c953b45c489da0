import {
  arrange,
  carryPatches,
  type Drawing,
  type DrawingPoint,
  type PatchRecord,
} from '@seamwright/arrangement';
import { contains } from '@seamwright/geometry';
import type { Block } from '../pattern.ts';
import { FABRIC_OF } from './fabric-of.ts';

/** A block as it is written down by hand: names in place of numbered ids, inches from the top left corner. */
export interface Sketch {
  readonly id: string;
  readonly name: string;
  /** Where each point is, and the lines that it was placed on (an edge of the outline is `edge:` and its first corner). */
  readonly points: Readonly<Record<string, readonly [x: number, y: number, ...on: string[]]>>;
  readonly outline: readonly string[];
  readonly splits: Readonly<Record<string, readonly [from: string, to: string]>>;
  /** What patches are, each told by any point inside it. */
  readonly notes: readonly (readonly [note: string, x: number, y: number])[];
}

const GRID = 0.25;

/** The block that a sketch stands for. Throws when the sketch does not hold together: that is a bug of ours. */
export function blockOf(sketch: Sketch): Block {
  const drawing = drawingOf(sketch);
  return { id: sketch.id, name: sketch.name, drawing, grid: GRID, patches: patchesOf(sketch, drawing) };
}

const drawingOf = ({ points, outline, splits }: Sketch): Drawing => ({
  points: Object.fromEntries(
    Object.entries(points).map(([id, [x, y, ...on]]): [string, DrawingPoint] => [
      id,
      on.length === 0 ? { id, x, y } : { id, x, y, on },
    ]),
  ),
  outline,
  splits: Object.entries(splits).map(([id, [from, to]]) => ({ id, from, to })),
});

function patchesOf({ name, notes }: Sketch, drawing: Drawing): PatchRecord[] {
  const arranged = arrange(drawing);
  if (!arranged.ok) throw new Error(`${name}: ${arranged.problem.what}`);
  const { patches } = arranged.value;
  const records = carryPatches([], arranged.value, []);
  for (const [note, x, y] of notes) {
    const index = patches.findIndex(({ polygon }) => contains(polygon, { x, y }) === 'inside');
    const record = records[index];
    if (record === undefined || record.note !== '')
      throw new Error(`${name}: no patch of its own for ${note}`);
    const fabric = FABRIC_OF[note];
    records[index] = { ...record, note, ...(fabric === undefined ? {} : { fabric }) };
  }
  return records;
}
