import {
  addedText,
  type ClothPlan,
  CUTTING_CAUTIONS,
  clothNames,
  halvesTexts,
  layerCautions,
  rulesText,
} from '@seamwright/cloth';
import { type Box, ok, type Result } from '@seamwright/geometry';
import { cleanName } from '../job.ts';
import { QUIET } from '../marks/marks.ts';
import type { PagePlan } from '../marks/model.ts';
import { type FlowPart, flow } from '../sheet/flow.ts';
import { printableArea } from '../sheet/sheet-frame.ts';
import { footHeight, footMarks, namesOf } from '../sheet/sheet-strip.ts';
import { type CheckedChart, type CuttingChartJob, checkChart } from './chart-job.ts';
import { cautionParts, clothAgain, clothParts, stripParts, wordParts } from './chart-parts.ts';
import { columnsFor, rowParts, rowsHead } from './chart-rows.ts';

/** Points: between the last line and the foot, below a fabric's rows, and below a fabric. */
const ABOVE_FOOT = 10;
const BELOW_ROWS = 8;
const BELOW_CLOTH = 16;

/**
 * A cutting chart as pages to print and to tick off: by fabric what is bought, what is cut, from which strips, and what to
 * mind with a cutter in hand. A fabric's heading stays with its first row, and is said again where its rows go on.
 *
 * Nothing on it is of true size, so it has no check squares.
 *
 * A Problem when the paper is unknown or has too little room, the layers make no sense, or there is nothing to cut.
 */
export function layCuttingChart(job: CuttingChartJob): Result<PagePlan> {
  const checked = checkChart(job);
  if (!checked.ok) return checked;
  const chart = checked.value;
  const area = printableArea(chart.page, chart.margins);
  const width = area.maxX - area.minX;
  const room: Box<'page'> = { ...area, maxY: area.maxY - footHeight(0, width) - ABOVE_FOOT };

  const nameOf = clothNames(chart.plans.map(({ cloth }) => cloth));
  const named = chart.plans.map((plan) => ({
    plan,
    name: cleanName(nameOf(plan.cloth.id)) || (chart.plans.length === 1 ? 'Fabric' : 'No fabric yet'),
  }));
  const groups = named.map(({ plan, name }) => clothGroup(chart, plan, name, width));
  const heading = headingParts(chart, width);
  const cautions = cautionParts([...CUTTING_CAUTIONS, ...layerCautions(chart.rows)], width);
  const { sheets, sheetOf } = flow([...heading, ...groups.flat(), ...cautions], room);

  let at = heading.length;
  const outline = named.map(({ name }, i) => {
    const entry = { title: name, sheet: sheetOf[at]!, children: [] };
    at += groups[i]!.length;
    return entry;
  });
  return ok({
    title: `${chart.title}, cutting chart`,
    paper: chart.page,
    sheets: sheets.map((marks, i) => ({
      marks: [
        ...marks,
        ...footMarks(area, {
          names: `${namesOf(chart)}: cutting chart`,
          number: `page ${i + 1} of ${sheets.length}`,
          lines: [],
        }),
      ],
      sections: [],
    })),
    outline,
    prints: [],
  });
}

function headingParts({ cutFor, cut, buying, rows, unit }: CheckedChart, width: number): readonly FlowPart[] {
  const facts = [rulesText(cut, unit), addedText(buying), ...halvesTexts(rows)];
  return [
    ...wordParts('Cutting chart', { size: 16, weight: 'semibold' }, { width, gap: 1 }),
    ...wordParts(`To cut for ${cutFor}`, { size: 10.5, weight: 'semibold' }, { width, gap: 2 }),
    ...facts.flatMap((fact) => wordParts(fact, { size: 8.5, weight: 'regular', ink: QUIET }, { width })),
  ].map((part, i, all) => (i === all.length - 1 ? { ...part, gap: 14 } : { ...part, keep: true }));
}

/** All of one fabric. */
function clothGroup(
  { rows, layers, unit }: CheckedChart,
  plan: ClothPlan,
  name: string,
  width: number,
): readonly FlowPart[] {
  const own = rows.filter(({ cloth }) => (cloth ?? '') === plan.cloth.id);
  const columns = columnsFor(rows, unit, width);
  const head = rowsHead(columns);
  const again = clothAgain(name, width);
  const parts: readonly FlowPart[] = [
    ...clothParts(name, plan, own, unit, width),
    { ...head, keep: true, again: [again] },
    ...own.flatMap((row, i) => {
      const lines = rowParts(row, plan.cloth, unit, columns, [again, head]);
      // No row stands alone, at the foot of a sheet or at the head of the next.
      const keep = (i === 0 || i === own.length - 2) && i < own.length - 1;
      const gap = i === own.length - 1 ? BELOW_ROWS : 0;
      return lines.map((line, k) => (k === lines.length - 1 ? { ...line, keep, gap } : line));
    }),
    ...stripParts(plan, layers, unit, width, [again]),
  ];
  return parts.map((part, i) => (i === parts.length - 1 ? { ...part, gap: BELOW_CLOTH } : part));
}
