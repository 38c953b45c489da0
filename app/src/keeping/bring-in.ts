import { sentence } from '@seamwright/geometry';
import { readSvgDrawing } from '@seamwright/pattern';
import { addDrawing } from '../store/blocks.ts';
import { announce, tell, warn } from '../store/notices.ts';

export { looksLikeSvg } from '@seamwright/pattern';

/** Reads an SVG drawing and makes it a block of the open pattern; a drawing that cannot be read changes nothing. */
export function bringIn(fileTitle: string, text: string): void {
  const read = readSvgDrawing(text);
  if (!read.ok) {
    warn(`“${fileTitle}”: ${sentence(read.problem)}`);
    return;
  }
  const { drawing, name, findings } = read.value;
  const title = name ?? fileTitle.replace(/\.svg$/i, '');
  addDrawing(`Bring in “${title}”`, title, drawing);
  const notes = findings.map((finding) => finding.message);
  if (notes.length > 0) tell(`Brought in “${fileTitle}”. ${notes.join(' ')}`);
  else announce(`Brought in ${fileTitle} as a new block`);
}
