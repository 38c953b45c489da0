import { type ReactNode, useMemo } from 'react';
import { KeptPainting } from '../../../canvas/kept-painting.tsx';
import { inFront, paintFills, paintNames, paintSeams } from '../../../canvas/paint-patches.ts';
import { inTurn, Painting } from '../../../canvas/painting.tsx';
import { useLook } from '../../../canvas/use-look.ts';
import type { Study } from '../../../study/study.ts';
import { useDraftView } from './draft-view.ts';
import { useFills } from './use-fills.ts';

interface ViewedPatchesProps {
  readonly study: Study;
  /** What lies on the fills and under the seams and names. */
  readonly children: ReactNode;
}

/** The studied block in the view that is chosen. Goes into the still layer. */
export function ViewedPatches({ study, children }: ViewedPatchesProps) {
  const kind = useDraftView((view) => view.kind);
  const look = useLook(inFront);
  const fills = useFills(study, kind, look);
  const { arrangement, names } = study;
  const paint = useMemo(() => paintFills(fills), [fills]);
  const seams = useMemo(() => paintSeams(arrangement, look, kind === 'fabrics'), [arrangement, look, kind]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the names show of the study
  const written = useMemo(() => paintNames(study, look), [arrangement, names, look]);
  const isPlain = kind === 'front' || kind === 'printed';
  const over = useMemo(() => (isPlain ? inTurn(seams, written) : seams), [isPlain, seams, written]);
  return (
    <>
      {isPlain ? <KeptPainting paint={paint} study={study} look={look} /> : <Painting paint={paint} />}
      {children}
      {kind !== 'lines' && <KeptPainting key={kind} paint={over} study={study} look={look} />}
    </>
  );
}
