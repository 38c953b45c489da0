import type { Drawing } from '@seamwright/arrangement';
import type { Parts } from '@seamwright/drafting';
import { memo } from 'react';
import { Foldable } from '../../../ui/foldable.tsx';
import { TransformFields } from './transform-fields.tsx';

interface TransformPartProps extends Parts {
  readonly drawing: Drawing;
}

/** Mirroring, turning and moving of one line, folded up until it is wanted. */
export const TransformPart = memo(function TransformPart({ points, lines, drawing }: TransformPartProps) {
  return (
    <Foldable id="line turn" title="Mirror, turn, move" more="">
      <TransformFields parts={{ points, lines }} drawing={drawing} />
    </Foldable>
  );
});
