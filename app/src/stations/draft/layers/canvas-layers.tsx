import type { Box } from '@seamwright/geometry';
import { memo, useMemo } from 'react';
import { BlockLayer } from '../../../canvas/block-layer.tsx';
import { OutlineLine, Sheet } from '../../../canvas/outline-shape.tsx';
import { FindingMarks } from '../../../canvas/study-layers.tsx';
import { useSettings } from '../../../store/settings.ts';
import { currentBlock, currentDrawing, useWork } from '../../../store/work.ts';
import { keepsToGrid } from '../catching.ts';
import { gridOf } from '../grid-of.ts';
import { useHand } from '../hand.ts';
import { TracingMarks } from '../tracing/tracing-marks.tsx';
import { TracingPicture } from '../tracing/tracing-picture.tsx';
import { grown } from '../use-framing.ts';
import { CopiesAround } from '../views/copies-around.tsx';
import { ViewedPatches } from '../views/viewed-patches.tsx';
import { DrawnLines } from './drawn-lines.tsx';
import { GridLines } from './grid-lines.tsx';
import { Handles } from './handles.tsx';
import { PatchNotes } from './patch-notes.tsx';
import { PreviewMarks } from './preview.tsx';
import { RepeatAxes } from './repeat-axes.tsx';

/*
 * The three layers of the canvas. Each asks the store for what it shows, and a layer is painted as a whole once anything on it
 * changes: what the pointer passes over paints its marks only, and an answer of the worker the patches only.
 */

interface PatchesLayerProps {
  /** What "the whole block" shows, inches. */
  readonly bounds: Box;
}

/** The studied patches on their sheet, with the grid and the picture that is traced. */
export const PatchesLayer = memo(function PatchesLayer({ bounds }: PatchesLayerProps) {
  const drawing = useWork(currentDrawing);
  const study = useWork((work) => work.study);
  const under = (
    <>
      <TracingPicture drawing={drawing} />
      <Grid bounds={bounds} />
    </>
  );
  return (
    <BlockLayer>
      <CopiesAround drawing={drawing} study={study} />
      <Sheet drawing={drawing} />
      {study === null ? under : <ViewedPatches study={study}>{under}</ViewedPatches>}
    </BlockLayer>
  );
});

const Grid = memo(function Grid({ bounds }: PatchesLayerProps) {
  const block = useWork(currentBlock);
  const outlining = useHand((hand) => hand.held.tool === 'outline');
  const shown = useSettings(keepsToGrid);
  const grid = useMemo(() => gridOf(block), [block]);
  const box = useMemo(() => (outlining ? grown(bounds, 1) : bounds), [outlining, bounds]);
  return shown && <GridLines box={box} grid={grid} />;
});

/** The lines as they are drawn, and what is to be said of them. */
export const LinesLayer = memo(function LinesLayer() {
  const drawing = useWork(currentDrawing);
  const axesOf = useWork((work) => currentBlock(work).drawing);
  const study = useWork((work) => work.study);
  const adjusting = useHand((hand) => hand.held.tool === 'adjust');
  return (
    <BlockLayer>
      <RepeatAxes drawing={axesOf} />
      <OutlineLine drawing={drawing} />
      <DrawnLines drawing={drawing} />
      {study !== null && <PatchNotes study={study} />}
      {adjusting && <Handles drawing={drawing} />}
      {study !== null && <FindingMarks study={study} />}
    </BlockLayer>
  );
});

/** What moves with the pointer. `width` is the canvas's, CSS pixels. */
export const PointerLayer = memo(function PointerLayer({ width }: { readonly width: number }) {
  return (
    <BlockLayer>
      <PreviewMarks width={width} />
      <TracingMarks width={width} />
    </BlockLayer>
  );
});
