import { sentence } from '@seamwright/geometry';
import { kindOfPicture, LARGEST_FILE, looksLikeSvg, parsePattern, writePattern } from '@seamwright/pattern';
import { announce, tell, warn } from '../store/notices.ts';
import { currentBlock, pattern, useWork } from '../store/work.ts';
import { download, fileName } from './download.ts';
import { openPattern } from './open.ts';

/** Bytes of the largest picture file that is opened. It is decoded by the browser and kept much smaller. */
const LARGEST_PICTURE_FILE = 80_000_000;

/** Opens files one after the other, as {@link openFile} does each. */
export async function openFiles(files: readonly File[]): Promise<void> {
  for (const file of files) await openFile(file);
}

/**
 * Opens what the maker chose or dropped: a pattern file takes the place of the open pattern (which stays on the
 * shelf), an SVG drawing becomes a block of it, a picture lies under the open block's drawing. Anything else gives one
 * sentence and changes nothing.
 */
export function openFile(file: File): Promise<void> {
  const blockId = openBlockId();
  return looking(file, async (isPicture) => {
    if (isPicture) await layUnder(file, blockId);
    else if (!tooLarge(file, LARGEST_FILE)) await openText(file.name, await file.text(), isNamedSvg(file));
  });
}

/** Lays a picture under the open block's drawing; an SVG drawing, too, as a picture and not as lines. */
export function openPicture(file: File): Promise<void> {
  const blockId = openBlockId();
  return looking(file, () => layUnder(file, blockId));
}

/** The block that a file is for. Another may be open by the time that it has been read. */
const openBlockId = (): string => currentBlock(useWork.getState()).id;

/** Looks what a file begins with: the content decides what it is, names lie. */
async function looking(file: File, open: (isPicture: boolean) => Promise<void>): Promise<void> {
  try {
    const kind = kindOfPicture(new Uint8Array(await file.slice(0, 32).arrayBuffer()));
    const isPicture = kind === 'png' || kind === 'jpeg' || kind === 'webp';
    if (isPicture || kind === null) await open(isPicture);
    else warn(`“${file.name}” is a ${kind} file. Save it as PNG, JPEG or WebP, and bring that in.`);
  } catch (error) {
    // What a file says that is gone, or that may not be read.
    if (!(error instanceof DOMException)) throw error;
    warn(`“${file.name}” could not be read. It may have been moved or changed: choose it again.`);
  }
}

async function layUnder(file: File, blockId: string): Promise<void> {
  if (tooLarge(file, isNamedSvg(file) ? LARGEST_FILE : LARGEST_PICTURE_FILE)) return;
  // Loaded with the first picture, not with the page.
  const { bringInPicture } = await import('./picture/bring-in-picture.ts');
  await bringInPicture(file, file.name, blockId);
}

const isNamedSvg = (file: File): boolean => file.type === 'image/svg+xml' || /\.svg$/i.test(file.name);

function tooLarge(file: File, most: number): boolean {
  if (file.size <= most) return false;
  const mb = Math.round(file.size / 1e6);
  warn(
    `“${file.name}” has ${mb} MB, and no more than ${most / 1e6} MB are opened. Choose a pattern file, an SVG drawing or a smaller picture.`,
  );
  return true;
}

/** Opens the text of an SVG drawing or of a pattern file. */
export async function openText(
  name: string,
  text: string,
  isSvg: boolean = looksLikeSvg(text),
): Promise<void> {
  if (!isSvg && !looksLikeSvg(text)) {
    await openPatternText(name, text);
    return;
  }
  // The reader of SVG is loaded with the first drawing, not with the page.
  const { bringIn } = await import('./bring-in.ts');
  bringIn(name, text);
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
