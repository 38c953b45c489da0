import { execFileSync } from 'node:child_process';
import { type DrawnPage, readPdf } from './pdf.ts';

/**
 * Reads an SVG document with librsvg and gives back what it draws, by way of a PDF that Poppler measures: two
 * programs that share no code with what wrote the document. librsvg takes the size of the page from `width` and
 * `height`; it keeps places to 1/256 point, 0.0014 mm.
 */

/** Whether librsvg's tool is on this machine. */
export const hasLibrsvg: boolean = (() => {
  try {
    execFileSync('rsvg-convert', ['--version'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

/** The document as librsvg draws it. Needs Poppler, too; throws when one of them cannot read it. */
export function readSvg(svg: string): DrawnPage {
  const pdf = execFileSync('rsvg-convert', ['--format=pdf'], { input: svg, maxBuffer: 2 ** 28 });
  return readPdf(pdf)[0]!;
}
