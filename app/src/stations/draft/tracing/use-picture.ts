import type { Picture } from '@seamwright/pattern';
import { useEffect, useState } from 'react';

/** A picture as the canvas draws it; null: it is broken behind its sound header. */
type Decoded = HTMLImageElement | null;

const coming = new WeakMap<Picture, Promise<Decoded>>();
const decoded = new WeakMap<Picture, Decoded>();

/** Decodes a picture once for as long as anything holds it. */
function decode(picture: Picture): Promise<Decoded> {
  let promise = coming.get(picture);
  if (promise === undefined) {
    const image = new Image();
    image.src = picture.data;
    promise = image.decode().then(
      () => image,
      () => null,
    );
    coming.set(picture, promise);
    void promise.then((result) => decoded.set(picture, result));
  }
  return promise;
}

/** The picture ready to be drawn; undefined until it is, null where it is broken. */
export function usePicture(picture: Picture | undefined): Decoded | undefined {
  const [, ready] = useState<Picture>();
  useEffect(() => {
    if (picture === undefined || decoded.has(picture)) return;
    let wanted = true;
    void decode(picture).then(() => wanted && ready(picture));
    return () => {
      wanted = false;
    };
  }, [picture]);
  return picture === undefined ? undefined : decoded.get(picture);
}
