import type { Arrangement } from '@seamwright/arrangement';
import {
  ALLOWANCE_RANGE,
  boundingBox,
  checkLength,
  fail,
  type LengthRange,
  type LengthUnit,
  ok,
  type Result,
  SIZE_RANGE,
} from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import type { PaperName } from './model.ts';
import { PAPERS } from './paper.ts';

/** What the maker asks for. */
export interface FoundationJob {
  /** The block's name; may be empty, may be in any script. */
  readonly title: string;
  /** The name of the pattern that the block belongs to; left out or empty when it belongs to none. */
  readonly pattern?: string;
  readonly arrangement: Arrangement;
  /** How that arrangement is sewn. */
  readonly plan: SewingPlan;
  readonly paper: PaperName;
  /** Seam allowance, inches; the same at every scale. 1/4 in when left out. */
  readonly allowance?: number;
  /** How many blocks are to be sewn: each foundation says to print as many. */
  readonly copies: number;
  /** 1 prints the block as drawn, 2 twice as wide and as high. */
  readonly scale: number;
  /** The unit in which sizes are written on the pages; inches when left out. */
  readonly unit?: LengthUnit;
  /**
   * Sections that are turned copies of one another share one foundation, which says for which it is and how many to
   * print; their mirrored copies share another. Left out or false: each section has a foundation of its own.
   */
  readonly shareTemplates?: boolean;
}

/** A job that can be laid out: checked, defaults filled in, names cleaned. */
export interface CheckedJob extends FoundationJob {
  readonly pattern: string;
  readonly allowance: number;
  readonly unit: LengthUnit;
  readonly shareTemplates: boolean;
  /** Finished size of the whole block at the job's scale, inches. */
  readonly size: { readonly width: number; readonly height: number };
}

/** Inches, a quarter: unless the maker says otherwise. */
export const USUAL_ALLOWANCE = 0.25;

const UNTITLED = 'Untitled block';

/** Names are printed on one line: longer ones are cut, so that no file can make the layout slow. */
const LONGEST_NAME = 200;

/** More would not go through a printer's own counter either; the number was almost surely a slip. */
const MOST_COPIES = 9999;

/** The job, or the first thing about it that makes it unusable. */
export function checkJob(job: FoundationJob): Result<CheckedJob> {
  const unit = job.unit ?? 'in';
  if (!Object.hasOwn(PAPERS, job.paper))
    return fail(`There is no paper “${job.paper}”`, '', 'Choose letter or a4');
  if (!Number.isInteger(job.copies) || job.copies < 1 || job.copies > MOST_COPIES)
    return fail(
      `${job.copies} is no number of blocks`,
      'copies',
      `Give a whole number from 1 to ${MOST_COPIES}`,
    );
  if (!(job.scale > 0 && Number.isFinite(job.scale)))
    return fail(`The block cannot be made ${job.scale} times as large`, 'scale', 'Give a number above 0');
  const allowance = job.allowance ?? USUAL_ALLOWANCE;
  const checked = checkNamed(allowance, unit, ALLOWANCE_RANGE, 'seam allowance');
  if (!checked.ok) return checked;
  const { minX, minY, maxX, maxY } = boundingBox(job.arrangement.outline);
  const size = { width: (maxX - minX) * job.scale, height: (maxY - minY) * job.scale };
  for (const [name, side] of [
    ['finished width', size.width],
    ['finished height', size.height],
  ] as const) {
    const fits = checkNamed(side, unit, SIZE_RANGE, name);
    if (!fits.ok) return fits;
  }
  if (job.plan.verdict === 'not sewable' || job.plan.unheld.length > 0 || job.plan.sections.length === 0)
    return fail(
      'This block cannot be sewn yet, so it has no foundations',
      '',
      'Change the drawing as the findings say',
    );
  const title = cleanName(job.title) || UNTITLED;
  const pattern = cleanName(job.pattern ?? '');
  return ok({ ...job, title, pattern, allowance, unit, shareTemplates: job.shareTemplates ?? false, size });
}

function checkNamed(inches: number, unit: LengthUnit, range: LengthRange, name: string): Result<number> {
  const result = checkLength(inches, unit, range);
  return result.ok ? result : { ok: false, problem: { ...result.problem, where: name } };
}

/** One line, single spaces, composed letters (the fonts have no way to set a mark over a letter). */
function cleanName(name: string): string {
  const oneLine = name.normalize('NFC').replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\s]+/gu, ' ');
  return [...oneLine].slice(0, LONGEST_NAME).join('').trim();
}
