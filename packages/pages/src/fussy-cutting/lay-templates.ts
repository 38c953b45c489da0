import { fail, formatLength, ok, type Result } from '@seamwright/geometry';
import { moved } from '../marks/marks.ts';
import { wrapped } from '../marks/metrics.ts';
import type { PagePlan, Sheet } from '../marks/model.ts';
import { packSheets } from '../packing/pack.ts';
import type { Way } from '../packing/placement.ts';
import { checkSquares, printableArea, type Regions, regionsOf, stripWidth } from '../sheet/sheet-frame.ts';
import { FOOT_LINE, footHeight, footMarks, namesOf } from '../sheet/sheet-strip.ts';
import { type TemplateCard, templateCard } from './template-card.ts';
import { type CheckedTemplates, checkTemplates, type TemplateJob } from './template-job.ts';

/** Points between templates: room for scissors. */
const GAP = 18;

/**
 * Templates of patches with their allowance, or windows to look through, in true size, several to a sheet.
 *
 * They are printed as the finished block is seen, not mirrored, for they lie on the fabric's right side. Sheets have check
 * squares as those of foundations do.
 *
 * Problems: paper, margins, allowance or scale out of bounds, a patch that is none, one that is larger than the sheet.
 */
export function layTemplates(job: TemplateJob): Result<PagePlan> {
  const checked = checkTemplates(job);
  if (!checked.ok) return checked;
  const value = checked.value;
  const { page, margins, kind } = value;
  const area = printableArea(page, margins);
  const width = stripWidth(area);
  const lines = footLines(value).flatMap((line) => wrapped(line, FOOT_LINE.size, FOOT_LINE.weight, width, 5));
  const regions = regionsOf(page, margins, footHeight(lines.length, width));
  const cards: TemplateCard[] = [];
  for (const index of new Set(value.patches)) {
    const name = nameOf(value, index);
    const card = templateCard(value, index, name, GAP);
    const ways = card.ways.filter((way) => fits(way, regions));
    if (ways.length === 0)
      return fail(
        `The ${kind} of ${name} is larger than a sheet`,
        `patch ${name}`,
        'Choose a larger paper, or piece the patch on its foundation',
      );
    cards.push({ ...card, ways });
  }
  const packed = packSheets(cards, { regions, gap: GAP, atLeast: 1 });
  const order = cards.map(({ name }) => name);
  const inOrder = packed
    .map((sheet) => [...sheet].sort((p, q) => order.indexOf(p.item.name) - order.indexOf(q.item.name)))
    .sort(([p], [q]) => order.indexOf(p!.item.name) - order.indexOf(q!.item.name));
  const foot = { ...area, minX: area.maxX - width };
  const sheets = inOrder.map(
    (placements, i): Sheet => ({
      marks: [
        ...placements.flatMap(({ way, x, y }) => way.marks.map((mark) => moved(mark, { x, y }))),
        ...checkSquares(area),
        ...footMarks(foot, {
          names: `${namesOf(value)}: ${kind}s`,
          number: `page ${i + 1} of ${inOrder.length}`,
          lines,
        }),
      ],
      sections: placements.map(({ item }) => item.name),
    }),
  );
  const titleOf = (name: string) => `${kind === 'template' ? 'Template' : 'Window'} ${name}`;
  const outline = order.map((name) => ({
    title: titleOf(name),
    sheet: sheets.findIndex(({ sections }) => sections.includes(name)),
    children: [],
  }));
  return ok({ title: `${value.title}, ${kind}s`, paper: page, sheets, outline, prints: [] });
}

/** `A1`; of a patch that no section holds, what sets it apart. */
function nameOf({ plan }: CheckedTemplates, index: number): string {
  for (const { letter, order } of plan.sections) {
    const at = order.indexOf(index);
    if (at >= 0) return `${letter}${at + 1}`;
  }
  return `?${index + 1}`;
}

/** What is said on every sheet. */
function footLines({ kind, allowance, unit }: CheckedTemplates): readonly string[] {
  const seam = `${formatLength(allowance, unit)} seam allowance`;
  const how =
    kind === 'window'
      ? `Cut the inside out on the solid line, and round the frame on the dashed line (${seam}). Look through, and draw round the frame.`
      : allowance === 0
        ? 'Cut on the solid line. There is no seam allowance: add it as you cut the fabric.'
        : `Cut on the dashed line; the solid line is the finished patch, inside its ${seam}.`;
  return [
    how,
    'Lay it on the fabric’s right side: it is as the finished block is seen, not mirrored. Arrows point to the block’s top.',
    'Cut paper with scissors. At a rotary cutter, keep a ruler on the paper’s edge and your fingers back from it.',
  ];
}

const fits = ({ width, height }: Way, { wide, tall }: Regions): boolean =>
  [wide, tall].some(({ minX, minY, maxX, maxY }) => width <= maxX - minX && height <= maxY - minY);
