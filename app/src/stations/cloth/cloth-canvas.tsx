import { boundingBox } from '@seamwright/geometry';
import { useEffect, useMemo, useRef } from 'react';
import { BlockCanvas } from '../../canvas/block-canvas.tsx';
import { BlockLayer } from '../../canvas/block-layer.tsx';
import { corners } from '../../canvas/bounds.ts';
import { useFabricFills } from '../../canvas/fabric-fills.ts';
import { inFront, paintFills, paintSeams } from '../../canvas/paint-patches.ts';
import { Painting } from '../../canvas/painting.tsx';
import { patchAt } from '../../canvas/patch-at.ts';
import { PointedMarks } from '../../canvas/pointed-marks.tsx';
import type { CanvasPointer } from '../../canvas/pointer.ts';
import { useLook } from '../../canvas/use-look.ts';
import { usePointed } from '../../store/pointed.ts';
import { currentDrawing, useWork } from '../../store/work.ts';
import type { Study } from '../../study/study.ts';
import { BulkMarks, useBulkReach } from './ahead/bulk-marks.tsx';
import { beginStroke, endStroke, paint, useBrush } from './brush.ts';
import { inspect } from './cutting/inspected.ts';
import { PieceMarks } from './cutting/piece-marks.tsx';
import { usePiecePlace } from './cutting/use-inspected-piece.ts';
import { reached } from './reach.ts';

interface ClothCanvasProps {
  /** How a fabric's colour is shown: as it is, or its grey. */
  readonly shade: (colour: string) => string;
  /** Whether presses paint; otherwise a press on a patch shows its piece. */
  readonly paints: boolean;
}

/** The block in its fabrics. A press cuts a patch from the fabric at hand, a drag all that it goes over. */
export function ClothCanvas({ shade, paints }: ClothCanvasProps) {
  const drawing = useWork(currentDrawing);
  const study = useWork((work) => work.study);
  const stroke = useStroke(study);
  const piece = usePiecePlace();
  const bulk = useBulkReach(study);
  const bounds = boundingBox([...corners(drawing), ...(paints ? [] : piece), ...(paints ? [] : bulk)]);
  return (
    <BlockCanvas
      label="The block in its fabrics"
      bounds={bounds}
      drag={paints ? 'tool' : 'pan'}
      {...(paints && { cursor: 'crosshair' })}
      onPointer={paints ? stroke : (event) => showPiece(study, event)}
      testId="cloth"
    >
      <BlockLayer>{study !== null && <Fabrics study={study} shade={shade} />}</BlockLayer>
      <BlockLayer>
        {study !== null && !paints && <BulkMarks study={study} />}
        {study !== null && <PointedMarks study={study} place={inFront} />}
        {!paints && <PieceMarks />}
      </BlockLayer>
    </BlockCanvas>
  );
}

function Fabrics({ study, shade }: Pick<ClothCanvasProps, 'shade'> & { readonly study: Study }) {
  const look = useLook(inFront);
  const fills = useFabricFills(study, true, look, shade);
  const { arrangement } = study;
  const paintAll = useMemo(() => paintFills(fills), [fills]);
  const seams = useMemo(() => paintSeams(arrangement, look, true), [arrangement, look]);
  return (
    <>
      <Painting paint={paintAll} />
      <Painting paint={seams} />
    </>
  );
}

/** A press on a patch shows the piece that is cut for it. */
function showPiece(study: Study | null, { kind, at }: CanvasPointer): void {
  if (kind !== 'up' || study === null || study.arrangement === null) return;
  const patch = patchAt(study.arrangement, at);
  inspect(patch === undefined ? null : (study.names[patch.index] ?? null));
}

/** Presses and drags as strokes of the brush: each is one step, and each patch is painted once in it. */
function useStroke(study: Study | null): (event: CanvasPointer) => void {
  const painting = useRef(false);
  // What a press would paint is no longer to be seen when the canvas is gone.
  useEffect(() => () => pointAt(null, null), []);
  return ({ kind, at, touch }) => {
    const patch = study?.arrangement ? patchAt(study.arrangement, at) : undefined;
    if (kind === 'down') {
      beginStroke();
      painting.current = true;
    }
    if (kind === 'up' || kind === 'cancel') {
      if (painting.current) endStroke();
      painting.current = false;
    }
    pointAt(study, kind === 'leave' || kind === 'cancel' || touch ? null : (patch?.index ?? null));
    if (painting.current && study !== null && patch !== undefined) paint(study, patch.index);
  };
}

/** Shows which patches a press on one would paint, where it would paint more than that one. */
function pointAt(study: Study | null, index: number | null): void {
  const { reach } = useBrush.getState();
  const patches = study === null || index === null || reach === 'one' ? [] : reached(study, index, reach);
  const before = usePointed.getState().hovered?.patches ?? [];
  if (patches.length === before.length && patches.every((patch, i) => patch === before[i])) return;
  usePointed.setState({
    hovered: study === null || patches.length === 0 ? null : { of: study.drawing, patches },
  });
}
