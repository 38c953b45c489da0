import type { Drawing } from '@seamwright/arrangement';
import { useMemo } from 'react';
import { BlockCanvas } from '../../canvas/block-canvas.tsx';
import { BlockLayer } from '../../canvas/block-layer.tsx';
import { blockBounds } from '../../canvas/bounds.ts';
import { inFront, type Place } from '../../canvas/paint-patches.ts';
import { patchAt } from '../../canvas/patch-at.ts';
import type { CanvasPointer } from '../../canvas/pointer.ts';
import { SectionOutline } from '../../canvas/section-outline.tsx';
import { FindingMarks, SelectedPatches, StudiedPatches } from '../../canvas/study-layers.tsx';
import { usePointed } from '../../store/pointed.ts';
import { select, selectNothing, togglePatch } from '../../store/selection.ts';
import type { Study } from '../../study/study.ts';
import styles from './order-station.module.css';

/** `front`: the block as it is when sewn. `print`: its mirror image, as the foundations are printed. */
export type Side = 'front' | 'print';

const WORDS: Readonly<Record<Side, { readonly title: string; readonly more: string }>> = {
  front: { title: 'Front', more: 'as sewn' },
  print: { title: 'Printed side', more: 'mirrored, as on the foundations' },
};

interface SectionViewProps {
  readonly side: Side;
  readonly drawing: Drawing;
  readonly study: Study | null;
}

/** The block seen from one side, in its sections. A tap takes a patch in hand. */
export function SectionView({ side, drawing, study }: SectionViewProps) {
  const bounds = blockBounds(drawing);
  const mirror = bounds.minX + bounds.maxX;
  const place = useMemo<Place>(
    () => (side === 'front' ? inFront : ({ x, y }) => ({ x: mirror - x, y })),
    [side, mirror],
  );
  const tap = ({ kind, at, shift, mod }: CanvasPointer) => {
    if (kind !== 'up' || study?.arrangement === null || study === null) return;
    // A reflection is its own inverse: the same way leads back to the block.
    const patch = patchAt(study.arrangement, place(at));
    const record = patch === undefined ? undefined : study.records[patch.index];
    if (record !== undefined && (shift || mod)) togglePatch(record.id);
    else if (record === undefined) selectNothing();
    else select({ patches: [record.id] });
  };
  const sight = usePointed(({ focused }) =>
    focused !== null && focused.of === study?.drawing && focused.finding !== undefined
      ? (study.findings[focused.finding]?.at[0] ?? null)
      : null,
  );
  const { title, more } = WORDS[side];
  return (
    <figure className={styles.view} data-view={side}>
      <figcaption>
        <strong>{title}</strong>
        <span>, {more}</span>
      </figcaption>
      <BlockCanvas
        label={`${title}, ${more}`}
        bounds={bounds}
        margin={20}
        inSight={sight === null ? null : place(sight)}
        onPointer={tap}
        testId={`order-${side}`}
      >
        <BlockLayer>
          {study !== null && <StudiedPatches study={study} place={place} />}
          {study?.plan?.sections.map((section) => (
            <SectionOutline key={section.letter} section={section} place={place} />
          ))}
        </BlockLayer>
        <BlockLayer>
          {study !== null && <SelectedPatches study={study} place={place} />}
          {study !== null && <FindingMarks study={study} place={place} />}
        </BlockLayer>
      </BlockCanvas>
    </figure>
  );
}
