import { sizeOf } from '@seamwright/drafting';
import { fail } from '@seamwright/geometry';
import { changeBlock, endStep } from '../../../store/changes.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Field } from '../../../ui/field.tsx';
import { lengthWords, originOf } from '../../../ui/measures.ts';
import { FabricChoice } from '../views/fabric-choice.tsx';
import type { MakeEdit } from './make.ts';
import styles from './panel.module.css';
import { PatchDivide } from './patch-divide.tsx';
import { PatchMerge } from './patch-merge.tsx';

/** The patch in hand: what it is called, its size, and the maker's own words about it. */
export function PatchPanel({ id }: { readonly id: string }) {
  const study = useWork((work) => work.study);
  const blockId = useWork((work) => currentBlock(work).id);
  const note = useWork((work) => currentBlock(work).patches.find((record) => record.id === id)?.note);
  const unit = useWork((work) => work.history.present.unit);
  const index = study?.records.findIndex((record) => record.id === id) ?? -1;
  const patch = study?.arrangement?.patches[index];
  if (study === null || patch === undefined || note === undefined) return null;
  const write = (words: string) =>
    changeBlock(
      'Note on a patch',
      blockId,
      (block) => ({
        ...block,
        patches: block.patches.map((record) => (record.id === id ? { ...record, note: words } : record)),
      }),
      `note ${id}`,
    );
  const { width, height } = sizeOf(patch.polygon);
  // A patch is what the study says of a drawing: by now there may be another drawing.
  const guarded =
    (edit: MakeEdit): MakeEdit =>
    (before) =>
      before === study.drawing
        ? edit(before)
        : fail('The patches are just being found anew', '', 'Try again in a moment');
  return (
    <>
      <div className={styles.part}>
        <h2>Patch {study.names[index]}</h2>
        <p className={styles.hint}>
          {patch.polygon.length} corners, {lengthWords(width, unit)} wide and {lengthWords(height, unit)}{' '}
          high.
        </p>
        <FabricChoice />
        <Field label="Note" hint="Your own words, e.g. sail. They stay with the patch while lines move.">
          {(control) => (
            <input
              {...control}
              value={note}
              maxLength={200}
              autoComplete="off"
              onChange={(event) => write(event.target.value)}
              onBlur={endStep}
            />
          )}
        </Field>
      </div>
      <PatchDivide
        polygon={patch.polygon}
        heart={patch.heart}
        origin={originOf(study.drawing)}
        guarded={guarded}
      />
      <PatchMerge study={study} index={index} guarded={guarded} />
    </>
  );
}
