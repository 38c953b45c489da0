import type { Arrangement } from '@seamwright/arrangement';
import { ALLOWANCE_RANGE, checkLength, fail, type LengthUnit, ok, type Result } from '@seamwright/geometry';
import type { SewingPlan } from '@seamwright/sewing';
import { checkSheet, cleanName } from '../job.ts';
import type { Printer } from '../sheet/correction.ts';
import type { Margins, Paper, PaperChoice } from '../sheet/paper.ts';
import { USUAL_ALLOWANCE } from '../sheet/usual.ts';

/** A template is laid on the fabric and cut round; through a window the finished patch is seen on the print. */
export type TemplateKind = 'template' | 'window';

/** Templates that are to be printed, for fussy cutting and for other methods than foundations. */
export interface TemplateJob {
  /** The block's name; may be empty, may be in any script. */
  readonly title: string;
  /** The name of the pattern that the block belongs to; left out or empty when it belongs to none. */
  readonly pattern?: string;
  readonly arrangement: Arrangement;
  /** How it is sewn: patches go by their names in it. */
  readonly plan: Pick<SewingPlan, 'sections'>;
  /** Indices of the patches that have one each; of a whole section, its order. */
  readonly patches: readonly number[];
  readonly kind: TemplateKind;
  /** By patch index, the name of the fabric that it is cut from; null, or left out, where none is chosen. */
  readonly fabrics?: readonly (string | null)[];
  /** How many blocks are sewn as drawn; left out, templates do not say how many are cut by them. */
  readonly copies?: number;
  /** How many are sewn as its mirror image beside them; none when left out. */
  readonly mirrored?: number;
  /** Size that is sewn ÷ size that is drawn; 1 when left out. */
  readonly scale?: number;
  /** Seam allowance, inches; 1/4 in when left out. */
  readonly allowance?: number;
  readonly paper: PaperChoice;
  /** What is left blank at the sheet's edges; 1/4 in at each when left out. */
  readonly margins?: Margins;
  /** The printer that the pages are corrected for; left out, they are true in the file. */
  readonly printer?: Printer;
  /** The unit in which lengths are written; inches when left out. */
  readonly unit?: LengthUnit;
}

/** Templates that can be laid out: checked, defaults filled in, names cleaned. */
export interface CheckedTemplates extends TemplateJob {
  readonly pattern: string;
  readonly fabrics: readonly (string | null)[];
  readonly scale: number;
  readonly allowance: number;
  readonly unit: LengthUnit;
  readonly page: Paper;
  /** What comes out of the printer; the page itself where nothing is corrected. Points. */
  readonly sheet: { readonly width: number; readonly height: number };
  readonly margins: Margins;
}

/** Inches: a narrower frame of paper tears. Common practice. */
const NARROWEST_FRAME = 1 / 8;

export function checkTemplates(job: TemplateJob): Result<CheckedTemplates> {
  const { unit = 'in', scale = 1, allowance = USUAL_ALLOWANCE, kind, patches, arrangement } = job;
  const room = checkSheet(job, unit);
  if (!room.ok) return room;
  const fits = checkLength(allowance, unit, ALLOWANCE_RANGE);
  if (!fits.ok) return { ok: false, problem: { ...fits.problem, where: 'seam allowance' } };
  if (kind === 'window' && allowance < NARROWEST_FRAME)
    return fail(
      'The frame of a window is as wide as the seam allowance, and this one would tear',
      'seam allowance',
      'Give at least 1/8 in',
    );
  if (!(scale > 0 && Number.isFinite(scale)))
    return fail(`The block cannot be made ${scale} times as large`, 'scale', 'Give a number above 0');
  if (patches.length === 0) return fail('No patch is asked for', 'patches', 'Choose at least one');
  if (patches.some((index) => arrangement.patches[index] === undefined))
    return fail('The block has no such patch', 'patches', 'Choose among its patches');
  const title = cleanName(job.title) || 'Untitled block';
  const fabrics = (job.fabrics ?? []).map((name) => (name === null ? null : cleanName(name)));
  return ok({
    ...job,
    title,
    fabrics,
    pattern: cleanName(job.pattern ?? ''),
    unit,
    scale,
    allowance,
    ...room.value,
  });
}
