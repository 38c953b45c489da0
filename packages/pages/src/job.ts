import type { Arrangement } from '@seamwright/arrangement';
import { checkCutRules } from '@seamwright/cloth';
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
import { matchNumbers } from './foundation/match-numbers.ts';
import type { PatchWords } from './foundation/patch-facts.ts';
import { checkPrinter, type Printer, printedSheet } from './sheet/correction.ts';
import {
  checkMargins,
  checkRoom,
  type Margins,
  type Paper,
  type PaperChoice,
  paperOf,
  USUAL_MARGINS,
} from './sheet/paper.ts';
import { GAP_RANGE, OVERLAP_RANGE, USUAL_ALLOWANCE, USUAL_GAP, USUAL_OVERLAP } from './sheet/usual.ts';

/** One size in which the block is wanted, and how often. */
export interface FinishedSize {
  /** 1 prints the block as drawn, 2 twice as wide and as high. */
  readonly scale: number;
  /** How many blocks are to be sewn as drawn: each foundation says how many to print. */
  readonly copies: number;
  /** How many are to be sewn as the mirror image of the drawing; none when left out. */
  readonly mirrored?: number;
}

/** How long places on fewer sheets are looked for: no longer than one waits gladly, or as long as it may be worth. */
export type PackingEffort = 'quick' | 'thorough';

/** What the maker asks for. */
export interface FoundationJob extends PatchWords {
  /** The block's name; may be empty, may be in any script. */
  readonly title: string;
  /** The name of the pattern that the block belongs to; left out or empty when it belongs to none. */
  readonly pattern?: string;
  readonly arrangement: Arrangement;
  /** How that arrangement is sewn. */
  readonly plan: SewingPlan;
  readonly paper: PaperChoice;
  /** What is left blank at the sheet's edges; 1/4 in at each when left out. */
  readonly margins?: Margins;
  /** Inches by which parts of a foundation that is larger than a sheet show the same; 1/2 in when left out. */
  readonly overlap?: number;
  /** The printer that the pages are corrected for; left out, they are true in the file. */
  readonly printer?: Printer;
  /** The sizes that are wanted in one go, one or more. */
  readonly sizes: readonly FinishedSize[];
  /** Seam allowance, inches; the same at every size. 1/4 in when left out. */
  readonly allowance?: number;
  /** The unit in which sizes are written on the pages; inches when left out. */
  readonly unit?: LengthUnit;
  /**
   * Sections that are turned copies of one another share one foundation, which says for which it is and how many to
   * print; their mirrored copies share another. Left out or false: each section has a foundation of its own.
   */
  readonly shareTemplates?: boolean;
  /** Whether seam lines have their lengths beside them, where there is room; not when left out. */
  readonly seamLengths?: boolean;
  /**
   * Whether foundations of several sections carry a small picture of how they are joined; when left out they do, but in jobs of
   * many foundations, where it would cost sheets.
   */
  readonly joinsDiagram?: boolean;
  /** `light` for sheets that are sewn in or washed away, and for translucent ones; `dark` when left out. */
  readonly ink?: 'dark' | 'light';
  /** Between foundations on a sheet, room for scissors, inches; 1/4 in when left out. */
  readonly gap?: number;
  /** No foundation is turned, so that the grain of the paper, or of what it is printed on, runs as the block stands. */
  readonly keepUpright?: boolean;
  /** How long places on fewer sheets are looked for; `quick` when left out. */
  readonly effort?: PackingEffort;
  /**
   * Where several are to be printed of a foundation, several stand on a sheet, so that less paper is printed. Left out or false:
   * each stands in the file once, and its sheet is printed as often as it is wanted.
   */
  readonly fillSheets?: boolean;
}

/** A size that is within bounds, and what it makes of the block. */
export interface CheckedSize extends FinishedSize {
  readonly mirrored: number;
  /** Finished size of the whole block, inches. */
  readonly width: number;
  readonly height: number;
}

/** A job that can be laid out: checked, defaults filled in, names cleaned. */
export interface CheckedJob extends FoundationJob {
  readonly pattern: string;
  readonly allowance: number;
  readonly unit: LengthUnit;
  readonly shareTemplates: boolean;
  readonly gap: number;
  readonly keepUpright: boolean;
  readonly effort: PackingEffort;
  readonly fillSheets: boolean;
  readonly overlap: number;
  readonly sizes: readonly CheckedSize[];
  /** Numbers of the block's match points, by vertex. */
  readonly matchNumbers: ReadonlyMap<number, number>;
  /** The sheet as it is in the file. */
  readonly page: Paper;
  /** Width and height, points, that the sheet has where its marks are laid out in true size. */
  readonly sheet: { readonly width: number; readonly height: number };
  /** Of that sheet. */
  readonly margins: Margins;
}

const UNTITLED = 'Untitled block';

/** Names are printed on one line: longer ones are cut, so that no file can make the layout slow. */
const LONGEST_NAME = 200;

/** More was almost surely a slip; that many sheets are to be asked about all the same (`printsOf`). */
const MOST_COPIES = 99_999;

/** The job, or the first thing about it that makes it unusable. */
export function checkJob(job: FoundationJob): Result<CheckedJob> {
  const unit = job.unit ?? 'in';
  const room = checkSheet(job, unit);
  if (!room.ok) return room;
  const allowance = job.allowance ?? USUAL_ALLOWANCE;
  const checked = checkNamed(allowance, unit, ALLOWANCE_RANGE, 'seam allowance');
  if (!checked.ok) return checked;
  const overlap = job.overlap ?? USUAL_OVERLAP;
  const overlaps = checkNamed(overlap, unit, OVERLAP_RANGE, 'overlap');
  if (!overlaps.ok) return overlaps;
  const gap = job.gap ?? USUAL_GAP;
  const parted = checkNamed(gap, unit, GAP_RANGE, 'gap between foundations');
  if (!parted.ok) return parted;
  const cut = job.cutting === undefined ? ok(null) : checkCutRules({ ...job.cutting.rules, allowance });
  if (!cut.ok) return cut;
  const sizes: CheckedSize[] = [];
  for (const size of joined(job.sizes)) {
    const fits = checkSize(job, size, unit);
    if (!fits.ok) return fits;
    sizes.push(fits.value);
  }
  if (sizes.length === 0) return fail('No finished size is asked for', 'sizes', 'Give at least one');
  if (job.plan.verdict === 'not sewable' || job.plan.unheld.length > 0 || job.plan.sections.length === 0)
    return fail(
      'This block cannot be sewn yet, so it has no foundations',
      '',
      'Change the drawing as the findings say',
    );
  const title = cleanName(job.title) || UNTITLED;
  const pattern = cleanName(job.pattern ?? '');
  return ok({
    ...job,
    title,
    pattern,
    allowance,
    unit,
    sizes,
    ...room.value,
    matchNumbers: matchNumbers(job.arrangement, job.plan),
    overlap,
    shareTemplates: job.shareTemplates ?? false,
    gap,
    keepUpright: job.keepUpright ?? false,
    effort: job.effort ?? 'quick',
    fillSheets: job.fillSheets ?? false,
  });
}

/** Each size once, with all blocks that are wanted of it. */
function joined(sizes: readonly FinishedSize[]): readonly FinishedSize[] {
  const byScale = new Map<number, FinishedSize>();
  for (const size of sizes) {
    const same = byScale.get(size.scale);
    const more = {
      copies: size.copies + (same?.copies ?? 0),
      mirrored: (size.mirrored ?? 0) + (same?.mirrored ?? 0),
    };
    byScale.set(size.scale, same === undefined ? size : { ...size, ...more });
  }
  return [...byScale.values()];
}

/** What of a job says on what it is printed, and how. */
export type SheetJob = Pick<FoundationJob, 'paper' | 'margins' | 'printer'>;

/** The sheet and the room on it; a Problem when it has none. */
export function checkSheet(
  job: SheetJob,
  unit: LengthUnit,
): Result<Pick<CheckedJob, 'page' | 'sheet' | 'margins' | 'printer'>> {
  const page = paperOf(job.paper, unit);
  if (!page.ok) return page;
  const margins = checkMargins(job.margins ?? USUAL_MARGINS, unit);
  if (!margins.ok) return margins;
  if (job.printer !== undefined) {
    const checked = checkPrinter(job.printer);
    if (!checked.ok) return checked;
  }
  const printer = job.printer && { ...job.printer, name: cleanName(job.printer.name) };
  const printed = printedSheet(page.value, margins.value, printer);
  const room = checkRoom(printed.sheet, printed.margins, unit);
  return room.ok ? ok({ page: page.value, ...printed, ...(printer && { printer }) }) : room;
}

function checkSize(
  { arrangement }: FoundationJob,
  size: FinishedSize,
  unit: LengthUnit,
): Result<CheckedSize> {
  const { copies, scale, mirrored = 0 } = size;
  const least = mirrored === 0 ? 1 : 0;
  if (!Number.isInteger(copies) || copies < least || copies > MOST_COPIES)
    return fail(
      `${copies} is no number of blocks`,
      'copies',
      `Give a whole number from ${least} to ${MOST_COPIES}`,
    );
  if (!Number.isInteger(mirrored) || mirrored < 0 || mirrored > MOST_COPIES)
    return fail(
      `${mirrored} is no number of blocks`,
      'mirrored blocks',
      `Give a whole number from 0 to ${MOST_COPIES}`,
    );
  if (!(scale > 0 && Number.isFinite(scale)))
    return fail(`The block cannot be made ${scale} times as large`, 'scale', 'Give a number above 0');
  const { minX, minY, maxX, maxY } = boundingBox(arrangement.outline);
  const [width, height] = [(maxX - minX) * scale, (maxY - minY) * scale];
  for (const [name, side] of [
    ['finished width', width],
    ['finished height', height],
  ] as const) {
    const fits = checkNamed(side, unit, SIZE_RANGE, name);
    if (!fits.ok) return fits;
  }
  return ok({ scale, copies, mirrored, width, height });
}

function checkNamed(inches: number, unit: LengthUnit, range: LengthRange, name: string): Result<number> {
  const result = checkLength(inches, unit, range);
  return result.ok ? result : { ok: false, problem: { ...result.problem, where: name } };
}

/** One line, single spaces, composed letters (the fonts have no way to set a mark over a letter). */
export function cleanName(name: string): string {
  const oneLine = name.normalize('NFC').replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\s]+/gu, ' ');
  return [...oneLine].slice(0, LONGEST_NAME).join('').trim();
}
