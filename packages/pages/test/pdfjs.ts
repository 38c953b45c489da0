import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Spot } from '../../../e2e/support/pdf.ts';

/**
 * A second reader of PDFs, sharing nothing with Poppler: the numbers as they are written in the file, and what is
 * around the pages. Points from the top left corner, y down.
 */

export interface ReadPath {
  readonly points: readonly Spot[];
  readonly closed: boolean;
  readonly dash: readonly number[];
  /** The corners of what the path is seen through; null when all of it is seen. */
  readonly window: readonly Spot[] | null;
}

export interface ReadPage {
  readonly view: readonly number[];
  readonly paths: readonly ReadPath[];
  readonly text: string;
  /** Where the base line of each text begins and ends. */
  readonly baseLines: readonly (readonly [Spot, Spot])[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly viewerPreferences: unknown;
  readonly info: Readonly<Record<string, unknown>>;
  /** Parents before children; `page` is an index. */
  readonly outline: readonly { readonly title: string; readonly page: number }[];
  readonly fonts: readonly { readonly name: string; readonly missingFile: boolean }[];
}

interface OutlineNode {
  readonly title: string;
  readonly dest: string | unknown[] | null;
  readonly items: readonly OutlineNode[];
}

export async function openPdf(bytes: Uint8Array): Promise<ReadPdf> {
  // The reader takes the bytes for itself.
  const doc = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  const fonts = new Map<string, { name: string; missingFile: boolean }>();
  for (let number = 1; number <= doc.numPages; number++) {
    const page = await doc.getPage(number);
    const list = await page.getOperatorList();
    const { items } = await page.getTextContent();
    pages.push({
      view: page.view,
      paths: pathsOf(list, page.view[3]!),
      text: items.map((item) => ('str' in item ? item.str : '')).join('\n'),
      baseLines: items.flatMap((item) => ('str' in item ? [baseLine(item, page.view[3]!)] : [])),
    });
    list.fnArray.forEach((operator, i) => {
      if (operator !== OPS.setFont) return;
      const id = list.argsArray[i][0] as string;
      const { name, missingFile } = page.commonObjs.get(id) as { name: string; missingFile?: boolean };
      fonts.set(id, { name, missingFile: missingFile ?? false });
    });
  }
  const nodes = ((await doc.getOutline()) ?? []) as readonly OutlineNode[];
  const outline: { title: string; page: number }[] = [];
  const visit = async (node: OutlineNode): Promise<void> => {
    const target = (node.dest as unknown[])[0] as Parameters<typeof doc.getPageIndex>[0];
    outline.push({ title: node.title, page: await doc.getPageIndex(target) });
    for (const child of node.items) await visit(child);
  };
  for (const node of nodes) await visit(node);
  const { info } = await doc.getMetadata();
  const result = {
    pages,
    viewerPreferences: await doc.getViewerPreferences(),
    info: info as Record<string, unknown>,
    outline,
    fonts: [...fonts.values()],
  };
  await doc.destroy();
  return result;
}

/** The first two numbers of the transform are where the writing goes, `width` is how far. */
function baseLine(
  { transform, width }: { readonly transform: readonly number[]; readonly width: number },
  top: number,
): readonly [Spot, Spot] {
  const [across, up, , , x, y] = transform as readonly [number, number, number, number, number, number];
  const size = Math.hypot(across, up) || 1;
  const start = { x, y: top - y };
  return [start, { x: start.x + (across / size) * width, y: start.y - (up / size) * width }];
}

/** Codes of the reader's own path lists: what moves, what draws a line; what else comes here closes. */
const MOVE = 0;
const LINE = 1;

function pathsOf(
  list: { fnArray: readonly number[]; argsArray: readonly unknown[] },
  top: number,
): readonly ReadPath[] {
  const paths: ReadPath[] = [];
  let dash: readonly number[] = [];
  let window: readonly Spot[] | null = null;
  let clips = false;
  list.fnArray.forEach((operator, i) => {
    const args = list.argsArray[i] as readonly unknown[];
    if (operator === OPS.setDash) dash = args[0] as readonly number[];
    if (operator === OPS.clip) clips = true;
    if (operator === OPS.restore) window = null;
    if (operator !== OPS.constructPath) return;
    const { points, closed } = walked((args[1] as readonly ArrayLike<number>[])[0]!, top);
    if (clips) window = points;
    else paths.push({ points, closed, dash, window });
    clips = false;
  });
  return paths;
}

function walked(codes: ArrayLike<number>, top: number): { points: readonly Spot[]; closed: boolean } {
  const points: Spot[] = [];
  let closed = false;
  for (let at = 0; at < codes.length; ) {
    if (codes[at] === MOVE || codes[at] === LINE) {
      points.push({ x: codes[at + 1]!, y: top - codes[at + 2]! });
      at += 3;
    } else {
      closed = true;
      at += 1;
    }
  }
  return { points, closed };
}
