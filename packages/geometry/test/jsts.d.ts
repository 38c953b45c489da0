/** The parts of jsts that these tests use; the library's own types do not cover deep imports. */
declare module 'jsts/org/locationtech/jts/io/WKTReader.js' {
  export default class WKTReader {
    read(text: string): unknown;
  }
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js' {
  export default class BufferParameters {
    static readonly JOIN_MITRE: number;
    setJoinStyle(style: number): void;
    setMitreLimit(limit: number): void;
    setSimplifyFactor(factor: number): void;
  }
}
declare module 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js' {
  import type BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';

  interface Ring {
    getCoordinates(): { x: number; y: number }[];
  }
  interface Buffer {
    getGeometryType(): string;
    getArea(): number;
    getExteriorRing(): Ring;
    getNumInteriorRing(): number;
    getInteriorRingN(n: number): Ring;
  }
  export default class BufferOp {
    constructor(geometry: unknown, parameters: BufferParameters);
    getResultGeometry(distance: number): Buffer;
  }
}
declare module 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js' {
  const OverlayOp: {
    readonly INTERSECTION: number;
    overlayOp(p: unknown, q: unknown, operation: number): { getArea(): number };
  };
  export default OverlayOp;
}
