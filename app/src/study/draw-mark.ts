import { FONT_FAMILY, type Mark, type PathMark, type TextMark } from '@seamwright/pages';

const WEIGHTS = { regular: 400, semibold: 600 } as const;

const colour = (ink: number): string => {
  const level = Math.round(255 * (1 - ink));
  return `rgb(${level} ${level} ${level})`;
};

/** Draws a mark of a page as the pages' writers write it; the canvas' unit is the point. */
export function drawMark(context: OffscreenCanvasRenderingContext2D, mark: Mark): void {
  context.save();
  if (mark.kind === 'path') drawPath(context, mark);
  else drawText(context, mark);
  context.restore();
}

function drawPath(
  context: OffscreenCanvasRenderingContext2D,
  { points, closed, fill, stroke, window }: PathMark,
): void {
  if (window !== undefined) {
    context.beginPath();
    context.rect(window.minX, window.minY, window.maxX - window.minX, window.maxY - window.minY);
    context.clip();
  }
  context.beginPath();
  for (const { x, y } of points) context.lineTo(x, y);
  if (closed) context.closePath();
  if (fill !== undefined) {
    context.fillStyle = colour(fill);
    context.fill();
  }
  if (stroke === undefined) return;
  context.strokeStyle = colour(stroke.ink);
  context.lineWidth = stroke.width;
  context.setLineDash([...(stroke.dash ?? [])]);
  context.stroke();
}

function drawText(
  context: OffscreenCanvasRenderingContext2D,
  { content, at, size, weight, anchor, angle, ink }: TextMark,
): void {
  context.font = `${WEIGHTS[weight]} ${size}px '${FONT_FAMILY}', sans-serif`;
  context.textAlign = anchor === 'middle' ? 'center' : anchor;
  context.fillStyle = colour(ink);
  context.translate(at.x, at.y);
  context.rotate((angle * Math.PI) / 180);
  context.fillText(content, 0, 0);
}
