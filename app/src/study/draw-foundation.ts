import { fail, ok, POINTS_PER_INCH, type Result } from '@seamwright/geometry';
import {
  FONT_FAMILY,
  type FoundationJob,
  foundationPicture,
  type PageFonts,
  type PagePlan,
  printable,
  withResolution,
} from '@seamwright/pages';
import { drawMark } from './draw-mark.ts';

/** Pixels of a picture, and of one of its sides, that every usual browser can draw (common practice: 16,384 a side). */
const MOST_PIXELS = 150e6;
const LONGEST_SIDE = 16_384;

/**
 * A foundation as a PNG that says its resolution. Runs in a worker, which has no document: the fonts are set there from
 * their bytes.
 *
 * @param perInch pixels
 */
export async function drawFoundation(
  job: FoundationJob,
  key: string,
  perInch: number,
  fonts: PageFonts,
): Promise<Result<Uint8Array>> {
  const found = foundationPicture(job, key);
  if (!found.ok) return found;
  const { plan } = printable(found.value, fonts);
  const scale = perInch / POINTS_PER_INCH;
  const [width, height] = [Math.ceil(plan.paper.width * scale), Math.ceil(plan.paper.height * scale)];
  if (Math.max(width, height) > LONGEST_SIDE || width * height > MOST_PIXELS)
    return fail(
      `A picture of ${width} × ${height} pixels is more than a browser can draw`,
      '',
      'Choose fewer pixels to the inch, or a smaller finished size',
    );
  await setFonts(fonts);
  const png = await drawn(plan, scale, width, height);
  return ok(withResolution(new Uint8Array(png), perInch));
}

async function drawn(
  { sheets }: PagePlan,
  scale: number,
  width: number,
  height: number,
): Promise<ArrayBuffer> {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { alpha: false });
  if (context === null) throw new Error('The browser gives no canvas to draw a picture on');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, width, height);
  context.scale(scale, scale);
  context.lineJoin = 'round';
  for (const mark of sheets[0]!.marks) drawMark(context, mark);
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  return blob.arrayBuffer();
}

/** A worker's own fonts, which the library of DOM types knows of documents only. */
const own = globalThis as unknown as { readonly fonts: FontFaceSet };

async function setFonts({ regular, semibold }: PageFonts): Promise<void> {
  for (const [weight, bytes] of [
    ['400', regular],
    ['600', semibold],
  ] as const) {
    const face = new FontFace(FONT_FAMILY, new Uint8Array(bytes), { weight });
    own.fonts.add(await face.load());
  }
}
