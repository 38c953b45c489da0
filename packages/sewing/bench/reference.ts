import WKTReader from 'jsts/org/locationtech/jts/io/WKTReader.js';
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import type { Sketch } from './drawings.ts';

/** A drawing as the reference library (jsts, a port of the JTS Topology Suite) takes it. */
export function forReference({ outline, segments }: Sketch): unknown {
  const ring = [...outline, outline[0]!].map(({ x, y }) => `${x} ${y}`).join(', ');
  const lines = segments.map(({ a, b }) => `(${a.x} ${a.y}, ${b.x} ${b.y})`);
  return new WKTReader().read(`MULTILINESTRING((${ring}), ${lines.join(', ')})`);
}

/**
 * The number of faces that the reference library finds: noding, then its polygonizer. Null where it gives up, as it may where a line
 * ends on another one but for the last digit.
 */
export function referenceFaces(lines: unknown): number | null {
  const polygonizer = new Polygonizer();
  try {
    polygonizer.add(UnaryUnionOp.union(lines));
  } catch {
    return null;
  }
  return polygonizer.getPolygons().toArray().length;
}
