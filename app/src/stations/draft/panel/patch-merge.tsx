import { eraseSymmetric } from '@seamwright/drafting';
import { Merge } from 'lucide-react';
import { compareNames } from '../../../study/by-name.ts';
import type { Study } from '../../../study/study.ts';
import { Foldable } from '../../../ui/foldable.tsx';
import { counted } from '../../../ui/plural.ts';
import { currentSymmetry } from '../hand.ts';
import { EditButton } from './edit-button.tsx';
import type { MakeEdit } from './make.ts';
import { neighboursOf } from './neighbours-of.ts';
import styles from './panel.module.css';

interface PatchMergeProps {
  readonly study: Study;
  /** The patch by its index in the study. */
  readonly index: number;
  readonly guarded: (edit: MakeEdit) => MakeEdit;
}

/** Makes one patch of this and a neighbour: the seam between them goes. */
export function PatchMerge({ study, index, guarded }: PatchMergeProps) {
  const neighbours = neighboursOf(study, index);
  if (neighbours.size === 0) return null;
  const name = (neighbour: number) => study.names[neighbour]!;
  const listed = [...neighbours].sort(([one], [other]) => compareNames(name(one), name(other)));
  return (
    <Foldable id="patch merge" title="Merge it" more={counted(neighbours.size, 'neighbour')}>
      <div className={styles.row}>
        {listed.map(([neighbour, seams]) => (
          <EditButton
            key={neighbour}
            step="Merge two patches"
            icon={Merge}
            edit={guarded((before) => eraseSymmetric(before, seams, currentSymmetry()))}
          >
            With {name(neighbour)}
          </EditButton>
        ))}
      </div>
    </Foldable>
  );
}
