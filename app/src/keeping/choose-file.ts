import { openFile } from './files.ts';

/** What the file chooser offers; other files can be dropped and are looked at all the same. */
const ACCEPT = '.json,.svg,application/json,image/svg+xml';

/** Lets the maker choose a pattern file or an SVG drawing, and opens it. */
export function chooseFile(): void {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = ACCEPT;
  input.addEventListener('change', () => {
    const file = input.files?.[0];
    if (file !== undefined) void openFile(file);
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
    void openInTurn([...event.dataTransfer.files]);
  };
  window.addEventListener('dragover', over);
  window.addEventListener('drop', drop);
  return () => {
    window.removeEventListener('dragover', over);
    window.removeEventListener('drop', drop);
  };
}

async function openInTurn(files: readonly File[]): Promise<void> {
  for (const file of files) await openFile(file);
}
