import { formatLength, ok, type Result } from '@seamwright/geometry';
import { moved } from '../marks/marks.ts';
import { wrapped } from '../marks/metrics.ts';
import type { Mark, PagePlan, Sheet } from '../marks/model.ts';
import { packSheets } from '../packing/pack.ts';
import type { Way } from '../packing/placement.ts';
import { corrected, correctionWords } from '../sheet/correction.ts';
import { checkSquares, printableArea, type Regions, regionsOf, stripWidth } from '../sheet/sheet-frame.ts';
import { FOOT_LINE, footHeight, footMarks, namesOf } from '../sheet/sheet-strip.ts';
import { HOW_TO_JOIN } from '../tiles/tile-map.ts';
import { type TemplateCard, templateCard } from './template-card.ts';
import { type CheckedTemplates, checkTemplates, type TemplateJob } from './template-job.ts';
import { templateTiles } from './template-tiles.ts';

/** Points between templates: room for scissors. */
const GAP = 18;

/** A sheet before it has its foot. */
interface Draft {
  readonly marks: readonly Mark[];
  /** Of the templates on it. */
  readonly names: readonly string[];
}

/**
 * Templates of patches with their allowance, or windows to look through, in true size, several to a sheet; one that is larger
 * than a sheet in parts that are taped together.
 *
 * They are printed as the finished block is seen, not mirrored, for they lie on the fabric's right side. Sheets have check
 * squares as those of foundations do, and are corrected for the job's printer as they are.
 *
 * Problems: paper, margins, printer, allowance or scale out of bounds, a patch that is none.
 */
export function layTemplates(job: TemplateJob): Result<PagePlan> {
  const checked = checkTemplates(job);
  if (!checked.ok) return checked;
  const value = checked.value;
  const { page, sheet, margins, kind, printer } = value;
  const area = printableArea(sheet, margins);
  const width = stripWidth(area);
  const framed = (isTiled: boolean) => {
    const lines = footLines(value, isTiled).flatMap((line) =>
      wrapped(line, FOOT_LINE.size, FOOT_LINE.weight, width, 5),
    );
    return { lines, regions: regionsOf(sheet, margins, footHeight(lines.length, width)) };
  };
  const all = [...new Set(value.patches)].map((index) => {
    const name = nameOf(value, index);
    return { index, name, card: templateCard(value, index, name, GAP) };
  });
  const fitIn = (card: TemplateCard, regions: Regions) => card.ways.filter((way) => fits(way, regions));
  const plain = framed(false);
  const isTiled = all.some(({ card }) => fitIn(card, plain.regions).length === 0);
  const { lines, regions } = isTiled ? framed(true) : plain;
  const cards: TemplateCard[] = [];
  const drafts: Draft[] = [];
  for (const { index, name, card } of all) {
    const ways = fitIn(card, regions);
    if (ways.length > 0) {
      cards.push({ ...card, ways });
      continue;
    }
    for (const marks of templateTiles(value, index, name, regions)) drafts.push({ marks, names: [name] });
  }
  const order = all.map(({ name }) => name);
  const inOrder = (p: string, q: string) => order.indexOf(p) - order.indexOf(q);
  for (const placements of packSheets(cards, { regions, gap: GAP, atLeast: 1 }))
    drafts.push({
      marks: placements.flatMap(({ way, x, y }) => way.marks.map((mark) => moved(mark, { x, y }))),
      names: placements.map(({ item }) => item.name).sort(inOrder),
    });
  drafts.sort((p, q) => inOrder(p.names[0]!, q.names[0]!));
  const foot = { ...area, minX: area.maxX - width };
  const sheets = drafts.map(
    ({ marks, names }, i): Sheet => ({
      marks: [
        ...marks,
        ...checkSquares(area),
        ...footMarks(foot, {
          names: `${namesOf(value)}: ${kind}s`,
          number: `page ${i + 1} of ${drafts.length}`,
          lines,
        }),
      ],
      sections: names,
    }),
  );
  const titleOf = (name: string) => `${kind === 'template' ? 'Template' : 'Window'} ${name}`;
  const outline = order.map((name) => ({
    title: titleOf(name),
    sheet: sheets.findIndex(({ sections }) => sections.includes(name)),
    children: [],
  }));
  const plan: PagePlan = { title: `${value.title}, ${kind}s`, paper: page, sheets, outline, prints: [] };
  return ok(printer === undefined ? plan : corrected(plan, printer));
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
function footLines(
  { kind, allowance, unit, printer }: CheckedTemplates,
  isTiled: boolean,
): readonly string[] {
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
    ...(isTiled ? [HOW_TO_JOIN] : []),
    'Cut paper with scissors. At a rotary cutter, keep a ruler on the paper’s edge and your fingers back from it.',
    ...(printer === undefined ? [] : [correctionWords(printer)]),
  ];
}

const fits = ({ width, height }: Way, { wide, tall }: Regions): boolean =>
  [wide, tall].some(({ minX, minY, maxX, maxY }) => width <= maxX - minX && height <= maxY - minY);
