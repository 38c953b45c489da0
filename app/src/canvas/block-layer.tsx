import type { ReactNode } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore.js';
import { useView } from './view-context.ts';

/** A Konva layer in block coordinates: what is inside is given in inches and follows the view. */
export function BlockLayer({ children }: { readonly children: ReactNode }) {
  const { scale, x, y, flip } = useView();
  return (
    <Layer listening={false} x={x} y={y} scaleX={scale * flip} scaleY={scale}>
      {children}
    </Layer>
  );
}
