import { type DrawnLine, drawnLines, putLineEndSymmetric } from '@seamwright/drafting';
import { distance, type LengthUnit, type Point } from '@seamwright/geometry';
import { memo } from 'react';
import { currentBlock, useWork } from '../../../store/work.ts';
import { lengthWords, originOf } from '../../../ui/measures.ts';
import { choose } from '../chosen.ts';
import { currentSymmetry } from '../hand.ts';
import { namesOf } from '../names.ts';
import { makeTyped } from './make.ts';
import { movePointTo } from './move-point-to.ts';
import { PartsTable } from './parts-table.tsx';
import { ValueRow } from './value-row.tsx';

/** All lines with the places of their ends, each to be typed anew. */
export function LinesTable() {
  const drawing = useWork((work) => currentBlock(work).drawing);
  const unit = useWork((work) => work.history.present.unit);
  const chosen = useWork((work) => work.selection.lines[0]);
  const lines = [...drawnLines(drawing).values()];
  const names = namesOf(drawing);
  const { x, y } = originOf(drawing);
  const stop = chosen !== undefined && names.lines.has(chosen) ? chosen : lines[0]?.id;
  return (
    <PartsTable heading="Lines" of="Line" groups={['First end', 'Second end']}>
      {lines.map((line) => (
        <LineRow
          key={line.id}
          line={line}
          name={names.lines.get(line.id)!}
          unit={unit}
          originX={x}
          originY={y}
          chosen={line.id === chosen}
          stop={line.id === stop}
        />
      ))}
    </PartsTable>
  );
}

interface LineRowProps {
  readonly line: DrawnLine;
  readonly name: string;
  readonly unit: LengthUnit;
  readonly originX: number;
  readonly originY: number;
  readonly chosen: boolean;
  readonly stop: boolean;
}

const LineRow = memo(
  function LineRow({ line, name, unit, originX, originY, chosen, stop }: LineRowProps) {
    const values = (['from', 'to'] as const).flatMap((end) => {
      const { x, y } = line[end];
      const which = end === 'from' ? 'first end' : 'second end';
      const put = (at: Point) => putEnd(line, end, at);
      return [
        {
          label: `${which}, from the left`,
          inches: x - originX,
          put: (to: number) => put({ x: to + originX, y }),
        },
        {
          label: `${which}, from the top`,
          inches: y - originY,
          put: (to: number) => put({ x, y: to + originY }),
        },
      ];
    });
    return (
      <ValueRow
        name={name}
        words={lengthWords(distance(line.from, line.to), unit)}
        unit={unit}
        values={values}
        chosen={chosen}
        stop={stop}
        onChoose={() => choose({ kind: 'line', id: line.id })}
      />
    );
  },
  // Lines are made anew for every drawing; the same ends are the same line.
  (a, b) =>
    a.line.from === b.line.from &&
    a.line.to === b.line.to &&
    a.name === b.name &&
    a.unit === b.unit &&
    a.originX === b.originX &&
    a.originY === b.originY &&
    a.chosen === b.chosen &&
    a.stop === b.stop,
);

/** The edge's ends are the outline's corners; the end of a line leaves a corner, and the corner stays. */
const putEnd = ({ id, kind, ...ends }: DrawnLine, end: 'from' | 'to', at: Point): string | undefined =>
  kind === 'edge'
    ? movePointTo(ends[end].id, at)
    : makeTyped('Move an end', (before) => putLineEndSymmetric(before, id, end, at, currentSymmetry()));
