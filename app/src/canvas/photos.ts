import type { Fabric, Picture } from '@seamwright/pattern';
import { useEffect, useMemo, useState } from 'react';

/** Decoded once for each picture; null where the browser cannot show it, and the fabric's colour stands in. */
const decoded = new WeakMap<Picture, HTMLImageElement | null>();

/** The photos of fabrics, by the fabrics' ids, as they are decoded; fabrics without one, or not yet, are not there. */
export function usePhotos(fabrics: readonly Fabric[]): ReadonlyMap<string, HTMLImageElement> {
  const [count, setCount] = useState(0);
  useEffect(() => {
    let wanted = true;
    const done = () => wanted && setCount((before) => before + 1);
    for (const { swatch } of fabrics)
      if (swatch !== undefined && !decoded.has(swatch.picture)) void decode(swatch.picture).then(done);
    return () => {
      wanted = false;
    };
  }, [fabrics]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: there are more when another is decoded
  return useMemo(
    () =>
      new Map(
        fabrics.flatMap(({ id, swatch }) => {
          const image = swatch === undefined ? null : (decoded.get(swatch.picture) ?? null);
          return image === null ? [] : [[id, image] as const];
        }),
      ),
    [fabrics, count],
  );
}

async function decode(picture: Picture): Promise<void> {
  const image = new Image();
  image.src = picture.data;
  try {
    await image.decode();
    decoded.set(picture, image);
  } catch {
    decoded.set(picture, null);
  }
}
