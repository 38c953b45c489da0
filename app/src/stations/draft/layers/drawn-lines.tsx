import type { Drawing } from '@seamwright/arrangement';
import { type DrawnLine, drawnLines } from '@seamwright/drafting';
import 'konva/lib/shapes/Line.js';
import { memo } from 'react';
import { Line } from 'react-konva/lib/ReactKonvaCore.js';
import { useTheme } from '../../../canvas/theme.ts';
import { useWork } from '../../../store/work.ts';

/** The lines as they are drawn, at once: what the patches are is known a moment later. */
export function DrawnLines({ drawing }: { readonly drawing: Drawing }) {
  return [...drawnLines(drawing).values()].map((line) => <OneLine key={line.id} line={line} />);
}

const OneLine = memo(
  function OneLine({ line }: { readonly line: DrawnLine }) {
    const theme = useTheme();
    const chosen = useWork((work) => work.selection.lines.includes(line.id));
    const { from, to, kind } = line;
    return (
      <Line
        points={[from.x, from.y, to.x, to.y]}
        stroke={chosen ? theme.accent : theme.ink}
        strokeWidth={chosen ? 4 : kind === 'edge' ? 2.25 : 1.5}
        strokeScaleEnabled={false}
        perfectDrawEnabled={false}
        lineCap="round"
      />
    );
  },
  // Lines are made anew for every drawing; the same ends are the same line.
  ({ line: a }, { line: b }) => a.from === b.from && a.to === b.to && a.kind === b.kind,
);
