import { fabricIn } from '@seamwright/pattern';
import { useMemo } from 'react';
import { fabricsOf } from '../store/fabrics.ts';
import { currentBlock, currentColourway, useWork } from '../store/work.ts';
import type { Study } from '../study/study.ts';
import { type Fill, hatched, inFront, type Look, pathsBy } from './paint-patches.ts';
import type { SectionLook } from './section-look.ts';

const NONE: readonly Fill[] = [];

const asItIs = (colour: string): string => colour;

/**
 * The patches of the open block filled with the fabrics of a colourway; those that none was chosen for are hatched.
 *
 * @param wanted none are made where they are not
 * @param shade how a fabric's colour is shown, the same function for as long as it shows colours alike
 */
export function useFabricFills(
  study: Study | null,
  wanted: boolean,
  look: Look,
  shade: (colour: string) => string = asItIs,
): readonly Fill[] {
  const records = useWork((work) => currentBlock(work).patches);
  const fabrics = useWork(fabricsOf);
  const colourway = useWork(currentColourway);
  const arrangement = study?.arrangement ?? null;
  const ids = study?.records;
  return useMemo(() => {
    if (!wanted || ids === undefined) return NONE;
    const colourOf = new Map(fabrics.map(({ id, colour }) => [id, shade(colour)]));
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
  }, [wanted, records, fabrics, colourway, arrangement, ids, look, shade]);
}

/** Paper that no fabric was chosen for. */
const bare = ({ theme }: Look): SectionLook => ({ tint: theme.sheet, hatching: 'rising' });
