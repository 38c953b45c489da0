import type { Drawing, LineId } from '@seamwright/arrangement';
import { drawnLines } from '@seamwright/drafting';
import { distance } from '@seamwright/geometry';
import { useWork } from '../../../store/work.ts';
import { Field } from '../../../ui/field.tsx';
import { lengthWords } from '../../../ui/measures.ts';
import { usePointing } from '../../../ui/use-pointing.ts';
import { namesOf } from '../names.ts';

interface LineChoiceProps {
  readonly label: string;
  readonly drawing: Drawing;
  readonly lines: readonly LineId[];
  readonly value: LineId;
  readonly onChange: (line: LineId) => void;
}

/** One of some lines; the one that is chosen shows on the canvas while one is at the list. */
export function LineChoice({ label, drawing, lines, value, onChange }: LineChoiceProps) {
  const unit = useWork((work) => work.history.present.unit);
  const names = namesOf(drawing);
  const drawn = drawnLines(drawing);
  const line = drawn.get(value);
  const pointing = usePointing({
    of: drawing,
    ...(line !== undefined && { seams: [{ a: line.from, b: line.to }] }),
  });
  return (
    <Field label={label}>
      {(control) => (
        <select {...control} {...pointing} value={value} onChange={(event) => onChange(event.target.value)}>
          {lines.map((id) => {
            const one = drawn.get(id)!;
            return (
              <option key={id} value={id}>
                {names.lines.get(id)}, {lengthWords(distance(one.from, one.to), unit)}
              </option>
            );
          })}
        </select>
      )}
    </Field>
  );
}
