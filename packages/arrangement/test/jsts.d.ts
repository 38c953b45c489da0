/** The parts of jsts that these tests use; the library's own types do not cover deep imports. */
declare module 'jsts/org/locationtech/jts/io/WKTReader.js' {
  export default class WKTReader {
    read(text: string): unknown;
  }
}
declare module 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js' {
  const UnaryUnionOp: { union(geometry: unknown): unknown };
  export default UnaryUnionOp;
}
declare module 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js' {
  interface Collection<T> {
    toArray(): T[];
  }
  export default class Polygonizer {
    add(geometry: unknown): void;
    getPolygons(): Collection<{ getArea(): number }>;
  }
}
