import type { Arrangement } from '@seamwright/arrangement';
import { boundingBox, type Point, type Polygon, type Segment } from '@seamwright/geometry';

/** The look of the documents' pictures: warm paper, graphite, madder for what is in the way, blue for what mends it. */
const PAPER = '#fbf8f2';
const SHEET = '#fffdf9';
const INK = '#2a2825';
const SOFT = '#5c564d';
const WRONG = '#ae2a1e';
const MENDS = '#1a5fa6';
/** Tints of sections; each also has its letter. */
const TINTS = ['#e3d9c3', '#cfdde6', '#e6d0ca', '#d4dfc8', '#ded3e3'];

/** Pixels. */
const SIDE = 168;
const GAP = 28;
const TOP = 20;
const LINE = 18;

/** One block of a picture. What it shows is drawn in the order of the fields. */
export interface Frame {
  readonly block: Arrangement;
  /** Under the block; each a line. */
  readonly caption: readonly string[];
  /** By patch: tint of that section; patches without one are plain. */
  readonly sections?: ReadonlyMap<number, number>;
  /** Patches that are taken off already: only hinted at. */
  readonly gone?: ReadonlySet<number>;
  readonly names?: ReadonlyMap<number, string>;
  /** Seams that are being sewn, or that are meant. */
  readonly sewn?: readonly Segment[];
  /** Seams in each other's way: numbered arrows. */
  readonly ring?: readonly Segment[];
  /** Stretches that are left open. */
  readonly open?: readonly Segment[];
  /** Lines to be added. */
  readonly added?: readonly Segment[];
  /** Places at which something goes wrong. */
  readonly corners?: readonly Point[];
}

/** A picture of blocks beside each other, as SVG. */
export function pictureOf(title: string, description: string, frames: readonly Frame[]): string {
  const lines = Math.max(...frames.map(({ caption }) => caption.length));
  const width = frames.length * (SIDE + GAP) + GAP;
  const height = TOP + SIDE + 14 + lines * LINE + 10;
  const body = frames.map((frame, i) => frameSvg(frame, GAP + i * (SIDE + GAP), TOP)).join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d" font-family="ui-sans-serif, system-ui, sans-serif">
  <title id="t">${escaped(title)}</title>
  <desc id="d">${escaped(description)}</desc>
  <defs>
    <marker id="head" viewBox="0 0 8 8" refX="7" refY="4" markerWidth="4.5" markerHeight="4.5" orient="auto"><path d="M0 0 8 4 0 8z" fill="${WRONG}"/></marker>
  </defs>
  <rect width="${width}" height="${height}" rx="8" fill="${PAPER}"/>
${body}
</svg>
`;
}

function frameSvg(frame: Frame, left: number, top: number): string {
  const { block, caption, sections, gone = new Set(), names, corners = [] } = frame;
  const box = boundingBox(block.outline);
  const scale = SIDE / Math.max(box.maxX - box.minX, box.maxY - box.minY);
  const at = ({ x, y }: Point): Point => ({
    x: round(left + (x - box.minX) * scale),
    y: round(top + (y - box.minY) * scale),
  });
  const path = (polygon: Polygon) =>
    `M${polygon
      .map(at)
      .map(({ x, y }) => `${x} ${y}`)
      .join('L')}Z`;
  const parts: string[] = [];
  for (const { index, polygon } of block.patches) {
    const section = sections?.get(index);
    const fill = section === undefined ? SHEET : TINTS[section % TINTS.length];
    parts.push(
      gone.has(index)
        ? `<path d="${path(polygon)}" fill="none" stroke="${SOFT}" stroke-width="1" stroke-dasharray="2 4"/>`
        : `<path d="${path(polygon)}" fill="${fill}" stroke="${INK}" stroke-width="1.5" stroke-linejoin="round"/>`,
    );
  }
  const segments = (list: readonly Segment[] = [], style: string) =>
    list.map(({ a, b }) => {
      const [p, q] = [at(a), at(b)];
      return `<path d="M${p.x} ${p.y}L${q.x} ${q.y}" fill="none" ${style}/>`;
    });
  parts.push(
    ...segments(frame.sewn, `stroke="${INK}" stroke-width="5" stroke-linecap="round"`),
    ...segments(frame.ring, `stroke="${WRONG}" stroke-width="4" marker-end="url(#head)"`),
    ...segments(
      frame.open,
      `stroke="${WRONG}" stroke-width="4" stroke-dasharray="1 7" stroke-linecap="round"`,
    ),
    ...segments(frame.added, `stroke="${MENDS}" stroke-width="4" stroke-dasharray="9 6"`),
  );
  for (const corner of corners) {
    const { x, y } = at(corner);
    parts.push(`<circle cx="${x}" cy="${y}" r="11" fill="none" stroke="${WRONG}" stroke-width="3"/>`);
  }
  for (const { index, heart } of block.patches) {
    const name = names?.get(index);
    if (name !== undefined)
      parts.push(text(at(heart), name, `font-size="15" font-weight="600" fill="${INK}"`, 5));
  }
  frame.ring?.forEach(({ a, b }, i) => {
    const { x, y } = at({ x: a.x + 0.25 * (b.x - a.x), y: a.y + 0.25 * (b.y - a.y) });
    parts.push(
      `<circle cx="${x}" cy="${y}" r="9" fill="${SHEET}" stroke="${WRONG}" stroke-width="2"/>`,
      text({ x, y }, `${i + 1}`, `font-size="12" font-weight="700" fill="${WRONG}"`, 4),
    );
  });
  caption.forEach((words, i) => {
    const place = { x: left + SIDE / 2, y: top + SIDE + 24 + i * LINE };
    parts.push(text(place, words, `font-size="13.5" fill="${INK}"`, 0));
  });
  return parts.map((part) => `  ${part}`).join('\n');
}

const text = ({ x, y }: Point, words: string, style: string, down: number): string =>
  `<text x="${round(x)}" y="${round(y + down)}" text-anchor="middle" ${style}>${escaped(words)}</text>`;

const round = (value: number): number => Math.round(value * 100) / 100;

const escaped = (words: string): string =>
  words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
