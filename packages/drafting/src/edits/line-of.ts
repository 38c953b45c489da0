import type { Drawing, LineId } from '@seamwright/arrangement';
import { fail, ok, type Result } from '@seamwright/geometry';
import { type DrawnLine, drawnLines } from '../lines.ts';

/** The line of this id, split or edge; else that there is none. */
export function lineOf(drawing: Drawing, id: LineId): Result<DrawnLine> {
  const line = drawnLines(drawing).get(id);
  return line === undefined
    ? fail('That line is not in the drawing', `line ${id}`, 'Choose another line')
    : ok(line);
}

/** The split of this id; else why there is none to work on. */
export function splitOf(drawing: Drawing, id: LineId): Result<DrawnLine> {
  const line = lineOf(drawing, id);
  return line.ok && line.value.kind === 'edge'
    ? fail('An edge of the outline cannot be cut, extended or joined', '', 'Choose a line within the block')
    : line;
}
