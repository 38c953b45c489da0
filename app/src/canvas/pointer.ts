import type { Point } from '@seamwright/geometry';

/** What the pointer did on the canvas, in block coordinates. Pans, zooms and pinches never come through here. */
export interface CanvasPointer {
  /** `cancel`: what began with `down` is called off (a second finger came, the browser took over). */
  readonly kind: 'down' | 'move' | 'up' | 'cancel' | 'leave';
  readonly at: Point;
  readonly screen: Point<'screen'>;
  /** Inches: how near counts as on it, for this pointer at this zoom. */
  readonly reach: number;
  readonly touch: boolean;
  readonly shift: boolean;
  readonly alt: boolean;
  /** Control, or Command on a Mac. */
  readonly mod: boolean;
}

/** CSS pixels: how near counts as on it. A finger is broader than a mouse's tip. */
export const reachOf = (pointerType: string): number => (pointerType === 'touch' ? 22 : 10);
