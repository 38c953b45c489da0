import { readdirSync, readFileSync } from 'node:fs';
import { type Arrangement, arrange, type Drawing, drawingFromSegments } from '@seamwright/arrangement';
import { sentence } from '@seamwright/geometry';
import { planSewing, type SewingPlan } from '@seamwright/sewing';
import type { CutRules } from '../src/index.ts';

/** A block and how it is sewn. */
export interface Block {
  readonly name: string;
  readonly arrangement: Arrangement;
  readonly plan: SewingPlan;
}

type Pair = readonly [number, number];
export type Line = readonly [number, number, number, number];

/** A quarter inch of allowance and of spare, no turn, sizes in quarter inches. */
export const USUAL: CutRules = { allowance: 0.25, spare: 0.25, turn: 0, roundUpTo: 0.25 };

export function blockOf(name: string, drawing: Drawing): Block {
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

export const rectangle = (width: number, height: number): readonly Pair[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

const FIXTURES = new URL('../../sewing/test/fixtures/drawings/', import.meta.url);

/** Every drawing among the fixtures of the sewing package. */
export const knownBlocks = (): readonly Block[] =>
  readdirSync(FIXTURES)
    .filter((file) => file.endsWith('.svg'))
    .map((file) => {
      const svg = readFileSync(new URL(file, FIXTURES), 'utf8');
      const corners = /<polygon points="([^"]+)"/.exec(svg)![1]!.trim().split(/\s+/);
      const lines = svg.matchAll(/<line x1="(.+?)" y1="(.+?)" x2="(.+?)" y2="(.+?)"/g);
      return block(
        corners.map((corner) => corner.split(',').map(Number) as unknown as Pair),
        [...lines].map((m) => m.slice(1, 5).map(Number) as unknown as Line),
        file.replace('.svg', ''),
      );
    });
