import type { Drawing, DrawingPoint, PatchRecord } from '@seamwright/arrangement';
import type { Block, Fabric, Pattern } from './pattern.ts';
import { prettyJson } from './pretty-json.ts';
import { filePictures, fileTracing } from './tracing/file-pictures.ts';
import type { Picture } from './tracing/tracing.ts';
import type { PinRecord, SewingWishes } from './wishes.ts';

/**
 * The text of a pattern file. The same pattern gives the same bytes, whatever order its objects were built in: fields
 * come in the order of the schema, points in the order of their ids (p2 before p10). Ends with a line break.
 */
export function writePattern(pattern: Pattern): string {
  const { format, title, unit, fabrics, colourways, blocks } = pattern;
  const { pictures, idOf } = filePictures(pattern);
  return `${prettyJson({
    format,
    title,
    unit,
    fabrics: fabrics?.map((fabric) => orderedFabric(fabric, idOf)),
    colourways: colourways?.map(({ id, name }) => ({ id, name })),
    blocks: blocks.map((block) => orderedBlock(block, idOf)),
    // At the end, where their length does not hide the rest.
    pictures,
  })}\n`;
}

const orderedFabric = (
  { id, name, colour, width, grain, swatch }: Fabric,
  idOf: (picture: Picture) => string,
) => ({
  id,
  name,
  colour,
  width,
  grain,
  ...(swatch === undefined ? {} : { swatch: { picture: idOf(swatch.picture), width: swatch.width } }),
});

const orderedBlock = (
  { id, name, drawing, grid, gridParts, patches, sewing, pressings, tracing }: Block,
  idOf: (picture: Picture) => string,
) => ({
  id,
  name,
  drawing: orderedDrawing(drawing),
  grid,
  gridParts,
  patches: patches.map(orderedPatch),
  ...(sewing === undefined ? {} : { sewing: orderedWishes(sewing) }),
  ...(pressings === undefined
    ? {}
    : { pressings: pressings.map((one) => ({ patches: one.patches, under: one.under })) }),
  ...(tracing === undefined ? {} : { tracing: fileTracing(tracing, idOf(tracing.picture)) }),
});

const orderedPatch = ({ id, signature, at, note, fabric, fabrics }: PatchRecord) => ({
  id,
  signature,
  at: { x: at.x, y: at.y },
  note,
  fabric,
  fabrics:
    fabrics && Object.fromEntries(Object.entries(fabrics).sort(([a], [b]) => (a < b ? -1 : Number(a > b)))),
});

const PIN_FIELDS = ['kind', 'patch', 'than', 'patches', 'letter'];

const orderedWishes = ({ pins, choice, mostPatches, partialSeams }: SewingWishes) => ({
  pins: pins.map((pin) =>
    Object.fromEntries(PIN_FIELDS.flatMap((f) => (f in pin ? [[f, pin[f as keyof PinRecord]]] : []))),
  ),
  choice,
  mostPatches,
  partialSeams,
});

const orderedDrawing = ({ points, outline, splits }: Drawing) => ({
  points: Object.fromEntries(
    Object.entries(points)
      .sort(([a], [b]) => a.length - b.length || (a < b ? -1 : 1))
      .map(([key, point]) => [key, orderedPoint(point)]),
  ),
  outline,
  splits: splits.map(({ id, from, to }) => ({ id, from, to })),
});

const orderedPoint = ({ id, x, y, on }: DrawingPoint) => ({ id, x, y, on });
