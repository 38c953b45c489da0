import type { Mark, PathMark, Stroke, TextMark } from '../marks/model.ts';
import { Operators } from './operators.ts';
import type { Typesetter } from './typesetter.ts';

/** Line ends butt; mitred corners of sharp tips would stick out far beyond the line that they end, so joins are round. */
const ENDS_AND_CORNERS = '0 J 1 j\n';

/** How much of a text lies before the point that it is anchored at. */
const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/**
 * The content stream of one sheet: its marks as operators (ISO 32000-1, 8.4 to 9.4), in their order. What a mark looks like is
 * written only where it differs from what was written last, and never taken for known at the start.
 *
 * @param height of the sheet, points; the file's y points up
 */
export function pageContent(marks: readonly Mark[], height: number, typesetter: Typesetter): Uint8Array {
  const pen = new Pen(height, typesetter);
  for (const mark of marks) pen.draw(mark);
  return pen.out.bytes();
}

class Pen {
  readonly out = new Operators();
  private stroke: Stroke | null = null;
  private fill: number | null = null;
  private font: Pick<TextMark, 'weight' | 'size'> | null = null;

  constructor(
    private readonly height: number,
    private readonly typesetter: Typesetter,
  ) {}

  draw(mark: Mark): void {
    if (mark.kind === 'text') this.drawText(mark);
    else if (mark.window === undefined) this.drawPath(mark);
    else this.throughWindow(mark, mark.window);
  }

  private throughWindow(mark: PathMark, { minX, minY, maxX, maxY }: NonNullable<PathMark['window']>): void {
    this.out.text('q ');
    this.point(minX, maxY)
      .number(maxX - minX)
      .number(maxY - minY)
      .text('re W n\n');
    this.drawPath(mark);
    this.out.text('Q\n');
    // What was set since the window was opened holds no more.
    this.stroke = null;
    this.fill = null;
    this.font = null;
  }

  private drawPath({ points, closed, stroke, fill }: PathMark): void {
    if (points.length === 0 || (stroke === undefined && fill === undefined)) return;
    if (stroke !== undefined) this.setStroke(stroke);
    if (fill !== undefined) this.setFill(fill);
    for (let i = 0; i < points.length; i++) {
      const { x, y } = points[i]!;
      this.point(x, y).text(i === 0 ? 'm ' : 'l ');
    }
    if (closed) this.out.text('h ');
    this.out.text(stroke === undefined ? 'f\n' : fill === undefined ? 'S\n' : 'B\n');
  }

  private setStroke(stroke: Stroke): void {
    const { width, ink, dash } = stroke;
    const set = this.stroke;
    if (set === stroke) return;
    if (set === null) this.out.text(ENDS_AND_CORNERS);
    if (set?.width !== width) this.out.number(width).text('w\n');
    if (set === null || set.dash?.[0] !== dash?.[0] || set.dash?.[1] !== dash?.[1]) this.setDash(dash ?? []);
    if (set?.ink !== ink) this.grey(ink).text('G\n');
    this.stroke = stroke;
  }

  private setDash(dash: readonly number[]): void {
    this.out.text('[');
    for (const length of dash) this.out.number(length);
    this.out.text('] 0 d\n');
  }

  private setFill(ink: number): void {
    if (this.fill !== ink) this.grey(ink).text('g\n');
    this.fill = ink;
  }

  private drawText(mark: TextMark): void {
    const { size, weight, anchor, at, angle, ink } = mark;
    const { codes, width } = this.typesetter.set(mark);
    this.setFill(ink);
    this.out.text('BT ');
    if (this.font?.weight !== weight || this.font.size !== size)
      this.out
        .text(`/${this.typesetter.font(weight)} `)
        .number(size)
        .text('Tf ');
    this.font = mark;
    const back = BEFORE[anchor] * size * width;
    if (angle === 0) this.point(at.x - back, at.y).text('Td (');
    else {
      const radians = (angle * Math.PI) / 180;
      const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
      // Clockwise on the sheet; the file's y points up.
      this.out.text(`${fine(cos)} ${fine(-sin)} ${fine(sin)} ${fine(cos)} `);
      this.point(at.x - back * cos, at.y - back * sin).text('Tm (');
    }
    this.out.text(codes).text(') Tj ET\n');
  }

  private point(x: number, y: number): Operators {
    return this.out.number(x).number(this.height - y);
  }

  /** In 255 steps, as screens have them. */
  private grey(ink: number): Operators {
    return this.out.number(Math.round(255 * (1 - ink)) / 255);
  }
}

/** A share of a turned text's way: along the longest line, far below what coordinates are written to. */
const fine = (share: number): string => share.toFixed(7);
