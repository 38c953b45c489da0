import type { jsPDF } from 'jspdf';
import type { Mark, OutlineEntry, PagePlan, PathMark, Stroke, TextMark } from '../marks/model.ts';
import type { Progress } from '../progress.ts';
import { binaryString } from './bytes.ts';
import { digest } from './digest.ts';
import type { PageFonts } from './fonts.ts';
import { printable } from './printable.ts';

/**
 * Decimals of a point in the file: 1e-4 pt is 0.04 µm, three hundred times finer than the 0.01 mm that pages are
 * held to.
 */
const DECIMALS = 4;

/** The day is of no interest, and a real one would make every file different. */
const CREATED = "D:20240101000000+00'00'";

const BUTT_CAP = 0;
/** Mitred corners of sharp tips would stick out far beyond the line that they end. */
const ROUND_JOIN = 1;

/**
 * The plan as a PDF file: true size, fonts embedded as subsets, same bytes for the same input.
 *
 * The viewer is asked not to scale, to print on one side (the fabric lies on the blank one) and to pick the paper
 * by the page's size; some viewers do not listen, which is what the check squares are for. Characters that the
 * fonts lack are replaced as {@link printable} says.
 *
 * Long plans say through `report` how many sheets are written.
 *
 * The library is loaded here and only here, when it is first needed, so that it stays out of a first page load.
 */
export async function writePdf(plan: PagePlan, fonts: PageFonts, report?: Progress): Promise<Uint8Array> {
  const { jsPDF } = await import('jspdf');
  const { plan: setPlan } = printable(plan, fonts);
  const { paper } = plan;
  const orientation = paper.width > paper.height ? 'landscape' : 'portrait';
  const doc = new jsPDF({
    unit: 'pt',
    // Numbers, not names: "a4" writes 595.28 × 841.89.
    format: [paper.width, paper.height],
    // Else the library would swap the two.
    orientation,
    compress: true,
    putOnlyUsedFonts: true,
    precision: DECIMALS,
  });
  doc.setFileId(digest(JSON.stringify(plan)));
  doc.setCreationDate(CREATED);
  doc.setProperties({ title: plan.title, creator: 'Seamwright' });
  doc.setLanguage('en');
  doc.setDisplayMode('fullpage', 'single', 'UseOutlines');
  doc.viewerPreferences({
    PrintScaling: 'None',
    DisplayDocTitle: true,
    PickTrayByPDFSize: true,
    Duplex: 'Simplex',
  });
  for (const weight of ['regular', 'semibold'] as const) {
    // The library takes files so, too, and this form needs no base64.
    doc.addFileToVFS(`${weight}.ttf`, binaryString(fonts[weight]));
    doc.addFont(`${weight}.ttf`, 'sans', weight);
  }
  const widths = new Map<string, number>();
  setPlan.sheets.forEach((sheet, i) => {
    report?.(i, setPlan.sheets.length, 'writing');
    if (i > 0) doc.addPage([paper.width, paper.height], orientation);
    const pen: Pen = { doc, widths, stroke: null, fill: null, text: null };
    for (const mark of sheet.marks) draw(pen, mark);
  });
  addOutline(doc, null, plan.outline);
  return new Uint8Array(doc.output('arraybuffer'));
}

/**
 * What the file's state is where the next mark is written, so that it is set only where it changes; null where it is not
 * known. The library's own record goes stale on a new page and after a window.
 */
interface Pen {
  readonly doc: jsPDF;
  /** Of texts in type of 1 point, by weight and content: the same few stand on every sheet. */
  readonly widths: Map<string, number>;
  stroke: Stroke | null;
  fill: number | null;
  text: Pick<TextMark, 'weight' | 'size'> | null;
}

function draw(pen: Pen, mark: Mark): void {
  assertFinite(mark);
  if (mark.kind === 'path') drawPath(pen, mark);
  else drawText(pen, mark);
}

/** Infinity would go into the file as it is, and make it unreadable. */
function assertFinite(mark: Mark): void {
  const numbers =
    mark.kind === 'path'
      ? [...mark.points.flatMap((p) => [p.x, p.y]), ...Object.values(mark.window ?? {})]
      : [mark.at.x, mark.at.y, mark.size, mark.angle];
  if (!numbers.every(Number.isFinite))
    throw new RangeError(`A ${mark.role} has a coordinate that is no number`);
}

function drawPath(pen: Pen, mark: PathMark): void {
  const { doc } = pen;
  const [first, ...rest] = mark.points;
  if (first === undefined || (mark.stroke === undefined && mark.fill === undefined)) return;
  if (mark.window) {
    const { minX, minY, maxX, maxY } = mark.window;
    doc.saveGraphicsState();
    doc
      .rect(minX, minY, maxX - minX, maxY - minY, null)
      .clip()
      .discardPath();
  }
  if (mark.stroke) setStroke(pen, mark.stroke);
  if (mark.fill !== undefined) setFill(pen, mark.fill);
  doc.moveTo(first.x, first.y);
  for (const point of rest) doc.lineTo(point.x, point.y);
  if (mark.closed) doc.close();
  if (mark.stroke && mark.fill !== undefined) doc.fillStroke();
  else if (mark.stroke) doc.stroke();
  else doc.fill();
  if (mark.window) {
    doc.restoreGraphicsState();
    Object.assign(pen, UNKNOWN);
  }
}

const UNKNOWN = { stroke: null, fill: null, text: null } as const satisfies Partial<Pen>;

function setStroke(pen: Pen, stroke: Stroke): void {
  const { doc, stroke: set } = pen;
  if (set?.width !== stroke.width) doc.setLineWidth(stroke.width);
  if (set === null || set.dash?.[0] !== stroke.dash?.[0] || set.dash?.[1] !== stroke.dash?.[1])
    doc.setLineDashPattern(stroke.dash ? [...stroke.dash] : [], 0);
  if (set === null) {
    doc.setLineCap(BUTT_CAP);
    doc.setLineJoin(ROUND_JOIN);
  }
  if (set?.ink !== stroke.ink) doc.setDrawColor(...greyOf(stroke.ink));
  pen.stroke = stroke;
}

function setFill(pen: Pen, ink: number): void {
  if (pen.fill !== ink) pen.doc.setFillColor(...greyOf(ink));
  pen.fill = ink;
}

/** How much of a text lies before the point that it is anchored at. */
const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

function drawText(pen: Pen, mark: TextMark): void {
  const { doc } = pen;
  if (pen.text?.weight !== mark.weight) doc.setFont('sans', mark.weight);
  if (pen.text?.size !== mark.size) doc.setFontSize(mark.size);
  pen.text = mark;
  doc.setTextColor(...greyOf(mark.ink));
  // The library fills texts with their own colour, and so forgets the one of paths.
  pen.fill = null;
  // The library would shift a turned text to the left instead of back along its own line.
  const back = mark.anchor === 'start' ? 0 : BEFORE[mark.anchor] * mark.size * widthOf(pen, mark);
  const radians = (mark.angle * Math.PI) / 180;
  const x = mark.at.x - back * Math.cos(radians);
  const y = mark.at.y - back * Math.sin(radians);
  doc.text(mark.content, x, y, { angle: -mark.angle });
}

/** In type of 1 point. The pen has the mark's weight and size. */
function widthOf({ doc, widths }: Pen, { content, size, weight }: TextMark): number {
  const key = `${weight} ${content}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  const width = doc.getTextWidth(content) / size;
  widths.set(key, width);
  return width;
}

/** Red, green and blue, 0 … 255; the library writes three that are alike as a grey. */
function greyOf(ink: number): [number, number, number] {
  const level = Math.round(255 * (1 - ink));
  return [level, level, level];
}

function addOutline(doc: jsPDF, parent: unknown, entries: readonly OutlineEntry[]): void {
  for (const entry of entries) {
    const item = doc.outline.add(parent as never, entry.title, { pageNumber: entry.sheet + 1 });
    addOutline(doc, item, entry.children);
  }
}
