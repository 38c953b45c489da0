import type { Work } from '../store/work.ts';
import { counted } from '../ui/plural.ts';

/** `12 patches`; what stands in the way when the drawing cannot be taken apart. */
export function draftWord({ study }: Work): string {
  if (study === null) return '…';
  if (study.arrangement === null) return 'outline to mend';
  return counted(study.arrangement.patches.length, 'patch', 'patches');
}

export function orderWord({ study }: Work): string {
  if (study === null) return '…';
  if (study.plan === null) return 'nothing to sew yet';
  if (study.plan.verdict === 'not sewable') return 'not sewable';
  return `sews on ${counted(study.plan.sections.length, 'foundation')}`;
}

/** `3 sheets` */
export function paperWord({ study, sheets }: Work): string {
  if (study === null) return '…';
  if (study.plan === null || study.plan.verdict === 'not sewable') return 'no sheets yet';
  if (sheets === null) return '…';
  return sheets.plan === null ? 'no sheets yet' : counted(sheets.plan.sheets.length, 'sheet');
}
