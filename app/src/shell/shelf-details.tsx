import type { Drawing } from '@seamwright/arrangement';
import type { Parameter, StartingPoint } from '@seamwright/drafting';
import { sentence } from '@seamwright/geometry';
import { useCallback, useMemo, useState } from 'react';
import { isFresh } from '../store/fresh.ts';
import { currentBlock, useWork } from '../store/work.ts';
import { verdictWords } from '../study/verdict.ts';
import { Button } from '../ui/button.tsx';
import { CountField } from '../ui/count-field.tsx';
import { LengthField } from '../ui/length-field.tsx';
import { counted } from '../ui/plural.ts';
import { ShareField } from '../ui/share-field.tsx';
import { BlockThumbnail } from './block-thumbnail.tsx';
import styles from './shelf-dialog.module.css';
import { sizeWords } from './size-words.ts';
import { useLookAt } from './use-look-at.ts';

interface ShelfDetailsProps {
  readonly start: StartingPoint;
  readonly take: (drawing: Drawing) => void;
}

/** One starting point: what it is, its measures to choose, and what comes of them. */
export function ShelfDetails({ start, take }: ShelfDetailsProps) {
  const unit = useWork((work) => work.history.present.unit);
  const replaces = useWork((work) => isFresh(currentBlock(work)));
  const [values, setValues] = useState<Readonly<Record<string, number>>>({});
  const [refused, setRefused] = useState<readonly string[]>([]);
  const tell = useCallback(
    (id: string, isRefused: boolean) =>
      setRefused((before) => [...before.filter((one) => one !== id), ...(isRefused ? [id] : [])]),
    [],
  );
  const made = useMemo(() => start.build(values), [start, values]);
  const drawing = made.ok ? made.value : null;
  const study = useLookAt(drawing);
  const patches = study?.arrangement?.patches.length;
  const words =
    patches === undefined
      ? 'Looking at it…'
      : `${counted(patches, 'patch', 'patches')}. ${verdictWords(study).short}.`;
  return (
    <section className={styles.details} aria-label={start.name}>
      <h3>{start.name}</h3>
      <p>{start.about}</p>
      {drawing !== null && (
        <div className={styles.large}>
          <BlockThumbnail drawing={drawing} size={232} />
        </div>
      )}
      <div className={styles.measures}>
        {start.parameters.map((parameter) => (
          <ParameterField
            key={parameter.id}
            parameter={parameter}
            value={values[parameter.id] ?? parameter.usual}
            onChange={(value) => setValues((before) => ({ ...before, [parameter.id]: value }))}
            onRefused={tell}
          />
        ))}
      </div>
      <p className={styles.verdict} role="status" data-testid="shelf-verdict">
        {refused.length > 0 && 'Type another measure above to see what comes of it.'}
        {refused.length === 0 &&
          (made.ok ? `${sizeWords(made.value, unit)}, ${words}` : sentence(made.problem))}
      </p>
      <div className={styles.take}>
        <Button
          look="main"
          waits={drawing === null || refused.length > 0}
          onClick={() => drawing !== null && take(drawing)}
        >
          Start from this
        </Button>
        <span>
          {replaces ? 'Takes the place of the empty block.' : 'Becomes a new block of the pattern.'}
        </span>
      </div>
    </section>
  );
}

interface ParameterFieldProps {
  readonly parameter: Parameter;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly onRefused: (id: string, refused: boolean) => void;
}

function ParameterField({ parameter, value, onChange, onRefused }: ParameterFieldProps) {
  const { id, label, kind, least, most } = parameter;
  const tell = useCallback((refused: boolean) => onRefused(id, refused), [id, onRefused]);
  const field = { label, value, onChange, onRefused: tell };
  switch (kind) {
    case 'count':
      return <CountField {...field} least={least} most={most} />;
    case 'length':
      return <LengthField {...field} range={{ least, most }} />;
    case 'share':
      return <ShareField {...field} least={least} most={most} />;
  }
}
