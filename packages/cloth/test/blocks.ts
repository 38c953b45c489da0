import { readdirSync, readFileSync } from 'node:fs';
import { type Arrangement, arrange, type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import { sentence } from '@seamwright/geometry';
import { planSewing, type SewingPlan } from '@seamwright/sewing';
import { BOAT, JIB, type Line, type Pair, PIER } from '../../../e2e/support/shapes.ts';
import type { CutRules } from '../src/index.ts';

export { type Line, rectangle } from '../../../e2e/support/shapes.ts';

/** A block and how it is sewn. */
export interface Block {
  readonly name: string;
  readonly arrangement: Arrangement;
  readonly plan: SewingPlan;
}

/** A quarter inch of allowance and of spare, no turn, sizes in quarter inches. */
export const USUAL: CutRules = { allowance: 0.25, spare: 0.25, turn: 0, roundUpTo: 0.25 };

function blockOf(name: string, drawing: Drawing): Block {
  const arrangement = arrange(drawing);
  if (!arrangement.ok) throw new Error(`${name}: ${sentence(arrangement.problem)}`);
  const plan = planSewing(arrangement.value, { effort: 0, partialSeams: true });
  return { name, arrangement: arrangement.value, plan };
}

/** A block from its corners and its splits (x1, y1, x2, y2), inches. */
export const block = (outline: readonly Pair[], splits: readonly Line[] = [], name = 'drawn here'): Block =>
  blockOf(
    name,
    drawingFromSegments(
      outline.map(([x, y]) => ({ x, y })),
      splits.map(([x1, y1, x2, y2]) => ({ a: { x: x1, y: y1 }, b: { x: x2, y: y2 } })),
    ),
  );

/** Drawings of the sewing package, and the traditional dissections in the shelf's usual sizes. */
const FOLDERS = ['../../sewing/test/fixtures/drawings/', './fixtures/'];

/** Shapes that dissections have not: sharp tips, outlines with notches, patches with notches. */
const AWKWARD: readonly Block[] = [
  block(JIB.outline, JIB.splits, 'jib, 15° at the peak'),
  block(PIER.outline, PIER.splits, 'pier, an L'),
  block(BOAT.outline, BOAT.splits, 'boat with a notch in its keel'),
  block(
    [
      [0, 0],
      [5, 0],
      [5, 4],
      [3, 1],
      [0, 4],
    ],
    [],
    'sails, one patch with a notch',
  ),
];

/** All blocks that the checks of cover go over; every drawing of the folders is one. */
export const knownBlocks = (): readonly Block[] => [
  ...FOLDERS.map((folder) => new URL(folder, import.meta.url)).flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith('.svg'))
      .map((file) => readBlock(file.replace('.svg', ''), readFileSync(new URL(file, folder), 'utf8'))),
  ),
  ...AWKWARD,
];

function readBlock(name: string, svg: string): Block {
  const corners = /<polygon points="([^"]+)"/.exec(svg)![1]!.trim().split(/\s+/);
  const lines = svg.matchAll(/<line x1="(.+?)" y1="(.+?)" x2="(.+?)" y2="(.+?)"/g);
  return block(
    corners.map((corner) => corner.split(',').map(Number) as unknown as Pair),
    [...lines].map((m) => m.slice(1, 5).map(Number) as unknown as Line),
    name,
  );
}
