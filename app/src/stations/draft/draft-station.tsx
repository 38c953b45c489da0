import { BlockCanvas } from '../../canvas/block-canvas.tsx';
import { BlockLayer } from '../../canvas/block-layer.tsx';
import { blockBounds } from '../../canvas/bounds.ts';
import { OutlineLine, Sheet } from '../../canvas/outline-shape.tsx';
import { FindingMarks, StudiedPatches } from '../../canvas/study-layers.tsx';
import { currentDrawing, useWork } from '../../store/work.ts';

/** Where the block is drawn. */
export default function DraftStation() {
  const drawing = useWork(currentDrawing);
  const study = useWork((work) => work.study);
  return (
    <BlockCanvas label="Drawing of the block" bounds={blockBounds(drawing)}>
      <BlockLayer>
        <Sheet drawing={drawing} />
        {study !== null && <StudiedPatches study={study} />}
        <OutlineLine drawing={drawing} />
        {study !== null && <FindingMarks study={study} />}
      </BlockLayer>
    </BlockCanvas>
  );
}
