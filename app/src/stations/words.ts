import { printsOf } from '@seamwright/pages';
import { fabricIn } from '@seamwright/pattern';
import { currentBlock, currentColourway, type Work } from '../store/work.ts';
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

/** From how many fabrics the block's patches are cut: `5 fabrics`; and how many patches wait for one. */
export function clothWord(work: Work): string {
  const colourway = currentColourway(work);
  const worn = currentBlock(work).patches.map((record) => fabricIn(record, colourway));
  const fabrics = new Set(worn.filter((id) => id !== undefined));
  return fabrics.size === 0 ? 'no fabrics yet' : counted(fabrics.size, 'fabric');
}

/** How much paper it takes: `3 sheets` */
export function paperWord({ study, sheets }: Work): string {
  if (study === null) return '…';
  if (study.plan === null || study.plan.verdict === 'not sewable') return 'no sheets yet';
  if (sheets === null) return '…';
  return sheets.plan === null ? 'no sheets yet' : counted(printsOf(sheets.plan).sheets, 'sheet');
}
