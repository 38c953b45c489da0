import { sentence } from '@seamwright/geometry';
import { LARGEST_FILE, parsePattern, writePattern } from '@seamwright/pattern';
import { announce, tell, warn } from '../store/notices.ts';
import { pattern, useWork } from '../store/work.ts';
import { download, fileName } from './download.ts';
import { openPattern } from './open.ts';

/**
 * Opens what the maker chose or dropped: a pattern file takes the place of the open pattern (which stays on the
 * shelf), an SVG drawing becomes a block of it. Anything else gives one sentence and changes nothing.
 */
export async function openFile(file: File): Promise<void> {
  if (file.size > LARGEST_FILE) {
    const mb = Math.round(file.size / 1e6);
    warn(
      `“${file.name}” has ${mb} MB, and no more than ${LARGEST_FILE / 1e6} MB are opened. Choose a pattern file or an SVG drawing.`,
    );
    return;
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    warn(`“${file.name}” could not be read. It may have been moved or changed: choose it again.`);
    return;
  }
  // The reader of SVG is loaded with the first file, not with the page.
  const { bringIn, looksLikeSvg } = await import('./bring-in.ts');
  const drawing = file.type === 'image/svg+xml' || /\.svg$/i.test(file.name) || looksLikeSvg(text);
  if (drawing) bringIn(file.name, text);
  else await openPatternText(file.name, text);
}

async function openPatternText(name: string, text: string): Promise<void> {
  const parsed = parsePattern(text);
  if (!parsed.ok) {
    warn(`“${name}”: ${sentence(parsed.problem)}`);
    return;
  }
  await openPattern(parsed.value.pattern, 'work');
  if (parsed.value.notes.length > 0) tell(parsed.value.notes.join(' '));
  else announce(`Opened ${name}`);
}

/** Gives the maker the open pattern as a file that opens again here, or anywhere else Seamwright runs. */
export function savePattern(): void {
  const open = pattern(useWork.getState());
  const name = fileName(open.title, '.seamwright.json');
  download(name, writePattern(open), 'application/json');
  announce(`Saved ${name}`);
}
