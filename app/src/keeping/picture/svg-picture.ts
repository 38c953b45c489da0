import { fail, ok, type Result } from '@seamwright/geometry';
import { LONGEST_SIDE } from '@seamwright/pattern';

const NAMESPACE = 'http://www.w3.org/2000/svg';

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * Draws an SVG drawing as a picture. As a picture it is shown by the browser without running scripts and without fetching
 * anything ("secure static mode", SVG 2, 2.2.5); what is kept afterwards are pixels. Entities are refused, not expanded.
 */
export async function drawSvg(
  text: string,
  canvasFor: (size: Size) => HTMLCanvasElement,
): Promise<Result<HTMLCanvasElement>> {
  const root = /<!ENTITY/i.test(text) ? null : rootOf(text);
  if (root === null) {
    return fail(
      'This is neither a picture nor an SVG drawing that can be shown as one',
      '',
      'Choose a PNG, JPEG, WebP or SVG file',
    );
  }
  const own = sizeOf(root);
  // As large as pictures are kept, whatever size it says: lines stay sharp at any.
  const share = LONGEST_SIDE / Math.max(own.width, own.height);
  const canvas = canvasFor({ width: own.width * share, height: own.height * share });
  if (!root.hasAttribute('viewBox')) root.setAttribute('viewBox', `0 0 ${own.width} ${own.height}`);
  root.setAttribute('width', `${canvas.width}`);
  root.setAttribute('height', `${canvas.height}`);

  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(root))}`;
  try {
    await image.decode();
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    // A browser that lets no pixels of it out says so now.
    canvas.getContext('2d')!.getImageData(0, 0, 1, 1);
  } catch {
    return fail(
      'This browser cannot show the SVG drawing as a picture',
      '',
      'Save it as PNG in the program that drew it, and bring that in',
    );
  }
  return ok(canvas);
}

/** The outermost `svg` of a text; files without a namespace are let pass. */
function rootOf(text: string): Element | null {
  const parse = (svg: string) => new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  const root = parse(text);
  const whole = root.namespaceURI === null ? parse(text.replace('<svg', `<svg xmlns="${NAMESPACE}"`)) : root;
  const sound = whole.localName === 'svg' && whole.namespaceURI === NAMESPACE;
  return sound && whole.querySelector('parsererror') === null ? whole : null;
}

/** 96 px = 1 in = 2.54 cm = 72 pt: W3C CSS Values. */
const PIXELS: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  pt: 96 / 72,
  pc: 16,
};

/** What a browser gives a drawing that says nothing of its size: CSS 2.2, 10.3.2. */
const USUAL: Size = { width: 300, height: 150 };

/** The size that the drawing gives itself, or that follows from its viewBox, in CSS pixels. */
function sizeOf(root: Element): Size {
  const width = lengthOf(root.getAttribute('width'));
  const height = lengthOf(root.getAttribute('height'));
  if (width !== null && height !== null) return { width, height };
  const box =
    root
      .getAttribute('viewBox')
      ?.trim()
      .split(/[\s,]+/)
      .map(Number) ?? [];
  const [, , wide = Number.NaN, high = Number.NaN] = box;
  if (!(wide > 0 && high > 0)) return { width: width ?? USUAL.width, height: height ?? USUAL.height };
  if (width !== null) return { width, height: (width * high) / wide };
  return height === null ? { width: wide, height: high } : { width: (height * wide) / high, height };
}

function lengthOf(text: string | null): number | null {
  const [, number, unit = ''] =
    /^\s*([\d.]+(?:e[+-]?\d+)?)\s*(px|in|cm|mm|pt|pc)?\s*$/i.exec(text ?? '') ?? [];
  const pixels = Number(number) * (PIXELS[unit.toLowerCase()] ?? Number.NaN);
  return pixels > 0 && Number.isFinite(pixels) ? pixels : null;
}
