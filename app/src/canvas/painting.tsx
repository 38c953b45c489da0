import { memo } from 'react';
import { Shape } from 'react-konva/lib/ReactKonvaCore.js';

/** Draws with the canvas's own commands, in inches of the block. */
export type Paint = (context: CanvasRenderingContext2D) => void;

/** Paints nothing. One and the same, so that what has nothing to show is not drawn again. */
export const BLANK: Paint = () => undefined;

/** Several paintings as one, the first at the bottom. */
export const inTurn =
  (...paints: readonly Paint[]): Paint =>
  (context) => {
    for (const paint of paints) paint(context);
  };

/**
 * One node of the canvas for what would otherwise be a node for each patch: blocks of thousands of patches are then as
 * quick to show as small ones. Drawn again when `paint` is another function.
 */
export const Painting = memo(function Painting({ paint }: { readonly paint: Paint }) {
  return <Shape sceneFunc={(context) => paint(context._context)} perfectDrawEnabled={false} />;
});
