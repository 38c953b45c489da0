import type { Mark, PagePlan, PathMark, Role, Sheet, TextMark } from '../marks/model.ts';
import { FONT_FAMILY } from './fonts.ts';

/** Decimals of a point, as in the PDF. */
const DECIMALS = 4;

/** The groups of a section, in drawing order, and the roles that go into each. */
const GROUPS: readonly (readonly [id: string, roles: readonly Role[]])[] = [
  ['cutting-line', ['cutting-line']],
  ['sew-lines', ['sew-line', 'run-on']],
  ['finished-outline', ['finished-outline']],
  ['match-marks', ['match-mark']],
  ['tile-marks', ['tile-edge', 'crop-mark', 'alignment-mark']],
  ['labels', ['label', 'caption']],
  ['check-squares', ['check-square']],
];

/**
 * One sheet of the plan as an SVG document of true size (`width="8.5in"`, the viewBox in points).
 *
 * Each foundation's marks stand in a group `section-A`, and in it, by role, in groups with fixed ids (see the
 * README); a run-on stands beside its sew line and has `class="run-on"`. The sheet's check squares belong to the set of
 * the sheet's first section; on a sheet without any they are in `sheet`. Everything else about the sheet is in the group `sheet`.
 *
 * Throws a RangeError when the plan has no such sheet.
 */
export function writeSvg(plan: PagePlan, sheetIndex: number): string {
  const sheet = plan.sheets[sheetIndex];
  if (sheet === undefined) throw new RangeError(`There is no sheet ${sheetIndex}`);
  const { paper } = plan;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${paper.trueWidth}" height="${paper.trueHeight}" viewBox="0 0 ${decimal(paper.width)} ${decimal(paper.height)}" ${SHEET_LOOK}>
<title>${escaped(sheetTitle(plan, sheetIndex))}</title>
${sheetContent(sheet)}</svg>
`;
}

/** What holds for all of a sheet, as attributes of the element round {@link sheetContent}. */
export const SHEET_LOOK = `font-family="'${FONT_FAMILY}', sans-serif" stroke-linejoin="round" fill="none"`;

/** `Lantern, page 1 of 9` */
export const sheetTitle = ({ title, sheets }: PagePlan, sheetIndex: number): string =>
  `${title}, page ${sheetIndex + 1} of ${sheets.length}`;

/**
 * Everything on the sheet as SVG elements, in points.
 *
 * @param prefix stands before every id, for sheets that share a document
 */
export function sheetContent(sheet: Sheet, prefix = ''): string {
  const isSquare = (mark: Mark) => mark.role === 'check-square';
  const sections = sheet.sections.map((key, i) => {
    const own = sheet.marks.filter((mark) => mark.section === key || (i === 0 && isSquare(mark)));
    return group(
      `${prefix}section-${key}`,
      GROUPS.map(([id, roles]) => groupOfRoles(id, roles, own, prefix)).join(''),
    );
  });
  const windows = [...new Set(sheet.marks.flatMap(windowOf))];
  const hasSections = sheet.sections.length > 0;
  const rest = sheet.marks.filter((mark) => mark.section === undefined && !isSquare(mark));
  const squares = hasSections ? '' : groupOfRoles('check-squares', ['check-square'], sheet.marks, prefix);
  const others = group(`${prefix}sheet`, `${rest.map((mark) => element(mark, prefix)).join('')}${squares}`);
  return `${windows.map((window) => clipPath(window, prefix)).join('')}${sections.join('')}${others}`;
}

/** The window that a mark is shown through, as SVG writes a rectangle; none or one. */
function windowOf(mark: Mark): readonly string[] {
  if (mark.kind === 'text' || mark.window === undefined) return [];
  const { minX, minY, maxX, maxY } = mark.window;
  return [
    `x="${decimal(minX)}" y="${decimal(minY)}" width="${decimal(maxX - minX)}" height="${decimal(maxY - minY)}"`,
  ];
}

/** A sheet shows one tile, so all its windows are alike; were they not, each would have an id of its own. */
const clipPath = (window: string, prefix: string): string =>
  `<clipPath id="${windowId(window, prefix)}"><rect ${window}/></clipPath>\n`;

const windowId = (window: string, prefix: string): string =>
  `${prefix}window-${window.replace(/[^\d.]+/g, '-').replace(/^-|-$/g, '')}`;

function groupOfRoles(id: string, roles: readonly Role[], marks: readonly Mark[], prefix: string): string {
  const own = marks.filter((mark) => roles.includes(mark.role));
  return own.length === 0 ? '' : group(`${prefix}${id}`, own.map((mark) => element(mark, prefix)).join(''));
}

const group = (id: string, content: string): string => `<g id="${id}">\n${content}</g>\n`;

const element = (mark: Mark, prefix: string): string =>
  mark.kind === 'path' ? pathElement(mark, prefix) : textElement(mark);

function pathElement(mark: PathMark, prefix: string): string {
  const d = mark.points.map((p, i) => `${i === 0 ? 'M' : 'L'}${decimal(p.x)} ${decimal(p.y)}`).join(' ');
  const attributes = [`class="${mark.role}"`, `d="${d}${mark.closed ? ' Z' : ''}"`];
  if (mark.fill !== undefined) attributes.push(`fill="${colour(mark.fill)}"`);
  if (mark.stroke) {
    const { width, ink, dash } = mark.stroke;
    attributes.push(`stroke="${colour(ink)}"`, `stroke-width="${decimal(width)}"`);
    if (dash) attributes.push(`stroke-dasharray="${dash.map(decimal).join(' ')}"`);
  }
  for (const window of windowOf(mark)) attributes.push(`clip-path="url(#${windowId(window, prefix)})"`);
  return `<path ${attributes.join(' ')}/>\n`;
}

function textElement(mark: TextMark): string {
  const { x, y } = mark.at;
  const attributes = [
    `class="${mark.role}"`,
    `x="${decimal(x)}"`,
    `y="${decimal(y)}"`,
    `font-size="${decimal(mark.size)}"`,
    `fill="${colour(mark.ink)}"`,
  ];
  if (mark.weight === 'semibold') attributes.push('font-weight="600"');
  if (mark.anchor !== 'start') attributes.push(`text-anchor="${mark.anchor}"`);
  if (mark.angle !== 0)
    attributes.push(`transform="rotate(${decimal(mark.angle)} ${decimal(x)} ${decimal(y)})"`);
  return `<text ${attributes.join(' ')}>${escaped(mark.content)}</text>\n`;
}

function colour(ink: number): string {
  const level = Math.round(255 * (1 - ink))
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}

/** A plain decimal number; never an exponent, never −0. */
function decimal(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError('A mark has a coordinate that is no number');
  const text = value.toFixed(DECIMALS).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

export const escaped = (text: string): string => text.replace(/[&<>"]/g, (character) => ESCAPES[character]!);
