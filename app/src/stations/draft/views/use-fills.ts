import { useMemo } from 'react';
import { useFabricFills } from '../../../canvas/fabric-fills.ts';
import { type Fill, type Look, sectionFills } from '../../../canvas/paint-patches.ts';
import type { Study } from '../../../study/study.ts';
import type { ViewKind } from './draft-view.ts';

const NONE: readonly Fill[] = [];

/** What the patches are filled with in a view. */
export function useFills(study: Study | null, kind: ViewKind, look: Look): readonly Fill[] {
  const fabrics = useFabricFills(study, kind === 'fabrics', look);
  const arrangement = study?.arrangement;
  const sectionOf = study?.sectionOf;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the fills show of the study
  return useMemo(() => {
    if (study === null || kind === 'lines') return NONE;
    return kind === 'fabrics' ? fabrics : sectionFills(study, look);
  }, [arrangement, sectionOf, kind, look, fabrics]);
}
