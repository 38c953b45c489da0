import { type Box, boundingBox, type Point } from '@seamwright/geometry';
import { useMemo, useRef } from 'react';
import type { Study } from '../study/study.ts';
import { changedBox } from './changed-box.ts';
import type { Look, Place } from './paint-patches.ts';
import { type Paint, Painting } from './painting.tsx';

interface KeptPaintingProps {
  /** Paints nothing but what {@link changedBox} compares. */
  readonly paint: Paint;
  readonly study: Study;
  readonly look: Look;
}

/** A painting that is kept as pixels. */
interface Kept extends KeptPaintingProps {
  readonly context: CanvasRenderingContext2D;
  readonly at: DOMMatrix;
}

/**
 * A {@link Painting} of a study that is kept from one time to the next, and painted anew only where the study has changed:
 * while a line is dragged through a large block, most of it stays as it is.
 */
export function KeptPainting({ paint, study, look }: KeptPaintingProps) {
  const kept = useRef<Kept | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: while `paint` is the same, so is what it shows of the study
  const shown = useMemo<Paint>(
    () => (context) => {
      kept.current = broughtUpToDate(kept.current, { paint, study, look }, context);
      context.save();
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.drawImage(kept.current.context.canvas, 0, 0);
      context.restore();
    },
    [paint, look],
  );
  return <Painting paint={shown} />;
}

function broughtUpToDate(kept: Kept | null, wanted: KeptPaintingProps, on: CanvasRenderingContext2D): Kept {
  const { width, height } = on.canvas;
  const at = on.getTransform();
  const isThere =
    kept !== null &&
    kept.look === wanted.look &&
    kept.context.canvas.width === width &&
    kept.context.canvas.height === height &&
    isSame(kept.at, at);
  if (!isThere) {
    const context = kept?.context ?? document.createElement('canvas').getContext('2d')!;
    // Another size, or the same one again, empties a canvas.
    context.canvas.width = width;
    context.canvas.height = height;
    context.setTransform(at);
    wanted.paint(context);
    return { ...wanted, context, at };
  }
  const box = kept.paint === wanted.paint ? null : changedBox(kept.study, wanted.study);
  if (box !== null) repaint(kept, wanted, box);
  return { ...wanted, context: kept.context, at };
}

const isSame = (p: DOMMatrix, q: DOMMatrix): boolean =>
  p.a === q.a && p.d === q.d && p.e === q.e && p.f === q.f;

/** Device pixels round what has changed that its seams and their ends may reach. */
const MARGIN = 4;

function repaint({ context, at }: Kept, { paint, look }: KeptPaintingProps, box: Box): void {
  const { left, top, width, height } = onDevice(box, at, look.place);
  context.save();
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.beginPath();
  context.rect(left, top, width, height);
  context.clip();
  context.clearRect(left, top, width, height);
  context.setTransform(at);
  paint(context);
  context.restore();
}

/** Whole device pixels round a box of the block. */
function onDevice({ minX, minY, maxX, maxY }: Box, { a, d, e, f }: DOMMatrix, place: Place) {
  const corners = [place({ x: minX, y: minY }), place({ x: maxX, y: maxY })];
  const box = boundingBox(corners.map(({ x, y }): Point<'screen'> => ({ x: a * x + e, y: d * y + f })));
  const left = Math.floor(box.minX) - MARGIN;
  const top = Math.floor(box.minY) - MARGIN;
  const width = Math.ceil(box.maxX) + MARGIN - left;
  const height = Math.ceil(box.maxY) + MARGIN - top;
  return { left, top, width, height };
}
