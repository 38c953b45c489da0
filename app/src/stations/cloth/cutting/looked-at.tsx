import { boundingBox, formatLength, type LengthUnit } from '@seamwright/geometry';
import { create } from 'zustand';
import { useWork } from '../../../store/work.ts';
import type { CuttingQuestion, PatternBlock } from '../../../study/cut-out.ts';
import { Field } from '../../../ui/field.tsx';

/** Which of the open block's sizes is looked at closely, by its place among them. */
const useSize = create<{ readonly place: number }>()(() => ({ place: 0 }));

const placeIn = ({ open }: CuttingQuestion, place: number): number => Math.min(place, open.length - 1);

/** The open block in the size that is looked at closely; undefined where it cannot be sewn. */
export function useLookedAt(question: CuttingQuestion | null): PatternBlock | undefined {
  const place = useSize((size) => size.place);
  return question?.open[placeIn(question, place)];
}

/** Its place among all that is cut; -1 where it is left out. */
export function placeOf({ blocks, open }: CuttingQuestion, block: PatternBlock): number {
  const first = blocks.findIndex(({ blockId }) => blockId === block.blockId);
  return first < 0 ? -1 : first + open.indexOf(block);
}

/** `6 in wide` */
export function widthWords({ arrangement, scale }: PatternBlock, unit: LengthUnit): string {
  const { minX, maxX } = boundingBox(arrangement.outline);
  return `${formatLength((maxX - minX) * scale, unit)} wide`;
}

/** Chooses the size that is looked at closely, where there are several. */
export function LookedAtChoice({ question }: { readonly question: CuttingQuestion }) {
  const place = useSize((size) => size.place);
  const unit = useWork((work) => work.history.present.unit);
  if (question.open.length < 2) return null;
  return (
    <Field label="Look closely at the block" hint="At its pieces, layers and what other sizes need.">
      {(control) => (
        <select
          {...control}
          value={placeIn(question, place)}
          onChange={(event) => useSize.setState({ place: Number(event.target.value) })}
        >
          {question.open.map((block, index) => (
            <option key={`${block.scale} ${block.copies} ${block.mirrored}`} value={index}>
              {widthWords(block, unit)}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
