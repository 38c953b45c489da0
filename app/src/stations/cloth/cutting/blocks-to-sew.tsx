import { boundingBox, formatLength, type LengthUnit } from '@seamwright/geometry';
import { type FinishedSize, readSize } from '@seamwright/pages';
import type { Block } from '@seamwright/pattern';
import { corners } from '../../../canvas/bounds.ts';
import { isLeftOut, leaveOut, sewOf } from '../../../store/blocks-to-sew.ts';
import { colourwayInHand } from '../../../store/colourways.ts';
import { cutAs, useCuttingHabits } from '../../../store/cutting-habits.ts';
import { MOST_BLOCKS } from '../../../store/printing.ts';
import { currentBlock, printingOf, useWork } from '../../../store/work.ts';
import type { CuttingQuestion } from '../../../study/cut-out.ts';
import { CheckBox } from '../../../ui/check-box.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { CountField } from '../../../ui/count-field.tsx';
import { counted, listed } from '../../../ui/plural.ts';
import station from '../cloth-station.module.css';
import styles from './cutting.module.css';
import { LookedAtChoice } from './looked-at.tsx';

/** `12 blocks, 6 in wide, and 4 mirrored`. */
function sizeWords({ scale, copies, mirrored = 0 }: FinishedSize, width: number, unit: LengthUnit): string {
  const size = formatLength(width * scale, unit);
  if (copies === 0) return `${counted(mirrored, 'mirrored block')}, ${size} wide`;
  return `${counted(copies, 'block')}, ${size} wide${mirrored === 0 ? '' : `, and ${mirrored} mirrored`}`;
}

/** For which blocks, and how many, all counts below are; where a patch's piece is seen. */
export function BlocksToSew({ question }: { readonly question: CuttingQuestion | null }) {
  const blocks = useWork((work) => work.history.present.blocks);
  const open = useWork(currentBlock);
  const scope = useCuttingHabits((habits) => habits.scope);
  const colourway = useWork(colourwayInHand);
  const isAll = scope === 'pattern' && blocks.length > 1;
  const left = question?.unsewable ?? [];
  return (
    <div className={station.part}>
      {blocks.length > 1 && (
        <Choice
          label="Cut for"
          value={scope}
          options={[
            { value: 'block', label: 'This block' },
            { value: 'pattern', label: `All ${blocks.length} blocks` },
          ]}
          onChange={(value) => cutAs({ scope: value })}
        />
      )}
      {isAll ? (
        <>
          <fieldset className={styles.blocks}>
            <legend>How many of each; 0 leaves a block out</legend>
            {blocks.map((block) => (
              <Counted key={block.id} block={block} isAll />
            ))}
          </fieldset>
          {left.length > 0 && (
            <p role="status">
              Nothing is cut for {listed(left)}, which cannot be sewn yet: Order says what stands in the way.
            </p>
          )}
        </>
      ) : (
        <Counted block={open} isAll={false} />
      )}
      {colourway !== undefined && <p>From the fabrics of “{colourway.name}”</p>}
      {question !== null && <LookedAtChoice question={question} />}
      <p className={styles.note}>
        Press a patch, or its name below, to see its piece on the block: laid, sewn and flipped.
      </p>
    </div>
  );
}

/** How many of a block are sewn. */
function Counted({ block, isAll }: { readonly block: Block; readonly isAll: boolean }) {
  const { sizes } = useWork((work) => printingOf(work, block.id));
  const isOut = useWork((work) => isLeftOut(work, block.id));
  const unit = useWork((work) => work.history.present.unit);
  const { minX, minY, maxX, maxY } = boundingBox(corners(block.drawing));
  const [only] = sizes;
  if (sizes.length === 1 && (only!.mirrored ?? 0) === 0)
    return (
      <CountField
        label={isAll ? block.name : 'Blocks to sew'}
        value={isAll && isOut ? 0 : only!.copies}
        least={isAll ? 0 : 1}
        most={MOST_BLOCKS}
        {...(only!.scale !== 1 && {
          hint: `${readSize((maxX - minX) * only!.scale, (maxY - minY) * only!.scale, unit)} finished, as asked for at Paper`,
        })}
        onChange={(copies) => sewOf(block.id, copies)}
      />
    );
  const list = (
    <ul className={styles.sizes}>
      {sizes.map((size) => (
        <li key={`${size.scale} ${size.copies} ${size.mirrored}`}>{sizeWords(size, maxX - minX, unit)}</li>
      ))}
    </ul>
  );
  return isAll ? (
    <div className={styles.several}>
      <CheckBox
        label={block.name}
        checked={!isOut}
        onChange={(isChecked) => leaveOut(block.id, !isChecked)}
      />
      {list}
    </div>
  ) : (
    <>
      <p>Cut, as asked for at Paper, for</p>
      {list}
    </>
  );
}
