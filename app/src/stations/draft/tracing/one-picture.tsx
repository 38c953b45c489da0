import type { Tracing } from '@seamwright/pattern';
import { ImagePlus, Move, Ruler, Trash2 } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { choosePicture } from '../../../keeping/choose-file.ts';
import { announce } from '../../../store/notices.ts';
import { Button } from '../../../ui/button.tsx';
import { CheckBox } from '../../../ui/check-box.tsx';
import panel from '../panel/panel.module.css';
import { stopPlacing, usePlacing } from './placing.ts';
import { startPlacing } from './start-placing.ts';
import { StrengthFields } from './strength-fields.tsx';
import styles from './tracing.module.css';
import { changeTracing, removeTracing } from './tracing-edits.ts';
import { TracingFields } from './tracing-fields.tsx';
import { TwoPointsPart } from './two-points-part.tsx';
import { usePicture } from './use-picture.ts';

interface OnePictureProps {
  readonly tracing: Tracing;
  /** It came in just now: what is wanted next stands here, and is brought into sight. */
  readonly fresh: boolean;
}

/** The picture that is there: how it shows, where it lies. */
export default function OnePicture({ tracing, fresh }: OnePictureProps) {
  const end = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it appears
  useEffect(() => {
    if (fresh) end.current?.scrollIntoView({ block: 'nearest' });
  }, []);
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
        <CheckBox label="Shown" checked={shown} onChange={(isChecked) => show(isChecked)} />
        <CheckBox label="Locked in its place" checked={locked} onChange={(isChecked) => lock(isChecked)} />
      </div>
      {shown && <StrengthFields strength={tracing.strength} />}
      {shown && !locked && <Placement tracing={tracing} />}
      <div ref={end} className={panel.row}>
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
  const dragged = usePlacing((placing) => (placing.kind === 'moving' ? placing.preview : null));
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
      <TracingFields tracing={dragged ?? tracing} />
    </>
  );
}
