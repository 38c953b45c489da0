// The library's `types` entry leaves out what its module exports besides the packer.
import 'maxrects-packer';

declare module 'maxrects-packer' {
  export class Rectangle {
    constructor(width: number, height: number, x?: number, y?: number);
    width: number;
    height: number;
    x: number;
    y: number;
  }

  export class MaxRectsBin {
    constructor(
      maxWidth: number,
      maxHeight: number,
      padding: number,
      options: {
        smart?: boolean;
        pot?: boolean;
        square?: boolean;
        allowRotation?: boolean;
        logic?: PACKING_LOGIC;
      },
    );
    readonly padding: number;
    /** The free space: rectangles as large as they can be, which may overlap. */
    freeRects: Rectangle[];
    /** The rectangle with its place, or undefined when there is no room. */
    add(rectangle: Rectangle): Rectangle | undefined;
  }
}
