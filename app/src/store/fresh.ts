import { type Drawing, isGiven } from '@seamwright/arrangement';
import { type Block, type Pattern, PLAIN_FABRICS } from '@seamwright/pattern';

/** A new id for a block: unique in any document. Ids start with a letter. */
export const newBlockId = (): string => `b-${crypto.randomUUID()}`;

/** Inches: the side of the square that new blocks begin with; the size most asked for. */
const FRESH_SIDE = 6;

function square(side: number): Drawing {
  const corners = [
    { id: 'p1', x: 0, y: 0 },
    { id: 'p2', x: side, y: 0 },
    { id: 'p3', x: side, y: side },
    { id: 'p4', x: 0, y: side },
  ];
  return {
    points: Object.fromEntries(corners.map((corner) => [corner.id, corner])),
    outline: corners.map((corner) => corner.id),
    splits: [],
  };
}

export function freshBlock(name: string): Block {
  return { id: newBlockId(), name, drawing: square(FRESH_SIDE), grid: 0.5, patches: [] };
}

/** Whether the block is as it began: nothing drawn or traced, no other outline, nothing wished for. Its name may be another. */
export function isFresh({ drawing, patches, sewing, tracing }: Block): boolean {
  const began = square(FRESH_SIDE);
  return (
    drawing.splits.length === 0 &&
    drawing.outline.length === began.outline.length &&
    drawing.outline.every((id, i) => {
      const [corner, before] = [drawing.points[id]!, began.points[began.outline[i]!]!];
      return corner.x === before.x && corner.y === before.y;
    }) &&
    !patches.some(isGiven) &&
    sewing === undefined &&
    tracing === undefined
  );
}

export function freshPattern(): Pattern {
  return {
    format: 'seamwright-pattern/1',
    title: 'Untitled pattern',
    unit: 'in',
    fabrics: PLAIN_FABRICS,
    blocks: [freshBlock('Block 1')],
  };
}
