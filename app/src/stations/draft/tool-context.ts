import { SNAP_KINDS, type SnapKind, type ToolContext } from '@seamwright/drafting';
import { useSettings } from '../../store/settings.ts';
import { currentBlock, useWork } from '../../store/work.ts';
import { gridOf } from './grid-of.ts';

/** What the tools work on, and how: the drawing, and all that the maker has chosen of grid, catching and repeating. */
export function toolContext({
  symmetry,
  measure,
}: Required<Pick<ToolContext, 'symmetry' | 'measure'>>): ToolContext {
  const block = currentBlock(useWork.getState());
  const { notCaught, angleStep, ends, chain } = useSettings.getState();
  return {
    drawing: block.drawing,
    grid: gridOf(block),
    kinds: kindsWithout(notCaught),
    angleStep,
    symmetry,
    measure,
    ends,
    chain,
    frames: true,
  };
}

const kindsWithout = (left: readonly SnapKind[]): ReadonlySet<SnapKind> =>
  new Set(SNAP_KINDS.map(({ kind }) => kind).filter((kind) => !left.includes(kind)));
