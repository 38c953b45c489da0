import type { DrawingPoint } from '@seamwright/arrangement';
import type { LengthUnit } from '@seamwright/geometry';
import { memo } from 'react';
import { currentBlock, useWork } from '../../../store/work.ts';
import { originOf } from '../../../ui/measures.ts';
import { choose } from '../chosen.ts';
import { namesOf } from '../names.ts';
import { movePointTo } from './move-point-to.ts';
import { PartsTable } from './parts-table.tsx';
import { ValueRow } from './value-row.tsx';

/** All points with their places, each to be typed anew. */
export function PointsTable() {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const unit = useWork((work) => work.history.present.unit);
  const chosen = useWork((work) => work.selection.points[0]);
  const names = namesOf(drawing).points;
  const { x, y } = originOf(drawing);
  const stop = chosen !== undefined && names.has(chosen) ? chosen : drawing.outline[0];
  return (
    <PartsTable heading="Points" of="Point" groups={['Place']}>
      {[...names].map(([id, name]) => (
        <PointRow
          key={id}
          point={drawing.points[id]!}
          name={name}
          unit={unit}
          originX={x}
          originY={y}
          chosen={id === chosen}
          stop={id === stop}
        />
      ))}
    </PartsTable>
  );
}

interface PointRowProps {
  readonly point: DrawingPoint;
  readonly name: string;
  readonly unit: LengthUnit;
  readonly originX: number;
  readonly originY: number;
  readonly chosen: boolean;
  readonly stop: boolean;
}

const PointRow = memo(function PointRow({
  point: { id, x, y },
  name,
  unit,
  originX,
  originY,
  chosen,
  stop,
}: PointRowProps) {
  return (
    <ValueRow
      name={name}
      unit={unit}
      values={[
        {
          label: 'from the left',
          inches: x - originX,
          put: (to) => movePointTo(id, { x: to + originX, y }),
        },
        {
          label: 'from the top',
          inches: y - originY,
          put: (to) => movePointTo(id, { x, y: to + originY }),
        },
      ]}
      chosen={chosen}
      stop={stop}
      onChoose={() => choose({ kind: 'point', id })}
    />
  );
});
