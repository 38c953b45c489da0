import { SAME_COORDINATE } from '@seamwright/geometry';
import { type ChartRow, type Cloth, mayTurn, type PieceCut } from '../types.ts';

/** One block's pieces, and how many of it are sewn. */
export interface BlockToCut {
  readonly pieces: readonly PieceCut[];
  /** How many are sewn as drawn; 1 when left out. */
  readonly blocks?: number;
  /** How many are sewn as mirror images beside them; none when left out. */
  readonly mirrored?: number;
}

export interface ChartOptions {
  /** The fabrics; a piece of one that is not among them is taken to be turned freely. */
  readonly cloths?: readonly Cloth[];
  /** One row for each section that a size is cut for. */
  readonly bySection?: boolean;
}

/** The cutting chart of one block, or of several alike. Counts are whole numbers. */
export const cuttingChart = (
  pieces: readonly PieceCut[],
  { blocks = 1, mirrored = 0, ...options }: ChartOptions & Omit<BlockToCut, 'pieces'> = {},
): ChartRow[] => chartOfBlocks([{ pieces, blocks, mirrored }], options);

/**
 * What is cut for several blocks: pieces of one size from one fabric are one row. Where the fabric may be turned, a
 * rectangle and the same one turned by a quarter are alike.
 *
 * Two triangles come from one half-rectangle, so half as many are cut, rounded up. From a directional fabric one of the
 * two would lie upside down: as many are cut as are needed. Half-rectangles of 2 × 4 and of 4 × 2 are mirror images
 * ({@link CutShape}), so they are two rows; a mirrored block needs the one where the block needs the other.
 *
 * @returns by fabric in the order in which the pieces name them, by section when asked for, the largest first
 */
export function chartOfBlocks(
  blocks: readonly BlockToCut[],
  { cloths = [], bySection = false }: ChartOptions = {},
): ChartRow[] {
  const clothOf = new Map(cloths.map((cloth) => [cloth.id, cloth]));
  const drafts = new Map<string, Draft>();
  const order: (string | null)[] = [];
  const add = (piece: PieceCut, count: number, isMirrored: boolean) => {
    if (count === 0) return;
    if (!order.includes(piece.cloth)) order.push(piece.cloth);
    const cloth = piece.cloth === null ? undefined : clothOf.get(piece.cloth);
    const isDirectional = cloth?.directional ?? false;
    const size = turnedOver(piece, isMirrored);
    const section = bySection ? sectionOf(piece) : '';
    const keyOf = ({ width, height }: Size) =>
      [piece.cloth, section, piece.shape, round(width), round(height)].join('|');
    const isFree = cloth === undefined || mayTurn(cloth);
    const turned = isFree && piece.shape === 'rectangle' ? drafts.get(keyOf(turn(size))) : undefined;
    const draft = turned ??
      drafts.get(keyOf(size)) ?? {
        piece,
        section,
        isDirectional,
        size,
        yields: 0,
        names: new Set(),
        outerBias: new Set(),
      };
    draft.yields += count;
    draft.names.add(piece.name);
    if (piece.outerBias) draft.outerBias.add(piece.name);
    if (turned === undefined) drafts.set(keyOf(size), draft);
  };
  for (const { pieces, blocks: plain = 1, mirrored = 0 } of blocks) {
    for (const piece of pieces) add(piece, plain, false);
    for (const piece of pieces) add(piece, mirrored, true);
  }
  return [...drafts.values()]
    .sort(
      (p, q) =>
        order.indexOf(p.piece.cloth) - order.indexOf(q.piece.cloth) ||
        compareSections(p.section, q.section) ||
        Math.max(q.size.width, q.size.height) - Math.max(p.size.width, p.size.height) ||
        Math.min(q.size.width, q.size.height) - Math.min(p.size.width, p.size.height),
    )
    .map(rowOf);
}

interface Size {
  readonly width: number;
  readonly height: number;
}

interface Draft {
  readonly piece: PieceCut;
  readonly section: string;
  readonly isDirectional: boolean;
  readonly size: Size;
  yields: number;
  readonly names: Set<string>;
  readonly outerBias: Set<string>;
}

/** The size that is cut for the piece; the mirror image of a half-rectangle comes from the other rectangle. */
export const turnedOver = ({ shape, width, height }: PieceCut, isMirrored: boolean): Size =>
  shape === 'half-rectangle' && isMirrored ? turn({ width, height }) : { width, height };

const turn = ({ width, height }: Size): Size => ({ width: height, height: width });

const round = (inches: number): number => Math.round(inches / SAME_COORDINATE);

/** `A` of `A1`; of `Lighthouse A1`, `Lighthouse A`. */
const sectionOf = ({ name }: PieceCut): string => name.replace(/\d+$/, '');

/** A before B, Z before AA. */
const compareSections = (p: string, q: string): number => p.length - q.length || (p < q ? -1 : p > q ? 1 : 0);

function rowOf({ piece, section, isDirectional, size, yields, names, outerBias }: Draft): ChartRow {
  const pairs = piece.shape === 'half-rectangle' && !isDirectional;
  return {
    cloth: piece.cloth,
    ...(section !== '' && { section }),
    shape: piece.shape,
    ...size,
    cut: pairs ? Math.ceil(yields / 2) : yields,
    yields,
    pieces: [...names],
    ...(outerBias.size > 0 && { outerBias: [...outerBias] }),
  };
}
