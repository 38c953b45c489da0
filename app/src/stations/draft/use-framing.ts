import type { Box } from '@seamwright/geometry';
import { useRef } from 'react';
import { blockBounds } from '../../canvas/bounds.ts';
import { currentBlock, useWork } from '../../store/work.ts';
import { useHand } from './hand.ts';

/** Share of the frame's size that the block may grow beyond it, or fall short of it, before it is framed anew. */
const SLACK = 0.4;

/**
 * What "the whole block" shows. It stays while corners are moved about, so that nothing jumps under the pointer, and
 * is found anew for another block or a block of quite another size. For a new outline there is room all round.
 */
export function useFraming(): Box {
  const block = useWork(currentBlock);
  const roomy = useHand((hand) => hand.held.tool === 'outline');
  const frame = useRef<{ readonly id: string; readonly box: Box } | null>(null);
  const box = blockBounds(block.drawing);
  if (frame.current === null || frame.current.id !== block.id || !fits(box, frame.current.box))
    frame.current = { id: block.id, box };
  return roomy ? grown(frame.current.box, 0.35) : frame.current.box;
}

function fits(box: Box, frame: Box): boolean {
  const size = Math.max(frame.maxX - frame.minX, frame.maxY - frame.minY);
  const off = [
    Math.abs(box.minX - frame.minX),
    Math.abs(box.minY - frame.minY),
    Math.abs(box.maxX - frame.maxX),
    Math.abs(box.maxY - frame.maxY),
  ];
  return Math.max(...off) <= SLACK * size && !isScaled(box, frame);
}

/** Two sides or more in other places: the block was resized or replaced, not a corner moved. */
function isScaled(box: Box, frame: Box): boolean {
  const moved = (['minX', 'minY', 'maxX', 'maxY'] as const).filter((side) => box[side] !== frame[side]);
  return moved.length >= 2;
}

/** The box with room all round: `share` of its longer side. */
export function grown({ minX, minY, maxX, maxY }: Box, share: number): Box {
  const by = share * Math.max(maxX - minX, maxY - minY);
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}
