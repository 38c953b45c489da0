import type { Print } from '@seamwright/pages';
import { useState } from 'react';
import { useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { Field } from '../../../ui/field.tsx';
import { listed } from '../../../ui/plural.ts';
import { roughLength } from '../../../ui/rough-length.ts';
import styles from './outputs.module.css';
import { savePng } from './save.ts';

interface PictureDialogProps {
  readonly prints: readonly Print[];
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Pixels to the inch: for the screen, for sharing and printing, for a fine print. */
const RESOLUTIONS = [
  { value: '150', label: '150' },
  { value: '300', label: '300' },
  { value: '600', label: '600' },
] as const;

/** Asks which foundation is saved as a picture, and how fine. */
export function PictureDialog({ prints, open, onClose }: PictureDialogProps) {
  return (
    <Dialog title="A foundation as a picture" open={open} onClose={onClose}>
      <Choosing prints={prints} onClose={onClose} />
    </Dialog>
  );
}

function Choosing({ prints, onClose }: Omit<PictureDialogProps, 'open'>) {
  const unit = useWork((work) => work.history.present.unit);
  const [key, setKey] = useState(prints[0]!.key);
  const [perInch, setPerInch] = useState<(typeof RESOLUTIONS)[number]['value']>('300');
  const print = prints.find((one) => one.key === key) ?? prints[0]!;
  const words = ({ letters, mirrored, size }: Print) =>
    `${listed(letters)}${mirrored ? ', mirrored' : ''}, block ${roughLength(size.width, unit)} wide`;
  const save = () => {
    const job = useWork.getState().sheets?.job;
    onClose();
    if (job !== undefined) void savePng(job, print.key, nameOf(print), Number(perInch));
  };
  return (
    <div className={styles.picture}>
      <Field label="Foundation">
        {(control) => (
          <select {...control} value={print.key} onChange={(event) => setKey(event.target.value)}>
            {prints.map((one) => (
              <option key={one.key} value={one.key}>
                {words(one)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Choice label="Pixels to the inch" value={perInch} options={RESOLUTIONS} onChange={setPerInch} />
      <p>
        The picture is mirrored like the print, and says its resolution: printed at 100 %, it is as large as
        the foundation. Without check squares, it is for showing rather than for sewing.
      </p>
      <div className={styles.ends}>
        <Button onClick={onClose}>Cancel</Button>
        <Button look="main" onClick={save}>
          Save PNG
        </Button>
      </div>
    </div>
  );
}

const nameOf = ({ letters, mirrored }: Print): string => `${letters.join(' ')}${mirrored ? ' mirrored' : ''}`;
