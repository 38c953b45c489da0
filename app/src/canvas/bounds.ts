import type { Drawing } from '@seamwright/arrangement';
import { type Box, boundingBox, type Polygon } from '@seamwright/geometry';

/** The corners of the block's outline, in the order drawn. */
export const corners = (drawing: Drawing): Polygon => drawing.outline.map((id) => drawing.points[id]!);

/** The upright box round the block's outline, inches. */
export const blockBounds = (drawing: Drawing): Box => boundingBox(corners(drawing));
