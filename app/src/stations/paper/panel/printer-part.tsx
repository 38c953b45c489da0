import type { Margins } from '@seamwright/pages';
import { useState } from 'react';
import { dismiss, tell } from '../../../store/notices.ts';
import {
  choosePrinter,
  chosenPrinter,
  forgetPrinter,
  type KnownPrinter,
  keepPrinter,
  usePrinters,
} from '../../../store/printers.ts';
import { setting, useSettings } from '../../../store/settings.ts';
import { MARGIN_RANGE } from '../../../store/sheet-settings.ts';
import { Button } from '../../../ui/button.tsx';
import { Field } from '../../../ui/field.tsx';
import { Foldable } from '../../../ui/foldable.tsx';
import { handOn } from '../../../ui/hand-on.ts';
import { LengthField } from '../../../ui/length-field.tsx';
import { factorsInWords } from './factor-words.ts';
import styles from './panel.module.css';
import { PrinterDialog } from './printer-dialog.tsx';

const EDGES = [
  { edge: 'top', label: 'Top' },
  { edge: 'bottom', label: 'Bottom' },
  { edge: 'left', label: 'Left' },
  { edge: 'right', label: 'Right' },
] as const satisfies readonly { edge: keyof Margins; label: string }[];

const MEASURE = 'measure-printer';
const vanishes = handOn(`#${MEASURE}`);

/** For which printer the pages are corrected, and what stays blank at the edges. */
export function PrinterPart() {
  const { known } = usePrinters();
  const printer = usePrinters(chosenPrinter);
  const [measuring, setMeasuring] = useState(false);
  return (
    <Foldable id="paper printer" title="Printer" more={printer?.name ?? 'any, not corrected'}>
      {known.length > 0 && (
        <Field label="Pages are made for">
          {(control) => (
            <select
              {...control}
              value={printer?.name ?? ''}
              onChange={(event) => choosePrinter(event.target.value === '' ? null : event.target.value)}
            >
              <option value="">Any printer, not corrected</option>
              {known.map(({ name }) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
      )}
      <p>
        {printer === null
          ? 'Does a check square not measure true? Measure the printer once; from then on its pages come out true.'
          : `${factorsInWords(printer)} Pages are corrected by as much, and are true on this printer only.`}
      </p>
      <div className={styles.buttons}>
        <Button id={MEASURE} onClick={() => setMeasuring(true)}>
          Measure the printer…
        </Button>
        {printer !== null && (
          <Button ref={vanishes} onClick={() => forget(printer)}>
            Forget this one
          </Button>
        )}
      </div>
      <MarginFields printer={printer} />
      <PrinterDialog open={measuring} onClose={() => setMeasuring(false)} />
    </Foldable>
  );
}

/** What took measuring is offered back. */
function forget(printer: KnownPrinter): void {
  forgetPrinter(printer.name);
  tell(`${printer.name} is forgotten: pages are not corrected.`, {
    label: 'Put back',
    run: () => {
      keepPrinter(printer);
      dismiss();
    },
  });
}

/** Of the printer that was measured, where one is in use. */
function MarginFields({ printer }: { readonly printer: KnownPrinter | null }) {
  const usual = useSettings((settings) => settings.margins);
  const margins = printer?.margins ?? usual;
  const change = (edited: Margins) =>
    printer === null ? setting({ margins: edited }) : keepPrinter({ ...printer, margins: edited });
  return (
    <fieldset className={styles.margins}>
      <legend>Blank at the sheet’s edges</legend>
      {EDGES.map(({ edge, label }) => (
        <LengthField
          key={edge}
          label={label}
          value={margins[edge]}
          range={MARGIN_RANGE}
          onChange={(inches) => change({ ...margins, [edge]: inches })}
        />
      ))}
    </fieldset>
  );
}
