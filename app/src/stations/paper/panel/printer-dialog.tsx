import { formatLength, sentence } from '@seamwright/geometry';
import { checkPage } from '@seamwright/pages';
import { FileDown, Printer } from 'lucide-react';
import { useMemo, useState } from 'react';
import { announce } from '../../../store/notices.ts';
import { chosenPrinter, keepPrinter, usePrinters } from '../../../store/printers.ts';
import { useSettings } from '../../../store/settings.ts';
import { useWork } from '../../../store/work.ts';
import { Button } from '../../../ui/button.tsx';
import { Dialog } from '../../../ui/dialog.tsx';
import { Field } from '../../../ui/field.tsx';
import { printSheets, savePdf } from '../outputs/save.ts';
import { useOutput } from '../outputs/under-way.ts';
import { factorsInWords } from './factor-words.ts';
import { NOTHING_MEASURED, printerName, printerOf, type TypedMeasures } from './measures.ts';
import styles from './panel.module.css';

interface PrinterDialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** A check page to print, and what it measures: from that, what the printer makes of a length. */
export function PrinterDialog({ open, onClose }: PrinterDialogProps) {
  return (
    <Dialog title="Measure the printer" open={open} onClose={onClose}>
      <Measuring onClose={onClose} />
    </Dialog>
  );
}

/** One line of the measures: what is measured, and the names of its two fields. */
interface Row {
  readonly what: string;
  readonly across: keyof TypedMeasures;
  readonly down: keyof TypedMeasures;
}

function Measuring({ onClose }: Pick<PrinterDialogProps, 'onClose'>) {
  const unit = useWork((work) => work.history.present.unit);
  const { paper, margins: usual } = useSettings();
  const known = usePrinters(chosenPrinter);
  const margins = known?.margins ?? usual;
  const page = useMemo(() => checkPage({ paper, margins, unit }), [paper, margins, unit]);
  const [typed, setTyped] = useState(NOTHING_MEASURED);
  const [name, setName] = useState(known?.name ?? '');
  const [said, setSaid] = useState<string | null>(null);
  if (!page.ok) return <p role="alert">{sentence(page.problem)}</p>;
  const { rulers, plan } = page.value;
  const printer = printerOf(typed, rulers, unit);
  const untouched = Object.values(typed).every((text) => text.trim() === '');

  const keep = () => {
    const named = printerName(name);
    if (!printer.ok) return setSaid(sentence(printer.problem));
    if (!named.ok) return setSaid(sentence(named.problem));
    keepPrinter({ name: named.value, ...printer.value, margins });
    announce(`Pages are corrected for ${named.value}. ${factorsInWords(printer.value)}`);
    onClose();
  };
  const rows: readonly Row[] = [
    { what: 'Square of 1 in', across: 'oneInchAcross', down: 'oneInchDown' },
    { what: 'Square of 50 mm', across: 'fiftyMmAcross', down: 'fiftyMmDown' },
    {
      what: `Long rulers, ${formatLength(rulers.across, unit)} and ${formatLength(rulers.down, unit)}`,
      across: 'rulerAcross',
      down: 'rulerDown',
    },
  ];
  return (
    <form
      className={styles.measuring}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <p>1. Print the check page at 100 %, with “fit to page” off, on {plan.paper.label} paper.</p>
      <CheckPageButtons plan={plan} />
      <p>
        2. Type what you measure, from the middle of one line to the middle of the other. One square, across
        and down, will do; the long rulers tell more.
      </p>
      <Measures
        rows={rows}
        typed={typed}
        onType={(change) => {
          setTyped({ ...typed, ...change });
          setSaid(null);
        }}
      />
      <Field label="Name of the printer" hint="The correction is kept under it in this browser.">
        {(control) => (
          <input
            {...control}
            value={name}
            autoComplete="off"
            maxLength={60}
            onChange={(event) => setName(event.target.value)}
          />
        )}
      </Field>
      <p className={styles.finding} role="status" data-wrong={said !== null}>
        {said ?? (printer.ok ? `${factorsInWords(printer.value)} Pages are corrected by as much.` : '')}
        {said === null && untouched && 'Nothing is measured yet.'}
      </p>
      <div className={styles.ends}>
        <Button onClick={onClose}>Cancel</Button>
        <Button look="main" onClick={keep}>
          Keep the printer
        </Button>
      </div>
    </form>
  );
}

function CheckPageButtons({ plan }: { readonly plan: Parameters<typeof savePdf>[0] }) {
  const busy = useOutput(({ underWay }) => underWay !== null);
  return (
    <div className={styles.buttons}>
      <Button icon={FileDown} waits={busy} onClick={() => void savePdf(plan, 'Check page')}>
        Save the check page
      </Button>
      <Button icon={Printer} waits={busy} onClick={() => void printSheets(plan, 'Check page')}>
        Print it…
      </Button>
    </div>
  );
}

interface MeasuresProps {
  readonly rows: readonly Row[];
  readonly typed: TypedMeasures;
  readonly onType: (change: Partial<TypedMeasures>) => void;
}

function Measures({ rows, typed, onType }: MeasuresProps) {
  return (
    <table className={styles.measures}>
      <thead>
        <tr>
          <td />
          <th scope="col">Across</th>
          <th scope="col">Down</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, ...fields }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            {(['across', 'down'] as const).map((direction) => (
              <td key={direction}>
                <input
                  className={styles.measure}
                  aria-label={`${what}, ${direction}`}
                  value={typed[fields[direction]]}
                  inputMode="text"
                  autoComplete="off"
                  onChange={(event) => onType({ [fields[direction]]: event.target.value })}
                />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
