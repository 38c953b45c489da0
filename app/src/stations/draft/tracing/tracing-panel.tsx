import type { Picture, Tracing } from '@seamwright/pattern';
import { ImagePlus, Move, Ruler, Trash2 } from 'lucide-react';
import { type RefObject, useEffect, useRef } from 'react';
import { choosePicture } from '../../../keeping/choose-file.ts';
import { announce } from '../../../store/notices.ts';
import { useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import panel from '../panel/panel.module.css';
import { stopPlacing, usePlacing } from './placing.ts';
import { startPlacing } from './start-placing.ts';
import { StrengthFields } from './strength-fields.tsx';
import styles from './tracing.module.css';
import { changeTracing, currentTracing, removeTracing } from './tracing-edits.ts';
import { TracingFields } from './tracing-fields.tsx';
import { TwoPointsPart } from './two-points-part.tsx';
import { usePicture } from './use-picture.ts';

/** The picture under the drawing: bring one in, place it, fade it, take it away. */
export function TracingPanel() {
  const tracing = useWork(currentTracing);
  const free = tracing?.shown === true && !tracing.locked;
  const picture = tracing?.picture;
  // Taken away, locked, hidden, or another one: it cannot be in hand any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the picture is what the hand must let go of
  useEffect(() => stopPlacing, [free, picture]);
  const part = useRef<HTMLDivElement>(null);
  useShowNew(part, picture);
  return (
    <div ref={part}>
      <Foldable
        id="tracing"
        title="Picture to trace"
        more={tracing === undefined ? 'none' : stateWords(tracing)}
      >
        {tracing === undefined ? <NoPicture /> : <OnePicture tracing={tracing} />}
      </Foldable>
    </div>
  );
}

/** Brings the part into sight when a picture comes in: what is wanted next stands here. */
function useShowNew(part: RefObject<HTMLElement | null>, picture: Picture | undefined): void {
  const before = useRef(picture);
  useEffect(() => {
    if (picture !== undefined && before.current === undefined)
      part.current?.scrollIntoView({ block: 'nearest' });
    before.current = picture;
  }, [part, picture]);
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

function OnePicture({ tracing }: { readonly tracing: Tracing }) {
  const { picture, shown, locked } = tracing;
  const broken = usePicture(picture) === null;
  const show = (now: boolean) => {
    changeTracing(now ? 'Show the picture' : 'Hide the picture', (before) => ({ ...before, shown: now }));
    announce(now ? 'The picture is shown' : 'The picture is hidden');
  };
  const lock = (now: boolean) => {
    changeTracing(now ? 'Lock the picture' : 'Unlock the picture', (before) => ({ ...before, locked: now }));
    announce(now ? 'The picture is locked' : 'The picture can be moved');
  };
  return (
    <>
      <p className={styles.name}>
        {picture.name}{' '}
        <span className={panel.quiet}>{`${picture.width}\u00a0×\u00a0${picture.height}\u00a0pixels`}</span>
      </p>
      {broken && (
        <p className={panel.wrong} role="alert">
          This picture is broken and cannot be shown. Take it away, or bring it in again.
        </p>
      )}
      <div className={styles.checks}>
        <label className={panel.check}>
          <input type="checkbox" checked={shown} onChange={(event) => show(event.target.checked)} />
          Shown
        </label>
        <label className={panel.check}>
          <input type="checkbox" checked={locked} onChange={(event) => lock(event.target.checked)} />
          Locked in its place
        </label>
      </div>
      {shown && <StrengthFields strength={tracing.strength} />}
      {shown && !locked && <Placement tracing={tracing} />}
      <div className={panel.row}>
        <Button icon={ImagePlus} onClick={choosePicture}>
          Another…
        </Button>
        <Button icon={Trash2} onClick={removeTracing}>
          Take it away
        </Button>
      </div>
    </>
  );
}

function Placement({ tracing }: { readonly tracing: Tracing }) {
  const kind = usePlacing((placing) => placing.kind);
  const take = (wanted: 'moving' | 'pointing') => () => {
    if (kind === wanted) stopPlacing();
    else startPlacing(wanted);
  };
  return (
    <>
      <div className={panel.row}>
        <Button icon={Move} aria-pressed={kind === 'moving'} onClick={take('moving')}>
          Move it
        </Button>
        <Button icon={Ruler} aria-pressed={kind === 'pointing'} onClick={take('pointing')}>
          Two known points
        </Button>
      </div>
      {kind === 'pointing' && <TwoPointsPart tracing={tracing} />}
      <TracingFields tracing={tracing} />
    </>
  );
}
