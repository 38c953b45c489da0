import { openFile, openFiles, openPicture } from './files.ts';

const PICTURES = 'image/png,image/jpeg,image/webp,image/svg+xml';

/** What the file chooser offers; other files can be dropped and are looked at all the same. */
const ACCEPT = `.json,.svg,application/json,${PICTURES}`;

/** Lets the maker choose a pattern file, an SVG drawing or a picture, and opens it. */
export const chooseFile = (): void => choose(ACCEPT, openFile);

/** Lets the maker choose a picture, and lays it under the drawing. */
export const choosePicture = (): void => choose(PICTURES, openPicture);

/** Lets the maker choose a picture for something else. */
export const chooseAnyPicture = (use: (file: File) => Promise<void>): void => choose(PICTURES, use);

function choose(accept: string, open: (file: File) => Promise<void>): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = accept;
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file !== undefined) void open(file);
  });
  input.click();
}

/** Opens files that are dropped anywhere on the page. Returns what stops it. */
export function acceptDrops(): () => void {
  const over = (event: DragEvent) => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    // Without this the browser would leave the page and show the file.
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
  };
  const drop = (event: DragEvent) => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    void openFiles([...event.dataTransfer.files]);
  };
  window.addEventListener('dragover', over);
  window.addEventListener('drop', drop);
  return () => {
    window.removeEventListener('dragover', over);
    window.removeEventListener('drop', drop);
  };
}
