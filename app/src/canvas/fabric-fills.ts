import { type Fabric, fabricIn } from '@seamwright/pattern';
import { useMemo } from 'react';
import { fabricsOf } from '../store/fabrics.ts';
import { currentBlock, currentColourway, useWork } from '../store/work.ts';
import type { Study } from '../study/study.ts';
import { type Fill, hatched, inFront, type Look, pathsBy } from './paint-patches.ts';
import { usePhotos } from './photos.ts';
import type { SectionLook } from './section-look.ts';

const NONE: readonly Fill[] = [];

const NO_FABRICS: readonly Fabric[] = [];

export const asItIs = (colour: string): string => colour;

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
  const photos = usePhotos(wanted ? fabrics : NO_FABRICS);
  const arrangement = study?.arrangement ?? null;
  const ids = study?.records;
  return useMemo(() => {
    if (!wanted || ids === undefined) return NONE;
    const byId = new Map(fabrics.map((fabric) => [fabric.id, fabric]));
    const fabricOf = new Map(records.map((record) => [record.id, fabricIn(record, colourway)]));
    const paths = pathsBy(
      arrangement,
      ({ index }) => byId.get(fabricOf.get(ids[index]?.id ?? '') ?? '') ?? null,
      inFront,
    );
    return [...paths].map(([fabric, path]) => ({ path, style: styleOf(fabric, photos, look, shade) }));
  }, [wanted, records, fabrics, photos, colourway, arrangement, ids, look, shade]);
}

/** A fabric's photo at its scale, upright; its colour where there is none, or where it is shown in another shade. */
function styleOf(
  fabric: Fabric | null,
  photos: ReadonlyMap<string, HTMLImageElement>,
  look: Look,
  shade: (colour: string) => string,
): Fill['style'] {
  if (fabric === null) return (context) => hatched(context, bare(look), look.theme['line-strong'], look);
  const { id, colour, swatch } = fabric;
  const photo = shade === asItIs ? photos.get(id) : undefined;
  if (photo === undefined || swatch === undefined) return () => shade(colour);
  return (context) => {
    const pattern = context.createPattern(photo, 'repeat');
    if (pattern === null) return colour;
    const size = swatch.width / photo.naturalWidth;
    pattern.setTransform(new DOMMatrix([size, 0, 0, size, 0, 0]));
    return pattern;
  };
}

/** Paper that no fabric was chosen for. */
const bare = ({ theme }: Look): SectionLook => ({ tint: theme.sheet, hatching: 'rising' });
