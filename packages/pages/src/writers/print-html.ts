import { POINTS_PER_INCH } from '@seamwright/geometry';
import type { PagePlan } from '../marks/model.ts';
import { binaryString } from './bytes.ts';
import { FONT_FAMILY, type PageFonts } from './fonts.ts';
import { printable } from './printable.ts';
import { escaped, SHEET_LOOK, sheetContent, sheetTitle } from './svg.ts';

/** W3C, CSS Values and Units: 96 px are one inch. */
const PX_PER_INCH = 96;
const PX_PER_POINT = PX_PER_INCH / POINTS_PER_INCH;

/**
 * The plan as one HTML document that a browser prints true: each sheet an inline SVG at true size on a page of the paper's own
 * size without margins, the fonts embedded. Ids are as in the SVG files with `sheet-1-`, `sheet-2-` … before them. Characters that the
 * fonts lack are replaced as {@link printable} says.
 *
 * Print it only when `document.fonts.ready` is settled; before, texts are set in another font. In the dialog of the browser the scale
 * has to be 100 %, and the margins what they are by default or none: `@page` says so, but a dialog remembers.
 *
 * A sheet that is wanted several times is drawn once and shown again on further pages, right behind it.
 *
 * A sheet's picture is as many whole CSS pixels wide and high as the paper has: browsers place in parts of a pixel only roughly, and
 * one that reached beyond the page would make another. What is lost at the right and lower edge is under 0.27 mm, where no printer
 * prints.
 *
 * @param times how often each sheet is printed; once when left out
 * @see CSS Paged Media Module Level 3, W3C, sections 3 and 7 (`@page`, `size`)
 */
export function writePrintHtml(plan: PagePlan, fonts: PageFonts, times: readonly number[] = []): string {
  const { plan: setPlan } = printable(plan, fonts);
  const { paper, sheets, title } = setPlan;
  const [width, height] = [paper.width, paper.height].map((points) => Math.floor(points * PX_PER_POINT));
  const box = `width="${width}" height="${height}" viewBox="0 0 ${width! / PX_PER_POINT} ${height! / PX_PER_POINT}"`;
  const pictures = sheets.map((sheet, i) => {
    const page = (content: string) => `<svg ${box} ${SHEET_LOOK} role="img">
<title>${escaped(sheetTitle(setPlan, i))}</title>
${content}</svg>
`;
    const drawn = `<g id="sheet-${i + 1}">\n${sheetContent(sheet, `sheet-${i + 1}-`)}</g>\n`;
    const again = `<use href="#sheet-${i + 1}"/>\n`;
    return page(drawn) + page(again).repeat((times[i] ?? 1) - 1);
  });
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
@page { size: ${paper.trueWidth} ${paper.trueHeight}; margin: 0 }
html, body { margin: 0; padding: 0; background: #fff }
svg { display: block; break-inside: avoid }
svg + svg { break-before: page }
${fontFace(400, fonts.regular)}
${fontFace(600, fonts.semibold)}
</style>
</head>
<body>
${pictures.join('')}</body>
</html>
`;
}

const fontFace = (weight: number, bytes: Uint8Array): string =>
  `@font-face { font-family: "${FONT_FAMILY}"; font-weight: ${weight}; src: url("data:font/ttf;base64,${btoa(binaryString(bytes))}") format("truetype") }`;
