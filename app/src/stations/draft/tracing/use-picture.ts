import type { Picture } from '@seamwright/pattern';
import { useEffect, useState } from 'react';

const decoded = new WeakMap<Picture, HTMLImageElement>();

/** The picture ready to be drawn; null until it is. Decoded once for as long as anything holds it. */
export function usePicture(picture: Picture | undefined): HTMLImageElement | null {
  const [, ready] = useState<Picture>();
  useEffect(() => {
    if (picture === undefined || decoded.has(picture)) return;
    let wanted = true;
    const image = new Image();
    image.src = picture.data;
    image.decode().then(
      () => {
        decoded.set(picture, image);
        if (wanted) ready(picture);
      },
      // Its header is sound, what follows is not: there is nothing to show, and the panel says what it is.
      () => {},
    );
    return () => {
      wanted = false;
    };
  }, [picture]);
  return picture === undefined ? null : (decoded.get(picture) ?? null);
}
