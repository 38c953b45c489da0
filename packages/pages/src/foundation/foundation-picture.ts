import { boundingBox, fail, ok, POINTS_PER_INCH, type Result } from '@seamwright/geometry';
import type { FoundationJob } from '../job.ts';
import { moved } from '../marks/marks.ts';
import { textCorners } from '../marks/metrics.ts';
import type { PagePlan } from '../marks/model.ts';
import { PAPER_RANGE } from '../sheet/paper.ts';
import { layFoundations } from './lay-foundations.ts';

/** Points left blank round the foundation. */
const EDGE = 9;

/** Inches beyond the block's longer side that a sheet has room for: allowance, caption and check squares. */
const BESIDE = 12;

/**
 * One foundation by itself, with its caption: a plan of one sheet that is just as large. It is whole where the maker's sheets
 * have it in tiles, and true in itself where they are corrected for a printer.
 *
 * A Problem as {@link layFoundations} gives it, and where the foundation is larger than any sheet can be.
 *
 * @param key the foundation's, as in `Print.key`; a RangeError when the job has no such foundation
 */
export function foundationPicture(job: FoundationJob, key: string): Result<PagePlan> {
  const { printer: _, margins: __, ...uncorrected } = job;
  const laid = layFoundations({ ...uncorrected, fillSheets: false, paper: sheetFor(job) });
  if (!laid.ok) return laid;
  const print = laid.value.prints.find((one) => one.key === key);
  if (print === undefined) throw new RangeError(`There is no foundation ${key}`);
  const [sheet, ...more] = print.sheets;
  if (more.length > 0)
    return fail('The foundation is too large for one picture', '', 'Save the sheets as SVG files instead');
  return ok(cutOut(laid.value, sheet!, print));
}

/** A square sheet on which the largest of the foundations has room. */
function sheetFor({ arrangement, sizes }: FoundationJob): {
  readonly width: number;
  readonly height: number;
} {
  const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
  const longer = Math.max(maxX - minX, maxY - minY) * Math.max(...sizes.map(({ scale }) => scale));
  const side = Math.min(longer + BESIDE, PAPER_RANGE.most);
  return { width: side, height: side };
}

function cutOut({ title, sheets }: PagePlan, index: number, print: PagePlan['prints'][number]): PagePlan {
  const marks = sheets[index]!.marks.filter(({ section }) => section === print.key);
  const { minX, minY, maxX, maxY } = boundingBox(
    marks.flatMap((mark) => (mark.kind === 'path' ? mark.points : textCorners(mark))),
  );
  const [width, height] = [maxX - minX + 2 * EDGE, maxY - minY + 2 * EDGE];
  const [trueWidth, trueHeight] = [width, height].map((points) => `${points / POINTS_PER_INCH}in`);
  const by = { x: EDGE - minX, y: EDGE - minY };
  return {
    title: `${title}, foundation ${print.letters.join(', ')}`,
    paper: { label: 'Picture', width, height, trueWidth: trueWidth!, trueHeight: trueHeight! },
    sheets: [{ sections: [print.key], marks: marks.map((mark) => moved(mark, by)) }],
    outline: [],
    prints: [{ ...print, sheets: [0] }],
  };
}
