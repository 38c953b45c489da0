import type { Picture, Tracing } from '@seamwright/pattern';
import { ImagePlus } from 'lucide-react';
import { lazy, Suspense, useEffect, useRef } from 'react';
import { choosePicture } from '../../../keeping/choose-file.ts';
import { currentBlock, useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import panel from '../panel/panel.module.css';
import { stopPlacing } from './placing.ts';
import { currentTracing } from './tracing-edits.ts';

/** Loaded with the first picture, not with the page. */
const OnePicture = lazy(() => import('./one-picture.tsx'));

/** The picture under the drawing: bring one in, place it, fade it, take it away. */
export function TracingPanel() {
  const tracing = useWork(currentTracing);
  const free = tracing?.shown === true && !tracing.locked;
  const picture = tracing?.picture;
  // Taken away, locked, hidden, or another one: it cannot be in hand any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the picture is what the hand must let go of
  useEffect(() => stopPlacing, [free, picture]);
  const fresh = useFresh(picture);
  return (
    <Foldable
      id="tracing"
      title="Picture to trace"
      more={tracing === undefined ? 'none' : stateWords(tracing)}
    >
      {tracing === undefined ? (
        <NoPicture />
      ) : (
        <Suspense fallback={null}>
          <OnePicture tracing={tracing} fresh={fresh} />
        </Suspense>
      )}
    </Foldable>
  );
}

/** Whether the picture came in just now, rather than that another block was opened. */
function useFresh(picture: Picture | undefined): boolean {
  const id = useWork((work) => currentBlock(work).id);
  const before = useRef({ id, picture });
  const fresh = picture !== undefined && before.current.picture === undefined && before.current.id === id;
  useEffect(() => {
    before.current = { id, picture };
  }, [id, picture]);
  return fresh;
}

function stateWords({ shown, locked, strength }: Tracing): string {
  if (!shown) return 'hidden';
  return locked ? 'locked' : `${Math.round(strength * 100)} %`;
}

function NoPicture() {
  return (
    <>
      <p className={panel.hint}>
        A photograph or a sketch (PNG, JPEG, WebP or SVG) that lies under the drawing. Drop it on the page,
        paste it, or choose it. It is kept with the block and never printed.
      </p>
      <div className={panel.row}>
        <Button icon={ImagePlus} onClick={choosePicture}>
          Bring in a picture…
        </Button>
      </div>
    </>
  );
}
