import { fabricIn } from '@seamwright/pattern';
import { useMemo } from 'react';
import { fabricsOf } from '../../store/fabrics.ts';
import { currentBlock, currentColourway, useWork } from '../../store/work.ts';
import { patchesByName } from '../../study/by-name.ts';
import type { Study } from '../../study/study.ts';
import { rove } from '../../ui/roving.ts';
import { usePointing } from '../../ui/use-pointing.ts';
import { beginStroke, endStroke, paint, useBrush } from './brush.ts';
import styles from './cloth-station.module.css';
import { reached } from './reach.ts';

/** The patches with their fabrics: one stop of the Tab key; Enter cuts a patch from the fabric at hand. */
export function PaintedPatches({ study }: { readonly study: Study }) {
  const records = useWork((work) => currentBlock(work).patches);
  const colourway = useWork(currentColourway);
  const fabrics = useWork(fabricsOf);
  const patches = useMemo(() => patchesByName(study), [study]);
  if (patches.length === 0) return <p>There are no patches yet: the drawing has to be mended first.</p>;
  const fabricOf = new Map(records.map((record) => [record.id, fabricIn(record, colourway)]));
  return (
    <>
      <h2>Patches</h2>
      <ul aria-label="Patches" className={styles.patches} onKeyDown={rove}>
        {patches.map(({ index }, i) => {
          const { id } = study.records[index]!;
          const fabric = fabrics.find((one) => one.id === fabricOf.get(id)) ?? null;
          return (
            <PaintedPatch
              key={id}
              study={study}
              index={index}
              stop={i === 0}
              colour={fabric?.colour ?? null}
              fabric={fabric?.name ?? 'no fabric yet'}
            />
          );
        })}
      </ul>
    </>
  );
}

interface PaintedPatchProps {
  readonly study: Study;
  readonly index: number;
  readonly stop: boolean;
  readonly colour: string | null;
  readonly fabric: string;
}

function PaintedPatch({ study, index, stop, colour, fabric }: PaintedPatchProps) {
  const pointing = usePointing(() => ({
    of: study.drawing,
    patches: reached(study, index, useBrush.getState().reach),
  }));
  return (
    <li>
      <button
        type="button"
        data-stop
        tabIndex={stop ? 0 : -1}
        className={styles.patch}
        {...pointing}
        onClick={() => {
          beginStroke();
          paint(study, index);
          endStroke();
        }}
      >
        <span className={styles.patchName}>{study.names[index] ?? '?'}</span>
        <span
          className={colour === null ? `${styles.swatch} ${styles.bare}` : styles.swatch}
          style={colour === null ? undefined : { background: colour }}
        />
        <span className={styles.name}>{fabric}</span>
      </button>
    </li>
  );
}
