import { fabricIn } from '@seamwright/pattern';
import { useMemo } from 'react';
import {
  type Fill,
  hatched,
  inFront,
  type Look,
  pathsBy,
  sectionFills,
} from '../../../canvas/paint-patches.ts';
import type { SectionLook } from '../../../canvas/section-look.ts';
import { fabricsOf } from '../../../store/fabrics.ts';
import { currentBlock, currentColourway, useWork } from '../../../store/work.ts';
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

function useFabricFills(study: Study | null, wanted: boolean, look: Look): readonly Fill[] {
  const records = useWork((work) => currentBlock(work).patches);
  const fabrics = useWork(fabricsOf);
  const colourway = useWork(currentColourway);
  const arrangement = study?.arrangement ?? null;
  const ids = study?.records;
  return useMemo(() => {
    if (!wanted || ids === undefined) return NONE;
    const colourOf = new Map(fabrics.map(({ id, colour }) => [id, colour]));
    const fabricOf = new Map(records.map((record) => [record.id, fabricIn(record, colourway)]));
    const paths = pathsBy(
      arrangement,
      ({ index }) => colourOf.get(fabricOf.get(ids[index]?.id ?? '') ?? '') ?? null,
      inFront,
    );
    return [...paths].map(([colour, path]) => ({
      path,
      style: (context) => colour ?? hatched(context, bare(look), look.theme['line-strong'], look),
    }));
  }, [wanted, records, fabrics, colourway, arrangement, ids, look]);
}

/** Paper that no fabric was chosen for. */
const bare = ({ theme }: Look): SectionLook => ({ tint: theme.sheet, hatching: 'rising' });
