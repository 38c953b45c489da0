import {
  compose,
  fail,
  ok,
  PX_PER_INCH,
  type Result,
  scaling,
  type Transform,
  translation,
} from '@seamwright/geometry';
import { parseNumbers, parsePx } from './numbers.ts';

/** The attributes of the outermost `svg` that say how large the drawing is; null where one is not there. */
export interface ViewportAttributes {
  readonly width: string | null;
  readonly height: string | null;
  readonly viewBox: string | null;
  readonly preserveAspectRatio: string | null;
}

/** The user units of the whole sheet: what lengths in per cent are parts of. Null when the drawing does not say. */
export interface Sheet {
  readonly width: number | null;
  readonly height: number | null;
}

export interface Viewport {
  readonly sheet: Sheet;
  /** From user units to inches. */
  readonly toInches: Transform<'screen', 'block'>;
  /** False when the drawing does not say how large it is, and its units were taken for CSS pixels. */
  readonly sized: boolean;
}

const PX_TO_INCHES = scaling<'screen', 'block'>(1 / PX_PER_INCH);

/**
 * How large the drawing is meant to be. Source: SVG 2, section 8 (`viewBox`, `preserveAspectRatio`, "the initial
 * viewport"; a length that is not given, or given in per cent, follows from the other one and the viewBox).
 */
export function readViewport(attributes: ViewportAttributes): Result<Viewport> {
  const width = readSize('width', attributes.width);
  if (!width.ok) return width;
  const height = readSize('height', attributes.height);
  if (!height.ok) return height;
  const sized = width.value !== null || height.value !== null;

  if (attributes.viewBox === null) {
    // Without a viewBox one user unit is one pixel, whatever the size of the sheet.
    return ok({ sheet: { width: width.value, height: height.value }, toInches: PX_TO_INCHES, sized });
  }
  const box = parseNumbers(attributes.viewBox);
  const [minX, minY, boxWidth, boxHeight] = box ?? [];
  if (
    minX === undefined ||
    minY === undefined ||
    boxWidth === undefined ||
    boxHeight === undefined ||
    box?.length !== 4
  ) {
    return fail(
      `The viewBox "${shortened(attributes.viewBox)}" is not four numbers`,
      'svg element',
      'Write left, top, width and height, such as viewBox="0 0 12 12"',
    );
  }
  if (!(boxWidth > 0 && boxHeight > 0)) {
    return fail(
      'The viewBox has a width or height of 0 or less',
      'svg element',
      'Give it the width and height of the drawing',
    );
  }

  const sheetWidth =
    width.value ?? (height.value === null ? boxWidth : (height.value * boxWidth) / boxHeight);
  const sheetHeight = height.value ?? (sheetWidth * boxHeight) / boxWidth;
  const fit = readFit(attributes.preserveAspectRatio ?? '');
  if (fit === null) {
    return fail(
      `The preserveAspectRatio "${shortened(attributes.preserveAspectRatio ?? '')}" is not one that SVG knows`,
      'svg element',
      'Remove it, or write preserveAspectRatio="xMidYMid meet"',
    );
  }
  const scaleX = sheetWidth / boxWidth;
  const scaleY = sheetHeight / boxHeight;
  const even = fit === 'slice' ? Math.max(scaleX, scaleY) : Math.min(scaleX, scaleY);
  const stretch = fit === 'none' ? scaling<'screen'>(scaleX, scaleY) : scaling<'screen'>(even);
  // Where the box is placed on the sheet only moves the whole drawing, and it is moved to its own corner later.
  const toSheet = compose(translation<'screen'>(-minX, -minY), stretch);
  return ok({
    sheet: { width: boxWidth, height: boxHeight },
    toInches: compose(toSheet, PX_TO_INCHES),
    sized,
  });
}

/** In CSS pixels; null when the size is left open (absent, `auto` or in per cent). */
function readSize(name: 'width' | 'height', text: string | null): Result<number | null> {
  if (text === null || /^\s*(auto|[+-]?[\d.]+\s*%)\s*$/.test(text)) return ok(null);
  const px = parsePx(text, null);
  if (px === null) {
    return fail(
      `The ${name} "${shortened(text)}" is not a length`,
      'svg element',
      'Write a number with in, mm, cm, pt, pc or px, such as 12in',
    );
  }
  if (px <= 0) {
    return fail(
      `The ${name} "${shortened(text)}" is not above 0`,
      'svg element',
      'Give the finished size of the drawing, such as 12in',
    );
  }
  return ok(px);
}

/** Null when it is not of SVG's form. The alignment does not matter here, so only its form is looked at. */
function readFit(text: string): 'none' | 'meet' | 'slice' | null {
  const words = text.split(/\s+/).filter((word) => word !== '' && word !== 'defer');
  const [align = 'xMidYMid', how = 'meet', ...more] = words;
  if (more.length > 0 || (how !== 'meet' && how !== 'slice')) return null;
  if (align === 'none') return 'none';
  return /^x(Min|Mid|Max)Y(Min|Mid|Max)$/.test(align) ? how : null;
}

/** The start of a text of the file, for a message. */
export const shortened = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
